namespace TemplateForge.Geometry;

/// <summary>Where two segments meet: crossings, touches, ends that lie on the other, runs along which they coincide.</summary>
/// <remarks>
/// Met is what comes within <see cref="Tolerance.Merge"/>. Where two curves are nearly tangent, the place along them is
/// uncertain by about √(2 r δ), 4.5e-5 mm at r = 1 m and δ = 1e-12 mm; the distance from either never is.
/// </remarks>
internal static class Meetings
{
    private const double Near = Tolerance.Merge;

    /// <summary>What coordinates 100 m away, and what is computed from them, may be wrong by, in mm.</summary>
    internal const double Rounding = 1e-9;

    public static bool Any(Segment first, Segment second)
    {
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        Find(first, second, points, runs);
        return points.Count + runs.Count > 0;
    }

    /// <summary>How far apart, in mm, rounding may put two places of one touch: √(2 r δ) of a radius of 100 m, amply.</summary>
    internal const double Smeared = 0.02;

    // 1. Ends: those of either segment that lie on the other.
    // 2. A run: two of them with nothing but nearness between.
    // 3. Crossings: of the whole lines or circles, where they lie on both segments; two with nothing between are a touch.
    // 4. Touches: where one line is square to both curves, and no crossing explains that they are near.
    // 5. Ends again: those that are none of the crossings.
    public static void Find(Segment first, Segment second, List<Meeting> points, List<SharedRun> runs)
    {
        if (!first.Bounds.Grown(Near).Touches(second.Bounds)) return;
        Span<Meeting> ends = stackalloc Meeting[4];
        ends = ends[..Ends(first, second, ends)];
        if (TryRun(first, second, ends, out var run))
        {
            runs.Add(run);
            return;
        }

        var before = points.Count;
        Span<Point> candidates = stackalloc Point[2];
        foreach (var crossing in candidates[..Crossings(first, second, candidates)]) Take(crossing);
        if (points.Count == before)
        {
            foreach (var touch in candidates[..SquareToBoth(first, second, candidates)]) Take(touch);
        }
        foreach (var end in ends) Add(end);

        // Rounding makes two crossings of a touch, which lie apart although the curves between them do not.
        bool IsTouch(Meeting one, Meeting other)
        {
            var between = first.At((one.OnFirst + other.OnFirst) / 2);
            return second.DistanceTo(between) <= Rounding;
        }

        void Take(Point candidate)
        {
            var (onFirst, share) = first.NearestPlace(candidate);
            var (onSecond, otherShare) = second.NearestPlace(onFirst);
            if (onFirst.DistanceTo(onSecond) > Near) return;
            // A corner of either is the exact place; otherwise the two feet are as good as each other.
            Add(new(otherShare is 0 or 1 ? onSecond : onFirst, share, otherShare));
        }

        void Add(Meeting meeting)
        {
            for (var i = before; i < points.Count; i++)
            {
                var apart = points[i].At.DistanceTo(meeting.At);
                if (apart <= 2 * Near || (apart < Smeared && IsTouch(points[i], meeting))) return;
            }
            points.Add(meeting);
        }
    }

    private static int Ends(Segment first, Segment second, Span<Meeting> ends)
    {
        var count = 0;
        for (var end = 0; end <= 1; end++)
        {
            var p = end == 0 ? first.Start : first.End;
            var (foot, share) = second.NearestPlace(p);
            if (foot.DistanceTo(p) <= Near) ends[count++] = new(p, end, share);
        }
        for (var end = 0; end <= 1; end++)
        {
            var p = end == 0 ? second.Start : second.End;
            var (foot, share) = first.NearestPlace(p);
            if (foot.DistanceTo(p) <= Near) ends[count++] = new(p, share, end);
        }
        return count;
    }

    private static bool TryRun(Segment first, Segment second, ReadOnlySpan<Meeting> ends, out SharedRun run)
    {
        run = default;
        if (ends.Length < 2) return false;
        var (from, to) = (ends[0], ends[0]);
        foreach (var end in ends)
        {
            if (end.OnFirst < from.OnFirst) from = end;
            if (end.OnFirst > to.OnFirst) to = end;
        }
        if (from.At.DistanceTo(to.At) <= 10 * Near) return false;
        // Never by like centres and radii, which are wild where arcs are flat: by how far apart the curves are between.
        for (var i = 1; i <= 3; i++)
        {
            var p = first.At(from.OnFirst + (to.OnFirst - from.OnFirst) * i / 4);
            if (second.DistanceTo(p) > Near) return false;
        }
        run = new(from, to);
        return true;
    }

    /// <summary>Where the whole lines or circles cross: none, one, or two points.</summary>
    private static int Crossings(Segment first, Segment second, Span<Point> found)
    {
        var (a, b) = (new ChordFrame(first), new ChordFrame(second));
        if (a.Bulge == 0) return OnLine(b, b.Into(first.Start), b.Into(a.Along), found);
        if (b.Bulge == 0) return OnLine(a, a.Into(second.Start), a.Into(b.Along), found);
        // Points on both circles lie on the line that is left when gb Fa − ga Fb loses its squares.
        return TryRadicalLine(a, b, out var on, out var normal) ? CutRounder(a, b, on, normal, found) : 0;
    }

    private static int CutRounder(ChordFrame a, ChordFrame b, Vector on, Vector normal, Span<Point> found)
    {
        if (Math.Abs(a.G) >= Math.Abs(b.G)) return OnLine(a, on, normal.Left, found);
        return OnLine(b, b.Into(a.OutOf(on)), b.Into(a.Along * normal.Left.X + a.Along.Left * normal.Left.Y), found);
    }

    /// <summary>
    /// Points of one curve or the other, at most two, at which a line that is square to both may stand: a touch, or the place of
    /// least distance. Rough where arcs are nearly straight: the nearest points of either are to be taken from there.
    /// </summary>
    internal static int SquareToBoth(Segment first, Segment second, Span<Point> found)
    {
        var (a, b) = (new ChordFrame(first), new ChordFrame(second));
        if (a.Bulge == 0 && b.Bulge == 0) return 0;
        if (a.Bulge == 0) return BothSides(b, b.Into(a.Along.Left), found);
        if (b.Bulge == 0) return BothSides(a, a.Into(b.Along.Left), found);
        if (!TryRadicalLine(a, b, out _, out var normal)) return 0;
        return Math.Abs(a.G) >= Math.Abs(b.G)
            ? BothSides(a, normal, found)
            : BothSides(b, b.Into(a.Along * normal.X + a.Along.Left * normal.Y), found);
    }

    private static int BothSides(ChordFrame circle, Vector direction, Span<Point> found)
    {
        found[0] = circle.OutOf(circle.FurthestOfCircle(direction));
        found[1] = circle.OutOf(circle.FurthestOfCircle(-direction));
        return 2;
    }

    /// <summary>The line through the common points of two circles, in the first one's frame. Circles about one centre have none.</summary>
    private static bool TryRadicalLine(ChordFrame a, ChordFrame b, out Vector on, out Vector normal)
    {
        var middle = a.Into(b.OutOf(Vector.Zero));
        var left = a.Into(b.Along.Left);
        var n = (middle * b.G + left * b.K) * a.G - new Vector(0, b.G * a.K);
        var k = a.G * b.G * (b.Half * b.Half - a.Half * a.Half - middle.LengthSquared) / 2 - a.G * b.K * left.Dot(middle);
        var size = n.Length;
        var scale = Math.Abs(a.G * b.G) * middle.Length + Math.Abs(a.G * b.K) + Math.Abs(b.G * a.K);
        (on, normal) = (Vector.Zero, Vector.Zero);
        if (size <= 1e-15 * scale) return false;
        normal = n / size;
        on = normal * (-k / size);
        return true;
    }

    /// <summary>Where a line crosses the whole line or circle of a frame; where it only just misses, the point between.</summary>
    private static int OnLine(ChordFrame frame, Vector on, Vector along, Span<Point> found)
    {
        on -= along * on.Dot(along); // from the point nearest to the arc, where the squares below are small
        var a = frame.G;
        var b = frame.G * on.Dot(along) - frame.K * along.Y;
        var c = frame.G * (on.LengthSquared - frame.Half * frame.Half) - 2 * frame.K * on.Y;
        var d = b * b - a * c;
        // d = g² (R² − distance²), about −2 g (1 + b²) times the gap by which the line misses.
        if (d < 0 && -d <= 4 * Math.Abs(a) * (1 + frame.Bulge * frame.Bulge) * Near) d = 0;
        if (!(d >= 0)) return 0;

        var q = -(b + Math.CopySign(Math.Sqrt(d), b));
        var count = 0;
        if (q != 0) Keep(c / q, found);
        if (a != 0 && (q == 0 || d > 0)) Keep(q / a, found);
        return count;

        void Keep(double t, Span<Point> found)
        {
            if (double.IsFinite(t) && Math.Abs(t) < 1e9) found[count++] = frame.OutOf(on + along * t);
        }
    }
}
