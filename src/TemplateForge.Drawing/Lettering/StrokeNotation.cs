using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>How the tables of the alphabet write strokes down.</summary>
/// <remarks>
/// A row of a table is a character and its strokes, which <c>|</c> sets apart. A stroke is a row of points in tenths of the
/// height of the capitals, y upwards from the base line:
/// <code>
/// 3,5      a line to there; the first point is where the stroke begins
/// 3,5@n    a curve that arrives there heading north, or e, w, s, or any number of degrees counter-clockwise from east.
///          It leaves as the stroke before it arrived and is one arc, or two that join smoothly
/// 3,5@&gt;    the same, heading for the next point
/// ~3,5     one arc that goes on smoothly
/// </code>
/// A heading on the first point, or on a point given twice, is the one to leave with. A stroke of one point is a dot. Instead
/// of a stroke, <c>=O</c> is all the strokes of the letter O.
/// </remarks>
internal static class StrokeNotation
{
    /// <summary>Length of a dot in tenths of the height: half the pen, so that a pen comes down and a torch marks it.</summary>
    private const double Dot = 0.5;

    private static readonly Placement Tenths = Placement.Scaled(0.1, Point.Origin);

    /// <summary>Adds every row of a table to the glyphs; a row may name a character above it.</summary>
    public static void Read(string table, Dictionary<char, Glyph> glyphs)
    {
        foreach (var row in table.Split('\n'))
            glyphs.Add(row[0], Glyph.Fitting(Strokes(row[1..], glyphs)));
    }

    public static ImmutableArray<Path> Strokes(string notation, Dictionary<char, Glyph> references) =>
    [
        .. notation.Split('|', StringSplitOptions.TrimEntries).SelectMany(stroke => stroke.StartsWith('=')
            ? references[stroke[1]].Strokes
            : [Stroke(stroke.Split(' ', StringSplitOptions.RemoveEmptyEntries)).Placed(Tenths)]),
    ];

    private static Path Stroke(string[] points)
    {
        if (points is [var only])
        {
            var half = new Vector(0, Dot / 2);
            return Path.Line(PointOf(only) - half, PointOf(only) + half);
        }

        var segments = new List<Segment>();
        var at = PointOf(points[0]);
        var heading = HeadingOf(points, 0);
        for (var i = 1; i < points.Length; i++)
        {
            var to = PointOf(points[i]);
            var arrival = HeadingOf(points, i);
            if (to != at) segments.AddRange(Run(at, heading, to, arrival, smooth: points[i].StartsWith('~')));
            heading = arrival ?? segments[^1].EndDirection;
            at = to;
        }
        return new(segments);
    }

    private static IEnumerable<Segment> Run(Point from, Vector? heading, Point to, Vector? arrival, bool smooth) =>
        (heading, arrival) switch
        {
            ({ } leaving, { } arriving) => Smooth(from, leaving, to, arriving),
            (null, { } arriving) => [Arc(to, -arriving, from).Reversed()],
            ({ } leaving, null) when smooth => [Arc(from, leaving, to)],
            _ => [Segment.Line(from, to)],
        };

    /// <summary>One arc where one will do, else two or four that join smoothly.</summary>
    /// <remarks>
    /// <code>
    ///      corner ----b----- to      A curve that is longer along one tangent than along the other would have two visible
    ///        |      .  '             corners if it were made of two arcs. It is divided where a quarter of an ellipse has its
    ///        a   shoulder            shoulder: on the line from the corner to the middle of the chord, and parallel to the
    ///        |  .                    chord.
    ///       from
    /// </code>
    /// </remarks>
    private static IEnumerable<Segment> Smooth(Point from, Vector leaving, Point to, Vector arriving)
    {
        if (Arc(from, leaving, to) is var one && (one.EndDirection - arriving).Length < 1e-9) return [one];

        var chord = to - from;
        var turn = leaving.Cross(arriving);
        var (a, b) = (chord.Cross(arriving) / turn, leaving.Cross(chord) / turn);
        if (!(a > 0 && b > 0) || Math.Max(a, b) < 1.2 * Math.Min(a, b)) return TwoArcs(from, leaving, to, arriving);

        var cosineOfHalfTheTurn = Math.Sqrt((1 + leaving.Dot(arriving)) / 2);
        var middle = from.MidpointTo(to);
        var shoulder = middle + (from + leaving * a - middle) * (cosineOfHalfTheTurn / (1 + cosineOfHalfTheTurn));
        return [.. TwoArcs(from, leaving, shoulder, chord.Unit), .. TwoArcs(shoulder, chord.Unit, to, arriving)];
    }

    /// <summary>Two arcs that share a tangent.</summary>
    /// <remarks>
    /// The tangents at both ends are cut at the same length d, and the line between the cuts is the shared tangent, 2 d long:
    /// |v − d (t₀ + t₁)| = 2 d with v from end to end.
    /// </remarks>
    private static IEnumerable<Segment> TwoArcs(Point from, Vector leaving, Point to, Vector arriving)
    {
        var v = to - from;
        var a = 2 - 2 * leaving.Dot(arriving);
        var b = v.Dot(leaving + arriving);
        var d = a < 1e-9 ? v.LengthSquared / (2 * b) : (Math.Sqrt(b * b + a * v.LengthSquared) - b) / a;
        var join = (from + leaving * d).MidpointTo(to - arriving * d);
        return [Arc(from, leaving, join), Arc(to, -arriving, join).Reversed()];
    }

    private static Segment Arc(Point from, Vector leaving, Point to)
    {
        var chord = to - from;
        var half = Math.Atan2(leaving.Cross(chord), leaving.Dot(chord));
        return Math.Abs(half) < 1e-12 ? Segment.Line(from, to) : Segment.Arc(from, to, Math.Clamp(Math.Tan(half / 2), -1, 1));
    }

    private static Point PointOf(string point)
    {
        var coordinates = point.TrimStart('~').Split('@')[0].Split(',');
        return new(Number(coordinates[0]), Number(coordinates[1]));
    }

    private static Vector? HeadingOf(string[] points, int i) => points[i].Split('@') switch
    {
        [_] => null,
        [_, "e"] => new(1, 0),
        [_, "n"] => new(0, 1),
        [_, "w"] => new(-1, 0),
        [_, "s"] => new(0, -1),
        [_, ">"] => (PointOf(points[i + 1]) - PointOf(points[i])).Unit,
        [_, var degrees] => Vector.Polar(1, Angle.FromDegrees(Number(degrees))),
        _ => throw new FormatException($"{points[i]} has two headings."),
    };

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
