using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The pieces of a jig: the plate with what is lettered on its face A, paper for its face B, and the gauge.</summary>
public static class JigPieces
{
    /// <summary>How much wear of the guide edge the gauge shows, in mm.</summary>
    public const double Wear = 0.2;

    private const double GaugeThickness = 3;
    private const double GaugeBand = 40;
    private static readonly Material GaugeSteel = Material.Unstated with { Name = "gauge-steel", Title = "steel sheet", Family = MetalFamily.Steel, Density = 7850 };

    /// <summary>The pieces, the plate first; a second plate for the other hand where one does not flip.</summary>
    public static ImmutableArray<Piece> Of(JigPlate plate, JigLettering lettering)
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        var (design, other) = (plate.Design, Other(lettering.Hand));
        var face = PlateOf(plate, design.Name, design.Title, JigWords.UpperFace(plate, lettering, lettering.Hand, "A")) with { Parts = JigParts.Of(plate) };
        pieces.Add(face);
        pieces.Add(plate.Flips && other != Hand.Either
            ? Underside(face, JigWords.UpperFace(plate, lettering, other, "B"), isUp: true) with { ForHand = JigWords.ForHand(lettering, other) }
            : Underside(face, JigWords.LowerFace(plate, lettering, lettering.Hand), isUp: false));
        if (!plate.Flips && other != Hand.Either)
        {
            var second = face.Mirrored() with
            {
                Name = design.Name + "-other-hand",
                Title = $"{design.Title}, the other hand's",
                Lettering = JigWords.UpperFace(plate, lettering, other, "A"),
                ForHand = JigWords.ForHand(lettering, other),
                Parts = [],
            };
            pieces.Add(second);
            pieces.Add(Underside(second, JigWords.LowerFace(plate, lettering, other), isUp: false));
        }
        if (!design.IsDrillJig) pieces.Add(GaugeOf(plate, lettering));
        return pieces.ToImmutable();
    }

    private static Piece PlateOf(JigPlate plate, string name, string title, ImmutableArray<string> lettering)
    {
        var (design, location) = (plate.Design, plate.Design.Location);
        return new Piece
        {
            Name = name,
            Title = title,
            Kind = PieceKind.Blank,
            Shape = plate.Shape,
            Thickness = design.Stock.Thickness,
            Material = design.Stock.Material,
            FaceUp = $"face A of the plate, which lies on this face of the panel: {design.Work.FaceUp}",
            Arrows = design.Work.Arrows,
            Edges = [.. design.Work.Edges.SelectMany(e => e.PartsInside(plate.Outline))],
            Datums = [.. location.Locators.Where(l => l.Kind != LocatorKind.Stop).Select(l => new Datum(l.Label, l.At, l.Diameter))],
            GuideLines =
            [
                .. design.Edge.Offset > Tolerance.Length && !design.IsDrillJig
                    ? [new GuideLine("finish line of the panel", design.Work.Kind == PieceKind.CutAway ? design.Work.Waste() : plate.Waste.Intersect(plate.Outline))]
                    : ImmutableArray<GuideLine>.Empty,
                new GuideLine("clamp", Combination.Union(plate.Clamps.Select(c => Region.Of(Outline.Circle(c, ClampPlaces.Foot / 2))))),
            ],
            Labels = [.. location.Locators.Where(l => l.Kind == LocatorKind.Stop).Select(l => new Label($"stop {l.Label}", l.At))],
            Checks = Checks(plate),
            Notes = JigWords.Notes(plate),
            Lettering = lettering,
            MarkedArrows = Arrows(plate),
            FinishName = "plate edge",
            EdgeNames = [.. plate.GuideEdges.Take(1).Select(edge => new EdgeName("guide edge", edge))],
            Cutting = CuttingWishes.None with { DrillUpTo = location.Locators.Select(l => l.Diameter).Concat(plate.Bushes.Select(b => b.Bush.Outside)).Max() },
        };
    }

    // Lettered to be read with that face up: the words are not mirrored, everything else is.
    private static Piece Underside(Piece plate, ImmutableArray<string> lettering, bool isUp)
    {
        var mirrored = plate.Mirrored();
        return mirrored with
        {
            Name = plate.Name + "-face-b",
            Title = $"{plate.Title}: face B, to stick on the plate turned over",
            Kind = PieceKind.Paper,
            FaceUp = isUp ? "face B of the plate, when it is turned over for the other hand" : "face B of the plate, which never is up",
            Checks = [],
            Notes = ["Stick it on face B, its outline on the plate's. Where the sheets say mirror image, nobody has measured that hand."],
            Lettering = lettering,
            MarkedArrows = isUp ? mirrored.MarkedArrows : [],
            Parts = [],
        };
    }

    private static Piece GaugeOf(JigPlate plate, JigLettering lettering)
    {
        var (design, stops) = (plate.Design, plate.Design.Location.Locators.Where(l => l.Kind == LocatorKind.Stop).ToList());
        var back = JigPlate.Opening(plate.Waste, design.Edge.Offset + Wear);
        // Located by the plate's own round holes: where there are two of them, the second is a slot in the gauge.
        var holes = stops.Count == 2
            ? [stops[0].Hole, (stops[1] with { Kind = LocatorKind.PinInSlot }).Hole]
            : design.Location.Locators.Select(l => Outline.Circle(l.At, l.Diameter / 2)).ToList();
        var bounds = Box.Around([
            plate.Waste.Intersect(plate.Outline).Bounds.Grown(design.Edge.Offset + GaugeBand), .. holes.Select(h => h.Bounds.Grown(Wear + GaugeBand / 4))]);
        var shape = plate.Outline.Intersect(Region.Of(Outline.Rectangle(bounds))).Subtract([back, .. holes.Select(Region.Of)]);
        return new Piece
        {
            Name = design.Name + "-gauge",
            Title = $"Check gauge for: {design.Title}",
            Kind = PieceKind.Blank,
            Shape = shape,
            Thickness = GaugeThickness,
            Material = GaugeSteel,
            FaceUp = "the face that is up when it lies on the plate's face A",
            Arrows = design.Work.Arrows,
            Notes = [JigWords.GaugeNote(Wear)],
            Lettering =
            [
                $"CHECK GAUGE for {design.Name}",
                lettering.Revision,
                $"shows wear of {JigWords.Mm(Wear)}",
            ],
        };
    }

    private static ImmutableArray<DistanceCheck> Checks(JigPlate plate)
    {
        var locators = plate.Design.Location.Locators;
        var checks = ImmutableArray.CreateBuilder<DistanceCheck>();
        for (var i = 1; i < locators.Length; i++)
            checks.Add(new($"{Named(locators[0])} to {Named(locators[i])}", locators[0].At, locators[i].At, CheckDirection.Straight));
        if (!plate.Waste.IsEmpty)
        {
            var opening = JigPlate.Opening(plate.Waste, plate.Design.Edge.Offset);
            foreach (var locator in locators.Where(l => l.Kind != LocatorKind.Stop))
                checks.Add(new($"{Named(locator)} to the guide edge, nearest", locator.At, opening.NearestBoundaryPoint(locator.At), CheckDirection.Straight));
        }
        return checks.ToImmutable();
    }

    private static string Named(Locator locator) => locator.Kind == LocatorKind.Stop ? $"stop {locator.Label}" : $"pin {locator.Label}";

    // On the plate, beside the longest guide edge: the way of the feed along it, and square to it the side that falls away.
    private static ImmutableArray<MarkedArrow> Arrows(JigPlate plate)
    {
        const double length = 34;
        const double aside = 14;
        if (plate.GuideEdges is not [var edge, ..]) return [];
        var arrows = ImmutableArray.CreateBuilder<MarkedArrow>();
        foreach (var share in (double[])[0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8])
        {
            var (at, way) = (edge.PointAlong(edge.Length * share), edge.DirectionAlong(edge.Length * share));
            if (arrows.Count == 0 && plate.Design.Edge.Kind != GuideKind.Scriber)
            {
                var forward = plate.Design.Edge.Kind == GuideKind.Bush ? way : -way;
                var middle = at + way.Left * aside;
                if (TryAdd(new("FEED", Path.Line(middle - forward * (length / 2), middle + forward * (length / 2)), IsFeed: true))) continue;
            }
            if (arrows.All(a => a.IsFeed) && TryAdd(new("WASTE", Path.Line(at + way.Left * (aside + 12), at + way.Left * 5), IsFeed: false))) continue;
            if (arrows.Any(a => !a.IsFeed) && (arrows.Count == 2 || plate.Design.Edge.Kind == GuideKind.Scriber)) break;
        }
        return arrows.ToImmutable();

        bool TryAdd(MarkedArrow arrow)
        {
            var free = arrow.Along.PointsEvery(2).All(p => plate.Shape.Contains(p) && plate.Shape.BoundaryDistanceTo(p) >= 4)
                && arrows.All(a => a.Along.Segments[0].DistanceTo(arrow.Along.Segments[0]) > 8);
            if (free) arrows.Add(arrow);
            return free;
        }
    }

    private static Hand Other(Hand hand) => hand switch { Hand.Left => Hand.Right, Hand.Right => Hand.Left, _ => Hand.Either };
}
