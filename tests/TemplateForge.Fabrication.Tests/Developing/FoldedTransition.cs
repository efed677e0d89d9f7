using System.Collections.Immutable;

namespace TemplateForge.Fabrication.Tests;

/// <summary>The flat pattern of a transition folded up again: each triangle is swung about its joint by the angle that the pattern gives.</summary>
/// <remarks>It knows the flat places of the rulings and the turns at them, and nothing of how they were found.</remarks>
internal sealed class FoldedTransition
{
    private FoldedTransition(ImmutableArray<Vector3> lower, ImmutableArray<Vector3> upper) => (Lower, Upper) = (lower, upper);

    /// <summary>The lower end of every ruling, in space.</summary>
    public ImmutableArray<Vector3> Lower { get; }
    public ImmutableArray<Vector3> Upper { get; }

    /// <summary>Folded, then laid so that three of its lower corners come to three given places.</summary>
    public static FoldedTransition Of(TransitionPart part, Func<double, Vector3> lowerAt)
    {
        var flat = part.Rulings;
        // The sheet lies in the plane z = 0, its inside up. Past each ruling all that is left of it is swung about that ruling where it now stands:
        // what the flat's origin and axes have come to is carried along.
        var (lower, upper) = (new Vector3[flat.Length], new Vector3[flat.Length]);
        var (o, x, y) = (new Vector3(0, 0, 0), new Vector3(1, 0, 0), new Vector3(0, 1, 0));
        for (var i = 0; i < flat.Length; i++)
        {
            lower[i] = o + x * flat[i].Lower.X + y * flat[i].Lower.Y;
            upper[i] = o + x * flat[i].Upper.X + y * flat[i].Upper.Y;
            var (on, axis) = (lower[i], Unit(upper[i] - lower[i]));
            // What lies to the left of the upright joint rises: seen against the axis, counter-clockwise.
            var swing = flat[i].Turn * Math.PI / 180;
            o = on + (o - on).Turned(axis, swing);
            (x, y) = (x.Turned(axis, swing), y.Turned(axis, swing));
        }
        // Distances along the flat edge say where on the outline a corner belongs.
        var along = new double[flat.Length];
        for (var i = 1; i < flat.Length; i++) along[i] = along[i - 1] + flat[i].Lower.DistanceTo(flat[i - 1].Lower);
        // The two that with the first span the largest triangle.
        var some = Enumerable.Range(0, 25).Select(k => Nearest(along, along[^1] * k / 24)).Distinct().ToList();
        var (second, third) = some.SelectMany(a => some.Select(b => (a, b))).MaxBy(p => (lowerAt(along[p.a]) - lowerAt(0)).Cross(lowerAt(along[p.b]) - lowerAt(0)).Length);
        var own = Frame(lower[0], lower[second], lower[third]);
        var there = Frame(lowerAt(0), lowerAt(along[second]), lowerAt(along[third]));
        Vector3 Put(Vector3 p)
        {
            var r = p - own.Origin;
            return there.Origin + there.X * r.Dot(own.X) + there.Y * r.Dot(own.Y) + there.Z * r.Dot(own.Z);
        }
        return new([.. lower.Select(Put)], [.. upper.Select(Put)]);
    }

    private static int Nearest(double[] along, double wanted) => Enumerable.Range(0, along.Length).MinBy(i => Math.Abs(along[i] - wanted));

    private static (Vector3 Origin, Vector3 X, Vector3 Y, Vector3 Z) Frame(Vector3 a, Vector3 b, Vector3 c)
    {
        var x = Unit(b - a);
        var z = Unit(x.Cross(c - a));
        return (a, x, z.Cross(x), z);
    }

    private static Vector3 Unit(Vector3 v) => v * (1 / v.Length);
}
