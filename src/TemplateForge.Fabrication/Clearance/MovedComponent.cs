using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The distance of a depth of the sheet from a component in one of its positions.</summary>
/// <remarks>
/// The moves are up to three: the depth in the sheet (from 0 down), the angle that it has rocked by, the way that it has
/// travelled. The squared distance grows along a move by no more than the square of the way that the point makes beside the
/// component, which is what the search stands on: d² less that square is concave, for d² is the least of |p − q|² over all points q.
/// </remarks>
internal sealed class MovedComponent
{
    public const int MostMoves = 3;

    private readonly ComponentForm _form;
    private readonly InSpace _reference, _a, _b, _c, _pivot, _pivotAxis, _travel;
    private readonly int _rock = -1, _way = -1, _depth = -1;
    private readonly double[] _low = new double[MostMoves], _high = new double[MostMoves];

    public MovedComponent(Component component)
    {
        _form = component.Form;
        (_reference, _c) = (component.Stand.Reference, component.Stand.Axis);
        (_a, _b) = component.Stand.Across;
        // The deepest last: of equally near depths the face that is up is taken.
        foreach (var rock in component.Rocks.Take(1).Where(r => r.By > Angle.Zero))
        {
            (_pivot, _pivotAxis) = (new(rock.About.X, rock.About.Y, rock.Height), Stand.AxisOf(rock.Tilt, rock.Towards));
            _rock = Moves;
            (_low[Moves], _high[Moves++]) = (-rock.By.Radians, rock.By.Radians);
        }
        foreach (var travel in component.Travels.Take(1).Where(t => t.By > 0))
        {
            _travel = Stand.AxisOf(travel.Tilt, travel.Towards);
            _way = Moves;
            (_low[Moves], _high[Moves++]) = (0, travel.By);
        }
        if (component.Sheet <= 0) return;
        _depth = Moves;
        (_low[Moves], _high[Moves++]) = (0, component.Sheet);
    }

    public int Moves { get; private set; }

    public double Low(int move) => _low[move];

    public double High(int move) => _high[move];

    public bool IsTurn(int move) => move == _rock;

    /// <summary>How far from the axis that it rocks about a place of the sheet lies, at most.</summary>
    public double Reach(Point at)
    {
        if (_rock < 0) return 0;
        var reach = _pivotAxis.Cross(new InSpace(at.X, at.Y, 0) - _pivot).Length;
        for (var move = 0; move < Moves; move++) reach += move == _rock ? 0 : _high[move];
        return reach;
    }

    /// <summary>The square of the distance, and by how much it changes.</summary>
    /// <param name="at">The place on the face that is up.</param>
    /// <param name="moves">Depth, angle and way.</param>
    /// <param name="slopes">Half the derivative of the square by every move.</param>
    /// <param name="away">The way from the nearest point of the component, as it has moved, to the sheet's; nothing inside it.</param>
    /// <param name="feature">Which face, edge or corner is nearest.</param>
    public double Squared(Point at, ReadOnlySpan<double> moves, Span<double> slopes, out InSpace away, out int feature)
    {
        var p = new InSpace(at.X, at.Y, _depth < 0 ? 0 : -moves[_depth]);
        if (_way >= 0) p -= _travel * moves[_way];
        var (sin, cos) = _rock < 0 ? (0, 1) : Math.SinCos(moves[_rock]);
        // The component stays and the point moves the other way.
        var still = _rock < 0 ? p : _pivot + (p - _pivot).Turned(_pivotAxis, -sin, cos);
        var own = still - _reference;
        var from = _form.Away(new(own.Dot(_a), own.Dot(_b), own.Dot(_c)), out feature);
        var stillAway = _a * from.X + _b * from.Y + _c * from.Z;
        away = _rock < 0 ? stillAway : stillAway.Turned(_pivotAxis, sin, cos);
        if (_depth >= 0) slopes[_depth] = -away.Z;
        if (_way >= 0) slopes[_way] = -away.Dot(_travel);
        if (_rock >= 0) slopes[_rock] = -stillAway.Dot(_pivotAxis.Cross(still - _pivot));
        return from.Dot(from);
    }

    /// <summary>The way that a place of the sheet makes beside the component for one mm of depth or way, or one radian.</summary>
    public InSpace Speed(int move, Point at, ReadOnlySpan<double> moves)
    {
        if (move == _depth) return new(0, 0, -1);
        if (move == _way) return -_travel;
        var p = new InSpace(at.X, at.Y, _depth < 0 ? 0 : -moves[_depth]);
        if (_way >= 0) p -= _travel * moves[_way];
        return (p - _pivot).Cross(_pivotAxis);
    }

    /// <summary>A box of the drawing that holds the component as it is seen from above, in all its positions.</summary>
    public Box Bounds
    {
        get
        {
            var (low, high) = _form.Bounds;
            var (box, reach) = (new List<Point>(), 0.0);
            for (var corner = 0; corner < 8; corner++)
            {
                var at = _reference + _a * (corner % 2 == 0 ? low.X : high.X) + _b * (corner / 2 % 2 == 0 ? low.Y : high.Y) + _c * (corner < 4 ? low.Z : high.Z);
                box.Add(new(at.X, at.Y));
                if (_rock >= 0) reach = Math.Max(reach, _pivotAxis.Cross(at - _pivot).Length * _high[_rock]);
            }
            var still = Box.Around(box).Grown(reach);
            if (_way < 0) return still;
            var by = new Vector(_travel.X, _travel.Y) * _high[_way];
            return still.Joined(new(still.Min + by, still.Max + by));
        }
    }
}
