using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A long line of a stated length that runs over the joined pages: what no page alone can tell.</summary>
/// <param name="Start">Its left or lower end in the drawing.</param>
/// <param name="Along">The way it runs.</param>
/// <param name="Length">A whole number of 10 mm, of 50 mm where that fits.</param>
/// <param name="Tiles">The pages that it runs over, from its start.</param>
internal sealed record SeamCheck(Point Start, Vector Along, double Length, ImmutableArray<Tile> Tiles)
{
    private const double ClearOfEdge = 6;
    private const double ClearOfSeam = 12;
    private const double Step = 50;
    private const double EndTick = 2.5;
    private const double Small = 2.2;

    // For a centimetre inside the piece as much as for five square millimetres of what is drawn; further away a little better.
    private const double InsideCost = 5;
    private const double AwayCost = 0.02;

    public Point End => Start + Along * Length;
    public bool IsUpright => Along.Y > Along.X;

    /// <summary>The line with a tick every 50 mm and longer ones at its ends.</summary>
    public IEnumerable<Mark> Marks
    {
        get
        {
            yield return new OpenStroke(Geometry.Path.Line(Start, End));
            for (var at = 0.0; at < Length + Step; at += Step)
            {
                var (place, tick) = (Start + Along * Math.Min(at, Length), at == 0 || at >= Length ? EndTick : EndTick / 2);
                yield return new OpenStroke(Geometry.Path.Line(place - Along.Left * tick, place + Along.Left * tick));
            }
        }
    }

    public string Stated => string.Create(CultureInfo.InvariantCulture, $"{Tiles[0].Address} to {Tiles[^1].Address}, {(IsUpright ? "upright" : "level")}: {Length} mm");

    /// <summary>What is said beside it, at length and, where there is no room for that, in short.</summary>
    public ImmutableArray<Block> Words
    {
        get
        {
            var damp = string.Create(CultureInfo.InvariantCulture, $"{Length * 0.001:0.0} to {Length * 0.003:0.0} mm");
            var text = string.Create(CultureInfo.InvariantCulture,
                $"ACROSS THE SEAMS: {Length} mm on the joined pages. Measure it before use; if it is wrong, part the pages and join them anew by the marks. "
                + $"Paper moves 0.1 to 0.3 % with damp: {damp} here.");
            var brief = string.Create(CultureInfo.InvariantCulture, $"ACROSS THE SEAMS: {Length} mm");
            return [.. ((double[])[110, 75, 52]).Select(width => Block.Stacked(1.4, Block.Text(text, width, Small), TickBox)), Block.Stacked(1.4, Block.Line(brief, Small), TickBox)];
        }
    }

    private static Block TickBox
    {
        get
        {
            const double side = 3;
            var (board, word) = (new Board(), Block.Line("measured", Small));
            board.Frame(LineKinds.Frame, new(new(0, -side), new(side, 0)));
            word.PutOn(board, new Point(side + 1, -0.4));
            return new(side + 1 + word.Width, side + 0.5, board);
        }
    }

    /// <summary>As few lines as cross every seam that runs one way, where they run over least.</summary>
    /// <param name="plan">The pages.</param>
    /// <param name="drawing">What is drawn on them.</param>
    /// <param name="shape">The piece: a line beside it is not taken for one of its own.</param>
    public static ImmutableArray<SeamCheck> Of(TilePlan plan, PieceDrawing drawing, Region shape) =>
    [
        .. Crossing(plan, upright: false).Concat(Crossing(plan, upright: true))
            .Select(run => In(run.Tiles, run.Upright, plan.Layout.Overlap, drawing.Free, shape)),
    ];

    // Runs of pages that are joined to each other; the run that crosses most seams first, until every row of seams is crossed once.
    private static IEnumerable<(ImmutableArray<Tile> Tiles, bool Upright)> Crossing(TilePlan plan, bool upright)
    {
        var runs = plan.Tiles.GroupBy(t => upright ? t.Column : t.Row).SelectMany(g => Runs(g.OrderBy(Place))).Where(r => r.Length > 1).ToList();
        var open = runs.SelectMany(SeamsOf).ToHashSet();
        while (open.Count > 0)
        {
            var best = runs.MaxBy(r => SeamsOf(r).Count(open.Contains));
            open.ExceptWith(SeamsOf(best));
            yield return (best, upright);
        }

        // From the start of the line onwards: from the left, and from the bottom.
        int Place(Tile tile) => upright ? -tile.Row : tile.Column;

        IEnumerable<int> SeamsOf(ImmutableArray<Tile> run) => run.Skip(1).Select(Place);

        IEnumerable<ImmutableArray<Tile>> Runs(IEnumerable<Tile> ordered)
        {
            var run = ImmutableArray.CreateBuilder<Tile>();
            foreach (var tile in ordered)
            {
                if (run.Count > 0 && Place(tile) != Place(run[^1]) + 1)
                {
                    yield return run.ToImmutable();
                    run.Clear();
                }
                run.Add(tile);
            }
            if (run.Count > 0) yield return run.ToImmutable();
        }
    }

    private static SeamCheck In(ImmutableArray<Tile> run, bool upright, double overlap, FreePlace free, Region shape)
    {
        var along = upright ? new Vector(0, 1) : new Vector(1, 0);
        double Along(Point p) => upright ? p.Y : p.X;
        double Aside(Point p) => upright ? p.X : p.Y;
        Point At(double a, double b) => upright ? new(b, a) : new(a, b);

        var (from, to) = (Along(run[0].Window.Min) + ClearOfEdge, Along(run[^1].Window.Max) - ClearOfEdge);
        var (firstSeam, lastSeam) = (Along(run[1].Window.Min) - ClearOfSeam, Along(run[^2].Window.Max) + ClearOfSeam);
        var length = Fitting(Step);
        if ((from + to - length) / 2 > firstSeam || (from + to + length) / 2 < lastSeam) length = Fitting(10);
        var start = (from + to - length) / 2;
        var (least, most) = (Aside(run[0].Window.Min) + overlap + 2, Aside(run[0].Window.Max) - overlap - 2);
        var best = Enumerable.Range(0, 1 + (int)Math.Max(0, most - least)).Select(i => least + i)
            .OrderBy(aside => free.Taken(new(At(start, aside - 1.5), At(start + length, aside + 1.5)))
                + InsideCost * Enumerable.Range(0, (int)(length / 10)).Count(i => shape.Contains(At(start + 10 * i + 5, aside)))
                - AwayCost * Math.Abs(aside - Aside(shape.Bounds.Centre)))
            .First();
        return new(At(start, best), along, length, run);

        double Fitting(double step) => Math.Floor((to - from) / step) * step;
    }
}
