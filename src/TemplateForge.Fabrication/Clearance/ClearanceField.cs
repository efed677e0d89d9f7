using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The least distance of every place of the sheet, through its whole thickness, from some components in all their positions.</summary>
internal sealed class ClearanceField
{
    /// <summary>What the search over depths and positions may leave out, in mm, before it goes downhill from the best of them.</summary>
    private const double Sure = 0.004;

    private readonly ImmutableArray<(LeastOverMoves Least, Box Bounds)> _components;

    public ClearanceField(IEnumerable<Component> components)
    {
        var moved = components.Select(c => new MovedComponent(c));
        _components = [.. moved.Select(m => (new LeastOverMoves(m, Sure), m.Bounds))];
    }

    public Box Bounds => Box.Around(_components.Select(c => c.Bounds));

    /// <summary>The distance at a place, in full.</summary>
    public Nearness At(Point at) => At(at, below: 0, above: double.PositiveInfinity);

    /// <summary>The distance at a place; only that it is less than one bound, or more than another, where that is so.</summary>
    public Nearness At(Point at, double below, double above)
    {
        Span<double> moves = stackalloc double[MovedComponent.MostMoves];
        return At(at, below, above, moves, SearchStart.Afresh, out _);
    }

    /// <summary>Whether the distance at a place is less than one bound, more than another, or roughly between.</summary>
    public double Roughly(Point at, double below, double above)
    {
        Span<double> moves = stackalloc double[MovedComponent.MostMoves];
        return At(at, below, above, moves, SearchStart.Roughly, out _).Distance;
    }

    /// <summary>The distance at a place, starting in the position in which it was nearest to another.</summary>
    public Nearness WholeFrom(Point at, Span<double> moves, ref int component)
    {
        Span<double> others = stackalloc double[MovedComponent.MostMoves];
        var own = Named(_components[component].Least.At(at, 0, double.PositiveInfinity, moves, SearchStart.FromMoves), component);
        if (_components.Length == 1) return own;
        var all = At(at, 0, own.Distance, others, SearchStart.Afresh, out var nearest);
        if (all.Label < 0 || all.Distance >= own.Distance) return own;
        component = nearest;
        others.CopyTo(moves);
        return all;
    }

    /// <summary>The distance at a place in the position in which it was nearest to another; what else is nearer there is not looked for.</summary>
    /// <remarks>The moves become those at the bottom of the same valley.</remarks>
    public Nearness From(Point at, Span<double> moves, int component) =>
        Named(_components[component].Least.From(at, moves), component);

    /// <summary>The distance in full, and its moves and component.</summary>
    public Nearness At(Point at, Span<double> moves, out int component) =>
        At(at, 0, double.PositiveInfinity, moves, SearchStart.Afresh, out component);

    /// <summary>As above, and the moves of the component that is nearest, and which that is.</summary>
    private Nearness At(Point at, double below, double above, Span<double> moves, SearchStart start, out int component)
    {
        var nearest = Nearness.Further(double.PositiveInfinity);
        component = 0;
        Span<double> own = stackalloc double[MovedComponent.MostMoves];
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
            var near = _components[i].Least.At(at, below, Math.Min(above, nearest.Distance), own, start);
            if (near.Distance < nearest.Distance)
            {
                (nearest, component) = (Named(near, i), i);
                own.CopyTo(moves);
            }
            if (nearest.Distance < below) break;
        }
        return nearest;
    }

    private Nearness Named(Nearness near, int component) => near with { Label = near.Label < 0 ? -1 : near.Label * _components.Length + component };
}
