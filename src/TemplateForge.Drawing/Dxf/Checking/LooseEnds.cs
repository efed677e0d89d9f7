using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Open strokes that have found no place yet, to be found by their ends.</summary>
internal sealed class LooseEnds(double near)
{
    private readonly Dictionary<(long, long), List<DxfStroke>> cells = [];
    private readonly HashSet<DxfStroke> left = new(ReferenceEqualityComparer.Instance);

    public void Add(DxfStroke stroke)
    {
        left.Add(stroke);
        foreach (var end in (ReadOnlySpan<Point>)[stroke.Start, stroke.End])
        {
            var cell = CellOf(end);
            if (!cells.TryGetValue(cell, out var here)) cells[cell] = here = [];
            here.Add(stroke);
        }
    }

    public bool TryTake(DxfStroke stroke) => left.Remove(stroke);

    /// <summary>The first stroke that is left with an end there.</summary>
    public bool TryTakeAt(Point at, [MaybeNullWhen(false)] out DxfStroke stroke)
    {
        var (x, y) = CellOf(at);
        stroke = null;
        for (var i = x - 1; i <= x + 1; i++)
        {
            for (var j = y - 1; j <= y + 1; j++)
            {
                if (!cells.TryGetValue((i, j), out var here)) continue;
                stroke = here.Where(s => left.Contains(s) && Math.Min(s.Start.DistanceTo(at), s.End.DistanceTo(at)) <= near)
                    .Append(stroke).OfType<DxfStroke>().MinBy(s => s.Line);
            }
        }
        return stroke is not null && left.Remove(stroke);
    }

    private (long X, long Y) CellOf(Point p) => ((long)Math.Floor(p.X / near), (long)Math.Floor(p.Y / near));
}
