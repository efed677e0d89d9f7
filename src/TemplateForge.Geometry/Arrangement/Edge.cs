namespace TemplateForge.Geometry;

/// <summary>A piece of a curve between two nodes, and how often the boundary runs along it.</summary>
/// <param name="Start">Node at its start.</param>
/// <param name="End">Node at its end.</param>
/// <param name="Bulge">tan(sweep / 4) from start to end.</param>
/// <param name="Count">How often it is run forwards, less how often backwards.</param>
/// <param name="Parent">The curve as it was put in, of which this is a part in the same direction.</param>
/// <param name="Settled">It has been compared with all other settled edges.</param>
/// <param name="RunsOn">It is tangent to the edge that begins at its end, so the two meet nowhere else.</param>
internal readonly record struct Edge(int Start, int End, double Bulge, int Count, int Parent, bool Settled, bool RunsOn);

/// <summary>A curve as it was put in.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Bulge">tan(sweep / 4).</param>
/// <param name="Count">How often the boundary runs along it.</param>
/// <param name="IsEdge">Whether it is an edge of the arrangement, or hidden.</param>
/// <param name="Disc">A known disc that lies near it, if any does.</param>
internal readonly record struct Piece(Point Start, Point End, double Bulge, int Count, bool IsEdge, int Disc)
{
    public Curve Curve => Curve.Between(Start, End, Bulge);
}
