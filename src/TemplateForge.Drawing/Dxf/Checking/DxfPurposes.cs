using System.Collections.Immutable;

namespace TemplateForge.Drawing;

/// <summary>What the layers of a DXF are for: which of them a table cuts, and which open cuts are meant.</summary>
/// <param name="Named">Names of layers, in capitals or not.</param>
/// <param name="NamedAreCut">Whether the named layers are cut and no other, or all others and not these.</param>
public sealed record DxfPurposes(ImmutableArray<string> Named, bool NamedAreCut)
{
    /// <summary>Whatever is drawn is cut, and an open cut is a fault: all that is known of a stranger's file.</summary>
    public static DxfPurposes AllCut { get; } = new([], NamedAreCut: false);

    /// <summary>Layers of edges of the work: an open cut that runs in over them and out again is meant.</summary>
    public ImmutableArray<string> Edges { get; init; } = [];

    /// <summary>Whether each cut is the course of a torch, with its leads and its overcut: open, and over itself, as it is meant.</summary>
    public bool AreCourses { get; init; }

    /// <summary>Whether open cuts are meant, wherever they are. What looks like a gap in an outline is told all the same.</summary>
    public bool OpenIsMeant { get; init; }

    public bool IsCut(string layer) => Holds(Named, layer) == NamedAreCut;

    public bool IsEdge(string layer) => Holds(Edges, layer);

    /// <summary>The same for a file in which layers have other names.</summary>
    public DxfPurposes Renamed(IReadOnlyDictionary<string, string> names) =>
        this with { Named = NewNames(Named, names), Edges = NewNames(Edges, names) };

    private static ImmutableArray<string> NewNames(ImmutableArray<string> layers, IReadOnlyDictionary<string, string> names) =>
        [.. names.Where(n => Holds(layers, n.Key)).Select(n => n.Value)];

    private static bool Holds(ImmutableArray<string> layers, string layer) => layers.Contains(layer, StringComparer.OrdinalIgnoreCase);
}
