using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A page of known distances, to be printed and measured: it says what a printer does to a sheet.</summary>
public static class CouponSheet
{
    private const double Text = 3;
    private const double Clear = 12;

    // Two coupons of one paper never differ by less than a printer may err: margins may have changed since one was printed.
    private const double Step = 10;
    private const double LongStep = 50;
    private const double Long = 400;

    private const double Arm = 5;
    private const double Stub = 25;
    private const double Letter = 5;

    /// <summary>How far apart its crosses are, in mm: whole tens, from 400 mm on whole fifties, as far as the paper has room.</summary>
    public static (double Level, double Upright) Drawn(Paper paper)
    {
        var room = Printable(paper);
        return (Fitting(room.Width), Fitting(room.Height));

        static double Fitting(double side)
        {
            var step = side - 2 * Clear >= Long ? LongStep : Step;
            return Math.Floor((side - 2 * Clear) / step) * step;
        }
    }

    /// <param name="printer">Name of the printer.</param>
    /// <param name="paper">What it is printed on, upright.</param>
    /// <param name="shop">Name of the shop.</param>
    public static Document Of(string printer, Paper paper, string shop)
    {
        var (sheet, (level, upright)) = (paper.AsSheet(), Drawn(paper));
        var centre = Printable(paper).Centre;
        var rectangle = new Box(centre - new Vector(level / 2, upright / 2), centre + new Vector(level / 2, upright / 2));
        var board = new Board();
        board.Frame(LineKinds.Dimension, rectangle);
        foreach (var (letter, corner) in (ImmutableArray<(string, Point)>)
            [("A", rectangle.Min), ("B", new(rectangle.Max.X, rectangle.Min.Y)), ("C", rectangle.Max), ("D", new(rectangle.Min.X, rectangle.Max.Y))])
        {
            foreach (var arm in (ImmutableArray<Vector>)[new(Arm, 0), new(0, Arm)]) board.Line(LineKinds.Dimension, corner - arm, corner + arm);
            var inwards = (centre - corner).Unit;
            board.Line(LineKinds.CentreLine, corner + inwards * Arm, corner + inwards * Stub);
            var outwards = new Vector(Math.Sign(corner.X - centre.X), Math.Sign(corner.Y - centre.Y)) * (Letter * 1.5);
            board.Text(letter, corner + outwards, Letter, Anchor.Middle, strong: true);
        }
        var words = Words(printer, paper, shop, level - 2 * Arm - Stub, level, upright);
        var scale = Math.Min(1, (upright - 2 * Stub - Arm) / words.Height);
        board.Add(words.Board, Placement.Scaled(scale, Point.Origin)
            .Then(Placement.Moved(new(centre.X - words.Width * scale / 2, rectangle.Max.Y - Stub))));
        return new($"Coupon for the printer {printer}", $"on {paper.Name}",
            [new(sheet.Width, sheet.Height, [new(board.ToDrawing(), Placement.Unmoved, new(Point.Origin, new(sheet.Width, sheet.Height)))])]);
    }

    private static Box Printable(Paper paper)
    {
        var (sheet, margins) = (paper.AsSheet(), paper.Margins);
        return new(new(margins.Left, margins.Bottom), new(sheet.Width - margins.Right, sheet.Height - margins.Top));
    }

    private static Block Words(string printer, Paper paper, string shop, double width, double level, double upright)
    {
        var diagonal = Math.Sqrt(level * level + upright * upright);
        var (field, number) = (22.0, Alphabet.Width("1000.0", Text) + 2 * Table.Aside);
        var named = paper.Size.Contains(' ', StringComparison.Ordinal) ? $"\"{paper.Size}\"" : paper.Size;
        return Block.Stacked(4,
        [
            Block.Text($"Coupon for the printer {printer}, on {paper.Size}", width, Text * 1.6, strong: true),
            Block.Text(shop, width, Text),
            Numbered(1, "Print this at 100 %, no fit to page, from the tray that templates are printed from."),
            Numbered(2, "Let it lie flat until it is as warm as the shop, and measure it the same day: paper moves 0.1 to 0.3 % with damp. "
                + "Measure from the middle of cross to cross with a steel rule, to a quarter of a millimetre or better."),
            Table.Of(
                [("", width - number - field), ("drawn", number), ("measured", field)],
                [
                    Row("A to B, level", level), Row("A to D, upright", upright), Row("A to C, rising", diagonal), Row("D to B, falling", diagonal),
                ],
                Text),
            Numbered(3, $"Enter what you measured: templateforge coupon {printer} --paper {named} --level … --upright … --rising … --falling … --shop your-shop"),
            Numbered(4, $"From then on make --printer {printer} --paper {named} prints true. Measure a new coupon after a repair, and when a scale check is off."),
        ]);

        Block Numbered(int step, string text) => Block.Beside(0,
            Block.Text(step.ToString(CultureInfo.InvariantCulture), 7, Text), Block.Text(text, width - 7, Text));

        ImmutableArray<Cell> Row(string what, double drawn) =>
            [Cell.Words(what, Text), Cell.Words(drawn.ToString("0.0", CultureInfo.InvariantCulture), Text), Cell.Field(Text)];
    }
}
