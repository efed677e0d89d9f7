using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A section laid flat: by which rule, of what, and on which brake it is bent. Its blank begins at y = 0 with the first leg.</summary>
/// <param name="Flat">The flat section.</param>
/// <param name="Rule">By which its length was reckoned.</param>
/// <param name="Material">Its sheet.</param>
/// <param name="Brakes">The shop's; the first is the one that is used. Without one, bends are numbered as they follow each other.</param>
/// <param name="Springback">How far its bends come back.</param>
internal sealed record BentSection(FlatSection Flat, BendRule Rule, Material Material, ImmutableArray<Brake> Brakes, Springback Springback)
{
    /// <summary>Which rule was used: a blank that does not come out is put right there.</summary>
    public string Note => $"Flat lengths by {Rule.Name} ({Rule.Source}).";

    private ImmutableArray<BendStep> Steps => Brakes is [var brake, ..]
        ? BendingOrder.Of(Flat, brake, Springback).Steps
        : [.. Flat.Bends.Select((b, i) => new BendStep(i + 1, ClampedSide.First, b.Way == BendWay.Down, b.SightLine(ClampedSide.First)))];

    /// <summary>The bends of a blank in the order in which they are made; none of a bend that the blank does not reach.</summary>
    public ImmutableArray<BendLine> LinesOn(Region blank)
    {
        var lines = ImmutableArray.CreateBuilder<BendLine>();
        foreach (var step in Steps)
        {
            var bend = Flat.Bends[step.Bend - 1];
            if (Across(blank, bend.Middle) is not [var left, var right]) continue;
            // What is held lies to the left as one goes along the line: the first leg lies below.
            var (from, to) = step.Clamped == ClampedSide.First ? (right, left) : (left, right);
            lines.Add(bend.Line(lines.Count + 1, from, to, Springback));
        }
        return lines.ToImmutable();
    }

    /// <summary>What a foreman would say, at its places on a blank.</summary>
    public ImmutableArray<Warning> WarningsOn(Region blank)
    {
        if (Brakes is not [var brake, ..]) return [];
        var longest = LinesOn(blank).Select(l => l.Length).DefaultIfEmpty(0).Max();
        var middle = blank.Bounds.Centre.X;
        return
        [
            .. SectionWarnings.Of(Flat, Material, longest, brake)
                .Concat(SectionWarnings.Of(Flat, BendingOrder.Of(Flat, brake, Springback)))
                .Select(w => w with { At = new(middle, w.At.X) }),
        ];
    }

    // The ends of the stretch at this height that is on the blank, holes in it overlooked.
    private static ImmutableArray<Point> Across(Region blank, double height)
    {
        var line = Path.Line(new(blank.Bounds.Min.X - 1, height), new(blank.Bounds.Max.X + 1, height));
        var inside = line.PartsInside(blank);
        return inside.IsEmpty ? [] : [inside.MinBy(p => p.Start.X)!.Start, inside.MaxBy(p => p.End.X)!.End];
    }
}
