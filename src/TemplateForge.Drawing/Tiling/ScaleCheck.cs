using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A line of a known length in millimetres and inches that is measured on every printed page before anything is marked from it.</summary>
internal sealed record ScaleCheck(double Length, ImmutableArray<Mark> Lines, ImmutableArray<Mark> Lettering)
{
    private const double Step = 50;
    private const double Longest = 200;
    private const int LongestInches = 8;
    private const double Inch = 25.4;
    private const double EndTick = 2;
    private const double TextHeight = 2.2;
    private const double LeastHeight = 1.8;
    private const double TickBox = 3;
    private const double Clear = 1;

    /// <summary>Lies along the bottom of a box.</summary>
    public static ScaleCheck Level(Box strip) =>
        Of(new(strip.Min.X, strip.Min.Y + EndTick + 0.5), Angle.Zero, strip.Width, LengthIn(strip.Width));

    /// <summary>Stands along the right of a box, to be read from the right.</summary>
    public static ScaleCheck Upright(Box strip) =>
        Of(new(strip.Max.X - EndTick, strip.Min.Y), Angle.QuarterTurn, strip.Height, LengthIn(strip.Height));

    private static double LengthIn(double room) => Math.Min(Longest, Math.Floor(room / Step) * Step);

    private static ScaleCheck Of(Point start, Angle turn, double room, double length)
    {
        var place = Placement.Turned(turn, Point.Origin).Then(Placement.Moved(start - Point.Origin));
        var inches = Math.Min(LongestInches, (int)(room / Inch));
        var (boxAt, words) = (EndTick + Clear, "measured");
        var boxed = TickBox + Clear + Alphabet.Width(words, TextHeight);
        var text = Said(length, inches, room - boxed - 4 * Clear);
        var height = Furniture.HeightThatFits(text, room - boxed - 4 * Clear, TextHeight);
        var boxX = Math.Min(room - boxed, Alphabet.Width(text, height) + 4 * Clear);
        // Millimetres above the line, inches below it, as on a rule.
        var lines = new List<Mark> { Line(0, 0, length, 0) };
        if (inches * Inch > length) lines.Add(Line(length, 0, inches * Inch, 0));
        for (var x = 0; x <= length; x += 10) lines.Add(Line(x, 0, x, EndTick * (x == 0 || x == (int)length ? 1 : x % (int)Step == 0 ? 0.6 : 0.3)));
        for (var i = 0; i <= inches; i++) lines.Add(Line(i * Inch, 0, i * Inch, -EndTick * (i == 0 || i == inches ? 1 : 0.4)));
        Point[] box = [new(boxX, boxAt), new(boxX + TickBox, boxAt), new(boxX + TickBox, boxAt + TickBox), new(boxX, boxAt + TickBox)];
        lines.Add(new ClosedStroke(new(Enumerable.Range(0, 4).Select(i => Segment.Line(box[i], box[(i + 1) % 4])))));
        return new(
            length,
            [.. lines.Select(l => l.Placed(place))],
            [
                new Lettering(text, place.Of(new Point(0, boxAt)), height, turn, Anchor.BaseStart),
                new Lettering(words, place.Of(new Point(boxX + TickBox + Clear, boxAt)), TextHeight, turn, Anchor.BaseStart),
            ]);
    }

    // As much as can be read on a strip of this length; the cover says all of it.
    private static string Said(double length, int inches, double room)
    {
        ImmutableArray<string> texts =
        [
            Text("(lower ticks {1} in); if it is wrong, print again at 100 %, no fit to page"),
            Text("({1} in below); if wrong: 100 %, no fit to page"),
            Text("({1} in below)"),
        ];
        return texts.FirstOrDefault(t => Alphabet.Width(t, LeastHeight) <= room, texts[^1]);

        string Text(string rest) => string.Format(CultureInfo.InvariantCulture, "{0} mm: measure before use " + rest, length, inches);
    }

    private static OpenStroke Line(double x0, double y0, double x1, double y1) => new(Path.Line(new(x0, y0), new(x1, y1)));
}
