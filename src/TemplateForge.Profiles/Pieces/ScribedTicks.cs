using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A short line at each station, square to the left of the way the row runs: the marks of a scale.</summary>
internal sealed record ScribedTicks(StationsName At, Term Length) : ScribeRecipe
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Path> lines)
    {
        lines = [];
        if (!(from.TryStations(At, out var row) & from.TrySize(Length, out var length))) return false;
        lines = [.. row!.Stations.Select(s => Path.Line(s.At, s.At + s.Way.Left * length))];
        return true;
    }
}
