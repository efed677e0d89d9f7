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
    /// <param name="unstated">The unit where the file states none.</param>
    /// <param name="fit">How far, in mm, arcs may stray from a curve that is none.</param>
    /// <param name="contents">What was read.</param>
    /// <param name="fault">Why nothing could be, on false.</param>
    public static bool TryRead(ReadOnlySpan<byte> file, DxfUnit unstated, double fit, [MaybeNullWhen(false)] out DxfContents contents, out DxfFault fault)
    {
        contents = null;
        if (!DxfSections.TryRead(file, out var sections, out fault)) return false;
        var findings = new List<DxfFinding>();
        if (!sections.IsWhole) findings.Add(new(DxfFindingKind.CutShort, "", 0, Point.Origin, 0, ""));
        var isStated = TryUnit(sections, findings, out var stated);
        var unit = isStated ? stated : unstated;
        var drawing = new DxfWalk(sections, new(fit), findings);
        drawing.Draw(sections.Entities, Frame3.Scaled(unit.Millimetres, unit.Millimetres, unit.Millimetres));
        foreach (var layer in drawing.Strokes.Select(s => s.Layer).Distinct().Where(l => IsHidden(sections, l)))
        {
            var first = drawing.Strokes.First(s => s.Layer == layer);
            findings.Add(new(DxfFindingKind.HiddenLayer, layer, first.Line, first.Start, 0, ""));
        }
        contents = new(
            sections.Variables.TryGetValue("$ACADVER", out var release) ? release.Value : "", unit, isStated, [.. drawing.Strokes], [.. findings]);
        return true;
    }

    private static bool TryUnit(DxfSections sections, List<DxfFinding> findings, out DxfUnit unit)
    {
        unit = DxfUnit.Millimetre;
        var found = sections.Variables.TryGetValue("$INSUNITS", out var number);
        var known = DxfUnit.All.FirstOrDefault(u => found
            ? u.Number.ToString(CultureInfo.InvariantCulture) == number.Value
            : sections.Comments.Contains(DxfR12.UnitComment + u.Name));
        if (known is null)
        {
            findings.Add(new(DxfFindingKind.NoUnit, "", found ? number.Line : 0, Point.Origin, 0, found ? number.Value : ""));
            return false;
        }
        unit = known;
        // The header's other word on it: 0 for inches and their kin, 1 for metric.
        var isImperial = known.Name is "in" or "ft" or "yd" or "thou" or "µin";
        if (sections.Variables.TryGetValue("$MEASUREMENT", out var system) && system.Value == (isImperial ? "1" : "0"))
            findings.Add(new(DxfFindingKind.UnitContradicted, "", system.Line, Point.Origin, 0, known.Name));
        return true;
    }

    // A layer that is off has a negative colour, one that is frozen the first bit of its flags.
    private static bool IsHidden(DxfSections sections, string layer) =>
        sections.Layers.TryGetValue(layer, out var entry) && (entry.Whole(62, 7) < 0 || (entry.Whole(70, 0) & 1) != 0);
}
