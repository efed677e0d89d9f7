using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Numbers the vertices, arcs and holes of a piece as they come.</summary>
internal sealed class MarkOutBuilder(BaseLine from)
{
    /// <summary>Places nearer than this, in mm, are one mark on the metal.</summary>
    private const double SameMark = 0.05;

    private readonly List<MarkedPoint> _points = [];
    private readonly List<MarkedLine> _lines = [];
    private readonly List<MarkedArc> _arcs = [];
    private readonly List<MarkedHole> _holes = [];
    private readonly Dictionary<(long, long), List<MarkedPoint>> _near = [];

    public void AddHole(Point centre, double radius, bool isOutline) =>
        _holes.Add(new(isOutline ? 0 : 1 + _holes.Count(h => !h.IsOutline), 2 * radius, centre, from.Of(centre), isOutline));

    public void AddLine(MarkedLineKind kind, string name, Path path)
    {
        var stretches = ImmutableArray.CreateBuilder<MarkedStretch>();
        foreach (var run in MarkOutRun.Of(path))
        {
            var (start, end) = (NumberOf(run.Start), NumberOf(run.End));
            if (start == end) continue;
            stretches.Add(new(start, end, ArcOf(run, start, end)));
        }
        if (stretches.Count > 0) _lines.Add(new(kind, name, stretches.ToImmutable()));
    }

    public MarkOut Made() => new(from, [.. _points], [.. _lines], [.. _arcs], [.. _holes]);

    private int ArcOf(MarkOutRun run, int start, int end)
    {
        if (run.IsLine) return 0;
        var arc = new MarkedArc(_arcs.Count + 1, start, end, run.Radius, run.Sweep, run.Centre, from.Of(run.Centre));
        if (arc.Rise < MarkOut.LeastRise) return 0;
        _arcs.Add(arc);
        return arc.Number;
    }

    private int NumberOf(Point at)
    {
        var (column, row) = ((long)Math.Floor(at.X), (long)Math.Floor(at.Y));
        for (var i = column - 1; i <= column + 1; i++)
        {
            for (var j = row - 1; j <= row + 1; j++)
            {
                if (_near.TryGetValue((i, j), out var there) && there.FirstOrDefault(p => p.At.DistanceTo(at) < SameMark) is { } known) return known.Number;
            }
        }
        var point = new MarkedPoint(_points.Count + 1, at, from.Of(at));
        _points.Add(point);
        if (!_near.TryGetValue((column, row), out var list)) _near.Add((column, row), list = []);
        list.Add(point);
        return point.Number;
    }
}
