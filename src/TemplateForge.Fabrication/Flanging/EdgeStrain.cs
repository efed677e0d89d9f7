namespace TemplateForge.Fabrication;

/// <summary>How much the free edge of a flange along an arc is stretched or shrunk when it is turned.</summary>
/// <remarks>
/// The simple radial model: every point of the flange keeps its bearing from the arc's centre. General mechanics; figures in EdgeStrainTests.
/// It knows no thinning and no sheared edge, which splits earlier than a smooth one.
/// </remarks>
public static class EdgeStrain
{
    /// <summary>As a share of the edge's length on the flat: above 0 where it gets longer, below 0 where it gathers.</summary>
    /// <param name="flat">Radius of the edge on the flat, in mm, more than 0.</param>
    /// <param name="folded">Its radius when the flange is turned, in mm, more than 0.</param>
    /// <returns>Round a hole of radius R with a flange that is h wide on the flat: R / (R − h) − 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A radius is not more than 0.</exception>
    public static double Share(double flat, double folded)
    {
        Check(flat, nameof(flat));
        Check(folded, nameof(folded));
        return folded / flat - 1;
    }

    /// <summary>The true strain: ln(R / (R − h)) stretched, −ln((R + h) / R) shrunk.</summary>
    /// <param name="flat">Radius of the edge on the flat, in mm, more than 0.</param>
    /// <param name="folded">Its radius when the flange is turned, in mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A radius is not more than 0.</exception>
    public static double True(double flat, double folded) => Math.Log(1 + Share(flat, folded));

    private static void Check(double radius, string name)
    {
        if (!(radius > 0 && double.IsFinite(radius))) throw new ArgumentOutOfRangeException(name, radius, "A radius is more than 0.");
    }
}
