using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>What a jig wants beside its plate, with sizes and fits by ISO 286.</summary>
public static class JigParts
{
    /// <summary>Of a pin that is put through and taken out again.</summary>
    public const string SlipFit = "H7/g6";

    /// <summary>Of a dowel that stays.</summary>
    public const string PressedFit = "H7/m6";

    /// <summary>Of a drill bush in its plate.</summary>
    public const string BushFit = "H7/n6";

    public static ImmutableArray<JigPart> Of(JigPlate plate)
    {
        var design = plate.Design;
        var fit = design.IsOneSided && !design.IsDrillJig ? PressedFit : SlipFit;
        return
        [
            new(1, $"plate: {design.Stock.Title}", FormattableString.Invariant($"{plate.Outline.Bounds.Width:0.0} × {plate.Outline.Bounds.Height:0.0} × {design.Stock.Thickness:0.#} mm")),
            .. design.Location.Locators.GroupBy(l => (l.Kind, l.Diameter, l.Nose)).Select(g => PinOf(g.First(), g.Count(), fit, design.Stock.Thickness)),
            .. plate.Bushes.GroupBy(b => b.Bush).OrderBy(g => g.Key.Bore).SelectMany(g => BushesOf(g.Key, g.Count(), design)),
            new(plate.Clamps.Length, "clamp", $"foot no wider than {Size(ClampPlaces.Foot)} mm, at the places drawn"),
            BackingOf(plate),
            .. design.IsDrillJig ? ImmutableArray<JigPart>.Empty : [new(1, "check gauge", $"shows {JigWords.Mm(JigPieces.Wear)} of wear; a piece of its own")],
        ];
    }

    private static JigPart PinOf(Locator locator, int count, string fit, double plate)
    {
        var hole = locator.Kind == LocatorKind.PinInSlot ? "slot" : "hole";
        var size = $"shank {Limits(locator.Diameter, fit, ofShaft: true)} in the plate's {hole} {Limits(locator.Diameter, fit, ofShaft: false)}";
        return locator.Kind == LocatorKind.Stop
            ? new(count, "stop, hardened dowel", $"{size}; {Size(plate + 10)} mm long at least, its flank against the panel edge")
            : new(count, $"pin {locator.Label}, hardened dowel", $"{size}; nose {Limits(locator.Nose, SlipFit, ofShaft: true)} for the panel's hole");
    }

    private static IEnumerable<JigPart> BushesOf(DrillBush bush, int count, JigDesign design)
    {
        yield return new(
            count,
            design.IsOneSided ? "drill bush with a head" : "drill bush without a head",
            $"bore {Size(bush.Bore)} F7{Range(bush.Bore, "F7")}, outside {Limits(bush.Outside, BushFit, ofShaft: true)} pressed into {Limits(bush.Outside, BushFit, ofShaft: false)}"
            + (design.IsOneSided ? "" : $", no longer than {Size(design.Stock.Thickness)} mm"));
        yield return new(1, "wear pin, hardened", $"one end {Size(bush.Bore)} h6, which must go in; the other {Size(bush.Bore + JigPieces.Wear)}: a bush that takes it is worn out");
    }

    // A board behind the cut keeps the sheet from fluttering and the edge from burr; under a torch there is nothing that burns.
    private static JigPart BackingOf(JigPlate plate)
    {
        var (design, rim) = (plate.Design, 40);
        var cut = design.IsDrillJig ? design.Drills.Bounds : Geometry.Box.Around(design.Work.FinishLines().Select(l => l.Bounds));
        var size = $"{Size(Math.Ceiling(cut.Width + 2 * rim))} × {Size(Math.Ceiling(cut.Height + 2 * rim))} mm, clamped behind the cut";
        return design.Edge.Kind == GuideKind.Shroud && !design.IsDrillJig
            ? new(1, "backing bars, steel, 5 mm: never wood", $"either side of the cut, clear of the kerf by 10 mm, within {size}")
            : new(1, "backing board, MDF 12 mm", size);
    }

    /// <summary>A size with its class and the limits of it, as 8 g6 (7.986 to 7.995).</summary>
    private static string Limits(double size, string fit, bool ofShaft)
    {
        var name = fit.Split('/')[ofShaft ? 1 : 0];
        return $"{Size(size)} {name}{Range(size, name)}";
    }

    private static string Range(double size, string name) =>
        ToleranceClass.TryLimits(name, size, out var limits)
            ? FormattableString.Invariant($" ({size + limits.Lower:0.000} to {size + limits.Upper:0.000})")
            : "";

    private static string Size(double length) => FormattableString.Invariant($"{length:0.###}");
}
