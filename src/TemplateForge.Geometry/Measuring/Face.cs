namespace TemplateForge.Geometry;

/// <summary>A segment or a corner of a boundary, as what it is square to: the normals that point into the material.</summary>
/// <remarks>
/// A corner is an arc of radius 0: its normals fan out from the last one of the segment before it to the first one after it, as
/// they would if the corner were rounded ever so little. The centre of a face lies Radius / Weight from its middle along the normal
/// there: 0 / 1 for a corner, 1 / 0 for a line, 1 / κ for an arc, of which the curvature κ is positive when it turns left.
/// </remarks>
internal readonly record struct Face
{
    /// <summary>How far off, in radians, is still square: at 10 m a line so much astray is out by the tolerance.</summary>
    public const double Square = 1e-7;

    private readonly Segment _segment;
    private readonly double _first;
    private readonly double _turn;

    private Face(Segment segment, bool isCorner, Point middle, Vector inwards, double weight, Angle first, double turn)
    {
        (_segment, IsCorner, Middle, Inwards, Weight, _first, _turn) = (segment, isCorner, middle, inwards, weight, first.Radians, turn);
    }

    public bool IsCorner { get; }
    public Point Middle { get; }
    public Vector Inwards { get; }
    public double Weight { get; }
    public double Radius => IsCorner ? 0 : 1;

    /// <summary>The direction of the normals, counter-clockwise from the least to the most.</summary>
    public double From => Math.Min(_first, _first + _turn);
    public double To => Math.Max(_first, _first + _turn);
    public bool IsFlat => !IsCorner && Math.Abs(_turn) < 1e-6;

    public Bounds Bounds => IsCorner ? Bounds.Around(Middle, margin: 0) : Bounds.Around(_segment.Start, _segment.End, _segment.Bulge, margin: 0);

    public static IEnumerable<Face> Of(Contour contour)
    {
        foreach (var (before, segment) in Joints.Of(contour))
        {
            var turn = Joints.Turn(before, segment);
            if (Math.Abs(turn) > Square)
            {
                var last = before.EndDirection.Left;
                yield return new(segment, true, segment.Start, last, 1, last.Direction, turn);
            }
            var curve = Curve.Between(segment.Start, segment.End, segment.Bulge);
            yield return new(
                segment, false, curve.Apex, curve.Along.Left, curve.Curvature, segment.StartDirection.Left.Direction, segment.Sweep.Radians);
        }
    }

    /// <summary>The point at which the normal has a direction, or the end nearest to it; on a line, the middle.</summary>
    public Point At(double direction)
    {
        if (IsCorner || _turn == 0) return Middle;
        var turned = Math.IEEERemainder(direction - _first - _turn / 2, 2 * Math.PI) + _turn / 2;
        return _segment.At(Math.Clamp(turned / _turn, 0, 1));
    }

    public Point Along(double share) => IsCorner ? Middle : _segment.At(share);

    public double ShareOf(Point p) => IsCorner ? 0 : _segment.NearestPlace(p).Share;

    public Point Nearest(Point p) => IsCorner ? Middle : _segment.Nearest(p);

    /// <summary>Whether a unit vector that starts at a point of the face runs into the material along a normal, within a slack in radians.</summary>
    public bool IsSquare(Point at, Vector way, double slack)
    {
        if (IsCorner)
        {
            var middle = (From + To) / 2;
            return Math.Abs(Math.IEEERemainder(way.Direction.Radians - middle, 2 * Math.PI)) <= (To - From) / 2 + slack;
        }
        var along = _segment.DirectionAt(_segment.NearestPlace(at).Share);
        return along.Cross(way) > 0 && Math.Abs(along.Dot(way)) <= slack;
    }
}
