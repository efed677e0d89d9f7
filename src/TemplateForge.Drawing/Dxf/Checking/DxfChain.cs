using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Strokes of one layer that go on from each other, as a table would follow them.</summary>
/// <param name="Layer">Their layer.</param>
/// <param name="Line">The line of the file where the first of them begins.</param>
/// <param name="Segments">Their lines and arcs, one at least, each beginning where the one before it ends.</param>
/// <param name="IsClosed">Whether the last ends where the first begins.</param>
public sealed record DxfChain(string Layer, int Line, ImmutableArray<Segment> Segments, bool IsClosed)
{
    /// <summary>Ends no further apart than this, in mm, are one: what a writer's rounding to three decimals may do.</summary>
    public const double Joined = 0.002;

    public Point Start => Segments[0].Start;
    public Point End => Segments[^1].End;
    public double Length => Segments.Sum(s => s.Length);

    /// <summary>Joins strokes end to end, layer by layer, in the order of the file.</summary>
    public static ImmutableArray<DxfChain> Of(IEnumerable<DxfStroke> strokes) =>
        [.. strokes.GroupBy(s => s.Layer, StringComparer.OrdinalIgnoreCase).SelectMany(OfLayer)];

    /// <summary>Each stroke by itself, in the order of the file.</summary>
    public static ImmutableArray<DxfChain> EachAlone(IEnumerable<DxfStroke> strokes) =>
        [.. strokes.Select(s => Chain(s, [.. s.Segments]))];

    /// <summary>A closed chain as a contour.</summary>
    /// <exception cref="InvalidOperationException">It is open.</exception>
    public Contour ToContour() => IsClosed ? new(Segments) : throw new InvalidOperationException("An open chain bounds nothing.");

    private static IEnumerable<DxfChain> OfLayer(IEnumerable<DxfStroke> strokes)
    {
        var loose = new LooseEnds(Joined);
        var all = strokes.ToList();
        foreach (var stroke in all.Where(s => !Closes(s.Segments))) loose.Add(stroke);
        foreach (var stroke in all)
        {
            if (Closes(stroke.Segments)) yield return Chain(stroke, [.. stroke.Segments]);
            else if (loose.TryTake(stroke)) yield return Chain(stroke, Grown(stroke, loose));
        }
    }

    private static List<Segment> Grown(DxfStroke first, LooseEnds loose)
    {
        var run = new List<Segment>(first.Segments);
        for (var turn = 0; turn < 2; turn++)
        {
            while (!Closes(run) && loose.TryTakeAt(run[^1].End, out var next))
            {
                var onwards = next.Start.DistanceTo(run[^1].End) <= next.End.DistanceTo(run[^1].End) ? next.Segments : Reversed(next.Segments);
                run.AddRange(Meeting(run[^1].End, onwards));
            }
            if (Closes(run)) break;
            // From the first stroke's start the other way, then back into its direction.
            run = [.. Reversed(run)];
        }
        return run;
    }

    private static DxfChain Chain(DxfStroke first, List<Segment> run)
    {
        var closed = Closes(run);
        if (closed && run[^1].End != run[0].Start && run[^1].Start.DistanceTo(run[0].Start) > Joined)
            run[^1] = Segment.Arc(run[^1].Start, run[0].Start, run[^1].Bulge);
        return new(first.Layer, first.Line, [.. run], closed);
    }

    private static bool Closes(IReadOnlyList<Segment> run) => run.Count > 1 && run[0].Start.DistanceTo(run[^1].End) <= Joined;

    private static IEnumerable<Segment> Reversed(IEnumerable<Segment> run) => run.Reverse().Select(s => s.Reversed());

    // The joint is made exact at the end that was there first.
    private static IEnumerable<Segment> Meeting(Point at, IEnumerable<Segment> run) =>
        run.Select((s, i) => i == 0 && s.Start != at && s.End.DistanceTo(at) > Joined ? Segment.Arc(at, s.End, s.Bulge) : s);
}
