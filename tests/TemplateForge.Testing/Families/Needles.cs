using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Stars with corners of hardly any angle, inwards and outwards; some where both sides leave the tip in one direction.</summary>
internal static class Needles
{
    public static Trial Draw(Random dice) => Trial.Of(
        dice.OneOf(dice.OfAnySize(0.001, 15), dice.GridLength()) * dice.Sign(), dice.OfAnySize(0.01, 5), [Star(dice)], [Star(dice).Moved(dice.GridWay(2))]);

    private static Contour Star(Random dice)
    {
        if (dice.OneIn(3)) return Shapes.Star.Case(dice.Next());
        var spikes = dice.Next(2, 7);
        var (points, bulges) = (new List<Point>(), new List<double>());
        for (var i = 0; i < spikes; i++)
        {
            // Base, tip, base: the half width at the tip's foot makes the angle; equal bends make a tip without one.
            var (at, half) = (Angle.FullTurn * ((double)i / spikes), Angle.FromRadians(dice.OfAnySize(1e-6, 0.3) / spikes * 2));
            var bend = dice.OneOf(0, 0, dice.Between(-0.4, 0.4));
            var foot = dice.Between(8, 12);
            points.Add(Point.Origin + Vector.Polar(foot, at - half));
            points.Add(Point.Origin + Vector.Polar(dice.OneOf(3.0, 25, 40, 5 * dice.Next(4, 9)), at));
            points.Add(Point.Origin + Vector.Polar(foot, at + half));
            bulges.AddRange([bend, dice.OneIn(2) ? -bend : 0, dice.OneOf(0, 0, dice.Between(-0.2, 0.2))]);
        }
        return Shapes.ThroughPoints(points, bulges);
    }
}
