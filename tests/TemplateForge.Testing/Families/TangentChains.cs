using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Strips between two chains of arcs and lines that join with hardly a corner.</summary>
internal static class TangentChains
{
    public static Trial Draw(Random dice)
    {
        var width = dice.OneOf(5, 10, dice.OfAnySize(0.5, 20));
        var first = dice.OneOf(width / 2, dice.OfAnySize(0.001, 20), dice.GridLength()) * dice.Sign();
        return Trial.Of(first, dice.OfAnySize(0.01, 10), [Strip(dice, width)], [Strip(dice, dice.Between(2, 20)).Moved(new(dice.Between(-5, 5), 0))]);
    }

    /// <summary>There along a chain and back beside it, the ends half circles or flat.</summary>
    private static Contour Strip(Random dice, double width)
    {
        var (at, heading) = (Point.Origin, Angle.Zero);
        var (right, left, bulges) = (new List<Point>(), new List<Point>(), new List<double>());
        AddEnds();
        for (var i = dice.Next(2, 9); i > 0; i--)
        {
            // Turning by less than half a width's worth on the inner side; flat ones have radii of kilometres.
            var length = dice.OneOf(5, 10, dice.Between(3, 15));
            var most = Math.Min(1.2, length / width);
            var sweep = Angle.FromRadians(dice.OneOf(0, dice.Between(-most, most), dice.OfAnySize(1e-9, 1e-3) * dice.Sign()));
            var chord = sweep.Radians == 0 ? length : length * Math.Sin(sweep.Radians / 2) / (sweep.Radians / 2);
            at += Vector.Polar(chord, heading + sweep / 2);
            heading += sweep;
            bulges.Add(Math.Tan(sweep.Radians / 4));
            // Not quite tangent.
            if (dice.OneIn(2)) heading += Angle.FromRadians(dice.OfAnySize(1e-11, 1e-3) * dice.Sign());
            AddEnds();
        }
        var end = dice.OneOf(0, 1, dice.Between(0.99, 1));
        List<Point> points = [.. right, .. left.AsEnumerable().Reverse()];
        List<double> sides = [.. bulges, end, .. bulges.AsEnumerable().Reverse().Select(b => -b), end];
        return Shapes.ThroughPoints(points, sides);

        void AddEnds()
        {
            right.Add(at - Vector.Polar(width / 2, heading).Left);
            left.Add(at + Vector.Polar(width / 2, heading).Left);
        }
    }
}
