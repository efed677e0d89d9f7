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
            ["count"] = (1, Dimension.Number, t => t[0].Count),
            ["pitch"] = (1, Dimension.Length, t => t[0].Pitch),
            ["distance"] = (2, Dimension.Length, t => t[0].DistanceTo(t[1])),
        }.ToImmutableDictionary(StringComparer.Ordinal);

    private static readonly ImmutableDictionary<string, bool> Clearances =
        ImmutableDictionary.Create<string, bool>(StringComparer.Ordinal).Add("clearance_of", false).Add("clearance_in", true);

    public static IEnumerable<string> Names => Known.Keys.Concat(Clearances.Keys).Order(StringComparer.Ordinal);

    public static bool TryFind(string function, int arity, out Dimension dimension)
    {
        if (IsClearance(function, out _))
        {
            dimension = Dimension.Length;
            return arity == 2;
        }
        var found = Known.TryGetValue(function, out var measure) && measure.Arity == arity;
        dimension = measure.Dimension;
        return found;
    }

    /// <summary>Whether the measure is that of a shape and a component: of what stays, or of what is all round an opening.</summary>
    public static bool IsClearance(string function, out bool isOpening) => Clearances.TryGetValue(function, out isOpening);

    /// <summary>Measures the things; false where they have no such measure, as a point has no pitch.</summary>
    public static bool TryOf(string function, IReadOnlyList<Thing> things, out Quantity measure)
    {
        var known = Known[function];
        measure = new(known.Of(things), known.Dimension);
        return !double.IsNaN(measure.Value);
    }
}

/// <summary>What can be measured: a shape, a point, which is measured like a shape without size, or a row of stations, which is its
/// places.</summary>
internal sealed record Thing(Region Shape, ImmutableArray<Point> Places)
{
    public Thing(Region shape) : this(shape, []) { }

    public Thing(Point at) : this(Region.Empty, [at]) { }

    public Thing(StationRow row) : this(Region.Empty, [.. row.Stations.Select(s => s.At)]) => Pitch = row.Pitch > 0 ? row.Pitch : double.NaN;

    public Box Bounds => Shape.IsEmpty ? Box.Around(Places) : Shape.Bounds;

    /// <summary>How many stations, or how many separate parts.</summary>
    public int Count => Shape.IsEmpty ? Places.Length : Shape.Parts().Length;

    /// <summary>Distance between neighbours along the line; not a number where they are not evenly apart.</summary>
    public double Pitch { get; } = double.NaN;

    public double DistanceTo(Thing other) => (Shape.IsEmpty, other.Shape.IsEmpty) switch
    {
        (true, true) => Places.Min(p => other.Places.Min(p.DistanceTo)),
        (true, false) => Places.Min(other.Shape.DistanceTo),
        (false, true) => other.Places.Min(Shape.DistanceTo),
        _ => Shape.DistanceTo(other.Shape),
    };
}
