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

    public static string Unit(DxfContents contents) =>
        contents.StatedUnit == contents.Unit.Name ? "unit " + contents.Unit.Name
        : contents.StatedUnit.Length == 0 ? "unit not stated, taken as " + contents.Unit.Name
        : $"unit {contents.StatedUnit} by its own word, taken as {contents.Unit.Name}";

    public static string Heading(DxfFindingKind kind, int count) => kind switch
    {
        DxfFindingKind.NoUnit => "No unit",
        DxfFindingKind.UnitContradicted => "Two units",
        DxfFindingKind.UnusualUnit => "Neither millimetres nor inches",
        DxfFindingKind.UnitOverruled => "Not the unit that the file states",
        DxfFindingKind.UnitConverted => "Unit",
        DxfFindingKind.ReleaseWritten => "Release",
        DxfFindingKind.LayerRenamed => count == 1 ? "Name of a layer" : "Names of layers",
        DxfFindingKind.CutShort => "The file ends before its end",
        DxfFindingKind.Empty => "Nothing to cut",
        DxfFindingKind.TooWide => "Larger than any sheet",
        DxfFindingKind.HiddenLayer => "Hidden or frozen",
        DxfFindingKind.OnPaper => $"{Many(count, "entity", "entities")} of the drawing's paper layout, not of the part",
        DxfFindingKind.Unreadable => $"{Many(count, "entity", "entities")} with numbers that make no shape",
        DxfFindingKind.TooFar => $"{Many(count, "entity", "entities")} more than 1000 m from the drawing's zero",
        DxfFindingKind.NotCut => $"{Many(count, "thing")} that no table cuts",
        DxfFindingKind.NotFlat => count == 1 ? "1 line that does not lie flat" : $"{Many(count, "line")} that do not lie flat",
        DxfFindingKind.FromBelow => $"{Many(count, "outline")} drawn from below",
        DxfFindingKind.Block => $"{Many(count, "block")} inserted",
        DxfFindingKind.LostBlock => count == 1 ? "1 block that cannot be found or holds itself" : $"{Many(count, "block")} that cannot be found or hold themselves",
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

    /// <summary>Why it matters, and what to do.</summary>
    public static string Remedy(DxfFindingKind kind) => kind switch
    {
        DxfFindingKind.NoUnit => "A table may take mm for inches. Say --unit in if it is in inches, and let --repair write the unit into it.",
        DxfFindingKind.UnitContradicted => "One word of the header says inches, the other metric. Measure a known edge, then say --unit mm or --unit in, and let --repair write it.",
        DxfFindingKind.UnusualUnit => "No table cuts in it, and often nobody chose it. Measure a known edge: if the numbers are mm or inches, say --unit mm or --unit in; --repair writes mm.",
        DxfFindingKind.UnitOverruled => "A table would believe the file, not --unit. --repair writes the right unit into it.",
        DxfFindingKind.CutShort => "Ask for the file again: something may be missing.",
        DxfFindingKind.Empty => "Nothing that can be seen, on layers that are cut, is a line, an arc or a curve.",
        DxfFindingKind.TooWide => "Over 6 m: is the unit right? --unit mm or --unit in says what its numbers are.",
        DxfFindingKind.HiddenLayer => "Nobody sees it, a table may cut it. --repair leaves it out; show the layer if it is to be cut.",
        DxfFindingKind.OnPaper => "A border or title block; it was left out.",
        DxfFindingKind.Unreadable => "They were left out; draw them again.",
        DxfFindingKind.TooFar => "So far off lengths are no longer exact, so they were left out. Move the part near zero, or look at the unit.",
        DxfFindingKind.NotCut => "Lettering, hatching, dimensions, points: left out. Lettering that is to be marked must be drawn as lines.",
        DxfFindingKind.NotFlat => "Seen from above they are shorter than they are. Draw them in the plane of the sheet.",
        DxfFindingKind.FromBelow => "A controller that does not know of it cuts the mirror image. --repair writes them as they are seen from above.",
        DxfFindingKind.Block => "Many controllers leave blocks out. --repair puts the lines themselves in their place.",
        DxfFindingKind.LostBlock => "It was left out; ask for the file again.",
        DxfFindingKind.Spline => "Many controllers leave splines out or cut them as chords. --repair makes them arcs within 0.001 mm.",
        DxfFindingKind.Ellipse => "Many controllers leave ellipses out or cut them as chords. --repair makes them arcs within 0.001 mm.",
        DxfFindingKind.ZeroLength => "A torch would stop and pierce there. --repair leaves them out.",
        DxfFindingKind.TinyArc => "A torch stutters where it turns on less than 0.1 mm. Draw the corner as one line or arc.",
        DxfFindingKind.OpenEnd => "A part with an open outline is not cut free, and kerf cannot be put on its right side. Close it; if it is meant as an open cut, say --open-cuts; if it is a mark, say with --layer which layers are cut.",
        DxfFindingKind.Gap => "The ends were meant to meet. --repair closes gaps up to 0.2 mm; --close says another width, up to 2 mm.",
        DxfFindingKind.Doubled => "It would be cut twice. --repair leaves one.",
        DxfFindingKind.Overlapping => "It would be cut twice where they overlap. --repair leaves one.",
        DxfFindingKind.Crossing => "Lines of one outline cross: the part is not what it seems. Trim them; if they are marks, say with --layer which layers are cut.",
        _ => "A torch stutters from chord to chord, and the kerf is wrong by their bow. --repair puts the arc in their place.",
    };

    /// <summary>What a repair did about it.</summary>
    public static string Done(DxfFindingKind kind) => kind switch
    {
        DxfFindingKind.NoUnit => "The unit was written into it.",
        DxfFindingKind.UnitContradicted => "Both words of the header now say what is written. Measure a known edge before you cut.",
        DxfFindingKind.UnusualUnit => "Written in another, at the same size.",
        DxfFindingKind.UnitOverruled => "Its numbers were taken as --unit says.",
        DxfFindingKind.UnitConverted => "Converted:",
        DxfFindingKind.ReleaseWritten => "Written as another release:",
        DxfFindingKind.LayerRenamed => "Capitals, digits and hyphens only, so that every controller takes it:",
        DxfFindingKind.HiddenLayer or DxfFindingKind.OnPaper or DxfFindingKind.NotCut or DxfFindingKind.ZeroLength => "Left out.",
        DxfFindingKind.NotFlat or DxfFindingKind.FromBelow => "Written as seen from above.",
        DxfFindingKind.Block => "The lines themselves were put in its place.",
        DxfFindingKind.Spline or DxfFindingKind.Ellipse => "Written as arcs within 0.001 mm.",
        DxfFindingKind.Gap => "Closed where the lines run on to meet, or halfway where that is not near.",
        DxfFindingKind.Doubled or DxfFindingKind.Overlapping => "One was left.",
        _ => "The arc was put in their place.",
    };

    /// <summary>Where it is, in mm and in the unit of the file, and how large.</summary>
    public static string At(DxfFinding finding, DxfUnit unit)
    {
        var place = FormattableString.Invariant($"at x {finding.At.X:0.###}, y {finding.At.Y:0.###} mm");
        if (unit != DxfUnit.Millimetre) place += FormattableString.Invariant($" ({finding.At.X / unit.Millimetres:0.####}, {finding.At.Y / unit.Millimetres:0.####} {unit.Name})");
        var line = finding.Line > 0 ? $", line {finding.Line.ToString(CultureInfo.InvariantCulture)} of the file" : "";
        return finding.Kind switch
        {
            DxfFindingKind.NoUnit => Header(finding, finding.Detail.Length > 0 ? $"{finding.Detail} is the number of no unit of length" : ""),
            DxfFindingKind.UnitContradicted => Header(finding, $"$INSUNITS says {finding.Detail}, $MEASUREMENT {(DxfUnit.All.Any(u => u.Name == finding.Detail && u.IsImperial) ? "metric" : "inches")}; taken as {unit.Name}"),
            DxfFindingKind.UnusualUnit => Header(finding, $"in {finding.Detail}"),
            DxfFindingKind.UnitOverruled => Header(finding, $"the file says {finding.Detail}, --unit {unit.Name}"),
            DxfFindingKind.CutShort => Header(finding, ""),
            DxfFindingKind.Empty => "",
            DxfFindingKind.UnitConverted => finding.Detail,
            DxfFindingKind.ReleaseWritten => finding.Detail.Split(' ') is [var from, var to] ? $"{Release(from)} to {Release(to)}" : finding.Detail,
            DxfFindingKind.LayerRenamed => $"{finding.Layer} to {finding.Detail}",
            DxfFindingKind.TooWide => $"{finding.Detail}, from {place[3..]}",
            DxfFindingKind.HiddenLayer => $"{(finding.Detail == "1" ? "1 entity" : finding.Detail + " entities, the first")} {place}{line}",
            DxfFindingKind.Gap => FormattableString.Invariant($"{finding.Size:0.###} mm {place}{line}"),
            DxfFindingKind.OpenEnd => FormattableString.Invariant($"{place}, its ends {finding.Size:0.###} mm apart{line}"),
            DxfFindingKind.TinyArc => FormattableString.Invariant($"{finding.Size:0.####} mm {place}{line}"),
            DxfFindingKind.Doubled or DxfFindingKind.Overlapping => FormattableString.Invariant($"over {finding.Size:0.###} mm {place}{line}"),
            DxfFindingKind.ChordsOfArc => FormattableString.Invariant($"{finding.Detail} chords of an arc of radius {finding.Size:0.###} mm {place}{line}"),
            _ => $"{(finding.Detail.Length > 0 ? finding.Detail + " " : "")}{place}{line}",
        };
    }

    private static string Header(DxfFinding finding, string words)
    {
        var line = finding.Line > 0 ? $"line {finding.Line.ToString(CultureInfo.InvariantCulture)} of the file" : "in its header";
        return words.Length > 0 ? $"{words}, {line}" : line;
    }

    private static string Many(int count, string one) => Many(count, one, one + "s");

    private static string Many(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count.ToString(CultureInfo.InvariantCulture)} {many}";
}
