using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A seam: all round a shape, or along a line from end to end.</summary>
/// <remarks>Where things are welded all over each other it is no line, and only what lies beside it can be told.</remarks>
internal abstract record SeamRecipe
{
    /// <summary>All round the outline of a shape.</summary>
    public sealed record Round(ShapeName Shape) : SeamRecipe;

    /// <summary>From end to end of a line.</summary>
    public sealed record Along(LineTerm Line) : SeamRecipe;

    /// <summary>Finds the seam and hands it to whichever of the two goes with it.</summary>
    public bool TryFind<T>(Evaluation from, Func<Contour, T> round, Func<Path, T> along, out T made)
    {
        made = default!;
        switch (this)
        {
            case Round all:
                if (!from.TryOutline(all.Shape, out var outline)) return false;
                made = round(outline);
                return true;
            case Along line:
                if (!line.Line.TryFind(from, out var run)) return false;
                made = along(run.Path);
                return true;
            default:
                return false;
        }
    }
}
