using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Contours that all run through one or two points, as corners, in passing, or tangent to one another.</summary>
internal static class CommonPoints
{
    private static readonly Point _other = new(30, 0);

    public static Trial Draw(Random dice) => Trial.Of(
        dice.OneOf(dice.GridLength(), dice.OfAnySize(0.01, 15)) * dice.Sign(), dice.GridLength(), Flower(dice), Flower(dice), Flower(dice));

    private static Contour[] Flower(Random dice) => [.. Enumerable.Range(0, dice.Next(1, 6)).Select(_ => Petal(dice))];

    private static Contour Petal(Random dice)
    {
        var size = dice.Next(1, 5) * Shapes.Grid;
        var turn = dice.OneOf(Angle.QuarterTurn * dice.Next(4), Angle.FromDegrees(15 * dice.Next(24)), Angle.FromRadians(dice.Between(0, 6.3)));
        var petal = dice.Next(5) switch
        {
            0 => Outline.Circle(new(size, 0), size),
            1 => Outline.Polygon(new(0, 0), new(2 * size, -size), new(2 * size, size)),
            2 => Outline.Rectangle(new(new(0, -size), new(size, size))),
            3 => Shapes.ThroughPoints([new(0, 0), new(2 * size, 0)], [dice.Between(0.1, 1), dice.OneOf(0, 0.4, -0.05)]),
            _ => Outline.Slot(new(-size, size), new(size, size), 2 * size),
        };
        // The lens between both common points keeps its place.
        return dice.OneIn(4)
            ? Shapes.ThroughPoints([Point.Origin, _other], [dice.OneOf(0.2, 0.5, 1, dice.Between(0, 1)), dice.OneOf(0, 0.3, -0.1)])
            : petal.Turned(turn);
    }
}
