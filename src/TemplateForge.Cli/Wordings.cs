using System.Collections.Immutable;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli;

/// <summary>Every complaint about how a command was typed.</summary>
internal static class Wordings
{
    public static Complaint NotASetting(Choice given) => given.Place.Complain(
        $"--set takes a name and a value, but got '{Plain(given.Word)}'.", "Write it as --set name=value, without spaces round the sign.");

    public static Complaint NotUnderstood(Place place, string message) => place.Complain(message, "Add --help to see what it takes.");

    public static Complaint UnknownWord(Place place, string word, IEnumerable<string> known) => place.Complain(
        $"'{Plain(word)}' is not understood here.",
        Spelling.Nearest(word, known, out var nearest) ? $"Did you mean {nearest}?" : "Add --help to see what it takes.");

    public static Complaint ProfileOrJob(Place place) => place.Complain(
        "make takes a PROFILE or --job FILE, one of them.", "Name a profile; list shows those in the library.");

    public static Complaint NotWithJob(Place place, string option) => place.Complain(
        $"{option} does not go with --job: a job is made again from what its record says.",
        "Leave it out, or make the profile afresh with the values that you want.");

    public static Complaint NothingFound(Place place, ImmutableArray<string> words) => place.Complain(
        $"No profile in the library has '{Plain(string.Join(' ', words))}' in its name or its description.", "list alone shows all of them.");

    public static Complaint UnknownUnit(Choice unit) => unit.Place.Complain($"--unit takes mm or in, but got '{Plain(unit.Word)}'.", "Say mm or in.");

    public static Complaint UnknownDxf(Choice dxf, IEnumerable<string> known) => dxf.Place.Complain(
        $"--dxf takes the name of a DXF that can be written, but got '{Plain(dxf.Word)}'.", $"Say {string.Join(", ", known)}; -in is in inches.");

    public static Complaint GapOutOfBounds(Choice gap, double most) => gap.Place.Complain(
        FormattableString.Invariant($"--close takes a gap of 0 to {most} mm, but got '{Plain(gap.Word)}'."), "Wider gaps were hardly meant to be closed: mend them in the drawing.");

    public static Complaint NothingToCut(Choice file) => file.Place.Complain(
        $"'{Plain(file.Word)}' holds no lines, arcs or curves, so there is nothing to repair.", "check-dxf without --repair says what it does hold.");

    /// <summary>Words without what would steer a terminal.</summary>
    public static string Plain(string words) => new([.. words.Select(c => char.IsControl(c) ? '?' : c)]);
}
