using CsCheck;

namespace TemplateForge.Geometry.Tests;

/// <summary>Random paths: on a grid, off it, in chains that are nearly tangent; some of them cross themselves or close.</summary>
internal static class Paths
{
    private static readonly Gen<double> GridBulge = Gen.OneOf(0, 0, 0, 1, -1, Math.Sqrt(2) - 1, 1 - Math.Sqrt(2));

    /// <summary>Corners on a grid of 5 mm, straight sides and quarter and half circles; often back along itself, or closed.</summary>
    public static Gen<Path> OnGrid { get; } =
        from corners in Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6]).Array[2, 9]
        from bulges in GridBulge.Array[9]
        from closes in Gen.Int[0, 4]
        let points = corners.Select(c => new Point(c.Item1 * Testing.Shapes.Grid, c.Item2 * Testing.Shapes.Grid)).ToList()
        let path = Through(closes == 0 ? [.. points, points[0]] : points, bulges)
        where path is not null
        select path;

    public static Gen<Path> OffGrid { get; } =
        from corners in Gen.Select(Gen.Int[0, 40_000], Gen.Int[0, 40_000]).Array[2, 9]
        from bulges in Gen.OneOf(Gen.Const(0.0), Gen.Double[-1, 1]).Array[9]
        let path = Through([.. corners.Select(c => new Point(c.Item1 / 1000.0, c.Item2 / 1000.0))], bulges)
        where path is not null
        select path;

    /// <summary>Each segment begins as the one before it ends, but for a turn from a hair above nothing to a hundredth.</summary>
    public static Gen<Path> NearlyTangent { get; } =
        from steps in Gen.Select(Gen.Double[0.5, 25], Gen.Double[-0.6, 0.6], Gen.Double[-12, -2], Gen.Bool).Array[2, 10]
        select Chain(steps);

    public static Gen<Path> Any { get; } = Gen.OneOf(OnGrid, OnGrid, OffGrid, NearlyTangent);

    public static Path Through(params (double X, double Y, double Bulge)[] corners) =>
        Through([.. corners.Select(c => new Point(c.X, c.Y))], [.. corners.Select(c => c.Bulge)])!;

    private static Path? Through(List<Point> points, double[] bulges)
    {
        var segments = new List<Segment>();
        for (var i = 0; i + 1 < points.Count; i++)
        {
            if (points[i] != points[i + 1]) segments.Add(Segment.Arc(points[i], points[i + 1], bulges[i]));
        }
        return segments.Count == 0 ? null : new(segments);
    }

    private static Path Chain((double Chord, double Bulge, double Power, bool Left)[] steps)
    {
        var (at, along, segments) = (Point.Origin, new Vector(1, 0), new List<Segment>());
        foreach (var (chord, bulge, power, left) in steps)
        {
            var turn = Math.Pow(10, power) * (left ? 1 : -1) + 2 * Math.Atan(bulge);
            var end = at + along.Turned(Angle.FromRadians(turn)) * chord;
            segments.Add(Segment.Arc(at, end, bulge));
            (at, along) = (end, segments[^1].EndDirection);
        }
        return new(segments);
    }
}
