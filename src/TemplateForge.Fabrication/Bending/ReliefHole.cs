namespace TemplateForge.Fabrication;

/// <summary>The hole that is drilled where two bends cross, so that the corner does not tear. Its middle lies where the inside tangent lines cross.</summary>
public static class ReliefHole
{
    private const double Inch = 25.4;

    // The handbook's sheets: up to 0.064 in, and 0.072 to 0.128 in.
    private static readonly ByThickness Least = new((0.064 * Inch, Inch / 8), (0.128 * Inch, 3 * Inch / 16));

    /// <summary>Diameter in mm: twice the bend's inside radius, and no less than 1/8 in, or 3/16 in for sheet over 0.064 in.</summary>
    /// <param name="insideRadius">The larger of the two bends', in mm, 0 or more.</param>
    /// <param name="thickness">Of the sheet, in mm, more than 0.</param>
    /// <param name="diameter">What was found.</param>
    /// <returns>Whether the handbook goes so far: to 0.128 in, 3.25 mm.</returns>
    /// <remarks>
    /// FAA-H-8083-31, volume 1, chapter 4. Another sentence there takes the bend radius itself, not less than 1/8 in; the larger is used.
    /// </remarks>
    public static bool TryDiameter(double insideRadius, double thickness, out double diameter)
    {
        var known = Least.TryFind(thickness, out var least);
        diameter = known ? Math.Max(2 * insideRadius, least) : 0;
        return known;
    }
}
