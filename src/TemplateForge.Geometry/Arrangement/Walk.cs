namespace TemplateForge.Geometry;

/// <summary>Runs round what is inside and makes contours of its boundary.</summary>
internal static class Walk
{
    /// <summary>The region of all faces whose winding number is inside, outer contours before holes.</summary>
    public static Region Around(Arrangement arrangement, Windings windings, Predicate<int> inside)
    {
        // Kept are the half-edges with the inside on their left only. Faces alternate about every node, so they always close.
        var halves = arrangement.Edges.Count * 2;
        var kept = new bool[halves];
        for (var h = 0; h < halves; h++) kept[h] = inside(windings.LeftOf(h)) && !inside(windings.LeftOf(h ^ 1));

        var contours = new List<Contour>();
        var joining = new Joining(arrangement, windings);
        var walked = new bool[halves];
        for (var first = 0; first < halves; first++)
        {
            if (!kept[first] || walked[first]) continue;
            foreach (var loop in SimpleLoops(first, kept, walked, windings))
            {
                if (joining.Contour(loop) is { } contour) contours.Add(contour);
            }
        }
        return contours.Count == 0 ? Region.Empty : new([.. contours.OrderByDescending(c => c.IsCounterClockwise)]);
    }

    /// <summary>The walk that begins with a half-edge, taken apart where it comes through a node again.</summary>
    private static List<List<int>> SimpleLoops(int first, bool[] kept, bool[] walked, Windings windings)
    {
        var loops = new List<List<int>>();
        var walk = new List<int>();
        var placeOf = new Dictionary<int, int>();
        var half = first;
        do
        {
            walked[half] = true;
            placeOf.Add(windings.Origin(half), walk.Count);
            walk.Add(half);
            if (placeOf.TryGetValue(windings.Origin(half ^ 1), out var place))
            {
                var loop = walk[place..];
                walk.RemoveRange(place, loop.Count);
                foreach (var h in loop) placeOf.Remove(windings.Origin(h));
                loops.Add(loop);
            }
            half = Following(half, kept, windings);
        }
        while (half != first);
        return loops;
    }

    /// <summary>The next half-edge of the boundary, across edges that have the inside on both sides.</summary>
    private static int Following(int half, bool[] kept, Windings windings)
    {
        var next = windings.Next(half);
        while (!kept[next]) next = windings.Next(next ^ 1);
        return next;
    }
}
