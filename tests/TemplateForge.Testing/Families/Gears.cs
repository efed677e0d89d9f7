using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Gears with round or flat tops and roots, offset until teeth or gaps vanish, and laid over themselves turned by part of a tooth.</summary>
internal static class Gears
{
    public static Trial Draw(Random dice)
    {
        var teeth = dice.Next(4, 17);
        var gear = Gear(teeth, dice.Next(3, 9) * Shapes.Grid, dice.OneOf(2.5, 5, 7.5), dice.OneOf(0, 1, 1, 0.3), dice.OneOf(0, -1, 1, 0.3));
        var other = gear.Turned(Angle.FullTurn * (dice.OneOf(0, 0.25, 0.5, 1, dice.NextDouble()) / teeth));
        return Trial.Of(
            dice.OneOf(dice.GridLength(), dice.OfAnySize(0.01, 10)) * dice.Sign(), dice.GridLength(),
            [gear], [dice.OneIn(3) ? other.Moved(dice.GridWay(3)) : other]);
    }

    /// <summary>Flanks run along radii; tops and roots are bent by a bulge, or are arcs about the centre where it is 0.3.</summary>
    public static Contour Gear(int teeth, double radius, double height, double top, double root)
    {
        var (points, bulges) = (new List<Point>(), new List<double>());
        var step = Angle.FullTurn / (4 * teeth);
        for (var i = 0; i < teeth; i++)
        {
            var at = step * (4 * i);
            points.Add(Point.Origin + Vector.Polar(radius, at));
            points.Add(Point.Origin + Vector.Polar(radius + height, at));
            points.Add(Point.Origin + Vector.Polar(radius + height, at + 2 * step));
            points.Add(Point.Origin + Vector.Polar(radius, at + 2 * step));
            var about = (step / 2).Tan;
            bulges.AddRange([0, top == 0.3 ? about : top, 0, root == 0.3 ? about : root]);
        }
        return Shapes.ThroughPoints(points, bulges);
    }
}
