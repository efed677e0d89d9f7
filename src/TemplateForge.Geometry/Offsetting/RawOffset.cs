namespace TemplateForge.Geometry;

/// <summary>The raw offset of a region: its boundary moved aside, as it runs before it is seen where it crosses itself.</summary>
/// <remarks>
/// <code>
///      E'____arc____S'        a corner that the boundary turns round: its pie
///       |  .     .  |
///   ────┘     V     └────
///
///            V                 a corner that it turns into: spokes back to the corner and out again,
///    S'────/─X─\────E'         or, where the moved sides cross, a short cut at X
/// </code>
/// It bounds the sum of the region, the strip that each segment sweeps sideways, and the pie at every corner between two strips
/// that part; sideways into the region, strips and pies count negatively. Each nearest foot lies on a segment or at such a corner,
/// so a point is in the offset exactly when its winding number in the sum is 1 or more.
/// <para>
/// A short cut leaves out the kite V E' X S', which counts once more than it would without: it lies in two strips, so one is left.
/// A run of kites lies in one strip more than there are kites. Only where every corner of a contour is cut short, and all its kites
/// have a point in common, would none be left; so there one corner keeps its spokes.
/// </para>
/// </remarks>
internal readonly struct RawOffset(Arrangement arrangement, Buffer<Strip> strips, double distance, CornerStyle corners)
{
    /// <summary>
    /// Near a full reversal, in radians, it cannot be told which way a corner turns. A pie is right for both, as it never reaches too
    /// far. Beside a tiny segment the same is true sooner.
    /// </summary>
    private const double NearReversal = 0.05;

    /// <summary>Two segments that turn by less at their joint, in radians, meet nowhere else that could be told from it.</summary>
    private const double Tangent = 1e-9;

    private static readonly double _cosineNearReversal = -Math.Cos(NearReversal);

    public void Add(Contour contour)
    {
        var segments = contour.Segments;
        var count = segments.Length;
        strips.Clear();
        foreach (var segment in segments) strips.Add(Strip.Of(segment, distance));

        var firstDisc = arrangement.Known.Count;
        foreach (var segment in segments) arrangement.Known.Add(segment.Start);

        var kites = new CommonRoom();
        var convex = true;
        for (var i = 0; i < count; i++)
        {
            var next = i + 1 < count ? i + 1 : 0;
            Join(ref strips[i], ref strips[next], segments[next].Start, ref kites, ref convex);
        }
        // All cut short, with a point in common.
        if (kites.Count == count && kites.AnyRoom) strips[0].Joint = Joint.Spokes;

        var firstEdge = arrangement.Edges.Count;
        for (var i = 0; i < count; i++)
        {
            var next = i + 1 < count ? i + 1 : 0;
            var before = i > 0 ? i - 1 : count - 1;
            arrangement.Known.Near = firstDisc + i;
            AddFarSide(strips[i], strips[next], cutBefore: strips[before].Joint == Joint.ShortCut, strips[before].Cut);
            AddJoint(strips[i], strips[next], segments[next].Start);
        }
        arrangement.CloseContour(firstEdge);
        // What turns one way all along, and is moved away from there, is convex and meets itself nowhere.
        if (convex) arrangement.LastContourIsClear();
    }

    /// <summary>Finds out how one strip goes over into the next.</summary>
    private void Join(ref Strip strip, ref Strip next, Point corner, ref CommonRoom kites, ref bool convex)
    {
        var (into, outOf) = (strip.EndDirection, next.StartDirection);
        var (sine, cosine) = (into.Cross(outOf), into.Dot(outOf));
        var reverses = cosine < _cosineNearReversal || cosine < 0 && (strip.IsTiny || next.IsTiny);
        var parts = sine * distance > 0 || (reverses && corners.IsRound);
        convex &= !reverses && corners.IsRound && strip.Bulge * distance >= 0 && (sine * distance >= 0 || Math.Abs(sine) < Tangent);
        if ((next.Left - strip.Arrived).LengthSquared < Tolerance.Merge * Tolerance.Merge && !strip.Stops && !next.Stops && cosine > 0)
        {
            (strip.Joint, strip.RunsOn) = (Joint.Meeting, Math.Abs(sine) < Tangent);
        }
        else if (parts)
        {
            (strip.Joint, strip.RunsOn) = (Joint.Pie, corners.IsRound);
        }
        else if (!strip.Stops && !next.Stops && (corners.IsRound || CornerPiece.LeavesKite(strip, next, sine, cosine, distance))
            && TryCut(strip, next, corner, sine, cosine, out var cut))
        {
            (strip.Joint, strip.Cut) = (Joint.ShortCut, cut);
            kites.Add(corner, cut, strip, next);
        }
        else
        {
            strip.Joint = Joint.Spokes;
        }
    }

    /// <summary>Where the far sides of two strips cross, the nearest to the corner for both.</summary>
    private bool TryCut(in Strip strip, in Strip next, Point corner, double sine, double cosine, out Point cut)
    {
        if (strip.Bulge == 0 && next.Bulge == 0)
        {
            // Both normals, moved out, meet on the bisector; as far before the corner as after it.
            var back = distance * sine / (1 + cosine);
            cut = corner - (strip.EndDirection + next.StartDirection).Left * (distance / (1 + cosine));
            return back * back <= Math.Min(
                (strip.Arrived - strip.Left).LengthSquared, (next.Arrived - next.Left).LengthSquared);
        }
        cut = default;
        var (one, other) = (strip.FarSide, next.FarSide);
        var oneIsFollowed = Math.Abs(one.Curvature) >= Math.Abs(other.Curvature);
        var crossing = oneIsFollowed ? Crossing.Of(one, other) : Crossing.Of(other, one);
        if (!crossing.Exists) return false;
        var (fromEnd, fromStart) = (double.PositiveInfinity, double.PositiveInfinity);
        foreach (var place in (ReadOnlySpan<double>)[crossing.First, crossing.Second])
        {
            var point = oneIsFollowed ? one.At(place) : other.At(place);
            var (onOne, onOther) = oneIsFollowed ? (place, other.PlaceOf(point)) : (one.PlaceOf(point), place);
            if (!one.Reaches(onOne) || !other.Reaches(onOther)) continue;
            var (nearerToEnd, nearerToStart) = (one.Reach - onOne < fromEnd, onOther + other.Reach < fromStart);
            if (nearerToEnd != nearerToStart) return false;
            if (nearerToEnd) (fromEnd, fromStart, cut) = (one.Reach - onOne, onOther + other.Reach, point);
        }
        return fromEnd < double.PositiveInfinity && IsKite(strip, next, corner, cut, fromEnd, fromStart);
    }

    /// <summary>Whether a kite is turned as one: far sides that are nearly one circle may only cross on its other side, and go round all of it.</summary>
    private bool IsKite(in Strip strip, in Strip next, Point corner, Point cut, double fromEnd, double fromStart)
    {
        var (one, other) = (strip.FarSide, next.FarSide);
        var (bulgeToEnd, bulgeFromStart) = (
            one.BulgeBetween(one.Reach - fromEnd, one.Reach), other.BulgeBetween(-other.Reach, fromStart - other.Reach));
        var (end, tip, start) = (strip.Arrived - corner, cut - corner, next.Left - corner);
        // An arc and its chord enclose about 0.73 of half of chord times rise.
        var twiceArea = end.Cross(tip) + tip.Cross(start)
            - 0.73 * (bulgeToEnd * (tip - end).LengthSquared + bulgeFromStart * (tip - start).LengthSquared);
        return twiceArea * distance < 0;
    }

    private void AddFarSide(in Strip strip, in Strip next, bool cutBefore, Point cut)
    {
        if (strip.Stops) return;
        var from = cutBefore ? cut : strip.Left;
        var to = strip.Joint == Joint.ShortCut ? strip.Cut : strip.Arrived;
        var bulge = strip.Bulge;
        if (bulge != 0 && (cutBefore || strip.Joint == Joint.ShortCut))
        {
            var side = strip.FarSide;
            bulge = side.BulgeBetween(
                cutBefore ? side.PlaceOf(from) : -side.Reach, strip.Joint == Joint.ShortCut ? side.PlaceOf(to) : side.Reach);
            bulge = Math.Clamp(bulge, -1, 1);
        }
        Add(from, to, bulge, strip.RunsOn && (strip.Joint != Joint.Meeting || next.CanBeRunInto));
    }

    private void AddJoint(in Strip strip, in Strip next, Point corner)
    {
        var (from, to) = (strip.Stops ? strip.Centre : strip.Arrived, next.Stops ? next.Centre : next.Left);
        switch (strip.Joint)
        {
            case Joint.Meeting:
                if (from != to) Add(from, to);
                break;
            case Joint.Spokes:
                AddSpokes(from, corner, to);
                break;
            case Joint.Pie:
                if (strip.Stops) AddSpokes(from, corner, strip.Arrived);
                if (corners.IsRound) AddPie(strip, next, corner);
                else CornerPiece.Add(arrangement, corner, strip, next, distance, corners);
                if (next.Stops) AddSpokes(next.Left, corner, to);
                break;
        }
    }

    private void AddPie(in Strip strip, in Strip next, Point corner)
    {
        var (sine, cosine) = (strip.EndDirection.Cross(next.StartDirection), strip.EndDirection.Dot(next.StartDirection));
        if (sine * distance > 0)
        {
            Add(strip.Arrived, next.Left, Pie.BulgeOf(sine, cosine), next.CanBeRunInto);
            return;
        }
        // Turned the other way, but so nearly reversed that it may as well have come all round: more than half a circle, in two.
        var turn = Math.CopySign(2 * Math.PI - Math.Abs(Math.Atan2(sine, cosine)), distance);
        var middle = corner + (strip.Arrived - corner).Turned(Angle.FromRadians(turn / 2));
        Add(strip.Arrived, middle, Math.Tan(turn / 8), runsOn: true);
        Add(middle, next.Left, Math.Tan(turn / 8), next.CanBeRunInto);
    }

    /// <summary>All along them the corner is nearer than the distance, so with round corners they are nowhere on the boundary.</summary>
    private void AddSpokes(Point from, Point corner, Point to)
    {
        arrangement.Add(from, corner, bulge: 0, count: 1, hidden: corners.IsRound);
        arrangement.Add(corner, to, bulge: 0, count: 1, hidden: corners.IsRound);
    }

    private void Add(Point from, Point to, double bulge = 0, bool runsOn = false) =>
        arrangement.Add(from, to, bulge, count: 1, runsOn, hidden: IsCovered(from, to));

    /// <summary>Whether a line or an arc of at most half a circle is found to lie nearer to a corner than the distance, as a whole.</summary>
    private bool IsCovered(Point from, Point to)
    {
        var square = (to - from).LengthSquared;
        // Not worth asking where the sides are long.
        return square < distance * distance && arrangement.Known.Hold(from.MidpointTo(to), Math.Sqrt(square) / 2, arrangement.Known.Near);
    }

    /// <summary>Whether all kites so far have room in common: a box that they all reach into.</summary>
    private struct CommonRoom
    {
        private double _minX, _minY, _maxX, _maxY;

        public int Count { get; private set; }
        public readonly bool AnyRoom => _minX <= _maxX && _minY <= _maxY;

        public void Add(Point corner, Point cut, in Strip strip, in Strip next)
        {
            // Of its four sides the two far ones may be arcs, which rise by no more than half their chord.
            var rise = strip.Bulge == 0 && next.Bulge == 0 ? 0 : (cut.DistanceTo(strip.Arrived) + cut.DistanceTo(next.Left)) / 2;
            var (minX, maxX) = (
                Math.Min(Math.Min(corner.X, cut.X), Math.Min(strip.Arrived.X, next.Left.X)) - rise,
                Math.Max(Math.Max(corner.X, cut.X), Math.Max(strip.Arrived.X, next.Left.X)) + rise);
            var (minY, maxY) = (
                Math.Min(Math.Min(corner.Y, cut.Y), Math.Min(strip.Arrived.Y, next.Left.Y)) - rise,
                Math.Max(Math.Max(corner.Y, cut.Y), Math.Max(strip.Arrived.Y, next.Left.Y)) + rise);
            (_minX, _maxX) = Count == 0 ? (minX, maxX) : (Math.Max(_minX, minX), Math.Min(_maxX, maxX));
            (_minY, _maxY) = Count == 0 ? (minY, maxY) : (Math.Max(_minY, minY), Math.Min(_maxY, maxY));
            Count++;
        }
    }
}
