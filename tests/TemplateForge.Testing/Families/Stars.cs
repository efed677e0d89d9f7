using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Stars whose sides are lines and arcs of any bend, none of their spikes a needle.</summary>
internal static class Stars
{
    public static Trial Draw(Random dice) => Trial.Of(
        dice.OfAnySize(0.01, 15) * dice.Sign(), dice.OfAnySize(0.01, 5), [Star(dice)], [Star(dice).Moved(dice.GridWay(3))]);

    private static Contour Star(Random dice)
    {
        var count = dice.Next(3, 16);
        var points = Enumerable.Range(0, count).Select(i => Point.Origin + Vector.Polar(
            dice.Between(12, 40), Angle.FullTurn * ((i + dice.Between(0, 0.6)) / count)));
        var bulges = Enumerable.Range(0, count).Select(_ => dice.Next(4) switch
        {
            0 => 0,
            1 => dice.OfAnySize(1e-9, 0.1) * dice.Sign(),
            _ => dice.Between(-0.6, 0.6),
        });
        return Shapes.ThroughPoints([.. points], [.. bulges]);
    }
}
