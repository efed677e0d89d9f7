namespace TemplateForge.Geometry.Tests.Measuring;

/// <summary>The narrowest web by its definition: rays into the material from all along the boundary, and round every corner.</summary>
/// <remarks>
/// From one ray to the next, the normal where the ray comes out passes from one side of the ray to the other: between the two is a
/// line that is square at both ends. Where it comes out at a corner, the normals on either hand lie on either side.
/// </remarks>
internal static class Webs
{
    private readonly record struct Ray(Point From, Vector Way, double Length, Point To, double Off);

    public static double Least(Region region, double step)
    {
        var all = region.Contours.SelectMany(c => c.Segments).ToArray();
        var least = double.PositiveInfinity;
        foreach (var contour in region.Contours)
        {
            Ray? before = null;
            foreach (var (from, way) in Normals(contour, step))
            {
                if (Cast(all, from, way) is not { } ray)
                {
                    before = null;
                    continue;
                }
                var length = Math.Min(ray.Length, before?.Length ?? double.PositiveInfinity);
                if (length < least && ((before is { } b && Crosses(b, ray)) || Math.Abs(ray.Off) < 1e-9)) least = length;
                before = ray;
            }
        }
        return least;
    }

    private static bool Crosses(Ray before, Ray ray)
    {
        var moved = before.From.DistanceTo(ray.From) + ray.Length * (before.Way - ray.Way).Length;
        return before.Off * ray.Off <= 0 && before.To.DistanceTo(ray.To) <= 2 * moved + 1e-6;
    }

    private static IEnumerable<(Point From, Vector Way)> Normals(Contour contour, double step)
    {
        for (var i = 0; i <= contour.Segments.Length; i++)
        {
            var before = contour.Segments[(i + contour.Segments.Length - 1) % contour.Segments.Length];
            var segment = contour.Segments[i % contour.Segments.Length];
            var turn = Math.Atan2(before.EndDirection.Cross(segment.StartDirection), before.EndDirection.Dot(segment.StartDirection));
            var fan = (int)Math.Ceiling(Math.Abs(turn) / (step / 20));
            for (var k = 1; k < fan; k++)
                yield return (segment.Start, before.EndDirection.Left.Turned(Angle.FromRadians(turn * k / fan)));
            if (i == contour.Segments.Length) yield break;
            var count = (int)Math.Ceiling(segment.Length / step);
            for (var k = 0; k < count; k++)
            {
                var share = (k + 0.5) / count;
                yield return (segment.At(share), segment.DirectionAt(share).Left);
            }
        }
    }

    private static Ray? Cast(Segment[] all, Point from, Vector way)
    {
        Ray? first = null;
        foreach (var segment in all)
        {
            foreach (var t in Hits(segment, from, way))
            {
                if (t < 1e-6 || t >= (first?.Length ?? double.PositiveInfinity)) continue;
                var to = from + way * t;
                var along = IsStraight(segment) ? (segment.End - segment.Start).Unit
                    : (to - segment.Centre).Unit.Left * Math.Sign(segment.Bulge);
                first = new(from, way, t, to, along.Dot(way));
                // Out of the material a ray comes from the left.
                if (along.Cross(way) > 0) first = first.Value with { Off = double.NaN };
            }
        }
        return first is { } ray && !double.IsNaN(ray.Off) ? ray : null;
    }

    private static bool IsStraight(Segment s) => Math.Abs(s.Bulge) < 1e-6;

    private static IEnumerable<double> Hits(Segment segment, Point from, Vector way)
    {
        var chord = segment.End - segment.Start;
        if (IsStraight(segment))
        {
            var slope = chord.Cross(way);
            if (slope == 0) yield break;
            var share = (from - segment.Start).Cross(way) / slope;
            if (share is >= 0 and <= 1) yield return (from - segment.Start).Cross(chord) / slope;
            yield break;
        }
        var to = segment.Centre - from;
        var (middle, aside) = (to.Dot(way), to.Cross(way));
        var half = Math.Sqrt(segment.Radius * segment.Radius - aside * aside);
        foreach (var t in new[] { middle - half, middle + half })
        {
            // The arc is what lies to the right of its chord if it turns left.
            if (chord.Cross(from + way * t - segment.Start) * segment.Bulge <= 0) yield return t;
        }
    }
}
