using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Reads anyone's DXF, R12 to R2018 in text form: lines, arcs, circles, polylines, ellipses, splines, and blocks in blocks.</summary>
/// <remarks>
/// What is no line to cut (lettering, hatching, dimensions, solids, images) is left out and told. Arcs stay arcs; ellipses, splines and
/// what a block squeezes become arcs within the distance asked for. Everything is seen from above, its height left out.
/// </remarks>
public static class DxfReader
{
    /// <summary>How near arcs are to a curve that is none where areas are to be measured on them, in mm.</summary>
    public const double Exact = 1e-5;

    /// <summary>Reads the strokes of a file's model space.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="asked">The unit, where the file states none or whatever it states.</param>
    /// <param name="fit">How far, in mm, arcs may stray from a curve that is none.</param>
    /// <param name="contents">What was read.</param>
    /// <param name="fault">Why nothing could be, on false.</param>
    public static bool TryRead(ReadOnlySpan<byte> file, AskedUnit asked, double fit, [MaybeNullWhen(false)] out DxfContents contents, out DxfFault fault)
    {
        contents = null;
        if (!DxfSections.TryRead(file, out var sections, out fault)) return false;
        var findings = new List<DxfFinding>();
        if (!sections.IsWhole) findings.Add(new(DxfFindingKind.CutShort, "", 0, Point.Origin, 0, ""));
        var stated = StatedUnit(sections, findings);
        var isOverruled = asked.Overrules && stated is not null && stated != asked.Unit;
        if (isOverruled) findings.Add(new(DxfFindingKind.UnitOverruled, "", LineOfUnit(sections), Point.Origin, 0, stated!.Name));
        else if (stated is not null && stated != DxfUnit.Millimetre && stated != DxfUnit.Inch)
            findings.Add(new(DxfFindingKind.UnusualUnit, "", LineOfUnit(sections), Point.Origin, 0, stated.Name));
        var unit = stated is null || isOverruled ? asked.Unit : stated;
        var drawing = new DxfWalk(sections, new(fit), findings);
        drawing.Draw(sections.Entities, Frame3.Scaled(unit.Millimetres, unit.Millimetres, unit.Millimetres));
        foreach (var layer in drawing.Strokes.Where(s => s.IsHidden).GroupBy(s => s.Layer, StringComparer.OrdinalIgnoreCase))
        {
            var first = layer.First();
            findings.Add(new(DxfFindingKind.HiddenLayer, layer.Key, first.Line, first.Start, 0, layer.Count().ToString(CultureInfo.InvariantCulture)));
        }
        contents = new(
            sections.Variables.TryGetValue("$ACADVER", out var release) ? release.Value : "", unit, stated?.Name ?? "", [.. drawing.Strokes], [.. findings]);
        return true;
    }

    private static int LineOfUnit(DxfSections sections) => sections.Variables.TryGetValue("$INSUNITS", out var number) ? number.Line : 0;

    private static DxfUnit? StatedUnit(DxfSections sections, List<DxfFinding> findings)
    {
        var found = sections.Variables.TryGetValue("$INSUNITS", out var number);
        var known = DxfUnit.All.FirstOrDefault(u => found
            ? u.Number.ToString(CultureInfo.InvariantCulture) == number.Value
            : sections.Comments.Contains(DxfR12.UnitComment + u.Name));
        if (known is null)
        {
            findings.Add(new(DxfFindingKind.NoUnit, "", found ? number.Line : 0, Point.Origin, 0, found ? number.Value : ""));
            return null;
        }
        // The header's other word on it: 0 for inches and their kin, 1 for metric.
        if (sections.Variables.TryGetValue("$MEASUREMENT", out var system) && system.Value == (known.IsImperial ? "1" : "0"))
            findings.Add(new(DxfFindingKind.UnitContradicted, "", system.Line, Point.Origin, 0, known.Name));
        return known;
    }
}
