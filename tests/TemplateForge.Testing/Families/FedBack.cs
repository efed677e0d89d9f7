using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Results put in again: offsets of offsets, and combinations of offsets with what they came from.</summary>
internal static class FedBack
{
    public static Trial Draw(Random dice)
    {
        while (true)
        {
            var source = Source(dice);
            var first = dice.GridOffset();
            var result = source.Offset(first);
            if (dice.OneIn(3)) result = result.Offset(-first);
            if (dice.OneIn(3)) result = result.ExclusiveOr(source);
            if (dice.OneIn(4)) result = result.Offset(dice.OneOf(dice.GridOffset(), dice.OfAnySize(0.001, 3) * dice.Sign()));
            if (!result.IsEmpty)
                return Trial.Of(dice.OneOf(-first, first, dice.GridOffset()), dice.GridLength(), result.Contours, source.Contours);
        }
    }

    private static Region Source(Random dice) => dice.Next(4) switch
    {
        0 => Stars.Draw(dice).Regions[0],
        1 => FilletedBars.Draw(dice).Regions[0],
        2 => Gears.Draw(dice).Regions[0],
        _ => GridPlates.Plate(dice),
    };
}
