namespace TemplateForge.Geometry;

/// <summary>A piece of a curve between two nodes, and how often the boundary runs along it.</summary>
/// <param name="Start">Node at its start.</param>
/// <param name="End">Node at its end.</param>
/// <param name="Bulge">tan(sweep / 4) from start to end.</param>
/// <param name="Count">How often it is run forwards, less how often backwards.</param>
/// <param name="Parent">The curve as it was put in, of which this is a part in the same direction.</param>
/// <param name="Settled">It has been compared with all other settled edges.</param>
internal readonly record struct Edge(int Start, int End, double Bulge, int Count, int Parent, bool Settled);
