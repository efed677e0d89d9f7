using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The least distance of every place of the sheet, through its whole thickness, from some components in all their positions.</summary>
internal sealed class ClearanceField
{
    /// <summary>What the search over depths and positions may leave out, in mm, before it goes downhill from the best of them.</summary>
    private const double Sure = 0.002;

    private readonly ImmutableArray<(LeastOverMoves Least, Box Bounds)> _components;

    public ClearanceField(IEnumerable<Component> components)
    {
        var moved = components.Select(c => new MovedComponent(c));
        _components = [.. moved.Select(m => (new LeastOverMoves(m, Sure), m.Bounds))];
    }

    public Box Bounds => Box.Around(_components.Select(c => c.Bounds));

    public long Evaluations => _components.Sum(c => c.Least.Evaluations);

    /// <summary>The distance at a place, in full.</summary>
    public Nearness At(Point at) => At(at, below: 0, above: double.PositiveInfinity);

    /// <summary>The distance at a place; only that it is less than one bound, or more than another, where that is so.</summary>
    public Nearness At(Point at, double below, double above)
    {
        var nearest = Nearness.Further(double.PositiveInfinity);
        for (var i = 0; i < _components.Length; i++)
        {
            var bounds = _components[i].Bounds;
            var away = new Vector(
                Math.Max(0, Math.Max(bounds.Min.X - at.X, at.X - bounds.Max.X)), Math.Max(0, Math.Max(bounds.Min.Y - at.Y, at.Y - bounds.Max.Y))).Length;
            if (away > Math.Min(above, nearest.Distance))
            {
                if (away < nearest.Distance) nearest = Nearness.Further(away);
                continue;
            }
            var near = _components[i].Least.At(at, below, Math.Min(above, nearest.Distance));
            if (near.Distance < nearest.Distance) nearest = near with { Label = near.Label < 0 ? -1 : near.Label * _components.Length + i };
            if (nearest.Distance < below) break;
        }
        return nearest;
    }
}
