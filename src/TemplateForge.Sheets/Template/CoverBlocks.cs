using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The parts of which cover pages and job sheets are put together.</summary>
/// <param name="Modification">What they are about.</param>
/// <param name="Height">Height in mm of the capitals of their text.</param>
internal sealed record CoverBlocks(Modification Modification, double Height)
{
    private double Title => Height * 1.25;

    public Block Heading(string what, double width) => Block.Stacked(Height * 0.8,
        Block.Text(Modification.Title, width, Height * 2.1, strong: true),
        Block.Text($"{what}. {Wording.ProfileOf(Modification)}. {Modification.Shop}", width, Height));

    /// <summary>The hand, in a frame where nobody measured it; and whether it is a demonstration.</summary>
    public ImmutableArray<Block> Banners(double width)
    {
        var hand = Block.Text(Wording.HandOf(Modification), width - 6, Height * 1.4, strong: true);
        return
        [
            Wording.SaysNotMeasured(Modification) ? hand.AsWideAs(width - 6).Framed(3, LineKinds.Warning) : hand.AsWideAs(width),
            .. Modification.IsDemonstration
                ? [Block.Text(Wording.DemonstrationBecause(Modification), width - 6, Height).AsWideAs(width - 6).Framed(3, LineKinds.Warning)]
                : ImmutableArray<Block>.Empty,
        ];
    }

    /// <summary>The face that is up; where it differs, of which pieces.</summary>
    public Block FaceUp(double width)
    {
        var faces = Modification.Pieces.GroupBy(Wording.FaceUpOf, StringComparer.Ordinal).ToList();
        return Block.Stacked(Height * 0.6, faces.Select(f => Block.Text(
            faces.Count == 1 ? f.Key : $"{string.Join(", ", f.Select(p => p.Title))}. {f.Key}", width, Height)));
    }

    public Block Arrows() => Modification.Pieces.IsEmpty ? Block.Empty(0, 0) : ArrowBlock.Of(Modification.Pieces[0].Arrows, Height / 2.5);

    /// <summary>A titled part of a page; nothing at all where it has no content.</summary>
    public Block Section(string title, Block content) => content.Height <= 0
        ? Block.Empty(content.Width, 0)
        : Block.Stacked(Height * 0.9, Block.Line(title, Title, strong: true), content).AsWideAs(content.Width);

    /// <summary>Every value, what was measured first; one that should have been and was not stands out.</summary>
    public Block Values(double width, bool toConfirm) =>
        Block.Stacked(Height * 1.2, [WhoseWords(width), .. ValueTables(width, toConfirm).Select(t => Table.Of(t.Columns, t.Rows, Height))]);

    /// <summary>Of a mirrored job: left and right in its words are the other hand's.</summary>
    public Block WhoseWords(double width) =>
        Wording.WhoseWords(Modification) is { Length: > 0 } words ? Block.Text(words, width, Height, strong: true) : Block.Empty(width, 0);

    /// <summary>The same row by row: what was measured, then what the shop chose.</summary>
    public IEnumerable<(ImmutableArray<(string Title, double Width)> Columns, IEnumerable<ImmutableArray<Cell>> Rows)> ValueTables(double width, bool toConfirm)
    {
        var box = toConfirm ? Height * 3 : 0;
        var widest = WidthOf(Modification.Values.Select(v => v.Text), width * MostForValue) + Height;
        // As wide as makes the tables shortest.
        var least = Math.Min(widest, WidthOf(Modification.Values.SelectMany(v => Wording.WithUnitsKept(v.Text).Split(' ')), width * 0.3) + Height);
        return Enumerable.Range(0, 6).Select(i => ValueTables(width, box, least + (widest - least) * i / 5).ToList())
            .MinBy(tables => tables.Sum(t => t.Rows.Sum(r => Table.Row(t.Columns, r, Height).Height)))!;
    }

    /// <summary>The most that the values take of the width: they may be sentences.</summary>
    private const double MostForValue = 0.5;

    // Where nothing of a group was given that is said once, over it.
    private IEnumerable<(ImmutableArray<(string Title, double Width)> Columns, IEnumerable<ImmutableArray<Cell>> Rows)> ValueTables(double width, double box, double value)
    {
        foreach (var kind in (ValueSource[])[ValueSource.Measured, ValueSource.Shop])
        {
            var values = Modification.Values.Where(v => v.Source == kind).ToList();
            if (values.Count == 0) continue;
            var title = kind == ValueSource.Measured ? "measured on this vehicle" : "the shop's choice";
            var areDefaults = values.TrueForAll(v => v.GivenAs.Length == 0);
            var said = areDefaults ? "all at their DEFAULT" : "";
            var wide = areDefaults ? Math.Max(value, WidthOf([said], width)) : value;
            var source = areDefaults ? 0 : WidthOf(values.Select(Wording.SourceOf), width * 0.3);
            yield return (
                [("", box), (title, width - box - wide - source), (said, wide), .. areDefaults ? [] : new[] { ("", source) }],
                values.Select(v => (ImmutableArray<Cell>)
                [
                    box > 0 && v.Source == ValueSource.Measured ? Cell.TickBox(Height) : Cell.Blank,
                    Cell.Words(v.Label, Height),
                    Cell.Words(v.Text, Height, strong: areDefaults && Wording.IsMissing(v)),
                    .. areDefaults ? [] : new[] { Cell.Words(Wording.SourceOf(v), Height, strong: Wording.IsMissing(v)) },
                ]));
        }
    }

    private double WidthOf(IEnumerable<string> texts, double most) =>
        Math.Min(most, texts.Append("").Max(t => Alphabet.Width(t, Height)) + 2 * Table.Aside + 0.1);

    /// <summary>The distances to check, with room for what was measured on the paper and on the panel.</summary>
    public Block Checks(double width)
    {
        var checks = Modification.Pieces.SelectMany(p => p.Checks).ToList();
        if (checks.Count == 0) return Block.Empty(width, 0);
        var number = WidthOf(["(10)"], width);
        var distance = WidthOf(checks.Select(Wording.Distance), width);
        var field = WidthOf(["on the work"], width);
        return Table.Of(
            [("", number), ("Distance", width - number - distance - 2 * field), ("mm", distance), ("on paper", field), ("on the work", field)],
            checks.Select((check, i) => (ImmutableArray<Cell>)
            [
                Cell.Words(string.Create(CultureInfo.InvariantCulture, $"({i + 1})"), Height),
                Cell.Words(check.Label, Height),
                Cell.Words(Wording.Distance(check), Height),
                Cell.Field(Height),
                Cell.Field(Height),
            ]),
            Height);
    }

    /// <summary>The work in order: at a hold point a box to sign, at a step that can hurt the sign and the caution's title.</summary>
    public Block Steps(double width) => Steps(Modification.Steps, width, Height);

    public static Block Steps(ImmutableArray<WorkStep> steps, double width, double height)
    {
        var indent = height * 2.8;
        return Block.Stacked(height * 0.75, steps.Select((step, i) =>
            Block.Beside(0, WorkBlocks.NumberOf(i + 1, step, indent, height), Step(step, width - indent, height))));
    }

    private static Block Step(WorkStep step, double width, double height)
    {
        var padding = height * 0.9;
        var inside = step.IsHold ? width - 2 * padding : width;
        var cautions = step.Cautions.Select(c =>
        {
            var sign = WarningSign.Of(height * 1.5);
            return Block.Beside(padding, sign, Block.Text(c.Title, inside - sign.Width - padding, height, strong: true));
        });
        if (!step.IsHold) return Block.Stacked(height * 0.6, [.. cautions, Block.Text(step.Text, inside, height)]);
        return Block.Stacked(height * 0.7,
            [Block.Text("HOLD", inside, height * 1.15, strong: true), .. cautions, Block.Text(step.Text, inside, height), Signature(inside, height)])
            .AsWideAs(inside).Framed(padding);
    }

    // Room for the initials of whoever checked, and the day.
    private static Block Signature(double width, double height)
    {
        var (board, y) = (new Board(), -2.6 * height);
        board.Text("Checked by", new(0, y), height);
        var (start, middle) = (Alphabet.Width("Checked by", height) + height, width * 0.62);
        board.Line(LineKinds.Dimension, new(start, y), new(middle, y));
        board.Text("Date", new(middle + height, y), height);
        board.Line(LineKinds.Dimension, new(middle + 2 * height + Alphabet.Width("Date", height), y), new(width, y));
        return new(width, -y + 0.4 * height, board);
    }

    /// <summary>Each caution in a frame of its own, side by side where there is room.</summary>
    public Block Cautions(double width, int columns)
    {
        if (Modification.Cautions.IsEmpty) return Block.Empty(width, 0);
        var gap = Height;
        var each = (width - gap * (columns - 1)) / columns;
        var boxes = Modification.Cautions.Select(c => Caution(c, each)).ToList();
        return Block.Stacked(gap, boxes.Chunk(columns).Select(row => Block.Beside(gap, row.Select(b => SameHeight(b, row.Max(r => r.Height))))));

        Block SameHeight(Block block, double height)
        {
            var board = new Board();
            board.Frame(LineKinds.Warning, new(new(0, -height), new(block.Width, 0)));
            block.PutOn(board, Point.Origin);
            return new(block.Width, height, board);
        }
    }

    private Block Caution(Caution caution, double width)
    {
        var padding = Height * 0.9;
        var sign = WarningSign.Of(Height * 2.2);
        var text = width - sign.Width - 3 * padding;
        var words = Block.Stacked(Height * 0.7,
            Block.Text(caution.Title, text, Height * 1.15, strong: true),
            Block.Text(caution.Text, text, Height));
        var both = Block.Beside(padding, sign, words);
        var board = new Board();
        both.PutOn(board, new Point(padding, -padding));
        return new(width, both.Height + 2 * padding, board);
    }

    /// <summary>What is cut from what, and its weight; nothing for paper.</summary>
    public Block CutList(double width)
    {
        var pieces = Modification.Pieces.Where(p => p.Kind == PieceKind.Blank).ToList();
        if (pieces.Count == 0) return Block.Empty(width, 0);
        var off = WidthOf(["off"], width);
        var weight = WidthOf(["kg each 0.000"], width);
        var sheet = WidthOf(pieces.Select(Sheet), width * 0.45);
        return Table.Of(
            [("Piece", width - off - weight - sheet), ("from", sheet), ("off", off), ("kg each", weight)],
            pieces.Select(p => (ImmutableArray<Cell>)
            [
                Cell.Words(p.Title, Height),
                Cell.Words(Sheet(p), Height),
                Cell.Words(p.Quantity.ToString(CultureInfo.InvariantCulture), Height),
                Cell.Words(p.Weight > 0 ? Wording.Weight(p.Weight) : "not stated", Height),
            ]),
            Height);

        static string Sheet(Piece piece) => $"{Wording.SheetOf(piece)}, {Wording.Short(piece.Thickness)} mm";
    }

    /// <summary>The curved panels that pieces lie on, seen on their edge, and what is said there.</summary>
    public Block Panels(double width)
    {
        ImmutableArray<Piece> pieces = [.. Modification.Pieces.Where(p => p.Bends.IsEmpty && !p.EdgeViews.IsEmpty)];
        return pieces.IsEmpty
            ? Block.Empty(width, 0)
            : Block.Stacked(Height * 0.8, [EdgeViews.Of(pieces, width, Height), .. pieces.SelectMany(p => p.Notes).Distinct().Select(n => Block.Text(n, width, Height))]);
    }

    /// <summary>The bends in their order, and where each line lies on the blank.</summary>
    public Block Bends(double width)
    {
        var table = new BendTable(Modification.Pieces, Height);
        var (columns, rows) = table.Of(width);
        return rows.IsEmpty
            ? Block.Empty(width, 0)
            : Block.Stacked(Height * 0.8,
                table.Origins(width), Table.Of(columns, rows, Height), Block.Text(Wording.PencilOnly, width, Height), EdgeViews.Of(Modification.Pieces, width, Height));
    }

    /// <summary>How it is joined, piece by piece: zinc that comes off, runs of weld in their order.</summary>
    public Block Joining(double width) => Block.Stacked(Height * 0.75, JoiningParagraphs(width));

    /// <summary>The same paragraph by paragraph.</summary>
    public IEnumerable<Block> JoiningParagraphs(double width)
    {
        var joined = Modification.Pieces.Where(p => !Wording.JoiningOf(p).IsEmpty).ToList();
        return joined.SelectMany(p => Wording.JoiningOf(p).Select(words =>
            Block.Text(joined.Count == 1 ? words : $"{p.Title}. {words}", width, Height)));
    }

    /// <summary>What a foreman would say, with the number that stands on the template.</summary>
    public Block Warnings(double width)
    {
        var warnings = Modification.Pieces.SelectMany(p => p.Warnings).ToList();
        // What is said of several places is said once.
        var alike = warnings.Select((w, i) => (Warning: w, Number: i + 1)).GroupBy(w => (w.Warning.Rule, w.Warning.Text)).ToList();
        var indent = alike.Select(g => WidthOf([Numbers(g)], width * 0.2)).DefaultIfEmpty(0).Max() + Height;
        return Block.Stacked(Height * 0.75, alike.Select(g => Block.Beside(0,
            Block.Text(Numbers(g), indent, Height),
            Block.Text($"{g.Key.Rule}: {g.Key.Text} ({g.First().Warning.Source})", width - indent, Height))));

        static string Numbers(IEnumerable<(Warning Warning, int Number)> alike) => Wording.Ranges([.. alike.Select(w => w.Number)]);
    }

    /// <summary>A sample of each line that the job has, and what it means.</summary>
    /// <param name="width">Width in mm.</param>
    /// <param name="columns">Into how many columns it goes.</param>
    /// <param name="withFlaps">Whether the pages have flaps.</param>
    public Block Legend(double width, int columns, bool withFlaps)
    {
        var drawn = new Board();
        foreach (var piece in Modification.Pieces) PieceLines.PutOn(drawn, piece, unit: 1);
        if (Modification.Pieces.Any(p => !p.Checks.IsEmpty)) drawn.Line(LineKinds.Dimension, Point.Origin, new(1, 0));
        if (withFlaps) drawn.Line(LineKinds.Flap, Point.Origin, new(1, 0));
        var used = LineKinds.InOrder.Reverse().Where(k => k.Meaning.Length > 0 && drawn.On(k).Any()).Select(k => Sample(k, width / columns)).ToList();
        var inColumn = (used.Count + columns - 1) / columns;
        return Block.Beside(0, used.Chunk(inColumn).Select(c => Block.Stacked(Height * 0.7, c))).AsWideAs(width);
    }

    private Block Sample(LineKind kind, double width)
    {
        const double length = 24;
        var (board, y) = (new Board(), -Height);
        if (kind == LineKinds.Waste)
        {
            for (var x = 0.0; x < length - 2 * Height; x += 3) board.Line(kind, new(x, y - Height), new(x + 2 * Height, y + Height));
        }
        else if (kind == LineKinds.Datum)
        {
            board.Add(kind, PieceLines.DatumMarks(new("", new(length / 2, y), 1.6 * Height), 0.2 * Height));
        }
        else if (kind == LineKinds.Break)
        {
            board.Add(kind, PieceLines.BreakLine(Segment.Line(new(0, y), new(length, y)), 0.8));
        }
        else if (kind == LineKinds.Dimension)
        {
            board.Add(kind, DimensionLine.Of(new(0, y), new(length, y), new(1, 0), 0, "", Height).Where(m => m is not Lettering));
        }
        else
        {
            board.Line(kind == LineKinds.Tack ? LineKinds.Finish : kind, new(0, y), new(length, y));
            if (kind == LineKinds.Tack) board.Line(kind, new(length / 2, y - 0.8 * Height), new(length / 2, y + 0.8 * Height));
        }
        var words = Block.Text(kind.Meaning, width - length - 7, Height);
        words.PutOn(board, new Point(length + 3, y + Height / 2));
        return new(width, Math.Max(2 * Height, words.Height + Height / 2), board);
    }
}
