using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>A sheet that was laid flat and folded up again; its bends are found by where they lie, flange by flange.</summary>
internal sealed class RefoldedSheet
{
    public RefoldedSheet(RandomSheet drawn, FlangedBlank blank)
    {
        (Drawn, Blank) = (drawn, blank);
        Part = new(blank.Shape, blank.BendLines(Springback.Unstated), drawn.Sheet.Thickness);
        var sides = drawn.Sheet.Base.Contours[0].Segments;
        var flanges = drawn.Sheet.Flanges.Select(f => new RefoldedFlange(f.Edges[0], f.Folds, BendsOn(f.Edges[0], f.Folds.Length))).ToList();
        Flanges = [.. flanges];
        OuterCorners =
        [
            .. from before in flanges
               from after in flanges
               where before.Edge.End == after.Edge.Start && before.Edge.EndDirection.Cross(after.Edge.StartDirection) > 0
               select new RefoldedCorner(before, after, flanges.IndexOf(before) < flanges.IndexOf(after)),
        ];
    }

    public RandomSheet Drawn { get; }
    public FlangedSheet Sheet => Drawn.Sheet;
    public FlangedBlank Blank { get; }
    public FoldedBlank Part { get; }
    public ImmutableArray<RefoldedFlange> Flanges { get; }

    /// <summary>Where two flanges meet, less the inner corners.</summary>
    public ImmutableArray<RefoldedCorner> OuterCorners { get; }

    /// <summary>Whether the program says that a flange runs through itself or the base.</summary>
    public bool IsWarnedOf => Blank.Warnings(Material.Unstated, AnyBrake).Any(w => w.Rule == "leg through a leg");

    public bool ShareABend(FoldedPanel a, FoldedPanel b) => Part.Bends.Any(bend => (bend.Held == a && bend.Turned == b) || (bend.Held == b && bend.Turned == a));

    /// <summary>The base belongs to every flange.</summary>
    public bool AreOfOneFlange(FoldedPanel a, FoldedPanel b) =>
        Flanges.Any(f => Array.TrueForAll([a, b], p => p == Part.Base || f.Bends.Any(bend => bend.Turned == p)));

    /// <summary>Whether what is straight after a bend is no wider than the reliefs at its ends, which then leave no end to measure.</summary>
    public bool IsCutUp(FoldedBend bend) =>
        bend.Turned.Corners.Max(c => c.Dot(bend.Going)) - bend.Turned.Corners.Min(c => c.Dot(bend.Going)) < 1.5 * Sheet.ReliefSize;

    /// <summary>How far from the end of a bend its tangent lines may leave the metal: in a relief, or where the base narrows to a sharp corner.</summary>
    public double MayMiss(RefoldedFlange flange, BendLine line, bool atStart)
    {
        var next = Sheet.Base.Contours[0].Segments.Single(s => atStart ? s.End == flange.Edge.Start : s.Start == flange.Edge.End);
        var isInner = (atStart ? next.EndDirection.Cross(flange.Edge.StartDirection) : flange.Edge.EndDirection.Cross(next.StartDirection)) < 0;
        if (Flanges.FirstOrDefault(f => f.Edge == next) is { } other)
        {
            // At an inner corner a round slot goes as far in as the deeper bend.
            if (isInner) return Sheet.ReliefSize + Math.Max(Setback(flange), Setback(other));
            return Sheet.Relief == CornerRelief.Tear ? 0 : Sheet.ReliefSize / Math.Sqrt(2);
        }
        var turn = Math.Acos(flange.Edge.StartDirection.Dot(next.StartDirection));
        return line == flange.Bends[0].Line ? Setback(flange) * Math.Max(0, -1 / Math.Tan(turn)) : 0;
    }

    public override string ToString() => $"{Drawn.Number}: {Drawn}";

    private double Setback(RefoldedFlange flange)
    {
        var bend = flange.Bends[0];
        return bend.EndOfHeld(outside: true) - new Vector3(bend.Line.TangentLines.Held.Start.X, bend.Line.TangentLines.Held.Start.Y, 0).Dot(bend.Leaving);
    }

    private static Brake AnyBrake => new("brake", 1250, 12, 12, 25, 25, Angle.FromDegrees(45));

    private ImmutableArray<FoldedBend> BendsOn(Segment edge, int count)
    {
        var along = edge.StartDirection;
        var bends = ImmutableArray.CreateBuilder<FoldedBend>();
        bends.Add(Part.Bends.Where(b => b.Held == Part.Base && (b.Line.To - b.Line.From).Unit.Dot(along) > 1 - 1e-9).MinBy(b => edge.DistanceTo(b.Line.From.MidpointTo(b.Line.To)))!);
        while (Part.Bends.FirstOrDefault(b => b.Held == bends[^1].Turned) is { } next) bends.Add(next);
        return bends.Count == count ? bends.ToImmutable() : throw new InvalidOperationException($"A flange has {bends.Count} bends, not {count}.");
    }
}

/// <summary>A flange as it was wanted, and its bends.</summary>
internal sealed record RefoldedFlange(Segment Edge, ImmutableArray<Fold> Wanted, ImmutableArray<FoldedBend> Bends);

/// <summary>Two flanges that meet, the edge of the first going on to that of the other; and which of them was listed first.</summary>
internal sealed record RefoldedCorner(RefoldedFlange Before, RefoldedFlange After, bool BeforeWasFirst);
