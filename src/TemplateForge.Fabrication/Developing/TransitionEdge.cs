using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>An outline of a transition by its points: every corner, every place where something begins, and the divisions of its arcs.</summary>
internal sealed class TransitionEdge
{
    // A division nearer than this share of a step to another point is left out.
    private const double Close = 0.05;

    // How far, in mm, the chords of one arc that is rolled may fall short of it.
    private const double Shortfall = 0.002;
    private const int FewestRolled = 48;

    private readonly ImmutableArray<double> _ends;

    private TransitionEdge(TransitionEnd end, ImmutableArray<double> ends, ImmutableArray<EdgePoint> points) => (End, _ends, Points) = (end, ends, points);

    public TransitionEnd End { get; }

    /// <summary>In their order; of a closed outline the last is the first again.</summary>
    public ImmutableArray<EdgePoint> Points { get; }

    /// <param name="end">The outline.</param>
    /// <param name="steps">Into how many steps each of its segments is divided.</param>
    /// <param name="marks">Distances along the outline that must be points too.</param>
    /// <param name="start">Where it begins, of a closed outline: a distance along it.</param>
    public static TransitionEdge Of(TransitionEnd end, Func<Segment, int> steps, IReadOnlyCollection<double> marks, double start = 0)
    {
        var ends = EndsOf(end);
        var length = ends[^1];
        var kept = new List<(double At, bool IsDivision, double Step)>();
        for (var i = 0; i < end.Outline.Length; i++)
        {
            var (from, count) = (ends[i], steps(end.Outline[i]));
            var step = (ends[i + 1] - from) / count;
            kept.Add((from, false, step));
            for (var k = 1; k < count; k++) kept.Add((from + k * step, true, step));
        }
        kept.AddRange(marks.Append(start).Select(m => (m >= length - Tolerance.Length ? m - length : m, false, 0.0)));
        if (!end.IsClosed) kept.Add((length, false, 0));

        // Corners come before marks, and both before divisions.
        var fixedOnes = kept.Where(k => !k.IsDivision).Select(k => k.At).ToList();
        var distances = new List<double>();
        foreach (var at in fixedOnes.Concat(kept.Where(k => k.IsDivision && fixedOnes.TrueForAll(f => Apart(f, k.At) > Close * k.Step)).Select(k => k.At)))
        {
            if (distances.TrueForAll(d => Apart(d, at) > 1e-5)) distances.Add(at);
        }
        var points = distances.Select(d => (At: d, From: end.IsClosed ? Wrapped(d - start) : d)).OrderBy(d => d.From).Select(d => PointAt(end, ends, d.At, d.From)).ToList();
        if (end.IsClosed) points.Add(points[0] with { Distance = length });
        return new(end, ends, [.. points]);

        double Wrapped(double d) => d < -1e-5 ? d + length : Math.Max(0, d);
        double Apart(double a, double b) => end.IsClosed ? Math.Min(Math.Abs(a - b), length - Math.Abs(a - b)) : Math.Abs(a - b);
    }

    /// <summary>So many steps to a quarter circle, and none in a line.</summary>
    public static Func<Segment, int> Evenly(int divisions) =>
        segment => segment.IsLine ? 1 : Math.Max(1, (int)Math.Ceiling(Math.Abs(segment.Sweep.Degrees) / 90 * divisions - 1e-9));

    /// <summary>So fine that the chords of every arc are as long as the arc, and alike on both outlines, so that equal turns meet.</summary>
    public static Func<Segment, int> Finely(int divisions, params IEnumerable<TransitionEnd> ends)
    {
        var wanted = (double)FewestRolled;
        foreach (var arc in ends.SelectMany(end => end.Outline).Where(s => !s.IsLine))
        {
            // n chords of an arc of length rφ fall short of it by rφ³ / 24n².
            var sweep = Math.Abs(arc.Sweep.Radians);
            wanted = Math.Max(wanted, Math.Sqrt(arc.Radius * sweep * sweep * sweep / (24 * Shortfall)) / (sweep / (Math.PI / 2)));
        }
        return Evenly(divisions * (int)Math.Ceiling(wanted / divisions));
    }

    /// <summary>Distances along an outline at which its segments end; the first is 0.</summary>
    public static ImmutableArray<double> EndsOf(TransitionEnd end)
    {
        var ends = ImmutableArray.CreateBuilder<double>();
        ends.Add(0);
        foreach (var segment in end.Outline) ends.Add(ends[^1] + segment.Length);
        return ends.ToImmutable();
    }

    private static EdgePoint PointAt(TransitionEnd end, ImmutableArray<double> ends, double at, double from)
    {
        var segment = 0;
        while (segment < end.Outline.Length - 1 && at >= ends[segment + 1] - 1e-5) segment++;
        var own = end.Outline[segment];
        var isCorner = end.Corners().Any(corner => Math.Abs(corner - at) < 1e-5);
        return new(end.InSpace(own.At(Math.Clamp((at - ends[segment]) / own.Length, 0, 1))), from, segment, isCorner);
    }
}

/// <summary>A point of an outline that is divided.</summary>
/// <param name="At">Where it is.</param>
/// <param name="Distance">How far along the outline, in mm, from where the division begins.</param>
/// <param name="Segment">Which segment of the outline goes on from it.</param>
/// <param name="IsCorner">Whether the outline turns there.</param>
internal readonly record struct EdgePoint(SpacePoint At, double Distance, int Segment, bool IsCorner);
