using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A sheet metal as a shop knows it.</summary>
/// <param name="Name">Short name in small letters, digits and hyphens, by which profiles call it.</param>
/// <param name="Title">As it is printed.</param>
/// <param name="Family">What it is for corrosion and welding.</param>
/// <param name="Density">In kg/m³.</param>
/// <param name="LeastInsideRadius">The least inside radius of a bend, in thicknesses.</param>
/// <param name="NeutralLine">The K-factor: how far from the inside of a bend the line lies that keeps its length, in thicknesses; 0 to 0.5.</param>
/// <param name="StretchLimit">How far an edge may be stretched before it splits, as a share of its length; thin sheet may take less, see <see cref="StretchLimitAt"/>.</param>
/// <param name="IsZincCoated">Whether it is galvanised: its zinc gives fumes when it is welded.</param>
public sealed record Material(
    string Name, string Title, MetalFamily Family, double Density, double LeastInsideRadius, double NeutralLine, double StretchLimit,
    bool IsZincCoated)
{
    /// <summary>Of a piece of which nobody has said what it is made; it has no weight and no limits.</summary>
    public static Material Unstated { get; } = new("", "", MetalFamily.Other, 0, 0, 0, double.PositiveInfinity, false);

    /// <summary>The zinc on it, where <see cref="IsZincCoated"/> and somebody has said how much.</summary>
    public ZincCoating Zinc { get; init; }

    /// <summary>Where thin sheet may be stretched less than <see cref="StretchLimit"/>: how far, up to a thickness.</summary>
    public ByThickness ThinStretchLimits { get; init; } = ByThickness.Unstated;

    /// <summary>What the sheet yields under at most as it is sold, in N/mm²; without end where nobody has said.</summary>
    public double GreatestYield { get; init; } = double.PositiveInfinity;

    /// <summary>Its row in the table of <see cref="Fabrication.Springback"/>; empty where it has none.</summary>
    public string SpringbackRow { get; init; } = "";

    /// <summary>The thicknesses in which it is sold, from the thinnest up; none where nobody has said.</summary>
    public ImmutableArray<SheetThickness> Thicknesses { get; init; } = [];

    /// <summary>The thinnest sheet that is sold and is no thinner than this, in mm.</summary>
    /// <returns>Whether there is one.</returns>
    public bool TryThickness(double atLeast, out SheetThickness thickness)
    {
        thickness = Thicknesses.FirstOrDefault(t => t.Millimetres >= atLeast - Geometry.Tolerance.Length);
        return thickness.Millimetres > 0;
    }

    /// <summary>How far an edge of a sheet so thick, in mm, may be stretched before it splits, as a share of its length.</summary>
    public double StretchLimitAt(double thickness) => ThinStretchLimits.TryFind(thickness, out var thin) ? thin : StretchLimit;

    /// <summary>Weight in kg of a flat piece.</summary>
    /// <param name="area">In mm².</param>
    /// <param name="thickness">In mm.</param>
    public double WeightOf(double area, double thickness) => area * thickness * Density * 1e-9;
}

/// <summary>Families of metals: two of different families corrode where they touch.</summary>
public enum MetalFamily
{
    Steel,
    StainlessSteel,
    Aluminium,
    Other,
}
