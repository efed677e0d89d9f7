using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One part of a transition laid flat, with its laps.</summary>
public sealed record TransitionPart
{
    public required Region Shape { get; init; }

    /// <summary>In their order from the right to the left; what lies at the right of a line as one looks up it is held.</summary>
    public required ImmutableArray<BendLine> Bends { get; init; }

    /// <summary>The lower edge without its lap, from the right to the left: runs without a corner; none where the part comes to a point.</summary>
    public required ImmutableArray<Path> LowerEdge { get; init; }

    /// <summary>The upper edge without its lap, in the same way.</summary>
    public required ImmutableArray<Path> UpperEdge { get; init; }

    /// <summary>Where laps begin: the edge of what they lap over comes to lie there.</summary>
    public required ImmutableArray<Path> LapLines { get; init; }

    /// <summary>Every ruling, from its lower end to its upper, and how far the sheet turns at it in degrees, above 0 towards the inside.</summary>
    public required ImmutableArray<(Point Lower, Point Upper, double Turn)> Rulings { get; init; }

    internal static TransitionPart Of(TransitionBody body, ImmutableArray<TransitionBody> next, Transition transition)
    {
        var laps = new List<Region>();
        var lines = new List<Path>();
        var bends = body.Bends.ToList();
        if (transition.Lap > 0 && next is [var following])
        {
            var joint = following.First;
            var turn = (body.Last.Upper - body.Last.Lower).Direction - (joint.Upper - joint.Lower).Direction;
            var there = Placement.Turned(turn, joint.Lower).Then(Placement.Moved(body.Last.Lower - joint.Lower));
            var lap = following.Shape.Placed(there).Intersect(Beyond(body.Last, transition.Lap));
            laps.Add(lap);
            lines.Add(Path.Line(body.Last.Lower, body.Last.Upper));
            bends.AddRange(following.Bends.SelectMany(b =>
                Path.Line(there.Of(b.Lower), there.Of(b.Upper)).PartsInside(lap).Where(p => p.Length > 1).Select(p => b with { Lower = p.Start, Upper = p.End })));
        }
        AddEdgeLaps(body.LowerRuns, transition.LowerLap, outwardsIsLeft: true);
        AddEdgeLaps(body.UpperRuns, transition.UpperLap, outwardsIsLeft: false);
        return new()
        {
            Shape = laps.Count == 0 ? body.Shape : Combination.Union([body.Shape, .. laps]),
            Bends = Numbered(bends),
            LowerEdge = [.. body.LowerRuns.Select(r => r.Path)],
            UpperEdge = [.. body.UpperRuns.Select(r => r.Path)],
            LapLines = [.. lines],
            Rulings = [.. body.Strip.Flat.Select((f, i) => (f.Lower, f.Upper, body.Strip.Rulings[i].Turn * 180 / Math.PI))],
        };

        void AddEdgeLaps(ImmutableArray<TransitionRun> runs, double width, bool outwardsIsLeft)
        {
            if (!(width > 0)) return;
            laps.AddRange(TransitionLaps.Along(runs, width, outwardsIsLeft));
            lines.AddRange(runs.Select(r => r.Path));
        }
    }

    /// <summary>Whether it can be cut from a sheet so large, however it is turned; tried degree by degree.</summary>
    public bool FitsOn(double length, double width)
    {
        var segments = Shape.Contours.SelectMany(c => c.Segments).ToList();
        return Enumerable.Range(0, 180).Any(degrees =>
        {
            var along = Vector.Polar(1, Angle.FromDegrees(degrees));
            return Across(along) <= length && Across(along.Left) <= width;
        });

        double Across(Vector way) => segments.Max(s => (s.Extreme(way) - Point.Origin).Dot(way)) + segments.Max(s => (s.Extreme(-way) - Point.Origin).Dot(-way));
    }

    internal TransitionPart Placed(Placement by) => this with
    {
        Shape = Shape.Placed(by),
        Bends = [.. Bends.Select(b => b with { From = by.Of(b.From), To = by.Of(b.To) })],
        LowerEdge = [.. LowerEdge.Select(r => r.Placed(by))],
        UpperEdge = [.. UpperEdge.Select(r => r.Placed(by))],
        LapLines = [.. LapLines.Select(l => l.Placed(by))],
        Rulings = [.. Rulings.Select(r => (by.Of(r.Lower), by.Of(r.Upper), r.Turn))],
    };

    // Lines that share one curve evenly share a number.
    private static ImmutableArray<BendLine> Numbered(List<TransitionBends.Found> bends)
    {
        var lines = ImmutableArray.CreateBuilder<BendLine>();
        foreach (var (bend, i) in bends.Select((b, i) => (b, i)))
        {
            var goesOn = i > 0 && bend.Curve > 0 && bend.Curve == bends[i - 1].Curve;
            lines.Add(LineOf(bend, i == 0 ? 1 : lines[^1].Number + (goesOn ? 0 : 1)) with { Place = goesOn ? lines[^1].Place + 1 : 1 });
        }
        var alike = lines.CountBy(l => l.Number).ToDictionary();
        return [.. lines.Select(l => l with { Alike = alike[l.Number] })];
    }

    // What is held lies at the right of a joint, so the line runs down.
    private static BendLine LineOf(TransitionBends.Found bend, int number)
    {
        var turn = Angle.FromDegrees(Math.Abs(bend.Turn));
        return new(number, bend.Upper, bend.Lower, turn, turn, bend.Turn > 0 ? BendWay.Up : BendWay.Down, InsideRadius: 0, Allowance: 0) { IsPressLine = true };
    }

    // All that lies past a joint and no further from it than so far.
    private static Region Beyond((Point Lower, Point Upper) joint, double width)
    {
        var up = (joint.Upper - joint.Lower).Unit;
        var (low, high) = (joint.Lower - up * (10 * width), joint.Upper + up * (10 * width));
        return Region.Of(Outline.Polygon(low, high, high + up.Left * width, low + up.Left * width));
    }
}
