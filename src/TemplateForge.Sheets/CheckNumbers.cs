using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>The distances to check are numbered through the whole modification, on drawings and in lists alike; and so are the warnings.</summary>
internal static class CheckNumbers
{
    /// <summary>The number of a piece's first check.</summary>
    public static int FirstOf(Modification modification, Piece piece) =>
        1 + modification.Pieces.TakeWhile(p => p != piece).Sum(p => p.Checks.Length);

    /// <summary>The number of a piece's first warning.</summary>
    public static int FirstWarningOf(Modification modification, Piece piece) =>
        1 + modification.Pieces.TakeWhile(p => p != piece).Sum(p => p.Warnings.Length);
}
