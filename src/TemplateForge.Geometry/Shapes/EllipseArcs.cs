namespace TemplateForge.Geometry;

/// <summary>An ellipse as arcs that join without a corner.</summary>
/// <remarks>
/// Both curves are told by their support function: how far the tangent whose normal points in direction φ lies from the origin.
/// <code>
///     ellipse      H(φ) = √(a² cos² φ + b² sin² φ)
///     arc          h(φ) = c · n(φ) + r,   n(φ) = (cos φ, sin φ)
/// </code>
/// Arcs that join without a corner at φj share tangent and point there, so h and h' go on unbroken, and the largest |h − H| is
/// exactly the largest distance between the two curves. With N arcs in a quarter, N − 1 joints are chosen. Each joint's tangent
/// is one of the ellipse's, h(φj) = H(φj), and the first and last centre lie on an axis, so that the four quarters are mirror images
/// which join. One radius is left free, and every h is a linear function of it; it is chosen to make the largest error least.
/// Then joints move until all arcs err alike. Where ρ' is the slope of the radius of curvature over φ, an arc of width w errs by
/// ρ' w³ / 124.7, whereas no arc whatever can do better than ρ' w³ / 192: at most one arc in seven could be saved by joining with corners.
/// </remarks>
internal static class EllipseArcs
{
    private const int Samples = 24;

    /// <summary>The ellipse about the origin with half axes a along x and b along y, counter-clockwise.</summary>
    public static Contour Around(double a, double b, double tolerance)
    {
        // Round to within the tolerance: a circle between the two.
        if (Math.Abs(a - b) <= 2 * tolerance * 0.99) return Outline.Circle(Point.Origin, (a + b) / 2);

        // The error falls as the third power of the number of arcs, which tells about how many are needed.
        for (var arcs = 2; ; )
        {
            var (error, quarter) = Balanced(a, b, arcs);
            if (error <= tolerance * 0.999) return Whole(quarter);
            arcs = Math.Max(arcs + 1, (int)(arcs * Math.Cbrt(error / tolerance) * 0.98));
        }
    }

    /// <summary>One arc of the first quarter, for normals up to <paramref name="Until"/>.</summary>
    private readonly record struct Arc(Vector Centre, double Radius, double Until);

    private static (double Error, Arc[] Quarter) Balanced(double a, double b, int count)
    {
        // The joints are kept as angles u with tan φ = √(a/b) tan u, which spreads out both the flat and the sharp end.
        var widths = Enumerable.Repeat(Math.PI / 2 / count, count).ToArray();
        var best = (Error: double.PositiveInfinity, Quarter: Array.Empty<Arc>());
        for (var round = 0; round < 40; round++)
        {
            var (errors, quarter) = Fitted(a, b, Joints(widths, Math.Sqrt(a / b)));
            if (errors.Max() < best.Error) best = (errors.Max(), quarter);
            if (errors.Max() < errors.Min() * 1.02) break;

            var mean = errors.Average();
            for (var i = 0; i < count; i++) widths[i] *= Math.Cbrt((mean + 1e-3 * mean) / (errors[i] + 1e-3 * mean));
            var total = widths.Sum();
            for (var i = 0; i < count; i++) widths[i] *= Math.PI / 2 / total;
        }
        return best;
    }

    /// <summary>Joints as normals' angles φ, the last at a quarter turn.</summary>
    private static double[] Joints(double[] widths, double stretch)
    {
        var joints = new double[widths.Length];
        var u = 0.0;
        for (var i = 0; i < joints.Length - 1; i++)
        {
            u += widths[i];
            joints[i] = Math.Atan(stretch * Math.Tan(u));
        }
        joints[^1] = Math.PI / 2;
        return joints;
    }

    private static (double[] Errors, Arc[] Quarter) Fitted(double a, double b, double[] joints)
    {
        // Every centre and radius is p + q t, with t the first radius: two chains tell p and q.
        var start = b * b / a;
        var (low, high) = (Chain(a, b, joints, start), Chain(a, b, joints, 2 * start));
        var (best, from, to) = (start, start - (a + b), start + (a + b));
        // The largest error is convex in t, being the largest of straight lines: the golden section closes in on its least.
        var golden = (Math.Sqrt(5) - 1) / 2;
        var (left, right) = (to - golden * (to - from), from + golden * (to - from));
        var (atLeft, atRight) = (Errors(At(left)).Max(), Errors(At(right)).Max());
        for (var i = 0; i < 75; i++)
        {
            if (atLeft < atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - golden * (to - from);
                atLeft = Errors(At(left)).Max();
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + golden * (to - from);
                atRight = Errors(At(right)).Max();
            }
        }
        best = (from + to) / 2;
        return (Errors(At(best)), At(best));

        Arc[] At(double radius)
        {
            var share = radius / start - 1;
            return [.. low.Zip(high, (l, h) =>
                new Arc(l.Centre + (h.Centre - l.Centre) * share, l.Radius + (h.Radius - l.Radius) * share, l.Until))];
        }

        double[] Errors(Arc[] arcs) => ErrorsOf(a, b, arcs);
    }

    private static Arc[] Chain(double a, double b, double[] joints, double firstRadius)
    {
        var arcs = new Arc[joints.Length];
        var last = joints.Length - 1;
        var (centre, radius) = (new Vector((Support(a, b, joints[0]) - firstRadius) / Math.Cos(joints[0]), 0), firstRadius);
        for (var i = 0; i <= last; i++)
        {
            if (i > 0)
            {
                var at = Normal(joints[i - 1]);
                double next;
                if (i < last)
                {
                    var step = joints[i] - joints[i - 1];
                    var lacking = Support(a, b, joints[i]) - centre.Dot(Normal(joints[i])) - radius;
                    next = radius + lacking / (2 * Math.Sin(step / 2) * Math.Sin(step / 2)); // 1 − cos step
                }
                else
                {
                    next = radius + centre.X / at.X; // the centre comes to lie on the y axis
                }
                (centre, radius) = (i < last ? centre + at * (radius - next) : new(0, centre.Y + at.Y * (radius - next)), next);
            }
            arcs[i] = new(centre, radius, joints[i]);
        }
        return arcs;
    }

    private static double[] ErrorsOf(double a, double b, Arc[] arcs)
    {
        var errors = new double[arcs.Length];
        var from = 0.0;
        for (var i = 0; i < arcs.Length; i++)
        {
            for (var k = 0; k <= Samples; k++)
            {
                var phi = from + (arcs[i].Until - from) * k / Samples;
                var error = arcs[i].Centre.Dot(Normal(phi)) + arcs[i].Radius - Support(a, b, phi);
                errors[i] = Math.Max(errors[i], Math.Abs(error));
            }
            from = arcs[i].Until;
        }
        return errors;
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
