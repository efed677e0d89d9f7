namespace TemplateForge.Geometry;

/// <summary>Where, along the whole line or circle of one curve, it crosses the whole line or circle of another.</summary>
/// <param name="Nearest">The place midway between two crossings, or where the curves come nearest to each other.</param>
/// <param name="Exists">Whether there are crossings; they may be one point.</param>
/// <param name="First">A crossing.</param>
/// <param name="Second">The other crossing.</param>
internal readonly record struct Crossing(double Nearest, bool Exists, double First, double Second)
{
    /// <remarks>Along the followed curve the power of the other is (a w² + 2 h w + f) / (1 + κ² w²).</remarks>
    public static Crossing Of(in Curve followed, in Curve other)
    {
        var gradient = other.PowerGradient(followed.Apex);
        var f = other.Power(followed.Apex);
        var h = gradient.Dot(followed.Along);
        var a = f * followed.Curvature * followed.Curvature
            + 2 * (other.Curvature + followed.Curvature * gradient.Dot(followed.Along.Left));

        var discriminant = h * h - a * f;
        if (discriminant < 0) return new(-h / a, false, double.NaN, double.NaN);
        var q = -(h + Math.CopySign(Math.Sqrt(discriminant), h));
        return new(-h / a, true, q / a, f / q);
    }
}
