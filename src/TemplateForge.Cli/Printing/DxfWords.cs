using System.Globalization;
using TemplateForge.Drawing;

namespace TemplateForge.Cli.Printing;

/// <summary>What was found in a DXF, in words.</summary>
internal static class DxfWords
{
    /// <summary>The name of a kind in what other programs read.</summary>
    public static string Name(DxfFindingKind kind) => string.Concat(kind.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));

    public static string Release(string code) => code switch
    {
        "AC1006" => "R10",
        "AC1009" => "R12",
        "AC1012" => "R13",
        "AC1014" => "R14",
        "AC1015" => "R2000",
        "AC1018" => "R2004",
        "AC1021" => "R2007",
        "AC1024" => "R2010",
        "AC1027" => "R2013",
        "AC1032" => "R2018",
        "" => "of no stated release",
        _ => code,
    };

    public static string Heading(DxfFindingKind kind, int count) => kind switch
    {
        DxfFindingKind.NoUnit => "No unit",
        DxfFindingKind.UnitContradicted => "Two units",
        DxfFindingKind.CutShort => "The file ends before its end",
        DxfFindingKind.HiddenLayer => "Hidden or frozen",
        DxfFindingKind.OnPaper => $"{Many(count, "thing")} on the paper of the drawing, not in it",
        DxfFindingKind.Unreadable => $"{Many(count, "entity", "entities")} with numbers that make no shape",
        DxfFindingKind.NotCut => $"{Many(count, "thing")} that no table cuts",
        DxfFindingKind.NotFlat => $"{Many(count, "line")} that do not lie flat",
        DxfFindingKind.Block => $"{Many(count, "block")} inserted",
        DxfFindingKind.LostBlock => $"{Many(count, "block")} that cannot be found or holds itself",
        DxfFindingKind.Spline => Many(count, "spline"),
        DxfFindingKind.Ellipse => Many(count, "ellipse"),
        DxfFindingKind.ZeroLength => $"{Many(count, "line")} without length",
        DxfFindingKind.TinyArc => Many(count, "tiny line or arc", "tiny lines and arcs"),
        DxfFindingKind.OpenEnd => Many(count, "open outline"),
        DxfFindingKind.Gap => $"{Many(count, "gap")} in an outline",
        DxfFindingKind.Doubled => Many(count, "doubled line"),
        DxfFindingKind.Overlapping => Many(count, "overlapping line"),
        DxfFindingKind.Crossing => Many(count, "crossing"),
        _ => $"{Many(count, "arc")} drawn as chords",
    };

    public static string Remedy(DxfFindingKind kind) => kind switch
    {
        DxfFindingKind.NoUnit => "A table may take mm for inches. Say --unit in if it is in inches, and let --repair write the unit into it.",
        DxfFindingKind.UnitContradicted => "One word of the header says inches, the other metric. Measure a known edge before you cut.",
        DxfFindingKind.CutShort => "Ask for the file again: something may be missing.",
        DxfFindingKind.HiddenLayer => "Nobody sees it, a table may cut it. Take it out if it is not to be cut.",
        DxfFindingKind.OnPaper => "A border or title block; it was left out.",
        DxfFindingKind.Unreadable => "They were left out; draw them again.",
        DxfFindingKind.NotCut => "Lettering, hatching, dimensions, points: left out. Lettering that is to be marked must be drawn as lines.",
        DxfFindingKind.NotFlat => "Seen from above they are shorter than they are. Draw them in the plane of the sheet.",
        DxfFindingKind.Block => "Many controllers leave blocks out. --repair puts the lines themselves in their place.",
        DxfFindingKind.LostBlock => "It was left out; ask for the file again.",
        DxfFindingKind.Spline => "Many controllers leave splines out or cut them as chords. --repair makes them arcs within 0.001 mm.",
        DxfFindingKind.Ellipse => "Many controllers leave ellipses out or cut them as chords. --repair makes them arcs within 0.001 mm.",
        DxfFindingKind.ZeroLength => "A torch would stop and pierce there. --repair leaves them out.",
        DxfFindingKind.TinyArc => "Below 0.1 mm a torch stutters. Draw the corner as one line or arc.",
        DxfFindingKind.OpenEnd => "A part with an open outline is not cut free, and kerf cannot be put on its right side. Close it, or keep it if it is meant as an open cut.",
        DxfFindingKind.Gap => "The ends were meant to meet. --repair closes gaps up to 0.2 mm; --close says another width.",
        DxfFindingKind.Doubled => "It would be cut twice. --repair leaves one.",
        DxfFindingKind.Overlapping => "It would be cut twice where they overlap. --repair leaves one.",
        DxfFindingKind.Crossing => "Lines of one outline cross: the part is not what it seems. Trim them.",
        _ => "A torch stutters from chord to chord, and the kerf is wrong by their bow. --repair puts the arc in their place.",
    };

    public static string At(DxfFinding finding)
    {
        var place = FormattableString.Invariant($"at x {finding.At.X:0.###}, y {finding.At.Y:0.###} mm");
        var line = finding.Line > 0 ? $", line {finding.Line.ToString(CultureInfo.InvariantCulture)} of the file" : "";
        return finding.Kind switch
        {
            DxfFindingKind.NoUnit or DxfFindingKind.UnitContradicted or DxfFindingKind.CutShort => finding.Line > 0 ? line[2..] : "in its header",
            DxfFindingKind.Gap => FormattableString.Invariant($"{finding.Size:0.###} mm {place}{line}"),
            DxfFindingKind.OpenEnd => FormattableString.Invariant($"{place}, its ends {finding.Size:0.###} mm apart{line}"),
            DxfFindingKind.TinyArc => FormattableString.Invariant($"{finding.Size:0.####} mm {place}{line}"),
            DxfFindingKind.Doubled or DxfFindingKind.Overlapping => FormattableString.Invariant($"over {finding.Size:0.###} mm {place}{line}"),
            DxfFindingKind.ChordsOfArc => FormattableString.Invariant($"{finding.Detail} chords of an arc of radius {finding.Size:0.###} mm {place}{line}"),
            _ => $"{(finding.Detail.Length > 0 ? finding.Detail + " " : "")}{place}{line}",
        };
    }

    private static string Many(int count, string one) => Many(count, one, one + "s");

    private static string Many(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count.ToString(CultureInfo.InvariantCulture)} {many}";
}
