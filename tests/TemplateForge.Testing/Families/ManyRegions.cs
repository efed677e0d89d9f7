using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Three to a dozen plates, discs and slots on the grid that overlap, touch and hide one another.</summary>
internal static class ManyRegions
{
    public static Trial Draw(Random dice) => Trial.Of(
        dice.GridOffset(), dice.GridLength(), Enumerable.Range(0, dice.Next(3, 13)).Select(IEnumerable<Contour> (_) => Part(dice)));

    private static ImmutableArray<Contour> Part(Random dice)
    {
        var at = Point.Origin + dice.GridWay(5);
        return dice.Next(4) switch
        {
            0 => [Outline.Circle(at, dice.Next(1, 4) * Shapes.Grid)],
            1 => [Outline.Slot(at, at + dice.GridWay(4), dice.Next(1, 4) * Shapes.Grid)],
            2 => [Shapes.GridContour.Case(dice.Next())],
            _ => GridPlates.Plate(dice).Contours,
        };
    }
}
