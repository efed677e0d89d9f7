using System.Runtime.Intrinsics;

namespace TemplateForge.Geometry;

/// <summary>An upright rectangle about an edge, made to be compared fast: (min x, min y, −max x, −max y).</summary>
/// <remarks>With the greatest values negated, joining is one minimum of four, and touching one addition and one comparison.</remarks>
internal readonly struct Bounds(Vector256<double> sides)
{
    private readonly Vector256<double> _sides = sides;

    /// <summary>Holds nothing yet.</summary>
    public static Bounds None => new(Vector256.Create(double.PositiveInfinity));

    /// <summary>Holds a line, or an arc of at most half a circle, and every point nearer to it than a margin.</summary>
    /// <remarks>Such an arc lies in the rectangle over its chord that is as high as it rises.</remarks>
    public static Bounds Around(Point start, Point end, double bulge, double margin)
    {
        var (minX, maxX) = start.X < end.X ? (start.X, end.X) : (end.X, start.X);
        var (minY, maxY) = start.Y < end.Y ? (start.Y, end.Y) : (end.Y, start.Y);
        if (bulge != 0)
        {
            var rise = (end - start).Left * (-bulge / 2);
            if (rise.X < 0) minX += rise.X;
            else maxX += rise.X;
            if (rise.Y < 0) minY += rise.Y;
            else maxY += rise.Y;
        }
        return new(Vector256.Create(minX - margin, minY - margin, -maxX - margin, -maxY - margin));
    }

    public static Bounds Around(Point point, double margin) => Around(point, point, 0, margin);

    /// <summary>All that lies to the left of a point, level with it.</summary>
    public static Bounds LeftFrom(Point point) => new(Vector256.Create(double.NegativeInfinity, point.Y, -point.X, -point.Y));

    public double MinX => _sides.GetElement(0);
    public double MinY => _sides.GetElement(1);
    public double MaxX => -_sides.GetElement(2);
    public double MaxY => -_sides.GetElement(3);

    public Bounds Joined(Bounds other) => new(Vector256.Min(_sides, other._sides));

    public bool Touches(Bounds other)
    {
        var opposite = Vector256.Create(other._sides.GetUpper(), other._sides.GetLower());
        return Vector256.LessThanOrEqualAll(_sides + opposite, Vector256<double>.Zero);
    }

    public bool Contains(Point p) => p.X >= MinX && p.X <= MaxX && p.Y >= MinY && p.Y <= MaxY;
}
