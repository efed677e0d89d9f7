using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Bending;

/// <summary>A flat section folded up again, from the places of its tangent lines alone; shares nothing with the unfolding.</summary>
/// <remarks>
/// Walks the line that keeps its length: where the flat has a bend, the width between the tangent lines is wound round a circle of the
/// inside radius and the depth of the neutral line. The faces lie that depth above and the rest of the thickness below.
/// </remarks>
internal sealed class RefoldedSection
{
    private readonly List<Leg> _legs = [];
    private readonly List<Turn> _turns = [];
    private readonly double _thickness;

    /// <param name="flat">What is folded up.</param>
    /// <param name="depth">Depth of the neutral line below the inside, in thicknesses, for each bend; by default what its angle needs.</param>
    public RefoldedSection(FlatSection flat, Func<Bend, double>? depth = null)
    {
        _thickness = flat.Section.Thickness;
        var (x, y, heading, along) = (0.0, 0.0, 0.0, 0.0);
        foreach (var bend in flat.Bends)
        {
            Straight(bend.FirstTangent - along);
            var width = bend.LastTangent - bend.FirstTangent;
            var inside = bend.Bend.InsideRadius;
            var neutral = depth is null ? width / bend.Bend.Angle.Radians : inside + depth(bend.Bend) * _thickness;
            var side = bend.Way == BendWay.Up ? 1 : -1;
            // The walk is along the upper face; round a bend its radius is the inside one where the bend turns up.
            var face = side > 0 ? inside : inside + _thickness;
            var angle = width / neutral;
            var centre = new Point(x - side * face * Math.Sin(heading), y + side * face * Math.Cos(heading));
            _turns.Add(new(centre, heading, angle, side, inside));
            heading += side * angle;
            (x, y) = (centre.X + side * face * Math.Sin(heading), centre.Y - side * face * Math.Cos(heading));
            along = bend.LastTangent;
        }
        Straight(flat.Length - along);

        void Straight(double length)
        {
            var start = new Point(x, y);
            (x, y) = (x + length * Math.Cos(heading), y + length * Math.Sin(heading));
            _legs.Add(new(start, new(x, y), heading));
        }
    }

    /// <summary>How far each bend turns, in radians.</summary>
    public IEnumerable<double> Angles => _turns.Select(t => t.Angle);

    /// <summary>How far the last leg's upper face lies from the first one's.</summary>
    public double Step => Math.Abs(_legs[^1].Start.Y - _legs[0].Start.Y);

    /// <summary>The length of a leg, from 0, as somebody would measure it on the bent part.</summary>
    public double Measured(int leg, MeasuredBy by)
    {
        var (start, end, heading) = _legs[leg];
        var along = new Vector(Math.Cos(heading), Math.Sin(heading));
        var from = leg == 0 || by == MeasuredBy.TangentLine ? start : Mark(_turns[leg - 1], heading, -1, by);
        var to = leg == _turns.Count || by == MeasuredBy.TangentLine ? end : Mark(_turns[leg], heading, +1, by);
        return (to - from).Dot(along);
    }

    /// <summary>How near the middles of two legs that do not share a bend come to each other, in thicknesses.</summary>
    public double Nearest
    {
        get
        {
            var nearest = double.PositiveInfinity;
            for (var i = 0; i < _legs.Count; i++)
            {
                for (var j = i + 2; j < _legs.Count; j++) nearest = Math.Min(nearest, Between(Middle(_legs[i]), Middle(_legs[j])));
            }
            return nearest / _thickness;
        }
    }

    // Where the measuring ends at a bend. From each of its ends: the leg's own face and the next leg's meet, or the round stands out furthest.
    private Point Mark(Turn turn, double heading, int forward, MeasuredBy by)
    {
        var radius = turn.Inside + (by == MeasuredBy.Inside ? 0 : _thickness);
        var touch = new List<Point>();
        foreach (var tangent in new[] { turn.Heading, turn.Heading + turn.Side * turn.Angle }) touch.Add(turn.At(radius, tangent));
        var (first, last) = (new Vector(Math.Cos(turn.Heading), Math.Sin(turn.Heading)),
            new Vector(Math.Cos(turn.Heading + turn.Side * turn.Angle), Math.Sin(turn.Heading + turn.Side * turn.Angle)));
        if (by == MeasuredBy.MouldLine || turn.Angle <= Math.PI / 2)
        {
            return touch[0] + first * ((touch[1] - touch[0]).Cross(last) / first.Cross(last));
        }
        var outwards = new Vector(Math.Cos(heading), Math.Sin(heading)) * forward;
        return turn.Centre + outwards * radius;
    }

    private (Point, Point) Middle(Leg leg)
    {
        var down = new Vector(Math.Sin(leg.Heading), -Math.Cos(leg.Heading)) * (_thickness / 2);
        return (leg.Start + down, leg.End + down);
    }

    private static double Between((Point A, Point B) one, (Point A, Point B) other)
    {
        var nearest = double.PositiveInfinity;
        for (var i = 0; i <= 60; i++)
        {
            nearest = Math.Min(nearest, ToLine(one.A + (one.B - one.A) * (i / 60.0), other));
            nearest = Math.Min(nearest, ToLine(other.A + (other.B - other.A) * (i / 60.0), one));
        }
        return nearest;
    }

    private static double ToLine(Point point, (Point A, Point B) line)
    {
        var run = line.B - line.A;
        var share = run.LengthSquared > 0 ? Math.Clamp((point - line.A).Dot(run) / run.LengthSquared, 0, 1) : 0;
        return point.DistanceTo(line.A + run * share);
    }

    private readonly record struct Leg(Point Start, Point End, double Heading);

    private readonly record struct Turn(Point Centre, double Heading, double Angle, int Side, double Inside)
    {
        public Point At(double radius, double tangent) => Centre + new Vector(Side * Math.Sin(tangent), -Side * Math.Cos(tangent)) * radius;
    }
}
