using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A section laid flat. Its blank begins at y = 0 with the first leg. Without a brake its bends are numbered as they follow each other.</summary>
internal sealed record BentSection(FlatSection Flat, FoldedSheet Sheet) : BentSheet(Sheet)
{
    /// <summary>The search for an order of bending looks at every set of bends that may be made first: twice as many with each bend more.</summary>
    private const int MostOrdered = 8;

    /// <summary>Which rule was used, and that no order of bending was looked for.</summary>
    public override ImmutableArray<string> Notes =>
    [
        Sheet.Note,
        .. Orders.IsEmpty
            ? (ImmutableArray<string>)["Bends are numbered as they follow each other: in which order they can be made was not looked at."]
            : [],
    ];

    private ImmutableArray<BendingOrder> Orders { get; } = Flat.Bends.Length > MostOrdered
        ? []
        : [.. Sheet.Brakes.Take(1).Select(brake => BendingOrder.Of(Flat, brake, Sheet.Springback))];

    private ImmutableArray<BendStep> Steps => Orders is [var order]
        ? order.Steps
        : [.. Flat.Bends.Select((b, i) => new BendStep(i + 1, ClampedSide.First, b.Way == BendWay.Down, b.SightLine(ClampedSide.First)))];

    /// <summary>The bends of a blank in the order in which they are made; none of a bend that the blank does not reach.</summary>
    public override ImmutableArray<BendLine> LinesOn(Region blank)
    {
        var lines = ImmutableArray.CreateBuilder<BendLine>();
        foreach (var step in Steps)
        {
            var bend = Flat.Bends[step.Bend - 1];
            if (Across(blank, bend.Middle) is not [var left, var right]) continue;
            // What is held lies to the left as one goes along the line: the first leg lies below.
            var (from, to) = step.Clamped == ClampedSide.First ? (right, left) : (left, right);
            lines.Add(bend.Line(lines.Count + 1, from, to, Sheet.Springback));
        }
        return lines.ToImmutable();
    }

    public override ImmutableArray<EdgeView> EdgeViews =>
        [EdgeView.Of("", Flat.Section, [.. Flat.Bends.Select((_, i) => Steps.TakeWhile(s => s.Bend != i + 1).Count() + 1)])];

    /// <summary>What a foreman would say, at its places on a blank.</summary>
    public override ImmutableArray<Warning> WarningsOn(Region blank)
    {
        if (Sheet.Brakes is not [var brake, ..]) return [];
        var longest = LinesOn(blank).Select(l => l.Length).DefaultIfEmpty(0).Max();
        var middle = blank.Bounds.Centre.X;
        return
        [
            .. SectionWarnings.Of(Flat, Sheet.Material, longest, brake)
                .Concat(Orders.IsEmpty ? SectionWarnings.Through(Flat) : SectionWarnings.Of(Flat, Orders[0]))
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
