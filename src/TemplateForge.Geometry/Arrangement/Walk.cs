using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Runs round what is inside and makes contours of its boundary.</summary>
internal sealed class Walk(Arrangement arrangement, Fans fans, Windings windings)
{
    private readonly Joining _joining = new(arrangement);
    private readonly Buffer<bool> _kept = new();
    private readonly Buffer<int> _walk = new();
    private readonly Buffer<int> _placeOf = new();
    private readonly List<Contour> _outer = [];
    private readonly List<Contour> _holes = [];
    private bool _anyVanished;

    /// <summary>The region of all faces whose winding number is inside, outer contours before holes.</summary>
    public Region Around(Predicate<int> inside)
    {
        _outer.Clear();
        _holes.Clear();
        _anyVanished = false;
        // Kept are the half-edges with the inside on their left only. Faces alternate about every node, so they always close.
        var kept = _kept.Sized(2 * arrangement.Edges.Count);
        for (var h = 0; h < kept.Length; h += 2)
        {
            var (left, right) = (inside(windings.LeftOf(h)), inside(windings.LeftOf(h + 1)));
            (kept[h], kept[h + 1]) = (left && !right, right && !left);
        }
        _placeOf.Filled(arrangement.Nodes.Count, -1);
        for (var first = 0; first < kept.Length; first++)
        {
            if (kept[first]) RunRound(first);
        }
        return Gathered();
    }

    /// <summary>The region of a single loop that meets nothing, not even itself.</summary>
    public Region RoundOneLoop(Predicate<int> inside)
    {
        var edges = arrangement.Edges;
        if (edges.Count == 0) return Region.Empty;
        var count = edges[0].Count;
        // Which way it is turned is known when it is a contour; so it is turned round afterwards if need be.
        _joining.Begin();
        for (var e = 0; e < edges.Count; e++) _joining.Add(2 * e);
        if (!_joining.TryContour(out var contour, out var counterClockwise)) return Region.Empty;
        if (!inside(counterClockwise ? count : -count)) return Region.Empty;
        return new([counterClockwise ? contour : contour.Reversed()]);
    }

    /// <summary>The walk that begins with a half-edge, taken apart where it comes through a node again.</summary>
    private void RunRound(int first)
    {
        _walk.Clear();
        var half = first;
        do
        {
            _kept[half] = false; // walked
            _placeOf[fans.Origin(half)] = _walk.Count;
            _walk.Add(half);
            var place = _placeOf[fans.Origin(half ^ 1)];
            if (place >= 0) TakeLoop(place);
        }
        while (TryFollow(ref half, first));
        foreach (var left in _walk.Items) _placeOf[fans.Origin(left)] = -1;
    }

    private void TakeLoop(int from)
    {
        var loop = _walk.Items[from..];
        _joining.Begin();
        foreach (var half in loop)
        {
            _placeOf[fans.Origin(half)] = -1;
            _joining.Add(half);
        }
        _walk.RemoveLast(loop.Length);
        if (_joining.TryContour(out var contour, out var counterClockwise)) (counterClockwise ? _outer : _holes).Add(contour);
        else _anyVanished = true;
    }

    /// <summary>Goes on along the boundary, across edges that have the inside on both sides, until it is back at the first.</summary>
    private bool TryFollow(ref int half, int first)
    {
        var next = fans.Next(half);
        while (!_kept[next] && next != first)
        {
            if (next == (half ^ 1)) return false; // all round the node, and nothing goes on
            next = fans.Next(next ^ 1);
        }
        half = next;
        return next != first;
    }

    private Region Gathered()
    {
        // A sliver may be thinner than the tolerance on the whole and yet have a hole where it is thicker. The hole goes with it.
        if (_anyVanished) _holes.RemoveAll(hole => !_outer.Exists(outer => outer.WindingAround(hole.Segments[0].At(0.5)) != 0));
        ImmutableArray<Contour> contours = [.. _outer, .. _holes];
        return contours.IsEmpty ? Region.Empty : new(contours);
    }
}
