namespace TemplateForge.Fabrication;

/// <summary>How much the free edge of a flange along an arc is stretched or shrunk when it is turned.</summary>
/// <remarks>
/// The simple radial model: every point of the flange keeps its bearing from the arc's centre and ends at the radius of the bend.
/// General mechanics; figures in EdgeStrainTests. It knows no thinning and no sheared edge, which splits earlier than a smooth one.
/// </remarks>
public static class EdgeStrain
{
    /// <summary>Of a flange inside an arc, such as round a hole: its edge gets longer.</summary>
    /// <param name="radius">Of the bend line, in mm.</param>
    /// <param name="height">Of the flange on the flat, in mm: 0 or more, less than the radius.</param>
    /// <returns>R / (R − h) − 1: the growth as a share of the edge's length on the flat.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the range given beside it.</exception>
    public static double Stretch(double radius, double height)
    {
        Check(radius, height);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(height, radius);
        return radius / (radius - height) - 1;
    }

    /// <summary>Of a flange outside an arc, such as round a disc: its edge gets shorter, and gathers.</summary>
    /// <param name="radius">Of the bend line, in mm, more than 0.</param>
    /// <param name="height">Of the flange on the flat, in mm, 0 or more.</param>
    /// <returns>ln((R + h) / R): the true strain, as a positive number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the range given beside it.</exception>
    public static double Shrink(double radius, double height)
    {
        Check(radius, height);
        return Math.Log((radius + height) / radius);
    }

    private static void Check(double radius, double height)
    {
        if (!(radius > 0 && double.IsFinite(radius)))
            throw new ArgumentOutOfRangeException(nameof(radius), radius, "A radius is more than 0.");
        if (!(height >= 0 && double.IsFinite(height)))
            throw new ArgumentOutOfRangeException(nameof(height), height, "A height is 0 or more.");
    }
}
