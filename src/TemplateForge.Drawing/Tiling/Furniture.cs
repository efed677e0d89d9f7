using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>What is printed on a page beside the drawing, so that the page can be checked, trimmed and joined.</summary>
public static class Furniture
{
    private const double TextHeight = 2.2;

    private static readonly Pen Thin = Pen.Solid(0.13, Colour.Black);
    private static readonly Pen Fine = Pen.Solid(0.18, Colour.Black);
    private static readonly Pen Small = Pen.Solid(0.22, Colour.Black);
    private static readonly Pen Check = Pen.Solid(0.25, Colour.Black);
    private static readonly Pen Bold = Pen.Solid(0.7, Colour.Black);
    private static readonly Pen Edge = new(0.13, [4, 2], Colour.Black);
    private static readonly Pen Trim = new(0.25, [10, 2, 2, 2], Colour.Black);

    /// <summary>The furniture of one page, in the page's coordinates.</summary>
    /// <param name="plan">All the pages.</param>
    /// <param name="tile">This one.</param>
    /// <param name="titleLine">What the drawing is, in one line; it is lettered smaller where it would not fit.</param>
    /// <param name="outline">What of the drawing the page's map shows.</param>
    /// <exception cref="ArgumentException">
    /// The strips of the plan's layout are too narrow for what goes into them (12 mm at the side, 18 mm at the foot), or so is the
    /// overlap (5 mm) or the window (114 by 104 mm).
    /// </exception>
    public static LineDrawing Of(TilePlan plan, Tile tile, string titleLine, params IEnumerable<Mark> outline)
    {
        var strips = new Strips(plan, tile);
        var over = plan.Seams.Where(s => s.Over == tile).ToList();
        var under = plan.Seams.Where(s => s.Under == tile).ToList();
        var (level, upright) = (ScaleCheck.Level(strips.Foot), ScaleCheck.Upright(strips.Side));
        return new(
        [
            new("REGISTRATION", Thin, Placed(over.Concat(under).SelectMany(Registration.Shared).Concat(under.SelectMany(Registration.BesideEdge)))),
            new("NEIGHBOUR-EDGE", Edge, Placed(under.Select(s => Line(s.Start, s.End)))),
            new("TRIM", Trim, [.. over.Select(s => TrimLine(s, plan.Printable, tile.PageWindow))]),
            new("SCALE-CHECK", Check, [.. level.Lines, .. upright.Lines]),
            new("PAGE-LETTERING", Fine,
            [
                .. level.Lettering, .. upright.Lettering,
                .. over.Select(s => TrimLettering(s, tile.PageWindow)),
                .. Placed(over.Select(s => SeamLettering(s, $"{tile.Address} joins {s.Under.Address}"))),
                .. Placed(under.Select(s => SeamLettering(s, $"{tile.Address}: glue under {s.Over.Address}"))),
                Fitted(titleLine, strips.Title, TextHeight),
            ]),
            new("PAGE-ADDRESS", Bold, [Centred(tile.Address, strips.Corner, height: 9)]),
            new("PAGE-MAP", Fine, PageMap.Of(plan, tile, strips.Map)),
            new("PAGE-MAP-OUTLINE", Small, PageMap.OutlineOf(plan, outline, strips.Map)),
        ]);

        ImmutableArray<Mark> Placed(IEnumerable<Mark> marks) => [.. marks.Select(m => m.Placed(tile.ToPage))];
    }

    /// <summary>A picture of the drawing with its pages over it, for a cover page.</summary>
    /// <param name="plan">The pages.</param>
    /// <param name="content">The drawing; lettering that would be too small to read is left out.</param>
    /// <param name="place">Where the picture goes, in page coordinates.</param>
    public static LineDrawing Map(TilePlan plan, LineDrawing content, Box place) => PageMap.Cover(plan, content, place);

    /// <summary>The line along which scissors or a knife run right across the printed part of the page.</summary>
    private static OpenStroke TrimLine(Seam seam, Box printable, Box window) => seam.IsUpright
        ? Line(new(window.Min.X, printable.Min.Y), new(window.Min.X, printable.Max.Y))
        : Line(new(printable.Min.X, window.Min.Y), new(printable.Max.X, window.Min.Y));

    /// <summary>Said on the strip that is cut off.</summary>
    private static Lettering TrimLettering(Seam seam, Box window) => seam.IsUpright
        ? new("trim here", new(window.Min.X - 1, window.Centre.Y), TextHeight, Angle.QuarterTurn, Anchor.BaseMiddle)
        : new("trim here", new(window.Centre.X, window.Min.Y - 1 - TextHeight), TextHeight, Angle.Zero, Anchor.BaseMiddle);

    /// <summary>Said in the middle of the overlap, in the drawing's coordinates.</summary>
    private static Lettering SeamLettering(Seam seam, string text) => new(
        text,
        seam.Start.MidpointTo(seam.End) + seam.Inwards * (seam.Overlap / 2),
        TextHeight,
        seam.Along.Direction,
        Anchor.Middle);

    private static Lettering Fitted(string text, Box box, double height) => new(
        text, new(box.Min.X, box.Centre.Y), HeightThatFits(text, box.Width, height), Angle.Zero, Anchor.MiddleStart);

    private static Lettering Centred(string text, Box box, double height) => new(
        text, box.Centre, HeightThatFits(text, box.Width, height), Angle.Zero, Anchor.Middle);

    internal static double HeightThatFits(string text, double width, double height) =>
        Alphabet.Width(text, height) is var wanted && wanted > width ? height * width / wanted : height;

    private static OpenStroke Line(Point from, Point to) => new(Path.Line(from, to));
}
