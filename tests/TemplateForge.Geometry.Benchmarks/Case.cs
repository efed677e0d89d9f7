namespace TemplateForge.Geometry.Benchmarks;

/// <summary>One job on one shape, done by this library and by the other one.</summary>
/// <param name="Table">The table that it is a row of.</param>
/// <param name="Shape">The shape, by name.</param>
/// <param name="Job">What is done with it.</param>
/// <param name="Size">Segments of the shape as this library holds it.</param>
/// <param name="Operations">How many operations one call of either does; times and bytes are divided by it.</param>
/// <param name="Ours">All operations, by this library.</param>
/// <param name="Theirs">All operations, by NetTopologySuite.</param>
public sealed record Case(
    string Table, string Shape, string Job, int Size, int Operations, Func<Region[]> Ours, Func<NetTopologySuite.Geometries.Geometry[]> Theirs)
{
    public static Case Of(string table, string shape, string job, int size, Func<Region> ours, Func<NetTopologySuite.Geometries.Geometry> theirs) =>
        new(table, shape, job, size, 1, () => [ours()], () => [theirs()]);

    /// <summary>Bytes that the results of one operation take up by themselves: objects, arrays and 40 bytes a segment.</summary>
    public double ResultBytes() => Ours().Sum(BytesOf) / Operations;

    private static double BytesOf(Region region) =>
        region.IsEmpty ? 0 : 48 + region.Contours.Sum(c => 8 + 24 + 24 + 40 * c.Segments.Length);
}

/// <summary>Medians of one case: nanoseconds and allocated bytes of one operation.</summary>
public sealed record Measured(
    Case Case, double Ours, double Theirs, double Ratio, double OurBytes, double TheirBytes, double ResultBytes);
