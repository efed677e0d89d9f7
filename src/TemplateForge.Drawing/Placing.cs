using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>What is drawn, put somewhere else. Lettering stays readable, so nothing here is ever mirrored.</summary>
public static class Placing
{
    /// <exception cref="ArgumentException">The placement mirrors.</exception>
    public static Mark Placed(this Mark mark, Placement by)
    {
        if (by.Mirrors) throw new ArgumentException("A drawing is never shown as its mirror image: mirror what it shows.", nameof(by));
        return mark switch
        {
            OpenStroke open => new OpenStroke(open.Path.Placed(by)),
            ClosedStroke closed => new ClosedStroke(closed.Contour.Placed(by)),
            Fill fill => fill with { Region = fill.Region.Placed(by) },
            // Lettering is moved from block to block, several times over, before it stands on its page.
            Lettering words when by.OnlyMoves => words with { At = by.Of(words.At) },
            Lettering words => new Lettering(
                words.Text, by.Of(words.At), words.Height * by.Scale, by.Of(Vector.Polar(1, words.Turn)).Direction, words.Anchor),
            _ => throw new ArgumentException($"A {mark.GetType().Name} cannot be placed.", nameof(mark)),
        };
    }
}
