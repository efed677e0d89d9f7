using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Makes lines and arcs of a closed row of places on the boundary.</summary>
internal sealed class ClearanceBoundary(ClearanceCells cells, double cell, double tolerance)
{
    // 1. Places: where two neighbours have another feature nearest, or the boundary turns much between them, one between them, again and
    //    again; down to a corner, or to where one smooth curve goes over into the next.
    // 2. Runs between those: each is a line, a part of a circle, or a smooth curve that becomes arcs.
    private const double MostTurn = 0.15; // between neighbours, in radians
    private const double Kink = 0.01; // what turns by less is no corner
    private const double Near = 1e-3, Nearest = 1e-6; // where a smooth change and a corner are found, in mm
    private const double Straight = 2e-5; // a run that strays no further from a line or a circle is one

    /// <summary>One smooth curve: places in their order, and its ends as both neighbours have them.</summary>
    private sealed record Run(List<BoundaryPlace> Places);

    /// <summary>The contour; none where nothing of a size is left of it.</summary>
    public IEnumerable<Contour> Contours(List<BoundaryPlace> loop)
    {
        var places = Thinned(loop);
        if (places.Count < 3) return [];
        var (first, runs) = ((Run?)null, new List<Run> { new([places[0]]) });
        for (var i = 0; i < places.Count; i++)
        {
            var next = places[(i + 1) % places.Count];
            Refine(places[i], next, runs);
            if (i < places.Count - 1) runs[^1].Places.Add(next);
        }
        // What was begun in the middle of a run is joined to its end.
        if (runs.Count == 1)
        {
            first = runs[0];
            first.Places.Add(first.Places[0]);
        }
        else
        {
            runs[^1].Places.AddRange(runs[0].Places);
            runs.RemoveAt(0);
        }
        var segments = new List<Segment>();
        foreach (var run in runs) segments.AddRange(Segments(run.Places, isWhole: first is not null));
        return segments.Count < 2 ? [] : [new Contour(Closed(segments))];
    }

    private List<BoundaryPlace> Thinned(List<BoundaryPlace> loop)
    {
        var kept = new List<BoundaryPlace>();
        foreach (var place in loop.Where(p => p.Out.Length > 0.5))
        {
            if (kept.Count == 0 || kept[^1].At.DistanceTo(place.At) > cell / 4) kept.Add(place);
        }
        while (kept.Count > 1 && kept[^1].At.DistanceTo(kept[0].At) <= cell / 4) kept.RemoveAt(kept.Count - 1);
        return kept;
    }

    private void Refine(BoundaryPlace from, BoundaryPlace to, List<Run> runs)
    {
        var apart = from.At.DistanceTo(to.At);
        var turn = Math.Abs(from.TurnTo(to));
        var chord = (to.At - from.At).Unit;
        var same = from.Label == to.Label;
        if (apart > Nearest)
        {
            var bends = turn > MostTurn || (apart > Near && Math.Max(Math.Abs(chord.Cross(from.Along)), Math.Abs(chord.Cross(to.Along))) > MostTurn)
                || chord.Dot(from.Along) < 0;
            if (same && !bends) return;
            var isFound = !(apart <= Near && !bends && turn <= Kink);
            if (isFound && cells.TryAcross(from.At.MidpointTo(to.At), -chord.Left, apart / 2, out var middle)
                && middle.At.DistanceTo(from.At) > Nearest / 4 && middle.At.DistanceTo(to.At) > Nearest / 4)
            {
                Refine(from, middle, runs);
                runs[^1].Places.Add(middle);
                Refine(middle, to, runs);
                return;
            }
        }
        if (same && turn <= MostTurn) return;
        Break(from, to, runs);
    }

    /// <summary>Ends one run and begins the next: at the corner where their tangents meet, or, where there is none, with one direction for both.</summary>
    private static void Break(BoundaryPlace from, BoundaryPlace to, List<Run> runs)
    {
        var at = from.At.MidpointTo(to.At);
        var (end, start) = (from, to);
        if (Math.Abs(from.TurnTo(to)) > Kink)
        {
            var cross = from.Along.Cross(to.Along);
            var corner = from.At + from.Along * ((to.At - from.At).Cross(to.Along) / cross);
            if (corner.DistanceTo(at) < 4 * from.At.DistanceTo(to.At) + Nearest) at = corner;
            (end, start) = (end with { At = at }, start with { At = at });
        }
        else
        {
            end = start = new(at, (from.Out + to.Out).Unit, from.Label);
        }
        runs[^1].Places.Add(end);
        runs.Add(new([start]));
    }

    private List<Segment> Segments(List<BoundaryPlace> run, bool isWhole)
    {
        var places = new List<BoundaryPlace>();
        foreach (var place in run)
        {
            if (places.Count == 0 || places[^1].At.DistanceTo(place.At) > Nearest) places.Add(place);
        }
        // The end is what both neighbours have of it.
        if (places.Count > 1) places[^1] = run[^1]; else return [];
        var (start, end) = (places[0], places[^1]);
        if (!isWhole && (IsLine(places) || places.Count == 2 && start.At.DistanceTo(end.At) < 2 * Near)) return [Segment.Line(start.At, end.At)];
        if (TryCircle(places, out var arcs)) return arcs;
        return new PlacesAsArcs(places).Within(tolerance);
    }

    private static bool IsLine(List<BoundaryPlace> places)
    {
        var (start, along) = (places[0].At, (places[^1].At - places[0].At).Unit);
        return places.All(p => Math.Abs((p.At - start).Cross(along)) <= Straight && Math.Abs(p.Along.Cross(along)) <= 1e-3 && p.Along.Dot(along) > 0);
    }

    private static bool TryCircle(List<BoundaryPlace> places, out List<Segment> arcs)
    {
        arcs = [];
        if (places.Count < 3) return false;
        // Through the ends and the middle; round a whole circle, through three places.
        var (a, b, c) = (places[0].At, places[places.Count / 3].At, places[2 * places.Count / 3].At);
        var (toB, toC) = (b - a, c - a);
        var twice = 2 * toB.Cross(toC);
        if (Math.Abs(twice) < 1e-9) return false;
        var centre = a + new Vector(toC.Y * toB.LengthSquared - toB.Y * toC.LengthSquared, toB.X * toC.LengthSquared - toC.X * toB.LengthSquared) / twice;
        var radius = centre.DistanceTo(a);
        var left = twice > 0;
        if (places.Any(p => Math.Abs(p.At.DistanceTo(centre) - radius) > Straight
            || Math.Abs(p.Out.Cross((p.At - centre).Unit)) > 1e-3 || p.Out.Dot(p.At - centre) > 0 != left)) return false;
        var turn = 0.0;
        for (var i = 1; i < places.Count; i++) turn += Math.Atan2((places[i - 1].At - centre).Cross(places[i].At - centre), (places[i - 1].At - centre).Dot(places[i].At - centre));
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(turn) / Math.PI - 1e-6));
        if (places[0].At.DistanceTo(places[^1].At) < Nearest) (count, turn) = (2, Math.Sign(turn) * 2 * Math.PI);
        var from = places[0].At;
        for (var i = 1; i <= count; i++)
        {
            var to = i == count ? places[^1].At : centre + (places[0].At - centre).Turned(Angle.FromRadians(turn * i / count));
            arcs.Add(Segment.Arc(from, to, Math.Clamp(Math.Tan(turn / count / 4), -1, 1)));
            from = to;
        }
        return true;
    }

    // Neighbours that were left out between two segments left a gap no wider than what counts as one place.
    private static IEnumerable<Segment> Closed(List<Segment> segments)
    {
        for (var i = 0; i < segments.Count; i++)
        {
            var (segment, next) = (segments[i], segments[(i + 1) % segments.Count]);
            yield return segment;
            if (segment.End.DistanceTo(next.Start) >= Tolerance.Merge) yield return Segment.Line(segment.End, next.Start);
        }
    }
}
