using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where the middle of the torch runs, and what is drilled and not cut.</summary>
/// <remarks>
/// <code>
///      part │ ½ kerf │          The path is the boundary of the part grown by half the kerf: round an outline it lies outside, in a
///           │◀──────▶│ path     hole inside, along an open cut in the waste, and round a corner that points outwards it is an arc
///                               about that corner. No disc of half the kerf with its centre there reaches into the part.
/// </code>
/// </remarks>
internal sealed record TorchPaths
{
    /// <summary>Metal that stays in a corner is worth a word when it stands in by more than this, in mm.</summary>
    public const double WorthAWord = 0.01;

    /// <summary>A corner that turns by less than this needs no stop hole.</summary>
    private const double LeastCorner = 10 * Math.PI / 180;

    /// <summary>The part as it is cut: with stop holes' corners rounded, and without the holes that are drilled.</summary>
    public required Region Part { get; init; }

    /// <summary>Closed paths; what stays lies on their left.</summary>
    public required ImmutableArray<Contour> Closed { get; init; }

    /// <summary>Paths that run on over a panel's edge and off again; what stays lies on their left.</summary>
    public required ImmutableArray<Path> Open { get; init; }

    public required ImmutableArray<DrillMark> Drilled { get; init; }
    public required ImmutableArray<CutTrouble> Troubles { get; init; }

    /// <param name="piece">What is cut.</param>
    /// <param name="kerf">In mm; 0 where the controller allows for it.</param>
    /// <param name="leastHole">Round holes of a smaller diameter are drilled.</param>
    /// <param name="runOut">How far an open cut runs on and off, in mm.</param>
    public static TorchPaths Of(Piece piece, double kerf, double leastHole, double runOut)
    {
        var troubles = ImmutableArray.CreateBuilder<CutTrouble>();
        var drilled = ImmutableArray.CreateBuilder<DrillMark>();
        var part = WithStopHoles(piece.Shape, piece.Cutting.StopHole, drilled, troubles);
        part = WithoutDrilledHoles(part, piece.Cutting.DrillUpTo, leastHole, drilled);
        var grown = kerf > 0 ? part.Offset(kerf / 2) : part;
        var (closed, open) = Split(grown, part, piece, kerf, runOut);
        var holes = HolesIn(part).ToLookup(h => kerf > 0 && h.Offset(-kerf / 2).IsEmpty);
        foreach (var hole in holes[false].Where(h => leastHole > kerf && h.Offset(-leastHole / 2).IsEmpty))
            troubles.Add(new(CutTroubleKind.NarrowerThanTheProcessLikes, hole.Bounds.Centre, leastHole));
        foreach (var hole in holes[true]) troubles.Add(new(CutTroubleKind.HoleTooNarrow, hole.Bounds.Centre, kerf));
        if (kerf > 0) AddNotReached(part, grown, piece, kerf / 2, [.. holes[true]], troubles);
        return new() { Part = part, Closed = closed, Open = open, Drilled = drilled.ToImmutable(), Troubles = troubles.ToImmutable() };
    }

    // A hole's own region, its islands taken out.
    private static IEnumerable<Region> HolesIn(Region part) =>
        part.Contours.Where(c => !c.IsCounterClockwise).Select(c => Region.Of(c).Subtract(part));

    // A finish line may run out along the panel's edge, as a rounded mouth does. Its path then leaves the panel long before it, so what
    // counts is the panel and the strip beside the line, square at its ends: whichever reaches further.
    private static (ImmutableArray<Contour> Closed, ImmutableArray<Path> Open) Split(Region grown, Region part, Piece piece, double kerf, double runOut)
    {
        if (piece.Kind != PieceKind.CutAway) return (grown.Contours, []);
        var strips = kerf > 0
            ? part.Contours.SelectMany(c => c.PartsInside(piece.Before)).Where(l => !l.IsClosed()).Select(l => l.Slot(kerf + WorthAWord, PathEnds.Flat))
            : [];
        var reach = Combination.Union([piece.Before, .. strips]);
        var runs = grown.Contours.SelectMany(c => c.PartsInside(reach)).ToList();
        return (
            [.. runs.Where(r => r.IsClosed()).Select(r => new Contour(r.Segments))],
            [.. runs.Where(r => !r.IsClosed()).Select(r => CutLines.WithRunOuts(r, runOut))]);
    }

    // The hole touches both sides of its corner from the waste side, so that the cut runs into it and out of it without a corner.
    private static Region WithStopHoles(
        Region shape, double diameter, ImmutableArray<DrillMark>.Builder drilled, ImmutableArray<CutTrouble>.Builder troubles)
    {
        if (diameter <= 0) return shape;
        var corners = shape.Contours.SelectMany(InsideCorners).ToHashSet();
        if (corners.Count == 0) return shape;
        var rounded = shape.RoundedCorners(diameter / 2, corners.Contains);
        var unfit = rounded.Unfit.Select(u => u.At).ToHashSet();
        foreach (var corner in unfit) troubles.Add(new(CutTroubleKind.NoRoomForStopHole, corner, diameter));
        var fillets = rounded.Region.Contours.SelectMany(c => c.Segments)
            .Where(s => s.Bulge < 0 && Math.Abs(s.Radius - diameter / 2) < 1e-6).ToList();
        foreach (var corner in corners.Except(unfit))
        {
            if (fillets.Count > 0)
                drilled.Add(new(fillets.MinBy(f => f.DistanceTo(corner)).Centre, diameter, DrillReason.StopHole));
        }
        return rounded.Region;
    }

    private static IEnumerable<Point> InsideCorners(Contour contour)
    {
        var before = contour.Segments[^1];
        foreach (var after in contour.Segments)
        {
            var (arriving, leaving) = (before.EndDirection, after.StartDirection);
            if (Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving)) < -LeastCorner) yield return after.Start;
            before = after;
        }
    }

    private static Region WithoutDrilledHoles(Region part, double drillUpTo, double leastHole, ImmutableArray<DrillMark>.Builder drilled)
    {
        var filled = new List<Region>();
        foreach (var contour in part.Contours.Where(c => !c.IsCounterClockwise))
        {
            if (!contour.TryAsCircle(out var centre, out var radius)) continue;
            var (wanted, tooSmall) = (2 * radius <= drillUpTo + Tolerance.Length, 2 * radius < leastHole - Tolerance.Length);
            if (!wanted && !tooSmall) continue;
            var disc = Region.Of(contour);
            // What lies in it is cut out round it.
            if (!disc.Intersect(part).IsEmpty) continue;
            drilled.Add(new(centre, 2 * radius, wanted ? DrillReason.Wanted : DrillReason.TooSmall));
            filled.Add(disc);
        }
        return filled.Count == 0 ? part : Combination.Union([part, .. filled]);
    }

    // What a disc of half the kerf leaves standing although it should not stand, each place with how far it stands in.
    private static void AddNotReached(
        Region part, Region grown, Piece piece, double radius, List<Region> narrow, ImmutableArray<CutTrouble>.Builder troubles)
    {
        var stays = part.CutOutBy(radius).LeftOver;
        if (stays.IsEmpty) return;
        var places = part.Contours.SelectMany(c => c.Segments).SelectMany(s => new[] { s.Start, s.At(0.5) }).ToList();
        foreach (var left in stays.Parts())
        {
            var bounds = left.Bounds.Grown(1e-3);
            var (depth, at) = places.Where(p => bounds.Contains(p) && left.BoundaryDistanceTo(p) < 1e-3)
                .Select(p => (Depth: grown.BoundaryDistanceTo(p) - radius, At: p)).DefaultIfEmpty((Depth: 0.0, At: left.Bounds.Centre)).MaxBy(p => p.Depth);
            if (depth <= WorthAWord || narrow.Exists(h => h.DistanceTo(at) <= 1e-3)) continue;
            // The shown stretch of a panel ends where there is no edge.
            if (piece.Kind == PieceKind.CutAway && !piece.Before.Contains(at)) continue;
            troubles.Add(new(CutTroubleKind.NotReached, at, depth));
        }
    }
}
