using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Outlines of which some sides are chains of segments 1e-5 mm long, straight, bent or in a zigzag.</summary>
internal static class ShortChains
{
    public static Trial Draw(Random dice) => Trial.Of(
        dice.OneOf(dice.OfAnySize(1e-6, 20), dice.GridLength()) * dice.Sign(), dice.OfAnySize(1e-5, 5), [Outline(dice)], [Outline(dice).Moved(dice.GridWay(2))]);

    private static Contour Outline(Random dice)
    {
        var (points, bulges) = (new List<Point>(), new List<double>());
        ReadOnlySpan<Point> corners = [new(0, 0), new(40, 0), new(40, 20), new(20, 30), new(0, 20)];
        foreach (var corner in corners)
        {
            points.Add(corner);
            bulges.Add(dice.OneOf(0, 0, dice.Between(-0.3, 0.3)));
            if (dice.OneIn(2)) continue;
            // Out to the left of what comes after, so that the chain makes a small corner of its own.
            var (length, heading) = (dice.OneOf(1e-5, 1e-5, 1e-6, 1e-4), Angle.FromRadians(dice.Between(0, 2 * Math.PI)));
            var turn = Angle.FromRadians(dice.OneOf(0, 0.3, dice.Between(-0.5, 0.5)));
            var zigzag = dice.OneIn(3);
            var at = corner;
            for (var i = dice.Next(2, 12); i > 0; i--)
            {
                bulges[^1] = dice.OneOf(0, 0, dice.Between(-0.5, 0.5));
                at += Vector.Polar(length, heading);
                heading += zigzag && i % 2 == 0 ? -turn : turn;
                points.Add(at);
                bulges.Add(0);
            }
        }
        return Shapes.ThroughPoints(points, bulges);
    }
}
