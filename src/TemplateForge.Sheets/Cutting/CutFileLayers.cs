using System.Collections.Immutable;
using TemplateForge.Drawing;

namespace TemplateForge.Sheets;

/// <summary>What the layers of a cut file are for, known again from their names.</summary>
/// <remarks>
/// Only CUT is cut; what else a cut sheet has marks something. Where the finished edge stands on a layer of its own, CUT is the course of a
/// torch, leads and all. Where there is a panel edge, a cut that runs in over it and out again is open as it should be.
/// </remarks>
public static class CutFileLayers
{
    /// <summary>What is no cut, whoever drew it.</summary>
    private static readonly ImmutableArray<string> Marking =
        [.. LineKinds.InOrder.Where(k => k != LineKinds.Finish && k != LineKinds.RoughCut).Select(k => k.Layer)];

    /// <param name="layers">The layers of a file. Without CUT among them it is laid out in another way, and all of it is cut.</param>
    public static DxfPurposes Among(IReadOnlyCollection<string> layers) => !Holds(layers, LineKinds.Finish)
        ? DxfPurposes.AllCut
        : new(Marking, NamedAreCut: false) { Edges = [LineKinds.PanelEdge.Layer], AreCourses = Holds(layers, LineKinds.FinishedEdge) };

    private static bool Holds(IReadOnlyCollection<string> layers, LineKind kind) => layers.Contains(kind.Layer, StringComparer.OrdinalIgnoreCase);
}
