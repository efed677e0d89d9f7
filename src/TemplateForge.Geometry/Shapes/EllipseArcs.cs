namespace TemplateForge.Geometry;

/// <summary>An ellipse as arcs that join without a corner.</summary>
/// <remarks>
/// Both curves are told by their support function: how far the tangent whose normal points in direction φ lies from the origin.
/// <code>
///     ellipse      H(φ) = √(a² cos² φ + b² sin² φ)
///     arc          h(φ) = c · n(φ) + r,   n(φ) = (cos φ, sin φ)
/// </code>
/// Arcs that join without a corner share tangent and point there, so h and h' go on unbroken, and the largest |h − H| is exactly
/// the largest distance between the two curves. Over an arc that takes the width w of normals h − H is all but a cubic, and errs by
/// ρ' w³ / 124.7 when it returns to 0 at both joints (ρ' is the slope of the ellipse's radius of curvature ρ(φ)); no cubic errs by
/// less than ρ' w³ / 192, so smooth joints cost at most one arc in seven.
/// <para>
/// 1. Joints: all arcs err alike when ∛ρ' has the same integral over each; the arcs across the axes, half of which lie in this
///    quarter, take a smaller share, by what was found best.
/// 2. Arcs: every joint's tangent is one of the ellipse's, h(φj) = H(φj). The first and last centre lie on an axis, so that the four
///    quarters join as mirror images. One radius is left free, and every centre and radius is a linear function of it.
/// 3. It is chosen to make the largest error least.
/// </para>
/// </remarks>
internal static class EllipseArcs
{
    private const int Samples = 24;

    /// <summary>One arc of the first quarter, for normals up to <paramref name="Until"/>.</summary>
    private readonly record struct Arc(Vector Centre, double Radius, double Until);

    /// <summary>The ellipse about the origin with half axes a along x and b along y, counter-clockwise.</summary>
    public static Contour Around(double a, double b, double tolerance)
    {
        if (a < b) return Around(b, a, tolerance).Placed(Placement.Turned(Angle.QuarterTurn, Point.Origin));
        if (a - b <= 1.9 * tolerance) return Outline.Circle(Point.Origin, (a + b) / 2); // round within the tolerance

        var share = new JointShares(a, b);
        for (var arcs = Math.Max(2, (int)(share.Total / Math.Cbrt(124.7 * tolerance))); ; arcs++)
        {
            foreach (var end in (ReadOnlySpan<double>)[0.78, 0.74])
            {
                var (error, quarter) = Fitted(a, b, share.Joints(arcs, end));
                if (error <= 0.999 * tolerance) return Whole(quarter); // the samples miss the peaks by less
            }
        }
    }

    /// <summary>The integral of ∛ρ' over the normals of a quarter.</summary>
    private sealed class JointShares
    {
        private const int Steps = 4000;
        private readonly double[] _normals = new double[Steps + 1];
        private readonly double[] _integral = new double[Steps + 1];

        public JointShares(double a, double b)
        {
            // In steps of u with tan φ = √(a/b) tan u, which spreads out both the flat and the sharp end.
            for (var i = 1; i <= Steps; i++)
            {
                _normals[i] = i == Steps ? Math.PI / 2 : Math.Atan(Math.Sqrt(a / b) * Math.Tan(Math.PI / 2 * i / Steps));
                var phi = (_normals[i - 1] + _normals[i]) / 2;
                var slope = 3 * a * a * b * b * (a * a - b * b) * Math.Sin(phi) * Math.Cos(phi) / Math.Pow(Support(a, b, phi), 5);
                _integral[i] = _integral[i - 1] + Math.Cbrt(slope) * (_normals[i] - _normals[i - 1]);
            }
        }

        public double Total => _integral[Steps];

        /// <summary>The normal at which each arc ends; the first and last take a smaller share than the others.</summary>
        public double[] Joints(int arcs, double end)
        {
            var joints = new double[arcs];
            for (var (i, k) = (0, 1); i < arcs - 1; i++)
            {
                var wanted = Total * (end + i) / (arcs - 2 + 2 * end);
                while (_integral[k] < wanted) k++;
                var part = (wanted - _integral[k - 1]) / (_integral[k] - _integral[k - 1]);
                joints[i] = _normals[k - 1] + (_normals[k] - _normals[k - 1]) * part;
            }
            joints[^1] = Math.PI / 2;
            return joints;
        }
    }

    private static (double Error, Arc[] Quarter) Fitted(double a, double b, double[] joints)
    {
        // All is linear in the first radius: what two of them give tells what any gives.
        var radius = b * b / a;
        var (one, two) = (Chain(a, b, joints, radius), Chain(a, b, joints, 2 * radius));
        var (errors, errorsOfTwo) = (Errors(a, b, one), Errors(a, b, two));
        double Largest(double share)
        {
            var largest = 0.0;
            for (var i = 0; i < errors.Length; i++)
                largest = Math.Max(largest, Math.Abs(errors[i] + (errorsOfTwo[i] - errors[i]) * share));
            return largest;
        }

        // The largest of straight lines is convex: the golden section closes in on its least. The radius is above that at the tip.
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (from, to) = (-1.0, a * a / b / radius);
        var (left, right) = (to - golden * (to - from), from + golden * (to - from));
        var (atLeft, atRight) = (Largest(left), Largest(right));
        for (var i = 0; i < 80; i++)
        {
            if (atLeft < atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - golden * (to - from);
                atLeft = Largest(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + golden * (to - from);
                atRight = Largest(right);
            }
        }
        var best = (from + to) / 2;
        return (Largest(best), [.. one.Zip(two, (l, h) =>
            new Arc(l.Centre + (h.Centre - l.Centre) * best, l.Radius + (h.Radius - l.Radius) * best, l.Until))]);
    }

    private static Arc[] Chain(double a, double b, double[] joints, double firstRadius)
    {
        var arcs = new Arc[joints.Length];
        var (centre, radius) = (new Vector((Support(a, b, joints[0]) - firstRadius) / Math.Cos(joints[0]), 0), firstRadius);
        arcs[0] = new(centre, radius, joints[0]);
        for (var i = 1; i < joints.Length; i++)
        {
            // The next centre lies on the normal at the joint: there the next arc touches H again, or, the last, reaches the y axis.
            var at = Normal(joints[i - 1]);
            var isLast = i == joints.Length - 1;
            var halfStep = Math.Sin((joints[i] - joints[i - 1]) / 2);
            var larger = isLast
                ? centre.X / at.X
                : (Support(a, b, joints[i]) - centre.Dot(Normal(joints[i])) - radius) / (2 * halfStep * halfStep);
            centre -= at * larger;
            if (isLast) centre = new(0, centre.Y);
            radius += larger;
            arcs[i] = new(centre, radius, joints[i]);
        }
        return arcs;
    }

    private static double[] Errors(double a, double b, Arc[] arcs)
    {
        var errors = new List<double>();
        var from = 0.0;
        foreach (var arc in arcs)
        {
            for (var k = 0; k < Samples; k++)
            {
                var phi = from + (arc.Until - from) * k / Samples;
                errors.Add(arc.Centre.Dot(Normal(phi)) + arc.Radius - Support(a, b, phi));
            }
            from = arc.Until;
        }
        errors.Add(arcs[^1].Centre.Y + arcs[^1].Radius - b);
        return [.. errors];
    }

    private static Contour Whole(Arc[] quarter)
    {
        // The joints of the first quarter, then their images; the arcs between, the first and last of a quarter with its neighbour's.
        var count = quarter.Length - 1;
        var joints = quarter[..count].Select(arc => arc.Centre + Normal(arc.Until) * arc.Radius).ToArray();
        var bulges = Enumerable.Range(1, count - 1).Select(i => Math.Tan((quarter[i].Until - quarter[i - 1].Until) / 4)).ToArray();
        var top = Math.Tan((Math.PI / 2 - quarter[count - 1].Until) / 2);
        var side = Math.Tan(quarter[0].Until / 2);

        var points = new List<Point>();
        points.AddRange(joints.Select(j => new Point(j.X, j.Y)));
        points.AddRange(joints.Reverse().Select(j => new Point(-j.X, j.Y)));
        points.AddRange(joints.Select(j => new Point(-j.X, -j.Y)));
        points.AddRange(joints.Reverse().Select(j => new Point(j.X, -j.Y)));
        double[] all = [.. bulges, top, .. bulges.Reverse(), side, .. bulges, top, .. bulges.Reverse(), side];
        return new(points.Select((p, i) => Segment.Arc(p, points[(i + 1) % points.Count], all[i])));
    }

    private static double Support(double a, double b, double phi) =>
        Math.Sqrt(a * a * Math.Cos(phi) * Math.Cos(phi) + b * b * Math.Sin(phi) * Math.Sin(phi));

    private static Vector Normal(double phi) => new(Math.Cos(phi), Math.Sin(phi));
}
