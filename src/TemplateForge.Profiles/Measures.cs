using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What an expression can ask of a shape or a point by name: <c>top(opening)</c>, <c>distance(removed, hole_a)</c>.</summary>
internal static class Measures
{
    private delegate double Measure(IReadOnlyList<Thing> things);

    private static readonly ImmutableDictionary<string, (int Arity, Dimension Dimension, Measure Of)> Known =
        new Dictionary<string, (int, Dimension, Measure)>(StringComparer.Ordinal)
        {
            ["left"] = (1, Dimension.Length, t => t[0].Bounds.Min.X),
            ["right"] = (1, Dimension.Length, t => t[0].Bounds.Max.X),
            ["bottom"] = (1, Dimension.Length, t => t[0].Bounds.Min.Y),
            ["top"] = (1, Dimension.Length, t => t[0].Bounds.Max.Y),
            ["width"] = (1, Dimension.Length, t => t[0].Bounds.Width),
            ["height"] = (1, Dimension.Length, t => t[0].Bounds.Height),
            ["x"] = (1, Dimension.Length, t => t[0].Bounds.Centre.X),
            ["y"] = (1, Dimension.Length, t => t[0].Bounds.Centre.Y),
            ["area"] = (1, Dimension.Area, t => t[0].Shape.Area),
            ["outline_length"] = (1, Dimension.Length, t => t[0].Shape.Length),
            ["distance"] = (2, Dimension.Length, t => t[0].DistanceTo(t[1])),
        }.ToImmutableDictionary(StringComparer.Ordinal);

    public static IEnumerable<string> Names => Known.Keys.Order(StringComparer.Ordinal);

    public static bool TryFind(string function, int arity, out Dimension dimension)
    {
        var found = Known.TryGetValue(function, out var measure) && measure.Arity == arity;
        dimension = measure.Dimension;
        return found;
    }

    public static Quantity Of(string function, IReadOnlyList<Thing> things) => new(Known[function].Of(things), Known[function].Dimension);
}

/// <summary>A shape, or a point, which is measured like a shape without size.</summary>
internal readonly record struct Thing(Region Shape, Point At)
{
    public Thing(Region shape) : this(shape, default) { }

    public Thing(Point at) : this(Region.Empty, at) { }

    public Box Bounds => Shape.IsEmpty ? new Box(At, At) : Shape.Bounds;

    public double DistanceTo(Thing other) => (Shape.IsEmpty, other.Shape.IsEmpty) switch
    {
        (true, true) => At.DistanceTo(other.At),
        (true, false) => other.Shape.DistanceTo(At),
        (false, true) => Shape.DistanceTo(other.At),
        _ => Shape.DistanceTo(other.Shape),
    };
}
