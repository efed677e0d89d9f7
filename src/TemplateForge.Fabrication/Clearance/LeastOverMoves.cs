using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The least distance of a place of the sheet, through its whole thickness, from a component in all its positions.</summary>
internal sealed class LeastOverMoves(MovedComponent component, double sure)
{
    // 1. Branch and bound over the moves: in a cell whose corners lie no nearer than d, and whose middle is no further than r by any of
    //    them, nothing lies nearer than √(d² − r²). Cells that cannot better the least so far by more than `sure` are left.
    // 2. From the best corner downhill to where no move betters it (Newton's method within the bounds), and from any other valley
    //    that might be as deep.
    private const int Corners = 1 << MovedComponent.MostMoves;
    private const int MostCells = 4096;
    private const int MostValleys = 16;

    private readonly int _moves = component.Moves;
    private readonly double[] _low = new double[MostCells * MovedComponent.MostMoves], _high = new double[MostCells * MovedComponent.MostMoves];
    private readonly double[] _squares = new double[MostCells * Corners];
    private readonly List<(double Squared, double A, double B, double C)> _valleys = [];

    /// <param name="at">The place.</param>
    /// <param name="below">A distance under which nothing more need be known.</param>
    /// <param name="above">A distance over which nothing more need be known.</param>
    /// <param name="moves">Becomes the moves at which it is nearest.</param>
    /// <param name="start">Where it starts; from the moves that are given, what is nearer by less than what is sure is not looked for.</param>
    public Nearness At(Point at, double below, double above, Span<double> moves, SearchStart start)
    {
        Span<double> slopes = stackalloc double[MovedComponent.MostMoves];
        var reach = component.Reach(at);
        var (best, a, b, c) = (double.PositiveInfinity, 0.0, 0.0, 0.0);
        var (under, over) = (below > 0 ? below * below : -1, above * above);
        var known = start == SearchStart.FromMoves ? Downhill(at, moves, reach) : default;
        if (start == SearchStart.FromMoves) (best, a, b, c) = (known.Distance * known.Distance, moves[0], moves[1], moves[2]);
        if (start == SearchStart.FromMoves && (best < under || best == 0)) return known;
        _valleys.Clear();
        for (var move = 0; move < _moves; move++) (_low[move], _high[move]) = (component.Low(move), component.High(move));
        var cells = 1;
        for (var corner = 0; corner < 1 << _moves; corner++)
        {
            _squares[corner] = Square(at, 0, corner, moves, slopes);
            if (_squares[corner] < best - 1e-9) (best, a, b, c) = (_squares[corner], moves[0], moves[1], moves[2]);
            if (best < under || best == 0) return Nearness.Closer(Math.Sqrt(best));
        }
        if (start == SearchStart.Roughly && best < over) return Nearness.Closer(Math.Sqrt(best));
        while (cells > 0)
        {
            var cell = --cells;
            var (least, corner) = (double.PositiveInfinity, 0);
            for (var i = 0; i < 1 << _moves; i++)
            {
                if (_squares[cell * Corners + i] < least) (least, corner) = (_squares[cell * Corners + i], i);
            }
            var (radius, longest) = Radius(at, cell, reach, Math.Sqrt(least), moves);
            var bound = least - radius;
            if (bound >= Math.Min(best, over)) continue;
            if (bound >= best - 2 * sure * Math.Sqrt(best) || cells + 2 > MostCells || radius < 1e-12)
            {
                Corner(cell, corner, moves);
                _valleys.Add((least, moves[0], moves[1], moves[2]));
                continue;
            }
            // The far half takes the place of the cell, the near half the one after it, so that it is looked at first.
            Copy(cell, cell + 1);
            var middle = (_low[cell * MovedComponent.MostMoves + longest] + _high[cell * MovedComponent.MostMoves + longest]) / 2;
            _low[cell * MovedComponent.MostMoves + longest] = middle;
            _high[(cell + 1) * MovedComponent.MostMoves + longest] = middle;
            for (var i = 0; i < 1 << _moves; i++)
            {
                if ((i >> longest & 1) == 0) continue;
                var square = Square(at, cell + 1, i, moves, slopes);
                _squares[(cell + 1) * Corners + i] = square;
                _squares[cell * Corners + (i & ~(1 << longest))] = square;
                if (square < best - 1e-9) (best, a, b, c) = (square, moves[0], moves[1], moves[2]);
                if (best < under || best == 0 || (start == SearchStart.Roughly && best < over)) return Nearness.Closer(Math.Sqrt(best));
            }
            cells += 2;
        }
        if (best - 2 * sure * Math.Sqrt(best) >= over) return Nearness.Further(Math.Sqrt(best));
        (moves[0], moves[1], moves[2]) = (a, b, c);
        if (start == SearchStart.Roughly) return Nearness.Closer(Math.Sqrt(best));
        var nearest = start == SearchStart.FromMoves && best == known.Distance * known.Distance ? known : Downhill(at, moves, reach);
        var spare = 2 * sure * nearest.Distance;
        // The deepest first: a cell that ends as a valley holds nothing deeper than its corner by more than is sure.
        _valleys.Sort((one, other) => one.Squared.CompareTo(other.Squared));
        foreach (var (squared, x, y, z) in _valleys.Take(MostValleys))
        {
            if (squared > nearest.Distance * nearest.Distance + spare || Apart(moves, x, y, z, reach) < 4 * Math.Sqrt(spare)) continue;
            Span<double> other = [x, y, z];
            var found = Downhill(at, other, reach);
            if (found.Distance < nearest.Distance - 1e-12)
            {
                nearest = found;
                other.CopyTo(moves);
            }
        }
        return nearest;
    }

    /// <summary>The valley downhill from some moves, which become those of its bottom; another may lie deeper.</summary>
    public Nearness From(Point at, Span<double> moves) => Downhill(at, moves, component.Reach(at));

    private double Apart(ReadOnlySpan<double> moves, double x, double y, double z, double reach)
    {
        Span<double> other = [x, y, z];
        var apart = 0.0;
        for (var move = 0; move < _moves; move++) apart += Math.Abs(moves[move] - other[move]) * (component.IsTurn(move) ? reach : 1);
        return apart;
    }

    private void Copy(int from, int to)
    {
        Array.Copy(_low, from * MovedComponent.MostMoves, _low, to * MovedComponent.MostMoves, _moves);
        Array.Copy(_high, from * MovedComponent.MostMoves, _high, to * MovedComponent.MostMoves, _moves);
        Array.Copy(_squares, from * Corners, _squares, to * Corners, 1 << _moves);
    }

    private void Corner(int cell, int corner, Span<double> moves)
    {
        moves.Clear();
        for (var move = 0; move < _moves; move++)
            moves[move] = ((corner >> move & 1) == 0 ? _low : _high)[cell * MovedComponent.MostMoves + move];
    }

    private double Square(Point at, int cell, int corner, Span<double> moves, Span<double> slopes)
    {
        Corner(cell, corner, moves);
        return component.Squared(at, moves, slopes, out _, out _);
    }

    /// <summary>The square of half the way across a cell, with what the turning adds to it; and its longest move.</summary>
    private (double Squared, int Longest) Radius(Point at, int cell, double reach, double distance, Span<double> moves)
    {
        Span<InSpace> halves = stackalloc InSpace[MovedComponent.MostMoves];
        for (var move = 0; move < _moves; move++)
            moves[move] = (_high[cell * MovedComponent.MostMoves + move] + _low[cell * MovedComponent.MostMoves + move]) / 2;
        var (straight, turn, longest, most) = (0.0, 0.0, 0, -1.0);
        for (var move = 0; move < _moves; move++)
        {
            var half = (_high[cell * MovedComponent.MostMoves + move] - _low[cell * MovedComponent.MostMoves + move]) / 2;
            if (component.IsTurn(move)) turn = half; else straight += half;
            halves[move] = component.Speed(move, at, moves) * half;
            var way = halves[move].Length;
            if (way > most) (most, longest) = (way, move);
        }
        // The longest diagonal; and what the turning adds, to the speed on the way across the cell and to the way itself.
        var (sum, aside) = (0.0, InSpace.Zero);
        for (var signs = 0; signs < 1 << Math.Max(0, _moves - 1); signs++)
        {
            aside = halves[0];
            for (var move = 1; move < _moves; move++) aside += halves[move] * ((signs >> (move - 1) & 1) == 0 ? 1 : -1);
            sum = Math.Max(sum, aside.Dot(aside));
        }
        var bent = turn * (reach * turn + 2 * straight);
        return (sum + (2 * Math.Sqrt(sum) + bent + distance) * bent, longest);
    }

    /// <summary>Newton's method with the second derivatives from differences of the first, a step shortened until it leads down.</summary>
    private Nearness Downhill(Point at, Span<double> moves, double reach)
    {
        const int n = MovedComponent.MostMoves;
        Span<double> slopes = stackalloc double[n], there = stackalloc double[n], tried = stackalloc double[n], step = stackalloc double[n];
        Span<double> curved = stackalloc double[n * n];
        Span<bool> free = stackalloc bool[n];
        var squared = component.Squared(at, moves, slopes, out var away, out var feature);
        for (var round = 0; round < 40 && squared > 0; round++)
        {
            var any = false;
            for (var i = 0; i < _moves; i++)
            {
                var atLow = moves[i] <= component.Low(i);
                var atHigh = moves[i] >= component.High(i);
                free[i] = !(atLow && slopes[i] >= 0) && !(atHigh && slopes[i] <= 0) && Math.Abs(slopes[i]) > 1e-13 * reachOf(i);
                any |= free[i];
            }
            if (!any) break;
            curved.Clear();
            for (var i = 0; i < _moves; i++)
            {
                if (!free[i]) continue;
                var h = 1e-5 / reachOf(i);
                if (moves[i] + h > component.High(i)) h = -h;
                moves.CopyTo(tried);
                tried[i] += h;
                component.Squared(at, tried, there, out _, out _);
                for (var j = 0; j < _moves; j++) curved[i * n + j] = (there[j] - slopes[j]) / h;
            }
            var gain = Step(slopes, curved, free, step);
            if (gain < 1e-13) break;
            var (share, better) = (1.0, false);
            for (; share > 1e-7; share /= 4)
            {
                for (var i = 0; i < _moves; i++) tried[i] = Math.Clamp(moves[i] + (free[i] ? step[i] * share : 0), component.Low(i), component.High(i));
                var next = component.Squared(at, tried, there, out var nextAway, out var nextFeature);
                if (next > squared - 1e-15 * squared) continue;
                tried.CopyTo(moves);
                there.CopyTo(slopes);
                better = squared - next > 1e-13;
                (squared, away, feature) = (next, nextAway, nextFeature);
                break;
            }
            if (!better) break;
        }
        var label = feature;
        for (var i = 0; i < _moves; i++) label = 3 * label + (moves[i] <= component.Low(i) + 1e-9 ? 1 : moves[i] >= component.High(i) - 1e-9 ? 2 : 0);
        var distance = Math.Sqrt(squared);
        return distance > 0 ? new(distance, new Vector(away.X, away.Y) / distance, label) : Nearness.Closer(0);

        double reachOf(int move) => component.IsTurn(move) ? Math.Max(reach, 1) : 1;
    }

    /// <summary>Solves for the step, by elimination; what the curvature says nothing of, or bends the wrong way, goes straight down.</summary>
    /// <returns>How much half the square would get smaller.</returns>
    private double Step(ReadOnlySpan<double> slopes, ReadOnlySpan<double> curved, ReadOnlySpan<bool> free, Span<double> step)
    {
        const int n = MovedComponent.MostMoves;
        Span<double> m = stackalloc double[n * n];
        var trace = 0.0;
        for (var i = 0; i < _moves; i++) trace = Math.Max(trace, free[i] ? Math.Abs(curved[i * n + i]) : 0);
        for (var more = 1e-9 * trace + 1e-12; ; more = Math.Max(more * 10, 1e-3 * trace))
        {
            for (var i = 0; i < _moves; i++)
            {
                step[i] = free[i] ? -slopes[i] : 0;
                for (var j = 0; j < _moves; j++)
                {
                    m[i * n + j] = free[i] && free[j] ? (curved[i * n + j] + curved[j * n + i]) / 2 : 0;
                    if (i == j) m[i * n + j] = free[i] ? m[i * n + j] + more : 1;
                }
            }
            if (more > 1e9 * (1 + trace)) return 0;
            if (!Solve(m, step)) continue;
            var gain = 0.0;
            for (var i = 0; i < _moves; i++) gain -= slopes[i] * step[i] / 2;
            return gain;
        }
    }

    // Positive definite or not at all: all pivots above 0.
    private bool Solve(Span<double> m, Span<double> x)
    {
        const int n = MovedComponent.MostMoves;
        for (var i = 0; i < _moves; i++)
        {
            if (!(m[i * n + i] > 0)) return false;
            for (var k = i + 1; k < _moves; k++)
            {
                var factor = m[k * n + i] / m[i * n + i];
                for (var j = i; j < _moves; j++) m[k * n + j] -= factor * m[i * n + j];
                x[k] -= factor * x[i];
            }
        }
        for (var i = _moves - 1; i >= 0; i--)
        {
            for (var j = i + 1; j < _moves; j++) x[i] -= m[i * n + j] * x[j];
            x[i] /= m[i * n + i];
        }
        return true;
    }
}

/// <summary>Where a search over the moves starts, and how far it goes.</summary>
internal enum SearchStart
{
    /// <summary>Knowing nothing.</summary>
    Afresh,

    /// <summary>At moves that are likely to be the nearest.</summary>
    FromMoves,

    /// <summary>Knowing nothing; whatever lies under the upper bound is enough.</summary>
    Roughly,
}

/// <summary>How near a place of the sheet is to a component.</summary>
/// <param name="Distance">The distance, in mm; 0 where they meet.</param>
/// <param name="Outwards">How much it grows for each mm along x and y; nothing where only a bound was asked for.</param>
/// <param name="Label">A number for the feature that is nearest and for the moves that are at an end; the same along one smooth curve.</param>
internal readonly record struct Nearness(double Distance, Vector Outwards, int Label)
{
    public static Nearness Closer(double distance) => new(distance, Vector.Zero, -1);

    public static Nearness Further(double distance) => new(distance, Vector.Zero, -1);
}
