using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Strips by which a part goes on past its edges, to lap over what it meets there.</summary>
internal static class TransitionLaps
{
    // Common practice: the ends of a lap lean in, so that the laps on both sides of a corner clear each other when they are bent.
    private const double Lean = 25;

    // What turns by less than this, in degrees, from one run to the next goes on smoothly.
    private const double Smooth = 5;

    /// <param name="runs">An edge in its runs.</param>
    /// <param name="width">How wide the strip is, in mm.</param>
    /// <param name="outwardsIsLeft">Whether the outside lies to the left as one goes along the edge.</param>
    /// <returns>Strips beside what runs on smoothly, on the flat and on the outline itself; none beside a run shorter than they are wide: of an arc it could not be bent with it, of a line hardly any would be left.</returns>
    public static IEnumerable<Region> Along(ImmutableArray<TransitionRun> runs, double width, bool outwardsIsLeft)
    {
        var side = outwardsIsLeft ? 1 : -1;
        var band = new List<Segment>();
        foreach (var (run, beginsAtCorner) in runs)
        {
            var isLeftOut = run.Length < width;
            if (band.Count > 0 && (isLeftOut || beginsAtCorner || Turn(band[^1], run.Segments[0]) > Smooth))
            {
                yield return Strip(band, width * side, width);
                band.Clear();
            }
            if (!isLeftOut) band.AddRange(run.Segments);
        }
        if (band.Count > 0) yield return Strip(band, width * side, width);
    }

    private static double Turn(Segment before, Segment after) =>
        Math.Abs(Math.Atan2(before.EndDirection.Cross(after.StartDirection), before.EndDirection.Dot(after.StartDirection))) * 180 / Math.PI;

    private static Region Strip(List<Segment> band, double left, double width)
    {
        var boundary = new List<Segment>(band);
        To(band[^1].End + band[^1].EndDirection.Left * left);
        foreach (var segment in Enumerable.Reverse(band))
        {
            var (from, to) = (segment.End + segment.EndDirection.Left * left, segment.Start + segment.StartDirection.Left * left);
            To(from);
            // A concentric arc turns as far; one that would reach past its centre is cut across.
            var isTooTight = !segment.IsLine && segment.Bulge * left > 0 && segment.Radius <= width + Tolerance.Length;
            if (from.DistanceTo(to) >= Tolerance.Length) boundary.Add(Segment.Arc(from, to, isTooTight ? 0 : -segment.Bulge));
        }
        To(band[0].Start);
        return Region.Of(new Contour(boundary)).Subtract([Leaning(band[^1].End, band[^1].EndDirection, band[^1].EndDirection), Leaning(band[0].Start, band[0].StartDirection, -band[0].StartDirection)]);

        void To(Point next)
        {
            var at = boundary[^1].End;
            if (at.DistanceTo(next) >= Tolerance.Merge) boundary.Add(Segment.Line(at, next));
        }

        // What lies past the end, and what lies within the lean of it.
        Region Leaning(Point end, Vector along, Vector away)
        {
            var (square, lean) = (along.Left * left, Angle.FromDegrees(Lean));
            return Region.Of(Outline.Polygon(end, end + square * 3 + away * width, end + (square * lean.Cos - away * (width * lean.Sin)) * 3));
        }
    }
}
