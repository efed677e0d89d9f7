using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A smooth run of places whose directions are known, as arcs in pairs that join without a corner.</summary>
/// <remarks>
/// A pair begins at one place in the curve's own direction and ends so at another; it is as long as keeps all places between within
/// the tolerance. Then the tolerance is lowered as far as the number of pairs stays the same, so that all err alike. A pair is
/// ∛3 times as short as those of <see cref="SmoothArcs"/>, which cross the curve, and is found a hundred times as fast: places this
/// near each other tell all that there is to know of the curve.
/// </remarks>
internal sealed class PlacesAsArcs(IReadOnlyList<BoundaryPlace> places)
{
    private const int Evening = 6;
    private const int Checks = 16; // places of a pair that are looked at: its error swings three times

    public List<Segment> Within(double tolerance)
    {
        var best = Pairs(tolerance);
        var (low, high) = (0.0, tolerance);
        for (var round = 0; round < Evening; round++)
        {
            var lower = (low + high) / 2;
            var other = Pairs(lower);
            if (other.Count > best.Count) low = lower;
            else (best, high) = (other, lower);
        }
        return [.. best.SelectMany(p => p)];
    }

    private List<Segment[]> Pairs(double tolerance)
    {
        var pairs = new List<Segment[]>();
        for (var from = 0; from < places.Count - 1;)
        {
            // The next place always does; then twice as far again and again, and halves between.
            var (good, bad) = (from + 1, places.Count);
            var pair = TryPair(places[from], places[good], out var first) ? first : [Segment.Line(places[from].At, places[good].At)];
            for (var ahead = 2; good < places.Count - 1 && bad == places.Count; ahead *= 2)
            {
                var to = Math.Min(from + ahead, places.Count - 1);
                if (to == good) break;
                if (Keeps(from, to, tolerance, out var longer)) (good, pair) = (to, longer); else bad = to;
            }
            while (bad - good > 1 && bad < places.Count)
            {
                var to = (good + bad) / 2;
                if (Keeps(from, to, tolerance, out var longer)) (good, pair) = (to, longer); else bad = to;
            }
            pairs.Add(pair);
            from = good;
        }
        return pairs;
    }

    private bool Keeps(int from, int to, double tolerance, out Segment[] pair)
    {
        if (!TryPair(places[from], places[to], out pair)) return false;
        for (var i = from + 1; i < to; i += Math.Max(1, (to - from) / Checks))
        {
            if (Math.Min(pair[0].DistanceTo(places[i].At), pair[1].DistanceTo(places[i].At)) > tolerance) return false;
        }
        return true;
    }

    /// <summary>Two arcs with tangents of one length d at both ends and the joint amid their tips.</summary>
    private static bool TryPair(BoundaryPlace start, BoundaryPlace end, out Segment[] pair)
    {
        pair = [];
        var chord = end.At - start.At;
        var along = chord.Dot(start.Along + end.Along);
        var turn = 2 * (1 - start.Along.Dot(end.Along));
        // |chord|² = 2 d chord·(out + in) + 2 d² (1 − out·in)
        var d = chord.LengthSquared / (along + Math.Sqrt(along * along + turn * chord.LengthSquared));
        if (!(d > 0 && double.IsFinite(d))) return false;
        var joint = (start.At + start.Along * d).MidpointTo(end.At - end.Along * d);
        if (!(joint.DistanceTo(start.At) >= Tolerance.Merge && joint.DistanceTo(end.At) >= Tolerance.Merge)) return false;
        var (one, two) = (joint - start.At, end.At - joint);
        if (start.Along.Dot(one) <= 0 || end.Along.Dot(two) <= 0) return false; // more than half a circle
        pair = [Segment.Arc(start.At, joint, Bulge(start.Along, one)), Segment.Arc(joint, end.At, Bulge(two, end.Along))];
        return true;
    }

    // tan(sweep / 4), half the sweep being the angle between tangent and chord.
    private static double Bulge(Vector from, Vector to) => from.Cross(to) / (from.Length * to.Length + from.Dot(to));
}
