namespace TemplateForge.Geometry;

/// <summary>The one place where nearness is decided.</summary>
public static class Tolerance
{
    /// <summary>Points this close are one point, in mm. At 100 m a double still tells 1.5e-11 mm apart.</summary>
    public const double Merge = 1e-7;

    /// <summary>How near a result is promised to be, in mm: ten times <see cref="Merge"/>, which merging uses up.</summary>
    public const double Length = 1e-6;

    /// <summary>How far a curve that becomes arcs (an ellipse) may stray from itself, in mm.</summary>
    public const double Curve = 0.001;

    /// <summary>Area, in mm², that a boundary this long gains when every point moves out by <see cref="Length"/>.</summary>
    public static double Area(double boundaryLength) => Length * boundaryLength;
}
