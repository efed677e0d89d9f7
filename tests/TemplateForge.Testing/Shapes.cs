using CsCheck;
using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Random shapes. Those on a grid are the hard ones: there edges and arcs coincide, as they do in a shop's drawings.</summary>
public static class Shapes
{
    /// <summary>All grid shapes have their corners, radii and centres at whole multiples of this, in mm.</summary>
    public const double Grid = 5;

    private static readonly Gen<double> Steps = Gen.Int[1, 6].Select(n => n * Grid);

    /// <summary>The corners of bars, L, T, U, Z, crosses and stairs, counter-clockwise.</summary>
    private static readonly Gen<Point[]> GridCorners = Gen.OneOf(
        Gen.Select(Steps, Steps, (w, h) => Corners((0, 0), (w, 0), (w, h), (0, h))),
        Gen.Select(Steps, Steps, Steps, Steps, (a, b, c, d) =>
            Corners((0, 0), (a + b, 0), (a + b, c), (a, c), (a, c + d), (0, c + d))),
        Gen.Select(Steps, Steps, Steps, Steps, Steps, (a, b, c, d, e) =>
            Corners((a, 0), (a + b, 0), (a + b, d), (a + b + c, d), (a + b + c, d + e), (0, d + e), (0, d), (a, d))),
        Gen.Select(Steps, Steps, Steps, Steps, Steps, (a, b, c, d, e) =>
            Corners((0, 0), (a + b + c, 0), (a + b + c, d + e), (a + b, d + e), (a + b, d), (a, d), (a, d + e), (0, d + e))),
        Gen.Select(Steps, Steps, Steps, Steps, Steps, (a, b, c, d, e) =>
            Corners((0, 0), (a + b, 0), (a + b, d), (a + b + c, d), (a + b + c, d + e), (a, d + e), (a, d), (0, d))),
        Gen.Select(Steps, Steps, Steps, Steps, (a, b, c, d) =>
            Corners((a, 0), (a + b, 0), (a + b, c), (a + b + a, c), (a + b + a, c + d), (a + b, c + d), (a + b, c + d + c),
                (a, c + d + c), (a, c + d), (0, c + d), (0, c), (a, c))),
        Gen.Select(Steps, Steps, Steps, Steps, (a, b, c, d) =>
            Corners((0, 0), (a + b + c, 0), (a + b + c, d), (a + b, d), (a + b, 2 * d), (a, 2 * d), (a, 3 * d), (0, 3 * d))),
        Gen.Select(Steps, Steps, Steps, (a, b, c) =>
            Corners((a, 0), (a + b, 0), (a + b + a, a), (a + b + a, a + c), (a + b, a + c + a), (a, a + c + a), (0, a + c), (0, a))));

    /// <summary>An outline on the grid: some corners rounded by whole grid steps, some sides bulged to half circles.</summary>
    public static Gen<Contour> GridContour { get; } =
        from corners in GridCorners
        from radii in Gen.OneOf(0, 0, Grid, Grid, 2 * Grid, 3 * Grid).Array[corners.Length]
        from bulges in Gen.OneOf(0, 0, 0, 0, 0, 1.0, -1).Array[corners.Length]
        from turn in Gen.Int[0, 3]
        from mirrored in Gen.Bool
        from x in Gen.Int[-6, 6]
        from y in Gen.Int[-6, 6]
        select Rounded(corners, radii, bulges)
            .Placed(mirrored ? Placement.Mirrored(Point.Origin, Angle.Zero) : Placement.Unmoved)
            .Placed(Placement.Turned(Angle.QuarterTurn * turn, Point.Origin))
            .Placed(Placement.Moved(new(x * Grid, y * Grid)));

    /// <summary>A plate on the grid: an outline with up to three holes, round or outlines themselves, that may cross its edge.</summary>
    public static Gen<Region> GridRegion { get; } =
        from outline in GridContour
        from holes in Gen.OneOf(GridContour, GridCircle).Array[0, 3]
        select holes.Aggregate(Region.Of(outline), (plate, hole) => plate.Subtract(Region.Of(hole)));

    /// <summary>An offset by whole or half grid steps, outwards or inwards.</summary>
    public static Gen<double> GridOffset { get; } =
        Gen.Select(Gen.Int[1, 6], Gen.Bool, (steps, outwards) => steps * Grid / 2 * (outwards ? 1 : -1));

    /// <summary>A plate on the grid, and the same with every corner moved and every arc bent by up to an amount about the tolerance.</summary>
    public static Gen<(Region Exact, Region Shaken, double Amount)> ShakenGridRegion { get; } =
        from exact in GridRegion
        from power in Gen.Double[-9.5, -5.5]
        from shares in Gen.Double[-1, 1].Array[97]
        select (exact, Shaken(exact, Math.Pow(10, power), shares), Math.Pow(10, power));

    /// <summary>A star with straight and arched sides, some of its spikes as thin as needles, off every grid.</summary>
    public static Gen<Contour> Star { get; } =
        from spikes in Gen.Int[3, 9]
        from radii in Gen.Double[8, 40].Array[2 * spikes]
        from shares in Gen.OneOf(Gen.Double[0.2, 0.8], Gen.Double[0.0005, 0.02]).Array[2 * spikes]
        from bulges in Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.6, 0.6]).Array[2 * spikes]
        select ThroughPoints(
            [.. radii.Select((r, i) => Point.Origin + Vector.Polar(r, Angle.FullTurn * ((i + shares[i]) / radii.Length)))],
            bulges);

    private static Gen<Contour> GridCircle =>
        Gen.Select(Gen.Int[0, 12], Gen.Int[0, 12], Gen.Int[1, 3], (x, y, r) =>
            ThroughPoints([new((x - r) * Grid, y * Grid), new((x + r) * Grid, y * Grid)], [1, 1]));

    /// <summary>A contour through points, each with the bulge of the side that begins there.</summary>
    public static Contour ThroughPoints(IReadOnlyList<Point> points, IReadOnlyList<double> bulges) =>
        new(points.Select((p, i) => Segment.Arc(p, points[(i + 1) % points.Count], bulges[i])));

    private static Region Shaken(Region region, double amount, double[] shares)
    {
        var next = 0;
        return Region.FromContours(region.Contours.Select(c => ThroughPoints(
            [.. c.Segments.Select(s => s.Start + new Vector(Share(), Share()) * (amount / 2))],
            [.. c.Segments.Select(s => Math.Clamp(s.Bulge * (1 + Share() * amount / 10), -1, 1))])));

        double Share() => shares[next++ % shares.Length];
    }

    private static Point[] Corners(params (double X, double Y)[] corners) => [.. corners.Select(c => new Point(c.X, c.Y))];

    /// <summary>Rounds corners as far as their sides leave room, and bulges sides that have no rounded end.</summary>
    private static Contour Rounded(Point[] corners, double[] wanted, double[] bulges)
    {
        var count = corners.Length;
        var setbacks = new double[count];
        for (var i = 0; i < count; i++)
        {
            var (before, after) = ((i + count - 1) % count, (i + 1) % count);
            var room = Math.Min(
                corners[i].DistanceTo(corners[before]) - setbacks[before],
                corners[i].DistanceTo(corners[after]) - (after < i ? setbacks[after] : 0));
            setbacks[i] = Math.Min(wanted[i], room);
        }
        var (points, sides) = (new List<Point>(), new List<double>());
        for (var i = 0; i < count; i++)
        {
            var (before, after) = ((i + count - 1) % count, (i + 1) % count);
            var (arriving, leaving) = ((corners[i] - corners[before]).Unit, (corners[after] - corners[i]).Unit);
            if (setbacks[i] > 0)
            {
                var turn = Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving));
                Append(corners[i] - arriving * setbacks[i], Math.Tan(turn / 4));
            }
            Append(
                corners[i] + leaving * setbacks[i],
                setbacks[i] > 0 || setbacks[after] > 0 ? 0 : bulges[i]);
        }
        if (points[^1].DistanceTo(points[0]) < Tolerance.Merge)
        {
            points.RemoveAt(points.Count - 1);
            sides.RemoveAt(sides.Count - 1);
        }
        return ThroughPoints(points, sides);

        // A side that rounding has used up has no length: what begins here begins at its end.
        void Append(Point p, double bulge)
        {
            if (points.Count > 0 && points[^1].DistanceTo(p) < Tolerance.Merge)
            {
                sides[^1] = bulge;
            }
            else
            {
                points.Add(p);
                sides.Add(bulge);
            }
        }
    }
}
