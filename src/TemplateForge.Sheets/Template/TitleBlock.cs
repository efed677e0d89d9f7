using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>What a template says about itself.</summary>
internal static class TitleBlock
{
    private const double Width = 96;
    private const double Body = 2.2;
    private const double Gap = 1.6;

    /// <summary>How small any of these may become, of its own size: the body's capitals are 1.8 mm high then.</summary>
    public const double Least = 1.8 / Body;

    /// <summary>The frame with the piece's name, what it is made of and from which values; then the same with less in it, for where there is less room.</summary>
    public static IEnumerable<Block> Of(Modification modification, Piece piece)
    {
        var values = string.Join(", ", modification.Values.Select(v => $"{v.Name} {v.Text}"));
        yield return Of(modification, piece, $"Values: {values}.");
        yield return Of(modification, piece, "Values: on the cover.");
        yield return Block.Stacked(Gap, Block.Text(piece.Title, Width / 2, 4, strong: true), Block.Text(Wording.HandOf(modification, piece), Width / 2, 3, strong: true)).Framed(2.5);
    }

    private static Block Of(Modification modification, Piece piece, string values)
    {
        return Block.Stacked(Gap,
        [
            Block.Text(piece.Title, Width, 4, strong: true),
            Block.Text($"{modification.Title}. {Wording.ProfileOf(modification)}. {modification.Shop}", Width, Body),
            Block.Text(Wording.HandOf(modification, piece), Width, 3, strong: true),
            Block.Text($"{Wording.FaceUpOf(piece)}. {Wording.MakingOf(piece)}.", Width, Body),
            .. piece.Notes.Select(n => Block.Text(n, Width, Body)),
            Block.Text(values, Width, Body),
            Block.Text("All dimensions in mm, at true size.", Width, Body),
        ]).Framed(2.5);
    }

    /// <summary>On every page: the arrows, the hand, and the face that is up.</summary>
    /// <param name="modification">What the page belongs to.</param>
    /// <param name="piece">What lies on it.</param>
    /// <returns>With the hand to be read across the bench, then quieter, then the hand alone.</returns>
    public static IEnumerable<Block> WhichWayRound(Modification modification, Piece piece)
    {
        const double width = 62, loud = 6;
        var arrows = ArrowBlock.Of(piece.Arrows, unit: 1);
        var hand = Wording.HandOf(modification, piece).Split(": ", 2);
        var quiet = Block.LineOrText(Wording.HandOf(modification, piece), width, 2.8, strong: true);
        if (modification.Hand != Hand.Either) yield return With(Block.Stacked(1.4, [Block.LineOrText(hand[0], width, loud, strong: true), .. hand.Skip(1).Select(h => Block.LineOrText(h, width, 2.8, strong: true))]));
        yield return With(quiet);
        yield return quiet;

        Block With(Block said)
        {
            var words = Block.Stacked(1.4, said, Block.LineOrText(Wording.FaceUpOf(piece), width, Body));
            return arrows.Width > 0 ? Block.Beside(3, arrows, words) : words;
        }
    }
}
