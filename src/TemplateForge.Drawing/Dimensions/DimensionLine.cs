using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A dimension between two points, drawn in the manner of ISO 129: readable from the bottom or from the right.</summary>
/// <remarks>
/// <code>
///       |        120         |
///       |&lt;-----------------&gt;|      dimension line, at the offset
///       |                    |      extension lines, 1 mm short of the points and 2 mm past the line
///
///       from                 to
/// </code>
/// </remarks>
public static class DimensionLine
{
    private const double Gap = 1;
    private const double Past = 2;
    private const double ArrowLength = 3;
    private const double TextGap = 0.8;

    /// <summary>Half the angle between the strokes of an arrow head; ISO 129 takes 15 to 90° for the whole.</summary>
    private static readonly Angle ArrowHalf = Angle.FromDegrees(10);

    /// <param name="from">One point.</param>
    /// <param name="to">The other point.</param>
    /// <param name="along">The direction that is measured.</param>
    /// <param name="offset">Where the dimension line runs, in mm: this far to the left of <paramref name="from"/> as seen along
    /// <paramref name="along"/>; below 0 to the right.</param>
    /// <param name="text">What it says.</param>
    /// <param name="textHeight">Height of the capitals in mm.</param>
    /// <returns>Strokes, and the text. Text that has no room between the arrows goes outside, and so do the arrows.</returns>
    /// <exception cref="ArgumentException">The points do not differ in that direction.</exception>
    public static ImmutableArray<Mark> Of(Point from, Point to, Vector along, double offset, string text, double textHeight)
    {
        var direction = along.Unit;
        var length = (to - from).Dot(direction);
        if (!(Math.Abs(length) > Tolerance.Merge))
            throw new ArgumentException($"{from} and {to} do not differ along ({along.X}, {along.Y}).", nameof(along));
        if (length < 0) return Of(to, from, along, offset + (from - to).Dot(direction.Left), text, textHeight);

        var first = from + direction.Left * offset;
        var second = first + direction * length;
        var width = Alphabet.Width(text, textHeight);
        // Figures between the arrows stand clear of their heads.
        var arrowsFitInside = length >= 2 * ArrowLength + 2 && (width <= 0 || length >= width + 2 * ArrowLength + 1);
        var textFitsInside = length >= width + 1;
        // Text that reads from the bottom or the right runs to the right, or straight up.
        var reads = direction.X > 1e-9 || (Math.Abs(direction.X) <= 1e-9 && direction.Y > 0) ? direction : -direction;
        var (start, end) = reads == direction ? (first, second) : (second, first);
        var tail = arrowsFitInside ? 0 : ArrowLength + 2;
        var shelf = textFitsInside ? tail : tail + width;

        return
        [
            .. Extension(from, first),
            .. Extension(to, second),
            Line(start - reads * tail, end + reads * shelf),
            Arrow(start, arrowsFitInside ? reads : -reads),
            Arrow(end, arrowsFitInside ? -reads : reads),
            textFitsInside
                ? new Lettering(text, start.MidpointTo(end) + reads.Left * TextGap, textHeight, reads.Direction, Anchor.BaseMiddle)
                : new Lettering(text, end + reads * tail + reads.Left * TextGap, textHeight, reads.Direction, Anchor.BaseStart),
        ];
    }

    private static IEnumerable<Mark> Extension(Point point, Point onLine)
    {
        var reach = point.DistanceTo(onLine);
        if (reach <= Gap) return [];
        var outwards = (onLine - point).Unit;
        return [Line(point + outwards * Gap, onLine + outwards * Past)];
    }

    /// <summary>An open arrow head; its strokes run from its tip into the given direction.</summary>
    private static OpenStroke Arrow(Point tip, Vector into) => new(new Path(
        Segment.Line(tip + into.Turned(ArrowHalf) * ArrowLength, tip),
        Segment.Line(tip, tip + into.Turned(-ArrowHalf) * ArrowLength)));

    private static OpenStroke Line(Point from, Point to) => new(Path.Line(from, to));
}
