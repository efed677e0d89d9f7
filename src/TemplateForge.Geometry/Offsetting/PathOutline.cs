using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>A path moved aside to both its sides: the raw outline of a slot, as it runs before it is seen where it crosses itself.</summary>
/// <remarks>
/// <code>
///    ┌─────────◀─────────┐
///    │ ·───── path ────▶ │       there to its right, round the end, back to its left
///    └─────────▶─────────┘
/// </code>
/// It bounds the sum of the strips that each segment sweeps to both sides, the pie at each inner corner between two strips that
/// part, and half a disc at both ends if these are round. All count positively, so the slot is what has winding 1 or more. Where a
/// path ends in its start there are no ends but one more corner; then it is two loops, one of which runs the other way.
/// </remarks>
internal sealed class PathOutline
{
    /// <summary>
    /// Sine of a turn that cannot be told from a full reversal. Which way it goes round is open then, so it has its pie on both sides.
    /// </summary>
    private const double Reversal = 1e-8;

    /// <summary>tan(90° / 4).</summary>
    private const double QuarterCircle = 0.41421356237309505;

    private readonly double _distance;
    private readonly PathEnds _ends;
    private readonly List<Piece> _raw = [];
    private readonly List<Segment> _right = [];

    public PathOutline(Path path, double distance, PathEnds ends)
    {
        (_distance, _ends) = (distance, ends);
        var (there, back) = (path.Segments, path.Reversed().Segments);
        if (path.Start.DistanceTo(path.End) <= Tolerance.Merge)
        {
            Run(there, endsAfter: 0, rightUntil: there.Length);
            Run(back, endsAfter: 0, rightUntil: 0);
        }
        else
        {
            Run([.. there, .. back], endsAfter: there.Length, rightUntil: there.Length);
        }
    }

    /// <summary>The sides moved to the right, and the arcs that join them where they part.</summary>
    public IReadOnlyList<Segment> Right => _right;

    /// <summary>All points that lie in a strip, a pie or an end.</summary>
    public Region Slot()
    {
        using var arrangement = Arrangement.Rent();
        foreach (var (start, end, bulge) in _raw) arrangement.Add(start, end, bulge, count: 1);
        return arrangement.Where(winding => winding >= 1);
    }

    /// <param name="round">A closed run of segments.</param>
    /// <param name="endsAfter">An end lies after so many segments and again after as many; 0 for none.</param>
    /// <param name="rightUntil">So many segments run forwards, and have the right side of the path to their right.</param>
    private void Run(ImmutableArray<Segment> round, int endsAfter, int rightUntil)
    {
        var strips = round.Select(s => Strip.Of(s, _distance)).ToArray();
        for (var i = 0; i < round.Length; i++)
        {
            var next = (i + 1) % round.Length;
            var (strip, isRight, isEnd) = (strips[i], i < rightUntil, endsAfter > 0 && (i + 1) % endsAfter == 0);
            if (!strip.Stops) Add(strip.Left, strip.Arrived, strip.Bulge, isRight);
            if (isEnd && _ends == PathEnds.Flat) AddSpokes(strip, strips[next], round[next].Start);
            else AddJoint(strip, strips[next], round[next].Start, isRight && !isEnd);
        }
    }

    private void AddJoint(in Strip strip, in Strip next, Point corner, bool isRight)
    {
        var (into, outOf) = (strip.EndDirection, next.StartDirection);
        var (sine, cosine) = (into.Cross(outOf), into.Dot(outOf));
        var reverses = cosine < 0 && Math.Abs(sine) < Reversal;
        if (cosine > 0 && !strip.Stops && !next.Stops && strip.Arrived.DistanceTo(next.Left) < Tolerance.Merge)
        {
            Add(strip.Arrived, next.Left);
            return;
        }
        if (sine <= 0 && !reverses)
        {
            AddSpokes(strip, next, corner);
            return;
        }
        if (strip.Stops)
        {
            Add(strip.Centre, corner);
            Add(corner, strip.Arrived);
        }
        if (reverses)
        {
            var ahead = corner + into * _distance;
            Add(strip.Arrived, ahead, QuarterCircle, isRight);
            Add(ahead, next.Left, QuarterCircle, isRight);
        }
        else
        {
            Add(strip.Arrived, next.Left, Pie.BulgeOf(sine, cosine), isRight);
        }
        if (next.Stops)
        {
            Add(next.Left, corner);
            Add(corner, next.Centre);
        }
    }

    private void AddSpokes(in Strip strip, in Strip next, Point corner)
    {
        Add(strip.Stops ? strip.Centre : strip.Arrived, corner);
        Add(corner, next.Stops ? next.Centre : next.Left);
    }

    private void Add(Point start, Point end, double bulge = 0, bool isRight = false)
    {
        _raw.Add(new(start, end, bulge));
        if (isRight && start.DistanceTo(end) >= Tolerance.Merge) _right.Add(Segment.Trusted(start, end, bulge));
    }

    private readonly record struct Piece(Point Start, Point End, double Bulge);
}
