using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>What a foreman would say of what is on a flat piece: its holes, rivets and webs, and what it is fastened to.</summary>
public static class BlankWarnings
{
    /// <summary>Everything there is to say; nothing of what is only paper.</summary>
    /// <param name="piece">The piece with its bends.</param>
    /// <param name="rivets">Its rivets, row by row.</param>
    /// <param name="against">What it is fastened to; <see cref="Material.Unstated"/> where nobody has said.</param>
    public static ImmutableArray<Warning> Of(Piece piece, ImmutableArray<RivetRow> rivets, Material against) => piece.Kind == PieceKind.Paper
        ? []
        : [.. HoleWarnings.Of(piece), .. RivetWarnings.Of(piece, rivets), .. WebWarnings.Of(piece), .. DissimilarMetals.Of(piece, against)];
}
