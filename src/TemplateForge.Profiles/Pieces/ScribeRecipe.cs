using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>Lines that are scribed.</summary>
internal abstract record ScribeRecipe
{
    public abstract bool TryMake(Evaluation from, out ImmutableArray<Path> lines);
}

/// <summary>A line or a path.</summary>
internal sealed record ScribedLine(LineTerm Line) : ScribeRecipe
{
    public override bool TryMake(Evaluation from, out ImmutableArray<Path> lines)
    {
        var found = Line.TryFind(from, out var run);
        lines = found ? [run!.Path] : [];
        return found;
    }
}

/// <summary>A cross with an open middle at each station.</summary>
internal sealed record ScribedCrosses(StationsName At, Term Size) : ScribeRecipe
{
    // The punch mark must be seen.
    private const double OpenMiddle = 1;

    public override bool TryMake(Evaluation from, out ImmutableArray<Path> lines)
    {
        lines = [];
        if (!(from.TryStations(At, out var row) & from.TrySize(Size, out var size))) return false;
        var arm = Math.Max(size / 2, 2 * OpenMiddle);
        Vector[] ways = [new(1, 0), new(0, 1), new(-1, 0), new(0, -1)];
        lines = [.. row!.Stations.SelectMany(s => ways.Select(way => Path.Line(s.At + way * OpenMiddle, s.At + way * arm)))];
        return true;
    }
}
