using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>
/// The distance of a point in space from a component in one of its positions, the plain way: the half-profile as very many short
/// chords, rays for what is inside, and turns as matrices. It shares nothing with what it judges but the sizes that both are given.
/// </summary>
internal sealed class BruteDistance
{
    private readonly Component _component;
    private readonly List<(double C, double R)[]> _rings = [];
    private readonly (double X, double Y, double Z) _half;
    private readonly double[,] _back;

    public BruteDistance(Component component, IEnumerable<Region> halfProfile, double length = 0, double width = 0, double height = 0)
    {
        (_component, _half) = (component, (length / 2, width / 2, height / 2));
        foreach (var contour in halfProfile.SelectMany(r => r.Contours))
            _rings.Add([.. contour.Segments.SelectMany(s => Enumerable.Range(0, s.IsLine ? 1 : 100).Select(i => s.At(s.IsLine ? 0 : i / 100.0))).Select(p => (p.X, p.Y))]);
        // Turned about z, then about the level line square to the way it leans; what was −z is the axis.
        var (turned, tilt, towards) = (component.Stand.Turned.Radians, component.Stand.Tilt.Radians, component.Stand.Towards.Radians);
        _back = Transposed(Product(About(2, towards), Product(About(1, -tilt), Product(About(2, -towards), About(2, turned)))));
    }

    public double At(double x, double y, double z, double rocked, double travelled)
    {
        double[] p = [x, y, z];
        foreach (var travel in _component.Travels) p = Less(p, Times(Axis(travel.Tilt, travel.Towards), travelled));
        foreach (var rock in _component.Rocks)
        {
            double[] pivot = [rock.About.X, rock.About.Y, rock.Height];
            // The axis laid on z, turned back, and laid out again.
            var lay = Product(About(2, rock.Towards.Radians), About(1, Math.PI - rock.Tilt.Radians));
            var turn = Product(lay, Product(About(2, -rocked), Transposed(lay)));
            p = Plus(pivot, Of(turn, Less(p, pivot)));
        }
        var own = Of(_back, Less(p, [_component.Stand.At.X, _component.Stand.At.Y, _component.Stand.Height]));
        if (_rings.Count == 0)
        {
            double[] past = [Math.Max(0, Math.Abs(own[0]) - _half.X), Math.Max(0, Math.Abs(own[1]) - _half.Y), Math.Max(0, Math.Abs(own[2]) - _half.Z)];
            return Math.Sqrt(past[0] * past[0] + past[1] * past[1] + past[2] * past[2]);
        }
        return ToRings(-own[2], Math.Sqrt(own[0] * own[0] + own[1] * own[1]));
    }

    private double ToRings(double c, double r)
    {
        var (least, crossings) = (double.PositiveInfinity, 0);
        foreach (var ring in _rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.R > r != b.R > r && a.C + (r - a.R) / (b.R - a.R) * (b.C - a.C) > c) crossings++;
                var (x, y) = (b.C - a.C, b.R - a.R);
                var share = Math.Clamp(((c - a.C) * x + (r - a.R) * y) / (x * x + y * y), 0, 1);
                var (u, v) = (c - a.C - share * x, r - a.R - share * y);
                least = Math.Min(least, u * u + v * v);
            }
        }
        return crossings % 2 == 1 ? 0 : Math.Sqrt(least);
    }

    private static double[] Axis(Angle tilt, Angle towards) =>
        [Math.Sin(tilt.Radians) * Math.Cos(towards.Radians), Math.Sin(tilt.Radians) * Math.Sin(towards.Radians), -Math.Cos(tilt.Radians)];

    private static double[,] About(int axis, double angle)
    {
        var m = new double[3, 3];
        var (i, j) = ((axis + 1) % 3, (axis + 2) % 3);
        (m[axis, axis], m[i, i], m[j, j], m[i, j], m[j, i]) = (1, Math.Cos(angle), Math.Cos(angle), -Math.Sin(angle), Math.Sin(angle));
        return m;
    }

    private static double[,] Product(double[,] a, double[,] b)
    {
        var m = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++)
            {
                for (var k = 0; k < 3; k++) m[i, j] += a[i, k] * b[k, j];
            }
        }
        return m;
    }

    private static double[,] Transposed(double[,] a)
    {
        var m = new double[3, 3];
        for (var i = 0; i < 3; i++)
        {
            for (var j = 0; j < 3; j++) m[i, j] = a[j, i];
        }
        return m;
    }

    private static double[] Of(double[,] m, double[] v) =>
    [
        m[0, 0] * v[0] + m[0, 1] * v[1] + m[0, 2] * v[2],
        m[1, 0] * v[0] + m[1, 1] * v[1] + m[1, 2] * v[2],
        m[2, 0] * v[0] + m[2, 1] * v[1] + m[2, 2] * v[2],
    ];

    private static double[] Less(double[] a, double[] b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

    private static double[] Plus(double[] a, double[] b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];

    private static double[] Times(double[] a, double factor) => [a[0] * factor, a[1] * factor, a[2] * factor];
}
