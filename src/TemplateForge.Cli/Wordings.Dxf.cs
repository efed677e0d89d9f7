using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli;

/// <summary>Complaints of the command that checks a DXF.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownUnit(Choice unit) => unit.Place.Complain($"--unit takes mm or in, but got '{Plain(unit.Word)}'.", "Say mm or in.");

    public static Complaint GapOutOfBounds(Choice gap, double most) => gap.Place.Complain(
        FormattableString.Invariant($"--close takes a gap of 0 to {most} mm, but got '{Plain(gap.Word)}'."), "Wider gaps were hardly meant to be closed: mend them in the drawing.");

    public static Complaint OnlyWithRepair(Place place, string option) => place.Complain(
        $"{option} is about the file that --repair writes, and none was asked for.", "Add --repair and a name for the file, or leave it out.");

    public static Complaint NoSuchLayer(Choice layer, IReadOnlyCollection<string> known) => layer.Place.Complain(
        $"Nothing in the file lies on a layer '{Plain(layer.Word)}'.",
        known.Count == 0 ? "Nothing in it can be cut; check-dxf without --layer says what it holds."
            : Spelling.Nearest(layer.Word, known, out var nearest) ? $"Did you mean {Plain(nearest)}?" : $"It has {Plain(string.Join(", ", known))}.");

    public static Complaint NothingToCut(Choice file) => file.Place.Complain(
        $"'{Plain(file.Word)}' holds no lines, arcs or curves that are to be cut, so there is nothing to repair.", "check-dxf without --repair says what it does hold.");
}
