namespace TemplateForge.Geometry;

/// <summary>A smooth piece in spans of two arcs each: as few spans as keep within a tolerance.</summary>
/// <remarks>
/// Over its length s a chain of arcs strays by e(s) with e'' = κi − κ(s): the difference of their curvatures. Arcs of length w on a
/// steady slope κ' of the curvature do best, κ' w³ / 124.7, when they meet the curve at every joint and cross it there at the angle
/// −κ' w² / 12. Pairs that took the curve's own direction at their ends would err by three times as much. κ' w² is had from the
/// directions a joint before and after.
/// </remarks>
internal sealed class Spans(SmoothPiece piece, bool seamless, double tolerance)
{
    private const int Checks = 16;

    public List<Segment> Fitted()
    {
        var demand = piece.Demand(tolerance);
        var least = Math.Max(seamless ? 2 : 1, (int)(demand.Sum() / 2));
        for (var (count, tries) = (least, 0); ; count += 1 + count * tries++ / 100)
        {
            if (count > SmoothPiece.End) throw new ArgumentException($"The curve has details too fine to follow within {tolerance} mm.", nameof(tolerance));
            var density = demand.ToArray();
            var spare = Math.Max(1e-9, demand.Sum() / demand.Length * 1e-3); // a straight part asks for nothing, yet has its place
            for (var i = 0; i < density.Length; i++) density[i] += spare;
            for (var round = 0; round < 6; round++)
            {
                var knots = Knots(density, count);
                var arcs = Arcs(knots);
                // Few checks show how the errors are shared out; what passes them is looked at closely.
                var errors = Errors(knots, arcs, closely: false);
                if (errors.Max() <= 0.97 * tolerance) errors = Errors(knots, arcs, closely: true);
                if (errors.Max() <= 0.97 * tolerance) return Merged(arcs); // the samples miss the peaks by less
                Even(density, knots, errors);
            }
        }
    }

    /// <summary>Samples that part the density into equal shares.</summary>
    private static double[] Knots(double[] density, int count)
    {
        var knots = new double[count + 1];
        var (total, sum, i) = (density.Sum(), 0.0, 0);
        for (var k = 1; k < count; k++)
        {
            var wanted = total * k / count;
            while (i < density.Length - 1 && sum + density[i] < wanted) sum += density[i++];
            knots[k] = Math.Clamp(i + (wanted - sum) / density[i], knots[k - 1] + 1e-6, SmoothPiece.End - (count - k) * 1e-6);
        }
        knots[count] = SmoothPiece.End;
        return knots;
    }

    /// <summary>The pair of arcs between every two knots.</summary>
    private (Segment First, Segment Second)[] Arcs(double[] knots)
    {
        var directions = new Vector[knots.Length];
        for (var i = 0; i < knots.Length; i++) directions[i] = piece.DirectionVector(knots[i]).Turned(Angle.FromRadians(Crossing(knots, i)));
        if (seamless) directions[^1] = directions[0];
        var points = knots.Select(piece.At).ToArray();
        if (seamless) points[^1] = points[0];
        return [.. Enumerable.Range(1, knots.Length - 1).Select(i => Pair(points[i - 1], directions[i - 1], points[i], directions[i]))];
    }

    /// <summary>The angle at which the arcs cross the curve at a knot: none at the ends, where they take its direction.</summary>
    private double Crossing(double[] knots, int i)
    {
        var last = knots.Length - 1;
        if (i is 0 || i == last)
        {
            if (!seamless) return 0;
            return Crossing(knots[last - 1], knots[last], knots[0], knots[1]);
        }
        return Crossing(knots[i - 1], knots[i], knots[i], knots[i + 1]);
    }

    private double Crossing(double from, double arriving, double leaving, double to)
    {
        var (before, after) = ((from + arriving) / 2, (leaving + to) / 2);
        var (v, w) = (piece.LengthTo(arriving) - piece.LengthTo(before), piece.LengthTo(after) - piece.LengthTo(leaving));
        if (!(v > 0 && w > 0)) return 0;
        var slope = 2 * (piece.Turn(leaving, after) / w - piece.Turn(before, arriving) / v) / (v + w);
        return Math.Clamp(-slope * v * w / 12, -0.2, 0.2);
    }

    /// <summary>Two arcs from point to point in given directions, with tangents of one length d at both ends and the joint amid their tips.</summary>
    private static (Segment First, Segment Second) Pair(Point start, Vector leaving, Point end, Vector arriving)
    {
        var chord = end - start;
        var along = chord.Dot(leaving + arriving);
        // |chord|² = 2 d chord·(out + in) + 2 d² (1 − out·in)
        var d = chord.LengthSquared / (along + Math.Sqrt(along * along + 2 * (1 - leaving.Dot(arriving)) * chord.LengthSquared));
        var joint = (start + leaving * d).MidpointTo(end - arriving * d);
        if (!(joint.DistanceTo(start) >= Tolerance.Merge && joint.DistanceTo(end) >= Tolerance.Merge)) return default;
        var (one, two) = (joint - start, end - joint);
        // tan(sweep / 4), half the sweep being the angle between tangent and chord
        double Bulge(Vector from, Vector to) => Math.Clamp(from.Cross(to) / (from.Length * to.Length + from.Dot(to)), -1, 1);
        return (Segment.Arc(start, joint, Bulge(leaving, one)), Segment.Arc(joint, end, Bulge(two, arriving)));
    }

    /// <summary>How far the curve strays from each pair: since both end alike and go on unbroken, the pair strays no further from it.</summary>
    private double[] Errors(double[] knots, (Segment First, Segment Second)[] arcs, bool closely)
    {
        var errors = new double[arcs.Length];
        for (var i = 0; i < arcs.Length; i++)
        {
            var (first, second) = arcs[i];
            if (first.Start == first.End)
            {
                errors[i] = double.MaxValue; // no pair of arcs: its knots are too near or it turns too far
                continue;
            }
            var checks = closely ? Math.Max(Checks, (int)(knots[i + 1] - knots[i])) : Checks;
            for (var k = 1; k < checks; k++)
            {
                var p = piece.At(knots[i] + (knots[i + 1] - knots[i]) * k / checks);
                errors[i] = Math.Max(errors[i], Math.Min(first.DistanceTo(p), second.DistanceTo(p)));
            }
        }
        return errors;
    }

    /// <summary>More density where a span erred by more than the mean, by the cube root that its length would have to change by.</summary>
    private static void Even(double[] density, double[] knots, double[] errors)
    {
        var known = errors.Where(e => e < double.MaxValue).DefaultIfEmpty(1).Average();
        for (var (i, span) = (0, 0); i < density.Length; i++)
        {
            while (span < errors.Length - 1 && knots[span + 1] < i + 0.5) span++;
            density[i] *= Math.Clamp(Math.Cbrt(errors[span] / Math.Max(known, 1e-12)), 0.6, 1.6);
        }
    }

    /// <summary>Two lines in one direction, or two arcs of one circle, are one while they turn by less than half a circle.</summary>
    private static List<Segment> Merged((Segment First, Segment Second)[] arcs)
    {
        var merged = new List<Segment>();
        foreach (var next in arcs.SelectMany(pair => (Segment[])[pair.First, pair.Second]))
        {
            if (merged.Count > 0 && merged[^1].Sweep.Radians + next.Sweep.Radians is var sweep && Math.Abs(sweep) < 3
                && merged[^1].Start.DistanceTo(next.End) >= Tolerance.Merge)
            {
                var whole = Segment.Arc(merged[^1].Start, next.End, Math.Tan(sweep / 4));
                if (whole.DistanceTo(next.Start) < 1e-8 && (whole.StartDirection - merged[^1].StartDirection).Length < 1e-7
                    && (whole.EndDirection - next.EndDirection).Length < 1e-7)
                {
                    merged[^1] = whole;
                    continue;
                }
            }
            merged.Add(next);
        }
        return merged;
    }
}
