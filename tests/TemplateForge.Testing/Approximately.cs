using TemplateForge.Geometry;
using Xunit;

namespace TemplateForge.Testing;

/// <summary>Equal within a tolerance that stands beside the numbers.</summary>
public static class Approximately
{
    public static void Equal(double expected, double actual, double within)
    {
        // Not "more than within": that would let NaN pass.
        if (!(Math.Abs(actual - expected) <= within) && expected != actual)
            Assert.Fail($"Expected {expected:R} within {within:R}, got {actual:R}: {actual - expected:E3} too much.");
    }

    public static void Equal(Point expected, Point actual, double within)
    {
        if (!(expected.DistanceTo(actual) <= within))
            Assert.Fail($"Expected {expected} within {within:R}, got {actual}: {expected.DistanceTo(actual):E3} away.");
    }

    public static void Equal(Vector expected, Vector actual, double within)
    {
        if (!((expected - actual).Length <= within))
            Assert.Fail($"Expected {expected} within {within:R}, got {actual}: {(expected - actual).Length:E3} apart.");
    }

    public static void Equal(Angle expected, Angle actual, Angle within)
    {
        if (!(Math.Abs((actual - expected).Radians) <= within.Radians))
            Assert.Fail($"Expected {expected.Degrees:R}° within {within.Degrees:R}°, got {actual.Degrees:R}°.");
    }

    public static void Equal(Box expected, Box actual, double within)
    {
        Equal(expected.Min, actual.Min, within);
        Equal(expected.Max, actual.Max, within);
    }

    /// <summary>The same points in the same order.</summary>
    public static void Equal(IReadOnlyList<Point> expected, IReadOnlyList<Point> actual, double within)
    {
        if (expected.Count != actual.Count)
            Assert.Fail($"Expected {expected.Count} points, got {actual.Count}: {string.Join(", ", actual)}.");
        for (var i = 0; i < expected.Count; i++) Equal(expected[i], actual[i], within);
    }
}
