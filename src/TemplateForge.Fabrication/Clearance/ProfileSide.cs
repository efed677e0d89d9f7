using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One line or arc of a half-profile, what is inside to its left, ready to be asked for its distance many times.</summary>
internal sealed class ProfileSide
{
    private const double Smooth = 1e-6; // a turn, in radians, that is no corner

    private readonly Point _start, _end, _centre;
    private readonly Vector _along, _startDirection, _endDirection, _middle;
    private readonly double _length, _radius, _cosHalf;
    private readonly bool _isLine, _turnsLeft;
    private readonly double _turnAtStart, _turnAtEnd;

    /// <param name="side">The side.</param>
    /// <param name="arriving">The direction in which the side before it ends.</param>
    /// <param name="leaving">The direction in which the side after it starts.</param>
    public ProfileSide(Segment side, Vector arriving, Vector leaving)
    {
        (_start, _end, _isLine, _turnsLeft) = (side.Start, side.End, side.IsLine, side.Bulge > 0);
        (_startDirection, _endDirection) = (side.StartDirection, side.EndDirection);
        (_along, _length) = (_startDirection, side.Length);
        (_turnAtStart, _turnAtEnd) = (Turn(arriving, _startDirection), Turn(_endDirection, leaving));
        if (_isLine) return;
        (_centre, _radius) = (side.Centre, side.Radius);
        _middle = (side.At(0.5) - _centre).Unit;
        _cosHalf = Math.Cos(side.Sweep.Radians / 2);
    }

    /// <summary>The way from the nearest point of the side to a point.</summary>
    public Vector Away(Point point, out OnSide place)
    {
        if (_isLine)
        {
            var share = (point - _start).Dot(_along);
            place = share <= 0 ? OnSide.Start : share >= _length ? OnSide.End : OnSide.Within;
            return place == OnSide.Within ? point - (_start + _along * share) : point - (place == OnSide.Start ? _start : _end);
        }
        var spoke = point - _centre;
        var length = spoke.Length;
        if (length > 0 && spoke.Dot(_middle) >= length * _cosHalf)
        {
            place = OnSide.Within;
            return spoke * (1 - _radius / length);
        }
        var (toStart, toEnd) = (point - _start, point - _end);
        place = toStart.LengthSquared <= toEnd.LengthSquared ? OnSide.Start : OnSide.End;
        return place == OnSide.Start ? toStart : toEnd;
    }

    /// <summary>Whether a point is inside whose nearest point of the whole outline lies on this side, the way from there being known.</summary>
    public bool IsInside(Point point, Vector away, OnSide place)
    {
        switch (place)
        {
            case OnSide.Within:
                return _isLine ? _along.Cross(away) > 0 : (point - _centre).Length < _radius == _turnsLeft;
            case OnSide.Start:
                return Math.Abs(_turnAtStart) < Smooth ? _startDirection.Cross(away) > 0 : _turnAtStart < 0;
            default:
                return Math.Abs(_turnAtEnd) < Smooth ? _endDirection.Cross(away) > 0 : _turnAtEnd < 0;
        }
    }

    private static double Turn(Vector from, Vector to) => Math.Atan2(from.Cross(to), from.Dot(to));
}

/// <summary>Where on a side its nearest point lies.</summary>
internal enum OnSide
{
    Within,
    Start,
    End,
}
