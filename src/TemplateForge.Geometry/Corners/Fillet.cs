namespace TemplateForge.Geometry;

/// <summary>An arc that touches both sides of a corner.</summary>
internal static class Fillet
{
    /// <summary>The fillet nearest to the corner at which one side ends and the other begins; null where none touches both.</summary>
    /// <remarks>Its centre lies where the two sides, moved by the radius to the side that the corner turns to, cross.</remarks>
    public static CornerCut? Between(Segment[] arriving, Segment[] leaving, double radius)
    {
        var turns = CornerCut.SideOf(arriving[^1], leaving[0]);
        var toLeft = turns * radius;

        CornerCut? nearest = null;
        var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
        var takenBefore = 0.0;
        for (var i = arriving.Length - 1; i >= 0; takenBefore += arriving[i--].Length)
        {
            if (takenBefore > nearest?.TakenBefore + nearest?.TakenAfter) break;
            if (!TryMoved(arriving[i], toLeft, out var movedArriving)) continue;
            var takenAfter = 0.0;
            for (var j = 0; j < leaving.Length; takenAfter += leaving[j++].Length)
            {
                if (takenBefore + takenAfter > nearest?.TakenBefore + nearest?.TakenAfter) break;
                if (!TryMoved(leaving[j], toLeft, out var movedLeaving)) continue;
                points.Clear();
                runs.Clear();
                Meetings.Find(movedArriving, movedLeaving, points, runs);
                foreach (var run in runs) points.Add(CentreOn(run));
                foreach (var centre in points)
                {
                    // Moving aside leaves every point at its share of the length.
                    var before = takenBefore + (1 - centre.OnFirst) * arriving[i].Length;
                    var after = takenAfter + centre.OnSecond * leaving[j].Length;
                    if (before + after >= nearest?.TakenBefore + nearest?.TakenAfter) continue;
                    if (before + after < Tolerance.Merge) continue; // no fillet but the corner
                    var (from, to) = (new Place(i, Place.Snapped(centre.OnFirst, arriving[i])), new Place(j, Place.Snapped(centre.OnSecond, leaving[j])));
                    var arcs = Arc(arriving[i], from.Share, leaving[j], to.Share, turns);
                    if (arcs.Length > 0) nearest = new(from, to, before, after, arcs);
                }
            }
        }
        return nearest;
    }

    /// <summary>
    /// Sides that hardly turn, moved aside, come within <see cref="Tolerance.Merge"/> all along where they overlap, and cross in the
    /// middle of that. Those that run in parallel at twice the radius do so for longer; there the place nearest to the corner is taken.
    /// </summary>
    private static Meeting CentreOn(SharedRun run)
    {
        var (from, to) = (run.From, run.To);
        return from.At.DistanceTo(to.At) < Meetings.Smeared
            ? new(from.At.MidpointTo(to.At), (from.OnFirst + to.OnFirst) / 2, (from.OnSecond + to.OnSecond) / 2)
            : to;
    }

    private static bool TryMoved(Segment segment, double toLeft, out Segment moved)
    {
        moved = default;
        // An arc shrinks or grows about its centre; where nothing would be left of it, no circle of this size touches it from inside.
        if (!segment.IsLine && segment.Radius - toLeft * Math.Sign(segment.Bulge) <= Tolerance.Length) return false;
        var (start, end) = (segment.Start + segment.StartDirection.Left * toLeft, segment.End + segment.EndDirection.Left * toLeft);
        if (start.DistanceTo(end) < Tolerance.Merge) return false;
        moved = Segment.Arc(start, end, segment.Bulge);
        return true;
    }

    private static Segment[] Arc(Segment arriving, double from, Segment leaving, double to, int turns)
    {
        var (start, end) = (arriving.At(from), leaving.At(to));
        var (into, outOf) = (arriving.DirectionAt(from), leaving.DirectionAt(to));
        var sweep = Math.Atan2(into.Cross(outOf), into.Dot(outOf)) * turns;
        if (sweep < -1e-6) sweep += 2 * Math.PI;
        if (sweep <= 0) return [];
        if (start.DistanceTo(end) < Tolerance.Merge) return [];
        if (sweep <= Math.PI) return [Segment.Arc(start, end, turns * Math.Tan(sweep / 4))];

        // More than half a circle: by way of the middle, which lies on the bisector of the chord.
        var half = (end - start) / 2;
        var middle = start + half - half.Left * (turns * Math.Tan(sweep / 4));
        return [Segment.Arc(start, middle, turns * Math.Tan(sweep / 8)), Segment.Arc(middle, end, turns * Math.Tan(sweep / 8))];
    }
}
