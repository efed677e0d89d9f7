namespace TemplateForge.Geometry;

/// <summary>The simple shapes, each as a counter-clockwise contour. Lengths in mm.</summary>
public static class Outline
{
    /// <exception cref="ArgumentOutOfRangeException">The radius is not more than 0.</exception>
    public static Contour Circle(Point centre, double radius)
    {
        Positive(radius, nameof(radius));
        Point right = new(centre.X + radius, centre.Y), left = new(centre.X - radius, centre.Y);
        return new(Segment.Arc(right, left, bulge: 1), Segment.Arc(left, right, bulge: 1));
    }

    /// <exception cref="ArgumentException">The box has no width or no height.</exception>
    public static Contour Rectangle(Box box) =>
        Polygon(box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y));

    /// <param name="box">What the rectangle fills.</param>
    /// <param name="radius">Corner radius, from 0 (sharp) to half the shorter side, which leaves no straight between two corners.</param>
    /// <exception cref="ArgumentOutOfRangeException">The radius lies outside that range.</exception>
    public static Contour RoundedRectangle(Box box, double radius)
    {
        var most = Math.Min(box.Width, box.Height) / 2;
        if (!(radius >= 0 && radius <= most + Tolerance.Merge))
            throw new ArgumentOutOfRangeException(nameof(radius), radius, $"Corners of this rectangle have a radius of 0 to {most}.");
        if (radius < Tolerance.Merge) return Rectangle(box);

        var r = Math.Min(radius, most);
        var (low, high) = (box.Min, box.Max);
        // Where no straight is left, the corners meet in one point, not in two that differ by rounding.
        var (left, right) = box.Width - 2 * r < Tolerance.Merge ? (box.Centre.X, box.Centre.X) : (low.X + r, high.X - r);
        var (lower, upper) = box.Height - 2 * r < Tolerance.Merge ? (box.Centre.Y, box.Centre.Y) : (low.Y + r, high.Y - r);
        var outline = new Joiner();
        outline.LineTo(new(left, low.Y), new(right, low.Y));
        outline.ArcTo(new(high.X, lower), QuarterCircle);
        outline.LineTo(new(high.X, lower), new(high.X, upper));
        outline.ArcTo(new(right, high.Y), QuarterCircle);
        outline.LineTo(new(right, high.Y), new(left, high.Y));
        outline.ArcTo(new(low.X, upper), QuarterCircle);
        outline.LineTo(new(low.X, upper), new(low.X, lower));
        outline.ArcTo(new(left, low.Y), QuarterCircle);
        return new(outline.Segments);
    }

    /// <summary>A slot with round ends about two points; a circle where they are one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is not more than 0.</exception>
    public static Contour Slot(Point from, Point to, double width)
    {
        Positive(width, nameof(width));
        if (from.DistanceTo(to) < Tolerance.Merge) return Circle(from, width / 2);
        var aside = (to - from).Unit.Left * (width / 2);
        return new(
            Segment.Line(from - aside, to - aside),
            Segment.Arc(to - aside, to + aside, bulge: 1),
            Segment.Line(to + aside, from + aside),
            Segment.Arc(from + aside, from - aside, bulge: 1));
    }

    /// <summary>Straight from point to point and back to the first, whichever way round they were given. Repeated points count once.</summary>
    /// <exception cref="ArgumentException">The points enclose no area.</exception>
    public static Contour Polygon(params IEnumerable<Point> points)
    {
        var corners = new List<Point>();
        foreach (var p in points)
        {
            if (corners.Count == 0 || corners[^1].DistanceTo(p) >= Tolerance.Merge) corners.Add(p);
        }
        while (corners.Count > 1 && corners[^1].DistanceTo(corners[0]) < Tolerance.Merge) corners.RemoveAt(corners.Count - 1);
        if (corners.Count < 3) throw new ArgumentException("A polygon has at least three corners.", nameof(points));

        var polygon = new Contour(corners.Select((p, i) => Segment.Line(p, corners[(i + 1) % corners.Count])));
        if (polygon.Area <= Tolerance.Merge * polygon.Length / 2) throw new ArgumentException("The points of a polygon enclose an area.", nameof(points));
        return polygon.IsCounterClockwise ? polygon : polygon.Reversed();
    }

    /// <summary>An ellipse as arcs that join without a corner, as few as stay within the tolerance of the true curve.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="halfAxisX">Half the length along x before it is turned.</param>
    /// <param name="halfAxisY">Half the length along y before it is turned.</param>
    /// <param name="turned">Angle that it is turned by about its centre.</param>
    /// <param name="tolerance">How far, in mm, the arcs may stray from the ellipse.</param>
    /// <exception cref="ArgumentOutOfRangeException">A length is not more than 0, or one axis is over 1000 times the other.</exception>
    public static Contour Ellipse(
        Point centre, double halfAxisX, double halfAxisY, Angle turned, double tolerance = Tolerance.Curve)
    {
        Positive(halfAxisX, nameof(halfAxisX));
        Positive(halfAxisY, nameof(halfAxisY));
        Positive(tolerance, nameof(tolerance));
        if (Math.Max(halfAxisX, halfAxisY) > 1000 * Math.Min(halfAxisX, halfAxisY))
            throw new ArgumentOutOfRangeException(nameof(halfAxisY), halfAxisY, $"Not an ellipse but a needle beside {halfAxisX}.");
        if (halfAxisX == halfAxisY) return Circle(centre, halfAxisX);
        return EllipseArcs.Around(halfAxisX, halfAxisY, tolerance)
            .Placed(Placement.Turned(turned, Point.Origin).Then(Placement.Moved(centre - Point.Origin)));
    }

    private const double QuarterCircle = 0.41421356237309504880; // tan(90° / 4) = √2 − 1

    private static void Positive(double length, string name)
    {
        if (!(length > 0 && double.IsFinite(length))) throw new ArgumentOutOfRangeException(name, length, "A length is more than 0.");
    }

    /// <summary>Runs of segments; a line without length is left out.</summary>
    private sealed class Joiner
    {
        public List<Segment> Segments { get; } = [];
        private Point _at;

        public void LineTo(Point from, Point to)
        {
            if (from.DistanceTo(to) >= Tolerance.Merge) Segments.Add(Segment.Line(from, to));
            _at = to;
        }

        public void ArcTo(Point to, double bulge)
        {
            Segments.Add(Segment.Arc(_at, to, bulge));
            _at = to;
        }
    }
}
