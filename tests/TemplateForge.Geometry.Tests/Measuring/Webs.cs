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
            Ray? last = null;
            var runs = Runs(contour, step).ToArray();
            foreach (var (count, at) in runs.Append(runs[0]))
            {
                Ray? before = null;
                for (var i = 0; i <= count; i++)
                {
                    // Not from the very ends, where the ray may run along a side; the next run begins beside the end of this.
                    var share = Math.Clamp((double)i / count, 1e-7, 1 - 1e-7);
                    var ray = Cast(all, at(share));
                    if (ray is { } r && Math.Abs(r.Off) < 1e-9) least = Math.Min(least, r.Length);
                    if (i == 0 && last is { } l && ray is { } f && Crosses(l, f)) least = Math.Min(least, (l.Length + f.Length) / 2);
                    if (before is { } b && ray is { } c && Crosses(b, c))
                        least = Math.Min(least, Refined(all, at, (double)(i - 1) / count, share, b, c));
                    before = ray;
                }
                last = before;
            }
        }
        return least;
    }

    /// <summary>The length of the ray at which the sign turns; none if that is where it passes by something.</summary>
    private static double Refined(Segment[] all, Func<double, (Point, Vector)> at, double low, double high, Ray lower, Ray higher)
    {
        for (var i = 0; i < 30; i++)
        {
            if (Cast(all, at((low + high) / 2)) is not { } middle) return double.PositiveInfinity;
            if (middle.Off * lower.Off <= 0) (high, higher) = ((low + high) / 2, middle);
            else (low, lower) = ((low + high) / 2, middle);
        }
        return Crosses(lower, higher) ? (lower.Length + higher.Length) / 2 : double.PositiveInfinity;
    }

    private static bool Crosses(Ray before, Ray ray)
    {
        var moved = before.From.DistanceTo(ray.From) + ray.Length * (before.Way - ray.Way).Length;
        return before.Off * ray.Off <= 0 && before.To.DistanceTo(ray.To) <= 20 * moved + 1e-6;
    }

    /// <summary>The normals of every segment, and of every corner from that of one side to that of the other, each by a share of the run.</summary>
    private static IEnumerable<(int Count, Func<double, (Point From, Vector Way)> At)> Runs(Contour contour, double step)
    {
        for (var i = 0; i < contour.Segments.Length; i++)
        {
            var before = contour.Segments[(i + contour.Segments.Length - 1) % contour.Segments.Length];
            var segment = contour.Segments[i];
            var turn = Math.Atan2(before.EndDirection.Cross(segment.StartDirection), before.EndDirection.Dot(segment.StartDirection));
            if (Math.Abs(turn) > 1e-9)
            {
                yield return ((int)Math.Ceiling(Math.Abs(turn) / (step / 20)), share =>
                    (segment.Start, before.EndDirection.Left.Turned(Angle.FromRadians(turn * share))));
            }
            yield return ((int)Math.Ceiling(segment.Length / step), share => (segment.At(share), segment.DirectionAt(share).Left));
        }
    }

    private static Ray? Cast(Segment[] all, (Point From, Vector Way) normal)
    {
        var (from, way) = normal;
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
