namespace TemplateForge.Testing;

/// <summary>Plates on the grid, laid over themselves with every corner moved and every arc bent by about the tolerance.</summary>
internal static class Shaken
{
    public static Trial Draw(Random dice)
    {
        while (true)
        {
            var (exact, shaken, _) = Shapes.ShakenGridRegion.Case(dice.Next());
            if (!shaken.IsEmpty)
                return Trial.Of(dice.GridOffset(), dice.GridLength(), shaken.Contours, dice.OneIn(3) ? GridPlates.Plate(dice).Contours : exact.Contours);
        }
    }
}
