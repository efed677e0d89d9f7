using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Finds the boundary of where a field is below its level: closed rows of places a cell apart, what is inside to the left.</summary>
/// <remarks>
/// The distance changes by no more than the way that one goes, so a cell at whose middle it differs from the level by more than half
/// the cell's diagonal has no boundary in it: a quarter of a cell at a time, what is left is cells of one size, and the boundary goes
/// through their edges where the sign changes. What is smaller than a cell may be missed. Since d² less the square of the way is
/// concave, such an island comes nearer than the level c by no more than r² / 2c, r being half the cell's diagonal.
/// </remarks>
internal sealed class ClearanceCells
{
    private const double Exact = 1e-9; // how near to the level a place of the boundary is sought, in mm
    private const double Spare = 0.005; // the field's bounds are that sure

    private readonly ClearanceField _field;
    private readonly double _level, _cell;
    private readonly Point _origin;
    private readonly double[] _moves = new double[MovedComponent.MostMoves]; // those of the last place that was sought
    private int _component = -1;
    private readonly Dictionary<(int, int), double> _excess = [];
    private readonly Dictionary<(int, int, bool), BoundaryPlace> _crossings = [];

    public ClearanceCells(ClearanceField field, double level, double cell)
    {
        (_field, _level, _cell) = (field, level, cell);
        // Off the round values that sizes in a shop have, so that no edge of a cell runs along the boundary.
        _origin = field.Bounds.Grown(level).Min - new Vector(1.2345678 * cell, 1.1234567 * cell);
    }

    public List<List<BoundaryPlace>> Loops()
    {
        var size = _field.Bounds.Grown(_level);
        var cells = 1;
        while (cells * _cell < Math.Max(size.Width, size.Height) + 3 * _cell) cells *= 2;
        var next = new Dictionary<(int, int, bool), (int, int, bool)>();
        Divide(0, 0, cells, next);
        var loops = new List<List<BoundaryPlace>>();
        while (next.Count > 0)
        {
            var first = next.Keys.First();
            var loop = new List<BoundaryPlace>();
            for (var edge = first; next.Remove(edge, out var following); edge = following) loop.Add(_crossings[edge]);
            loops.Add(loop);
        }
        return loops;
    }

    /// <summary>The place of the boundary on the line through a point, near it; false where there is none within reach.</summary>
    public bool TryAcross(Point middle, Vector way, double reach, out BoundaryPlace place)
    {
        place = default;
        var here = Excess(middle).By;
        if (here == 0) return Give(middle, out place);
        for (var far = reach; far <= 64 * reach; far *= 2)
        {
            // Against the way it gets nearer to the components.
            var to = middle + way * (here > 0 ? -far : far);
            var there = Excess(to).By;
            if (here > 0 == there > 0) continue;
            return TryBetween(middle, here, to, there, out place);
        }
        return false;
    }

    private void Divide(int x, int y, int cells, Dictionary<(int, int, bool), (int, int, bool)> next)
    {
        var half = cells * _cell / 2;
        var middle = At(x, y) + new Vector(half, half);
        var reach = half * Math.Sqrt(2);
        var distance = _field.Roughly(middle, _level - reach - Spare, _level + reach + Spare);
        if (Math.Abs(distance - _level) > reach + Spare) return;
        if (cells == 1)
        {
            Cross(x, y, next);
            return;
        }
        var part = cells / 2;
        Divide(x, y, part, next);
        Divide(x + part, y, part, next);
        Divide(x, y + part, part, next);
        Divide(x + part, y + part, part, next);
    }

    // Corners and edges counter-clockwise from the lower left; an edge is known by its lower or left end and whether it stands up.
    private void Cross(int x, int y, Dictionary<(int, int, bool), (int, int, bool)> next)
    {
        ReadOnlySpan<(int X, int Y)> corners = [(x, y), (x + 1, y), (x + 1, y + 1), (x, y + 1)];
        ReadOnlySpan<(int, int, bool)> edges = [(x, y, false), (x + 1, y, true), (x, y + 1, false), (x, y, true)];
        Span<bool> inside = stackalloc bool[4];
        for (var i = 0; i < 4; i++) inside[i] = Corner(corners[i]) < 0;
        // The boundary comes in where, counter-clockwise round the cell, a run of inside corners ends, and leaves where it began; with two
        // runs in one cell, where the other began if they are joined through the middle.
        Span<int> ends = stackalloc int[4];
        Span<int> begins = stackalloc int[4];
        var (ending, beginning) = (0, 0);
        for (var i = 0; i < 4; i++)
        {
            if (inside[i] == inside[(i + 1) % 4]) continue;
            if (inside[i]) ends[ending++] = i; else begins[beginning++] = i;
            Edge(edges[i], corners[i], corners[(i + 1) % 4]);
        }
        if (ending == 0) return;
        if (ending == 1)
        {
            next[edges[ends[0]]] = edges[begins[0]];
            return;
        }
        var through = _field.At(At(x, y) + new Vector(_cell / 2, _cell / 2)).Distance < _level;
        foreach (var end in ends[..2])
        {
            var begin = through ? (end + 1) % 4 : (end + 3) % 4;
            next[edges[end]] = edges[begin];
        }
    }

    private double Corner((int X, int Y) corner)
    {
        if (_excess.TryGetValue(corner, out var known)) return known;
        var excess = _field.At(At(corner.X, corner.Y), _level, _level + Spare).Distance - _level;
        _excess[corner] = excess;
        return excess;
    }

    private void Edge((int, int, bool) edge, (int X, int Y) from, (int X, int Y) to)
    {
        if (_crossings.ContainsKey(edge)) return;
        var (a, b) = (At(from.X, from.Y), At(to.X, to.Y));
        var (one, other) = (Excess(a).By, Excess(b).By);
        _crossings[edge] = one > 0 != other > 0 && TryBetween(a, one, b, other, out var place) ? place : Of(a.MidpointTo(b));
    }

    /// <summary>Between two points with the level between them, by the secant that keeps both sides (the Illinois method).</summary>
    /// <remarks>On the way only the component and the position that were nearest are asked; at the end all are.</remarks>
    private bool TryBetween(Point from, double one, Point to, double other, out BoundaryPlace place, bool allInFull = false)
    {
        var moves = _moves;
        var (low, high, last, component) = (0.0, 1.0, 0, allInFull ? -1 : _component);
        for (var round = 0; round < 100; round++)
        {
            var share = round % 8 == 7 ? (low + high) / 2 : low + (high - low) * (one / (one - other));
            var at = from + (to - from) * share;
            var inFull = allInFull || component < 0;
            var near = inFull ? _field.At(at, moves, out component) : _field.From(at, moves, component);
            var by = near.Distance - _level;
            if (Math.Abs(by) <= Exact || (high - low) * from.DistanceTo(to) < 1e-11)
            {
                _component = component;
                if (inFull) return Give(at, near, out place);
                var whole = _field.WholeFrom(at, moves, ref component);
                _component = component;
                by = whole.Distance - _level;
                if (by > -Exact) return Give(at, near, out place);
                // Something else is nearer, so this is inside: between here and the end that is outside, once more.
                return other > 0
                    ? TryBetween(at, by, to, Excess(to).By, out place, allInFull: true)
                    : TryBetween(from, Excess(from).By, at, by, out place, allInFull: true);
            }
            if (by > 0 == other > 0)
            {
                (high, other) = (share, by);
                if (last == 1) one /= 2;
                last = 1;
            }
            else
            {
                (low, one) = (share, by);
                if (last == -1) other /= 2;
                last = -1;
            }
        }
        return Give(from + (to - from) * ((low + high) / 2), out place);
    }

    private bool Give(Point at, out BoundaryPlace place) => Give(at, _field.At(at), out place);

    private static bool Give(Point at, Nearness near, out BoundaryPlace place)
    {
        place = new(at, near.Outwards.Unit, near.Label);
        return near.Outwards.Length > 1e-9;
    }

    private BoundaryPlace Of(Point at)
    {
        var near = _field.At(at);
        return new(at, near.Outwards.Unit, near.Label);
    }

    private (double By, Nearness Near) Excess(Point at)
    {
        var near = _field.At(at);
        return (near.Distance - _level, near);
    }

    private Point At(int x, int y) => _origin + new Vector(x * _cell, y * _cell);
}
