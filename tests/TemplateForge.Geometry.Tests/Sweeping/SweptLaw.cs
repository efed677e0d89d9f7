using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

internal static class SweptLaw
{
    /// <summary>A point was passed over when the region, moved back along the way, holds it somewhere.</summary>
    public static void IsSwept(Region swept, Region source, Vector by)
    {
        var (answer, asked) = (new ByDefinition(swept), new ByDefinition(source));
        foreach (var (point, _) in Law.BoundarySamples(swept, perSegment: 1))
        {
            var nearest = Nearest(asked, point, by);
            Law.Holds(Math.Abs(nearest) <= Tolerance.Length, $"{point} of the boundary was missed by {nearest}");
        }
        foreach (var (point, along) in Law.BoundarySamples(source, perSegment: 1))
        {
            foreach (var beside in (ReadOnlySpan<Point>)[
                point + by + along.Left * 0.01, point + by - along.Left * 0.01, point + by / 2, point - along.Left * 0.01])
            {
                var nearest = Nearest(asked, beside, by);
                if (Math.Abs(nearest) < 1e-4) continue;
                Law.Holds(answer.Encloses(beside) == nearest < 0, $"{beside} was missed by {nearest}");
            }
        }
    }

    /// <summary>The least signed distance from the region that the point has on the way back, by narrowing down.</summary>
    private static double Nearest(ByDefinition source, Point point, Vector by)
    {
        const int Steps = 24;
        double At(double share) => source.SignedDistance(point - by * share);
        var shares = Enumerable.Range(0, Steps + 1).Select(i => (double)i / Steps).OrderBy(At).Take(3);
        return shares.Min(share =>
        {
            var (from, to) = (Math.Max(0, share - 1.0 / Steps), Math.Min(1, share + 1.0 / Steps));
            for (var i = 0; i < 30; i++)
            {
                var (a, b) = (from + (to - from) * 0.382, from + (to - from) * 0.618);
                if (At(a) < At(b)) to = b;
                else from = a;
            }
            return Math.Min(At(share), Math.Min(At(from), At(to)));
        });
    }
}
