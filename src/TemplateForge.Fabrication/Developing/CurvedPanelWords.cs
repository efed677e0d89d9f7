using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What is printed beside the flat pattern of a curved panel.</summary>
public static class CurvedPanelWords
{
    /// <summary>Which face, which view, how it is cut, and distances by which the section is checked on the panel itself.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="step">Of the distances along the panel, more than 0, in mm.</param>
    public static ImmutableArray<string> Notes(CurvedPanel panel, double step)
    {
        var measured = panel.Measured;
        var notes = ImmutableArray.CreateBuilder<string>();
        notes.Add($"This paper is curved onto the {Face(measured.LiesOn)} of the panel; the section was measured on the {Face(measured.MeasuredOn)}.");
        notes.Add(measured.SquareAt is [var square, ..]
            ? $"Drawn as one looks square at the panel {Mm(square)} mm along the straight edge, which is {Degrees(panel.Tilt.Degrees)}° off square to that edge."
            : panel.Tilt.Degrees == 0 ? "Drawn as one looks square at the straight edge."
            : $"Drawn as one looks {Degrees(panel.Tilt.Degrees)}° off square to the straight edge.");
        notes.Add(measured.Cut == ThroughCut.Square
            ? "The shape is true on the outside of the panel. Cut and file it square to the sheet all round."
            : "The shape is true as it is seen. Cut and file it straight on along the line of sight, not square to the sheet.");
        var steps = panel.Steps(step);
        Compare(steps.Where(s => s.Along > 0), panel.OnPaper(new(0, 1)));
        Compare(steps.Where(s => s.Along < 0).Reverse(), panel.OnPaper(new(0, -1)));
        return notes.ToImmutable();

        void Compare(IEnumerable<(double Along, double Seen)> some, Vector way)
        {
            var list = string.Join(", ", some.Select(s => $"{Mm(Math.Abs(s.Along))} is {Mm(Math.Abs(s.Seen))}"));
            if (list.Length > 0) notes.Add($"By tape along the panel from the datum line {Way(way)}, and the same as it is seen: {list}. If the panel says otherwise, measure its section again.");
        }
    }

    // As one looks at the paper; the nearest word.
    private static string Way(Vector way) => Math.Abs(way.Y) >= Math.Abs(way.X) ? way.Y > 0 ? "up" : "down" : way.X > 0 ? "to the right" : "to the left";

    private static string Face(PanelFace face) => face == PanelFace.Outside ? "outside" : "inside";

    private static string Mm(double value) => value.ToString("0.0", CultureInfo.InvariantCulture).Replace(".0", "", StringComparison.Ordinal);

    private static string Degrees(double value) => Math.Abs(value).ToString("0.#", CultureInfo.InvariantCulture);
}
