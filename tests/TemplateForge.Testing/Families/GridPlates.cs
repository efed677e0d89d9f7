using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Plates with holes, all corners, radii and centres on a grid, offset by multiples of half of it: where edges and arcs coincide.</summary>
internal static class GridPlates
{
    public static Trial Draw(Random dice) =>
        Trial.Of(dice.GridOffset(), dice.GridLength(), Plate(dice).Contours, Plate(dice).Contours);

    /// <summary>One with an area.</summary>
    public static Region Plate(Random dice)
    {
        while (true)
        {
            var plate = Shapes.GridRegion.Case(dice.Next());
            if (!plate.IsEmpty) return plate;
        }
    }
}
