using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A rectangle of a page with what stands in it, all in mm: its upper left corner is where x and y are 0.</summary>
internal sealed record Block(double Width, double Height, Board Board)
{
    /// <summary>Distance between the base lines of a text, as a share of the height of its capitals.</summary>
    public const double Pitch = 1.65;

    /// <summary>Room for what hangs below the last base line.</summary>
    public const double Descent = 0.35;

    public static Block Empty(double width, double height) => new(width, height, new());

    /// <summary>Text broken into lines of this width.</summary>
    public static Block Text(string text, double width, double height, bool strong = false)
    {
        var (board, y) = (new Board(), -height);
        foreach (var line in Paragraph.Wrapped(Wording.WithUnitsKept(text), height, width))
        {
            board.Text(line, new(0, y), height, strong: strong);
            y -= height * Pitch;
        }
        return new(width, -y - height * (Pitch - Descent), board);
    }

    /// <summary>Text in one line, as wide as it is.</summary>
    public static Block Line(string text, double height, bool strong = false) =>
        Text(text, Alphabet.Width(text, height) + height, height, strong) with { Width = Alphabet.Width(text, height) };

    /// <summary>Text in one line as wide as it is, or in several of this width where it does not fit.</summary>
    public static Block LineOrText(string text, double width, double height, bool strong = false) =>
        Alphabet.Width(text, height) <= width ? Line(text, height, strong) : Text(text, width, height, strong);

    /// <summary>One below the other; what has no height takes no room.</summary>
    public static Block Stacked(double gap, params IEnumerable<Block> blocks)
    {
        var (board, width, y) = (new Board(), 0.0, 0.0);
        foreach (var block in blocks)
        {
            width = Math.Max(width, block.Width);
            if (block.Height <= 0) continue;
            if (y < 0) y -= gap;
            board.Add(block.Board, Placement.Moved(new(0, y)));
            y -= block.Height;
        }
        return new(width, -y, board);
    }

    /// <summary>One beside the other, their upper edges in line.</summary>
    public static Block Beside(double gap, params IEnumerable<Block> blocks)
    {
        var (board, x, height) = (new Board(), 0.0, 0.0);
        foreach (var block in blocks)
        {
            if (x > 0) x += gap;
            board.Add(block.Board, Placement.Moved(new(x, 0)));
            (x, height) = (x + block.Width, Math.Max(height, block.Height));
        }
        return new(x, height, board);
    }

    /// <summary>A frame round this block, that far from it.</summary>
    public Block Framed(double padding, LineKind? kind = null)
    {
        var board = new Board();
        board.Add(Board, Placement.Moved(new(padding, -padding)));
        var framed = new Block(Width + 2 * padding, Height + 2 * padding, board);
        board.Frame(kind ?? LineKinds.Frame, new(new(0, -framed.Height), new(framed.Width, 0)));
        return framed;
    }

    /// <summary>This block widened to a width.</summary>
    public Block AsWideAs(double width) => this with { Width = Math.Max(Width, width) };

    /// <summary>Puts this block on a board with its upper left corner at a point.</summary>
    public void PutOn(Board board, Point upperLeft) => board.Add(Board, Placement.Moved(upperLeft - Point.Origin));

    /// <summary>Puts this block on a board so that it fills a place of its size.</summary>
    public void PutOn(Board board, Box place) => PutOn(board, new Point(place.Min.X, place.Max.Y));
}
