using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A rational B-spline curve in the plane.</summary>
/// <remarks>De Boor's algorithm on weighted coordinates; L. Piegl and W. Tiller, The NURBS Book, 2nd ed., ch. 4 (from memory).</remarks>
internal sealed class NurbsCurve
{
    private readonly int degree;
    private readonly ImmutableArray<double> knots;
    private readonly ImmutableArray<(Vector At, double Weight)> controls;

    private NurbsCurve(int degree, ImmutableArray<double> knots, ImmutableArray<(Vector At, double Weight)> controls) =>
        (this.degree, this.knots, this.controls) = (degree, knots, controls);

    /// <summary>False where the numbers make no curve.</summary>
    public static bool TryMake(
        int degree, ImmutableArray<double> knots, ImmutableArray<Point> controls, ImmutableArray<double> weights, out NurbsCurve curve)
    {
        curve = new(degree, knots, [.. controls.Select((p, i) => (p - Point.Origin, weights.IsEmpty ? 1 : weights[Math.Min(i, weights.Length - 1)]))]);
        return degree is >= 1 and <= 25
            && controls.Length > degree
            && knots.Length == controls.Length + degree + 1
            && (weights.IsEmpty || weights.Length == controls.Length)
            && curve.controls.All(c => double.IsFinite(c.At.X + c.At.Y) && c.Weight > 0 && double.IsFinite(c.Weight))
            && knots.All(double.IsFinite)
            && Enumerable.Range(1, knots.Length - 1).All(i => knots[i] >= knots[i - 1])
            && knots[controls.Length] > knots[degree];
    }

    /// <summary>The whole curve as lines and arcs within a distance in mm, each stretch between two knots by itself.</summary>
    public ImmutableArray<Segment> Segments(double fit)
    {
        var found = ImmutableArray.CreateBuilder<Segment>();
        var last = At(knots[degree], degree).Place;
        for (var span = degree; span < controls.Length; span++)
        {
            var (from, to, own) = (knots[span], knots[span + 1], span);
            if (to - from <= 1e-12 * (knots[controls.Length] - knots[degree])) continue;
            var end = At(to, own).Place;
            if (Enumerable.Range(1, 8).All(i => At(from + (to - from) * i / 8, own).Place.DistanceTo(last) < Tolerance.Merge)) continue;
            if (degree == 1) found.Add(Segment.Line(last, end));
            else found.AddRange(SmoothArcs.Along(t => At(t, own).Place, t => At(t, own).Speed, from, to, fit).Segments);
            last = end;
        }
        return found.ToImmutable();
    }

    /// <summary>Place and derivative at t in the stretch after knot <paramref name="span"/>.</summary>
    private (Point Place, Vector Speed) At(double t, int span)
    {
        Span<(Vector At, double Weight)> d = stackalloc (Vector, double)[degree + 1];
        for (var j = 0; j <= degree; j++)
        {
            var (at, weight) = controls[span - degree + j];
            d[j] = (at * weight, weight);
        }
        var (speed, growth) = (Vector.Zero, 0.0);
        for (var r = 1; r <= degree; r++)
        {
            if (r == degree)
            {
                var width = knots[span + 1] - knots[span];
                (speed, growth) = ((d[degree].At - d[degree - 1].At) * (degree / width), (d[degree].Weight - d[degree - 1].Weight) * (degree / width));
            }
            for (var j = degree; j >= r; j--)
            {
                var (low, high) = (knots[span - degree + j], knots[span + 1 + j - r]);
                var share = (t - low) / (high - low);
                d[j] = (d[j - 1].At * (1 - share) + d[j].At * share, d[j - 1].Weight * (1 - share) + d[j].Weight * share);
            }
        }
        var place = d[degree].At / d[degree].Weight;
        return (Point.Origin + place, (speed - place * growth) / d[degree].Weight);
    }
}
