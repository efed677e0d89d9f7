using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A board or sheet of which a shop makes jig plates.</summary>
/// <param name="Name">By which profiles call it.</param>
/// <param name="Title">As it is printed.</param>
/// <param name="Thickness">In mm.</param>
/// <param name="Density">In kg/m³.</param>
/// <param name="Burns">Whether it is wood or board, which never lies under a torch.</param>
/// <param name="Guides">What it may guide.</param>
/// <param name="IsKept">Whether it is worth keeping for the next job; a board is for once.</param>
public sealed record PlateStock(
    string Name, string Title, double Thickness, double Density, bool Burns, ImmutableArray<GuideKind> Guides, bool IsKept)
{
    /// <summary>A stand-in until one is found.</summary>
    public static PlateStock Unstated { get; } = new("", "", 1, 0, false, [], false);

    public bool Takes(GuideKind kind) => Guides.Contains(kind) && !(Burns && kind == GuideKind.Shroud);

    /// <summary>As the metal of a piece: it has a name and a weight, and is never bent.</summary>
    public Material Material => Material.Unstated with { Name = Name, Title = Title, Density = Density };
}
