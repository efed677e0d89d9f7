using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

// Shapes that are made from other shapes.

internal sealed record SameRecipe(Place Place, ShapeName Shape) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region) => from.TryShape(Shape, out region);
}

internal sealed record JoinedRecipe(Place Place, ImmutableArray<ShapeName> Shapes) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryShapes(Shapes, out var shapes)) return false;
        region = Combination.Union(shapes);
        return true;
    }
}

internal sealed record SubtractedRecipe(Place Place, ShapeName From, ImmutableArray<ShapeName> Take) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(From, out region) & from.TryShapes(Take, out var taken))) return false;
        region = region.Subtract(Combination.Union(taken));
        return true;
    }
}

internal sealed record CommonRecipe(Place Place, ImmutableArray<ShapeName> Shapes) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryShapes(Shapes, out var shapes)) return false;
        region = shapes.Skip(1).Aggregate(shapes[0], (a, b) => a.Intersect(b));
        return true;
    }
}

internal sealed record OffsetRecipe(Place Place, ShapeName Shape, Term By) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(By, out var by))) return false;
        region = region.Offset(by);
        return !region.IsEmpty || from.Refuse(Wordings.NothingLeftOfOffset(By.Place, Shape.Name, by));
    }
}

internal sealed record SweptRecipe(Place Place, ShapeName Shape, Term By, Term Towards) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(By, out var by) & from.TryAngle(Towards, out var towards))) return false;
        region = region.Swept(Vector.Polar(by, towards));
        return true;
    }
}

/// <summary>Corners rounded: all of them, or those where the outlines of two other shapes meet.</summary>
internal sealed record RoundedRecipe(Place Place, ShapeName Shape, Term Radius, ImmutableArray<ShapeName> WhereMeet) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryLength(Radius, out var radius) & from.TryShapes(WhereMeet, out var meeting))) return false;
        if (radius < 0) return from.Refuse(Wordings.SizeNotPositive(Radius.Place, radius));
        if (radius <= Tolerance.Length) return true;
        var places = meeting.Length == 2 ? meeting[0].OutlineMeetings(meeting[1]) : [];
        var rounding = region.RoundedCorners(radius, at => meeting.IsEmpty || places.Any(p => p.DistanceTo(at) <= 10 * Tolerance.Length));
        foreach (var corner in rounding.Unfit)
            from.Refuse(Wordings.RoundingDoesNotFit(Radius, radius, corner));
        region = rounding.Region;
        return rounding.Unfit.IsEmpty;
    }
}

/// <summary>Equal round holes, evenly spaced round an outline, the first straight above its middle.</summary>
internal sealed record CirclesAlongRecipe(Place Place, ShapeName Outline, Term Diameter, Term Pitch) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!from.TryOutline(Outline, out var outline)
            || !(from.TrySize(Diameter, out var diameter) & from.TrySize(Pitch, out var pitch))) return false;
        if (outline.Length / pitch > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Pitch.Place, outline.Length / pitch));
        var places = EvenSpacing.FromTheTop(outline, EvenSpacing.CountNearest(outline, pitch));
        region = Combination.Union(places.Select(p => Region.Of(Geometry.Outline.Circle(p, diameter / 2))));
        return true;
    }
}

/// <summary>One of several recipes, by the word that a choice parameter has.</summary>
internal sealed record ChosenRecipe(Place Place, Chosen<ShapeRecipe> Choice) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        return from.TryPick(Choice, out var recipe) && recipe.TryMake(from, out region);
    }
}
