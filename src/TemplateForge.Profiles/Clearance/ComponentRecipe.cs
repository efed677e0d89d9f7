using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a component is made from values: its form, where it stands, how it moves.</summary>
internal sealed record ComponentRecipe(Place Place, FormRecipe Form, StandTerm Stand, Term Sheet, ImmutableArray<RocksTerm> Rocks, ImmutableArray<TravelsTerm> Travels)
{
    private const double ThickestSheet = 100;

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out Component component)
    {
        component = null;
        if (!(Form.TryMake(from, out var form) & Stand.TryFind(from, out var stand) & from.TryWithin(Sheet, 0, ThickestSheet, out var sheet))) return false;
        var (rocks, travels) = (ImmutableArray.CreateBuilder<Rocking>(), ImmutableArray.CreateBuilder<Travel>());
        foreach (var term in Rocks)
        {
            if (!term.TryFind(from, out var rocking)) return false;
            rocks.Add(rocking);
        }
        foreach (var term in Travels)
        {
            if (!term.TryFind(from, out var travel)) return false;
            travels.Add(travel);
        }
        component = new(form!, stand!, sheet) { Rocks = rocks.ToImmutable(), Travels = travels.ToImmutable() };
        return from.IsWithinReach(component.Bounds.Min, Place) && from.IsWithinReach(component.Bounds.Max, Place);
    }
}

/// <summary>How the form of a component is made.</summary>
internal abstract record FormRecipe(Place Place)
{
    public abstract bool TryMake(Evaluation from, [MaybeNullWhen(false)] out ComponentForm form);
}

/// <summary>A half-profile turned round its axis: drawn step by step, or a shape.</summary>
internal sealed record RevolvedRecipe(Place Place, ImmutableArray<ShapeRecipe> Steps, ImmutableArray<ShapeName> Shape) : FormRecipe(Place)
{
    public override bool TryMake(Evaluation from, [MaybeNullWhen(false)] out ComponentForm form)
    {
        form = null;
        Region half;
        if (Shape.IsEmpty)
        {
            if (!Steps[0].TryMake(from, out half)) return false;
        }
        else if (!from.TryShape(Shape[0], out half)) return false;
        else if (half.IsEmpty) return from.Refuse(Wordings.ShapeIsEmpty(Shape[0]));
        if (half.Bounds.Min.Y < -Tolerance.Length) return from.Refuse(Wordings.HalfProfileBelowAxis(Place, half.Bounds.Min.Y));
        form = new RevolvedForm(half);
        return true;
    }
}

/// <summary>A box about its middle.</summary>
internal sealed record BoxRecipe(Place Place, ImmutableArray<Term> Sizes) : FormRecipe(Place)
{
    public override bool TryMake(Evaluation from, [MaybeNullWhen(false)] out ComponentForm form)
    {
        form = null;
        if (!(from.TrySize(Sizes[0], out var length) & from.TrySize(Sizes[1], out var width) & from.TrySize(Sizes[2], out var height))) return false;
        form = new BoxForm(length, width, height);
        return true;
    }
}

/// <summary>Where a component stands.</summary>
internal sealed record StandTerm(Place Place, PointTerm At, Term Height, Term Tilt, Term Towards, Term Turned)
{
    public bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Stand stand)
    {
        stand = null;
        if (!(from.TryPoint(At, out var at) & from.TryLength(Height, out var height) & from.TryAngle(Tilt, out var tilt)
            & from.TryAngle(Towards, out var towards) & from.TryAngle(Turned, out var turned))) return false;
        stand = new(at, height, tilt, towards, turned);
        return from.IsWithinReach(new(height, 0), Height.Place);
    }
}

/// <summary>How a component rocks.</summary>
internal sealed record RocksTerm(Term By, PointTerm About, Term Height, Term Tilt, Term Towards)
{
    private const double Most = 45;

    public bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Rocking rocking)
    {
        rocking = null;
        if (!(from.TryWithin(By, 0, Most, out var by) & from.TryPoint(About, out var about) & from.TryLength(Height, out var height)
            & from.TryAngle(Tilt, out var tilt) & from.TryAngle(Towards, out var towards))) return false;
        rocking = new(Angle.FromDegrees(by), about, height, tilt, towards);
        return from.IsWithinReach(new(height, 0), Height.Place);
    }
}

/// <summary>How a component travels.</summary>
internal sealed record TravelsTerm(Term By, Term Tilt, Term Towards)
{
    private const double Most = 1000;

    public bool TryFind(Evaluation from, [MaybeNullWhen(false)] out Travel travel)
    {
        travel = null;
        if (!(from.TryWithin(By, 0, Most, out var by) & from.TryAngle(Tilt, out var tilt) & from.TryAngle(Towards, out var towards))) return false;
        travel = new(by, tilt, towards);
        return true;
    }
}

/// <summary>A component, called by its name.</summary>
internal sealed record ComponentName(string Name, Place Place);
