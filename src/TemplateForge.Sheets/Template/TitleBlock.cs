using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>What a template says about itself.</summary>
internal static class TitleBlock
{
    private const double Width = 96;
    private const double Body = 2.2;
    private const double Gap = 1.6;

    /// <summary>The frame with the piece's name, what it is made of and from which values.</summary>
    public static Block Of(Modification modification, Piece piece)
    {
        var values = string.Join(", ", modification.Values.Select(v => $"{v.Name} {v.Text}"));
        return Block.Stacked(Gap,
        [
            Block.Text(piece.Title, Width, 4, strong: true),
            Block.Text($"{modification.Title}. {Wording.ProfileOf(modification)}. {modification.Shop}", Width, Body),
            Block.Text(Wording.HandOf(modification, piece), Width, 3, strong: true),
            Block.Text($"{Wording.FaceUpOf(piece)}. {Wording.MakingOf(piece)}.", Width, Body),
            .. piece.Notes.Select(n => Block.Text(n, Width, Body)),
            Block.Text($"Values: {values}.", Width, Body),
            Block.Text("All dimensions in mm, at true size.", Width, Body),
        ]).Framed(2.5);
    }

    /// <summary>On every page: the arrows, the hand, and the face that is up.</summary>
    public static Block WhichWayRound(Modification modification, Piece piece)
    {
        const double width = 62;
        var arrows = ArrowBlock.Of(piece.Arrows, unit: 1);
        var words = Block.Stacked(1.4,
            Block.LineOrText(Wording.HandOf(modification, piece), width, 2.8, strong: true),
            Block.LineOrText(Wording.FaceUpOf(piece), width, Body));
        return arrows.Width > 0 ? Block.Beside(3, arrows, words) : words;
    }
}
