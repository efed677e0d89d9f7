using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A side of a base as a frame of its own: along it from its start, and outwards from it.</summary>
internal sealed record BaseEdge(Segment Side)
{
    /// <summary>Nothing is bent round less, in mm.</summary>
    public const double LeastRadius = 1;

    public double Length => Side.Length;

    /// <summary>Whether flanges on it fan out: its centre lies in the metal.</summary>
    public bool IsConvex => Side.Bulge > 0;

    /// <summary>Radius of an arc at a distance outwards; without end of a line.</summary>
    public double RadiusAt(double outwards) => Side.Radius + (IsConvex ? outwards : -outwards);

    public Point At(double along, double outwards)
    {
        if (Side.IsLine) return Side.Start + Side.StartDirection * along - Side.StartDirection.Left * outwards;
        return Side.Centre + Vector.Polar(RadiusAt(outwards), (Side.Start - Side.Centre).Direction + Angle.FromRadians(along / Side.Radius * Math.Sign(Side.Bulge)));
    }

    /// <summary>How far outwards a point lies, and the way in which that grows.</summary>
    public (double Outwards, Vector Way) From(Point point)
    {
        if (Side.IsLine) return (-(point - Side.Start).Dot(Side.StartDirection.Left), -Side.StartDirection.Left);
        var out0 = point - Side.Centre;
        return IsConvex ? (out0.Length - Side.Radius, out0.Unit) : (Side.Radius - out0.Length, -out0.Unit);
    }

    /// <summary>How far a point lies past the end as one goes along the side, below 0 where it lies before it.</summary>
    public double PastEnd(Point point) => Side.IsLine
        ? (point - Side.End).Dot(Side.EndDirection)
        : Side.Radius * Turned((Side.End - Side.Centre).Direction, (point - Side.Centre).Direction) * Math.Sign(Side.Bulge);

    /// <summary>The same before its start.</summary>
    public double BeforeStart(Point point) => new BaseEdge(Side.Reversed()).PastEnd(point);

    /// <summary>A line that keeps its distance from the side.</summary>
    public Segment Beside(double outwards, double from, double to)
    {
        var (start, end) = (At(from, outwards), At(to, outwards));
        if (Side.IsLine) return Segment.Line(start, end);
        // Of half a circle rounding makes a hair more.
        var bulge = Math.Tan((to - from) / Side.Radius / 4);
        return Segment.Arc(start, end, (bulge is > 1 and < 1 + 1e-9 ? 1 : bulge) * Math.Sign(Side.Bulge));
    }

    /// <summary>What lies between two such lines.</summary>
    public Contour Strip(double inner, double innerFrom, double innerTo, double outer, double outerFrom, double outerTo)
    {
        var (near, far) = (Beside(inner, innerFrom, innerTo), Beside(outer, outerFrom, outerTo).Reversed());
        return new(near, Segment.Line(near.End, far.Start), far, Segment.Line(far.End, near.Start));
    }

    private static double Turned(Angle from, Angle to)
    {
        var by = (to - from).Radians;
        return by - 2 * Math.PI * Math.Round(by / (2 * Math.PI));
    }
}
