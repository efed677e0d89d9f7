using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A jig plate as it is cut, seen with its face A up, and what goes with it. Lengths in mm.</summary>
public sealed record JigPlate
{
    // Metal or board between two holes, or a hole and an edge of the plate.
    private const double LeastWeb = 3;

    private JigPlate(JigDesign design) => Design = design;

    public JigDesign Design { get; }

    /// <summary>The plate with its guide edge and all its holes.</summary>
    public required Region Shape { get; init; }

    /// <summary>The plate without its guide edge and holes.</summary>
    public required Region Outline { get; init; }

    /// <summary>The side of the finish line on which the tool works, run on past the panel's edges; empty of a drill jig.</summary>
    public Region Waste { get; init; } = Region.Empty;

    /// <summary>Where clamps hold.</summary>
    public required ImmutableArray<Point> Clamps { get; init; }

    /// <summary>Bushes, each in a hole of the plate.</summary>
    public ImmutableArray<BushPlace> Bushes { get; init; } = [];

    /// <summary>The guide edges, metal that stays on their left, as far as they lie on the plate.</summary>
    public ImmutableArray<Path> GuideEdges =>
        Waste.IsEmpty ? [] : [.. Opening(Waste, Design.Edge.Offset).Contours.SelectMany(c => c.PartsInside(Outline)).Select(p => p.Reversed()).OrderByDescending(p => p.Length)];

    /// <summary>Whether the plate, turned over, is the other hand's: nothing of it stands out of one face only.</summary>
    public bool Flips => !Design.IsOneSided;

    /// <summary>Works a design out.</summary>
    public static bool TryMake(JigDesign design, ICollection<JigFault> faults, [MaybeNullWhen(false)] out JigPlate plate)
    {
        plate = null;
        var before = faults.Count;
        return (design.IsDrillJig ? TryDrill(design, faults, out plate) : TryGuide(design, faults, out plate)) && faults.Count == before;
    }

    private static bool TryGuide(JigDesign design, ICollection<JigFault> faults, [MaybeNullWhen(false)] out JigPlate plate)
    {
        plate = null;
        var lines = Box.Around(design.Work.FinishLines().Select(l => l.Bounds));
        var bounds = Around(lines.Grown(design.Margin), design.Location);
        if (!WasteSide.TryFind(design.Work, design.Edge, bounds.Width + bounds.Height, faults, out var waste)) return false;

        var outline = Trimmed(bounds, design, waste.Ends);
        foreach (var fault in Following.Faults(waste.Region, design.Edge, lines.Grown(WasteSide.RunOn))) faults.Add(fault);
        var guided = outline.Subtract(Opening(waste.Region, design.Edge.Offset));
        if (guided.Parts().Length != 1)
        {
            faults.Add(new(JigFaultKind.FallsApart, guided.IsEmpty ? lines.Centre : guided.Parts().MinBy(p => p.Area)!.Bounds.Centre));
            return false;
        }
        foreach (var locator in design.Location.Locators)
        {
            if (!guided.Contains(locator.At) || guided.BoundaryDistanceTo(locator.At) < Reach(locator) + LeastWeb)
                faults.Add(new(JigFaultKind.HoleTooNear, locator.At));
        }
        var clamps = ClampPlaces.On(
            OverTheWork(guided, design), design.Work.FinishLines(), design.Edge.ClampsClear, [.. design.Location.Locators.Select(l => l.At)]);
        if (clamps.Length < ClampPlaces.Least) faults.Add(new(JigFaultKind.NoRoomForClamps, bounds.Centre, design.Edge.ClampsClear));
        plate = new(design)
        {
            Shape = guided.Subtract(Holes(design.Location)),
            Outline = outline,
            Waste = waste.Region,
            Clamps = clamps,
        };
        return true;
    }

    private static bool TryDrill(JigDesign design, ICollection<JigFault> faults, [MaybeNullWhen(false)] out JigPlate plate)
    {
        plate = null;
        var bushes = ImmutableArray.CreateBuilder<BushPlace>();
        foreach (var hole in design.Drills.Contours)
        {
            if (!hole.IsCounterClockwise || !hole.TryAsCircle(out var centre, out var radius)) faults.Add(new(JigFaultKind.NotRound, hole.Bounds.Centre));
            else if (!DrillBush.TryFor(2 * radius, out var bush)) faults.Add(new(JigFaultKind.HoleTooLarge, centre, DrillBush.Largest));
            else bushes.Add(new(centre, bush));
        }
        if (bushes.Count < design.Drills.Contours.Length) return false;
        var round = bushes.Select(b => (b.At, Radius: b.Bush.Outside / 2)).Concat(design.Location.Locators.Select(l => (l.At, Radius: Reach(l)))).ToList();
        for (var i = 0; i < round.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (round[i].At.DistanceTo(round[j].At) < round[i].Radius + round[j].Radius + LeastWeb) faults.Add(new(JigFaultKind.HoleTooNear, round[i].At));
            }
        }
        var bounds = Around(design.Drills.Bounds.Grown(design.Margin), design.Location);
        var outline = Trimmed(bounds, design, []);
        var drills = design.Drills.Contours.Select(c => new Path(c.Segments)).ToImmutableArray();
        var clamps = ClampPlaces.On(OverTheWork(outline, design), drills, GuideEdge.Scriber.ClampsClear, [.. round.Select(r => r.At)]);
        if (clamps.Length < ClampPlaces.Least) faults.Add(new(JigFaultKind.NoRoomForClamps, bounds.Centre, GuideEdge.Scriber.ClampsClear));
        plate = new(design)
        {
            Shape = outline.Subtract([Holes(design.Location), Combination.Union(bushes.Select(b => Region.Of(b.Hole)))]),
            Outline = outline,
            Clamps = clamps,
            Bushes = bushes.ToImmutable(),
        };
        return true;
    }

    /// <summary>What of a plate stands open so that the guide's edge lies a distance back from the finish line.</summary>
    public static Region Opening(Region waste, double back) => back > Tolerance.Length ? waste.Offset(back) : waste;

    private static Region Holes(Location location) => Combination.Union(location.Locators.Select(l => Region.Of(l.Hole)));

    private static double Reach(Locator locator) => locator.Diameter / 2 + (locator.Kind == LocatorKind.PinInSlot ? Locator.SlotLength / 2 : 0);

    // Round every pin and stop stays enough of the plate.
    private static Box Around(Box wanted, Location location) =>
        location.Locators.Aggregate(wanted, (box, l) => box.Joined(new Box(l.At, l.At).Grown(Reach(l) + 5 * LeastWeb)));

    // Past an edge on which a finish line ends or a stop stands the plate reaches by the run-on; at every other real edge of the panel it ends,
    // for there may be a bend.
    private static Region Trimmed(Box bounds, JigDesign design, ImmutableArray<(Point At, Vector Outwards)> ends)
    {
        var stops = design.Location.Locators.Where(l => l.Kind == LocatorKind.Stop).ToList();
        var overrun = ends.ToList();
        if (stops.Count > 0) overrun.Add((stops[0].At - stops[0].Outwards * (stops[0].Diameter / 2), stops[0].Outwards));
        var plain = RealEdges(design.Work).Where(e => overrun.All(o => Math.Abs((o.At - e.At).Dot(e.Outwards)) > 1e-3 || o.Outwards.Dot(e.Outwards) < 0.99));
        return overrun.Select(e => Beyond(e, WasteSide.RunOn, bounds)).Concat(plain.Select(e => Beyond(e, 0, bounds)))
            .Aggregate(Region.Of(Geometry.Outline.Rectangle(bounds)), (left, past) => left.Subtract(past));
    }

    // The panel is shown no further than it has to be, so it goes on under the plate wherever no real edge ends it.
    private static Region OverTheWork(Region plate, JigDesign design) => design.Work.Kind == PieceKind.Blank
        ? plate.Intersect(design.Work.Shape)
        : RealEdges(design.Work).Aggregate(plate, (left, edge) => left.Subtract(Beyond(edge, 0, plate.Bounds)));

    private static IEnumerable<(Point At, Vector Outwards)> RealEdges(Piece work)
    {
        const double step = 0.01;
        foreach (var segment in work.Edges.SelectMany(e => e.Segments).Where(s => s.IsLine))
        {
            var (middle, left) = (segment.At(0.5), segment.StartDirection.Left);
            if (work.Before.Contains(middle + left * step) != work.Before.Contains(middle - left * step))
                yield return (middle, work.Before.Contains(middle + left * step) ? -left : left);
        }
    }

    // All that lies more than a distance past an edge of the panel.
    private static Region Beyond((Point At, Vector Outwards) end, double past, Box bounds)
    {
        var reach = bounds.Width + bounds.Height + end.At.DistanceTo(bounds.Centre);
        var (from, along) = (end.At + end.Outwards * past, end.Outwards.Left);
        return Region.Of(Geometry.Outline.Polygon(
            from - along * reach, from + along * reach, from + along * reach + end.Outwards * reach, from - along * reach + end.Outwards * reach));
    }
}

/// <summary>A drill bush in a plate.</summary>
public sealed record BushPlace(Point At, DrillBush Bush)
{
    /// <summary>The hole in the plate into which it is pressed.</summary>
    public Contour Hole => Outline.Circle(At, Bush.Outside / 2);
}
