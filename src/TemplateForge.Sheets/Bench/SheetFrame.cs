using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The border of a sheet and the title block at its foot.</summary>
/// <remarks>
/// <code>
///     20    border, 0.7 mm wide           10
///        ┌───────────────────────────────┐
///        │           content             │     The border of ISO 5457: 20 mm on the left for filing, 10 mm elsewhere, more where the
///        ├───────────────────────────────┤     printer asks for it. The fields of ISO 7200, on A4 in its 180 mm; its layout is our
///        │ owner      title       kind   │     own. (Both standards from memory, fields of ISO 7200 also as a second source lists
///        │ number rev hand  units sheet  │     them.) Zones and centring marks are left out: nothing on a job sheet refers to them.
///        │ vehicle measured by …         │
///        └───────────────────────────────┘
/// </code>
/// The names to write are on the first sheet alone; what says which job a sheet belongs to is on every one.
/// </remarks>
/// <param name="Modification">Whose sheet it is.</param>
/// <param name="Paper">What it is printed on.</param>
internal sealed record SheetFrame(Modification Modification, Paper Paper)
{
    private const double Filing = 20;
    private const double Edge = 10;
    private const double Inset = 3;

    /// <summary>Height of capitals in mm: of what a field is called, and of what stands in it at most.</summary>
    private const double Caption = 1.8;
    private const double Largest = 3;

    private const double Row = 9.5;
    private const double RowToWrite = 10.5;

    private static readonly LineKind Border = new("SHEET-BORDER", Pen.Solid(0.7, Colour.Black), "");

    private Box Bounds => new(
        new(Math.Max(Filing, Paper.Margin + 1), Math.Max(Edge, Paper.Margin + 1)),
        new(Paper.Width - Math.Max(Edge, Paper.Margin + 1), Paper.Height - Math.Max(Edge, Paper.Margin + 1)));

    private static double HeightOfBlock(int sheet) => 2 * Row + (sheet == 1 ? RowToWrite : 0);

    /// <summary>Where content stands on a sheet, numbered from 1.</summary>
    public Box ContentOf(int sheet) =>
        new(Bounds.Min + new Vector(Inset, HeightOfBlock(sheet) + Inset), Bounds.Max - new Vector(Inset, Inset + HeightOfHead(sheet)));

    // A sheet that lies alone on the bench says first of all for which hand it is.
    private double HeightOfHead(int sheet) => sheet > 1 && Modification.Hand != Hand.Either ? 5.5 : 0;

    /// <summary>The sheets with border and title block.</summary>
    /// <param name="contents">What stands on them.</param>
    /// <param name="scale">In words, of the first sheet's picture.</param>
    public ImmutableArray<Page> Pages(IReadOnlyList<Board> contents, string scale)
    {
        for (var i = 0; i < contents.Count; i++) PutOn(contents[i], i + 1, contents.Count, i == 0 ? scale : "see picture");
        return [.. contents.Select(c => PageFlow.Page(Modification, Paper, c))];
    }

    private void PutOn(Board board, int sheet, int sheets, string scale)
    {
        board.Frame(Border, Bounds);
        var y = Bounds.Min.Y + HeightOfBlock(sheet);
        board.Line(LineKinds.Arrow, new(Bounds.Min.X, y), new(Bounds.Max.X, y));
        y = PutRow(board, y, Row,
            new("Owner", Modification.Shop, 0.24), new("Title", Modification.Title, 0.6), new("Document", "Job sheet", 0.16));
        y = PutRow(board, y, Row,
            new("Number", Modification.Profile, 0.3),
            new("Revision", Modification.Version.ToString(CultureInfo.InvariantCulture), 0.09),
            new("Hand", Wording.BareHandOf(Modification), 0.27) { Small = Wording.SmallHandOf(Modification) },
            new("Units, scale", $"mm, {scale}", 0.2),
            new("Sheet", string.Create(CultureInfo.InvariantCulture, $"{sheet} of {sheets}"), 0.14));
        if (HeightOfHead(sheet) > 0)
        {
            var small = Wording.SmallHandOf(Modification);
            var hand = Block.Line(Wording.BareHandOf(Modification) + (small.Length > 0 ? $", {small}" : ""), Largest, strong: true);
            hand.PutOn(board, new Point(Bounds.Max.X - Inset - hand.Width, Bounds.Max.Y - Inset));
        }
        if (sheet > 1) return;
        PutRow(board, y, RowToWrite,
            new("Vehicle", "", 0.25), new("Measured by", "", 0.2), new("Checked by", "", 0.2), new("Cut by", "", 0.19), new("Date", "", 0.16));
    }

    private double PutRow(Board board, double top, double height, params ReadOnlySpan<Field> fields)
    {
        var x = Bounds.Min.X;
        board.Line(LineKinds.Frame, new(Bounds.Min.X, top), new(Bounds.Max.X, top));
        foreach (var field in fields)
        {
            var width = field.Share * Bounds.Width;
            if (x > Bounds.Min.X) board.Line(LineKinds.Frame, new(x, top), new(x, top - height));
            board.Text(field.Name, new(x + 1.2, top - 1 - Caption), Caption);
            if (field.Small.Length > 0)
            {
                // Large and small above each other, beside what the field is called.
                var (large, small) = (Fitting(field.Text, width - 2.6), Block.Line(field.Small, Caption));
                large.PutOn(board, new Point(x + 1.2, top - Caption - 1.5));
                small.PutOn(board, new Point(x + 1.2, top - height + Caption + 0.8));
            }
            else if (field.Text.Length > 0)
            {
                // One line stands clear of what the field is called; two have just the room that there is.
                var text = Fitting(field.Text, width - 2.6);
                text.PutOn(board, new Point(x + 1.2, top - Caption - (text.Height > 1.6 * Largest ? 1.8 : 2.4)));
            }
            x += width;
        }
        return top - height;
    }

    // As large as fits in one line, in two lines of small letters where none does.
    private static Block Fitting(string text, double width)
    {
        for (var size = Largest; size >= Caption; size -= 0.2)
            if (Alphabet.Width(text, size) <= width) return Block.Line(text, size);
        return Block.Text(text, width, Caption);
    }

    /// <summary>A field of the title block.</summary>
    /// <param name="Name">What it is called.</param>
    /// <param name="Text">What stands in it; nothing where somebody writes.</param>
    /// <param name="Share">Its share of the block's width.</param>
    private readonly record struct Field(string Name, string Text, double Share)
    {
        /// <summary>What stands below that in small letters; may be empty.</summary>
        public string Small { get; init; } = "";
    }
}
