namespace TemplateForge.Geometry;

/// <summary>The arc about a corner between two strips that part.</summary>
internal static class Pie
{
    /// <summary>tan(a / 4) of its sweep a, from sine and cosine, by halving twice.</summary>
    /// <param name="sine">Of the sweep, which is less than a full reversal; its sign is that of the bulge.</param>
    /// <param name="cosine">Of the sweep.</param>
    public static double BulgeOf(double sine, double cosine)
    {
        // Where 1 + cosine has lost its digits the sine has not.
        var half = cosine > -0.9 ? sine / (1 + cosine) : (1 - cosine) / sine;
        return half / (1 + Math.Sqrt(1 + half * half));
    }
}
