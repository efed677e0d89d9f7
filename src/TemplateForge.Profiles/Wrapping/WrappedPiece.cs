using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A piece with all that is drawn and written on a wrap.</summary>
internal static class WrappedPiece
{
    public static Piece Of(Piece piece, WrapPattern wrap) => piece with
    {
        // A line that the piece does not reach is not there: a wrap may be cut shorter than its tube.
        Generators = [.. wrap.Generators.Where(g => !g.Along.PartsInside(piece.Shape).IsEmpty)],
        EdgeNames = wrap.EdgeNames,
        GuideLines = [.. piece.GuideLines, .. wrap.Footprints],
        Checks = [.. piece.Checks, .. wrap.Checks],
        Notes = [.. piece.Notes, .. wrap.Notes],
    };
}
