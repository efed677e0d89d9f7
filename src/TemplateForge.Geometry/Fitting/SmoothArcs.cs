using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Any curve as arcs and lines that join without a corner, few and within a tolerance of it.</summary>
/// <remarks>
/// The arcs run through the curve's ends, in its directions there, and join with a corner only where the curve has one (a cusp).
/// They stray from it by no more than the tolerance, which is checked at samples, 16 or more for each pair of arcs; details finer than
/// one part in 2000 of the parameter's range are not seen. Arcs that need not join smoothly, each as long as it can be, would be the
/// least possible: ∫ ∛(|κ'| / (192 ε)) ds of them, κ being the curvature over the length s. Here they are about 1.4 times as many
/// (1.155 is the price of joining smoothly; the rest is that of ends and of inflections), see docs/accuracy.md.
/// </remarks>
public static class SmoothArcs
{
    /// <summary>The points of a function, from one value of its parameter to another.</summary>
    /// <param name="curve">The point for each value of the parameter; continuous, and smooth but for some corners.</param>
    /// <param name="from">The parameter at the start.</param>
    /// <param name="to">The parameter at the end, which is larger.</param>
    /// <param name="tolerance">How far, in mm, the arcs may stray.</param>
    /// <exception cref="ArgumentException">The curve has no length or no place, its range is empty, or it asks for over 2000 pairs of arcs between two corners.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is less than <see cref="Tolerance.Length"/>.</exception>
    public static Path Along(Func<double, Point> curve, double from, double to, double tolerance = Tolerance.Curve) =>
        new(Fitted(new Course(curve, derivative: null, from, to), tolerance, closed: false));

    /// <summary>The points of a function whose derivative is known, which makes the directions exact; it may vanish here and there.</summary>
    /// <inheritdoc cref="Along(Func{double, Point}, double, double, double)"/>
    public static Path Along(
        Func<double, Point> curve, Func<double, Vector> derivative, double from, double to, double tolerance = Tolerance.Curve) =>
        new(Fitted(new Course(curve, derivative, from, to), tolerance, closed: false));

    /// <summary>A function that ends where it begins. The arcs join without a corner there too, unless the curve has one.</summary>
    /// <inheritdoc cref="Along(Func{double, Point}, double, double, double)"/>
    public static Contour Around(Func<double, Point> curve, double from, double to, double tolerance = Tolerance.Curve)
    {
        if (!(curve(from).DistanceTo(curve(to)) <= Tolerance.Merge))
            throw new ArgumentException($"The curve begins at {curve(from)} and ends at {curve(to)}.", nameof(curve));
        return new(Fitted(new Course(curve, derivative: null, from, to), tolerance, closed: true));
    }

    /// <summary>A Bézier curve of the second degree.</summary>
    /// <exception cref="ArgumentException">The three points are one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is less than <see cref="Tolerance.Length"/>.</exception>
    public static Path Quadratic(Point start, Point control, Point end, double tolerance = Tolerance.Curve) =>
        Cubic(start, start + (control - start) * (2.0 / 3), end + (control - end) * (2.0 / 3), end, tolerance);

    /// <summary>A Bézier curve of the third degree. Where it begins and ends with no speed, its direction there is the limit.</summary>
    /// <exception cref="ArgumentException">The four points are one.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is less than <see cref="Tolerance.Length"/>.</exception>
    public static Path Cubic(Point start, Point control1, Point control2, Point end, double tolerance = Tolerance.Curve)
    {
        var (a, b, c) = (control1 - start, control2 - control1, end - control2);
        Point At(double t) => start + a * (3 * t * (1 - t) * (1 - t) + 3 * t * t * (1 - t) + t * t * t)
            + b * (3 * t * t * (1 - t) + t * t * t) + c * (t * t * t);
        Vector Derivative(double t) => (a * ((1 - t) * (1 - t)) + b * (2 * t * (1 - t)) + c * (t * t)) * 3;
        return Along(At, Derivative, 0, 1, tolerance);
    }

    /// <summary>A part of an ellipse.</summary>
    /// <param name="centre">Centre.</param>
    /// <param name="halfAxisX">Half the length along x before it is turned.</param>
    /// <param name="halfAxisY">Half the length along y before it is turned.</param>
    /// <param name="turned">Angle that it is turned by about its centre.</param>
    /// <param name="from">Where it starts: the angle t in (a cos t, b sin t).</param>
    /// <param name="to">Where it ends, counter-clockwise from there.</param>
    /// <param name="tolerance">How far, in mm, the arcs may stray.</param>
    /// <exception cref="ArgumentException">The part has no length.</exception>
    public static Path Ellipse(
        Point centre, double halfAxisX, double halfAxisY, Angle turned, Angle from, Angle to, double tolerance = Tolerance.Curve) => Along(
            t => centre + new Vector(halfAxisX * Math.Cos(t), halfAxisY * Math.Sin(t)).Turned(turned),
            t => new Vector(-halfAxisX * Math.Sin(t), halfAxisY * Math.Cos(t)).Turned(turned),
            from.Radians, to.Radians, tolerance);

    /// <summary>A smooth curve through points in their order: between two of them a cubic, its direction at each that of the parabola
    /// through it and both neighbours, over the length of the chords.</summary>
    /// <exception cref="ArgumentException">There are fewer than two points; repeated ones count once.</exception>
    public static Path Through(IEnumerable<Point> points, double tolerance = Tolerance.Curve)
    {
        var course = Interpolation.Through(points);
        return Along(course.At, course.Derivative, 0, course.Length, tolerance);
    }

    // 1. Pieces: the course between corners.
    // 2. Knots: shares of a piece that ask for equally many arcs. Evened out until the errors of all spans between knots are alike.
    // 3. Arcs: two for each span, through its knots.
    // 4. One span more, until the error is within the tolerance.
    private static ImmutableArray<Segment> Fitted(Course course, double tolerance, bool closed)
    {
        if (!(tolerance >= Tolerance.Length && double.IsFinite(tolerance)))
            throw new ArgumentOutOfRangeException(nameof(tolerance), tolerance, "Results are no nearer than that to anything.");
        var pieces = course.Pieces();
        if (pieces.Length == 0) throw new ArgumentException("A curve has a length.", nameof(course));
        var seamless = closed && pieces.Length == 1 && pieces[0].ClosesSmoothly;
        return [.. pieces.SelectMany(piece => new Spans(piece, seamless, tolerance).Fitted())];
    }
}
