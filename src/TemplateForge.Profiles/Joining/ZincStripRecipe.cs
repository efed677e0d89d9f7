using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A seam beside which zinc and paint come off.</summary>
/// <param name="Seam">Where it goes; none where things are welded all over each other.</param>
/// <param name="Over">The shape all over which they are welded, where there is no seam.</param>
/// <param name="Width">On either side of it.</param>
/// <param name="Within">The sheet that is stripped, where it is not the piece.</param>
internal sealed record ZincStripRecipe(ImmutableArray<SeamRecipe> Seam, ImmutableArray<ShapeName> Over, Term Width, ImmutableArray<ShapeName> Within)
{
    /// <summary>Makes the strip.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="piece">What is stripped where nothing else is said.</param>
    /// <param name="strip">The strip.</param>
    public bool TryMake(Evaluation from, Region piece, out ZincStrip strip)
    {
        strip = null!;
        var sheet = piece;
        var sound = from.TrySize(Width, out var width);
        if (!Within.IsEmpty) sound &= from.TryShape(Within[0], out sheet);
        if (!sound) return false;
        if (sheet.IsEmpty) return !Within.IsEmpty && from.Refuse(Wordings.ShapeIsEmpty(Within[0]));
        foreach (var seam in Seam)
        {
            if (!seam.TryFind(from, outline => ZincStrip.Round(outline, width, sheet), path => ZincStrip.Beside(path, width, sheet), out strip)) return false;
        }
        foreach (var over in Over)
        {
            if (!from.TryShape(over, out var shape)) return false;
            strip = ZincStrip.Over(shape, width, sheet);
        }
        return !strip.Zone.IsEmpty || from.Refuse(Wordings.NothingToStrip(Width.Place));
    }
}

/// <summary>The same zone as a shape, so that its area can be told.</summary>
internal sealed record BesideSeamRecipe(Notation.Place Place, ZincStripRecipe Strip) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        var made = Strip.TryMake(from, Region.Empty, out var strip);
        region = made ? strip.Zone : Region.Empty;
        return made;
    }
}
