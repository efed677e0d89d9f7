using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A dashed line as the strokes that it is made of.</summary>
/// <remarks>
/// The pattern runs on round corners. It is stretched or squeezed a little, so that an open line begins and ends with the
/// pattern's first dash and a closed one meets itself (ISO 128 manner). Round ends lengthen what a pen draws by its width, so
/// dashes are drawn that much shorter. A line too short for the pattern shows a dash at each end and a gap between.
/// </remarks>
internal static class Dashes
{
    /// <summary>Length in mm of what remains of a dash that is no longer than its pen is wide: a dot.</summary>
    private const double Dot = 0.01;

    public static ImmutableArray<Path> Along(Path path, Pen pen) =>
        [.. Spans(path.Length, pen, closed: false).Select(s => Cut(path.Segments, s.From, s.To))];

    public static ImmutableArray<Path> Along(Contour contour, Pen pen) =>
        [.. Spans(contour.Length, pen, closed: true).Select(s => Cut(contour.Segments, s.From, s.To))];

    /// <exception cref="ArgumentException">The pattern is not pairs of lengths above 0.</exception>
    private static IEnumerable<(double From, double To)> Spans(double length, Pen pen, bool closed)
    {
        if (pen.Dash.Length % 2 != 0 || !pen.Dash.All(d => d > 0 && double.IsFinite(d)))
            throw new ArgumentException($"A dash pattern is pairs of a line and a gap above 0 mm, but got {string.Join(", ", pen.Dash)}.", nameof(pen));

        var period = pen.Dash.Sum();
        var last = closed ? 0 : pen.Dash[0];
        var least = closed ? 2 : 1;
        var periods = (int)Math.Max(least, Math.Round((length - last) / period));
        var stretch = length / (periods * period + last);
        if (stretch < 0.5) return Ends(length, pen.Width, closed);
        return Pattern(pen, periods, stretch, closed ? double.PositiveInfinity : length);
    }

    private static IEnumerable<(double From, double To)> Pattern(Pen pen, int periods, double stretch, double length)
    {
        var at = 0.0;
        for (var i = 0; i < periods * pen.Dash.Length; i += 2)
        {
            var (dash, gap) = (pen.Dash[i % pen.Dash.Length] * stretch, pen.Dash[(i + 1) % pen.Dash.Length] * stretch);
            yield return Capped(at, at + dash, pen.Width, length);
            at += dash + gap;
        }
        if (double.IsFinite(length)) yield return Capped(at, length, pen.Width, length);
    }

    private static IEnumerable<(double From, double To)> Ends(double length, double width, bool closed)
    {
        var third = length / 3;
        yield return Capped(0, third, width, closed ? double.PositiveInfinity : length);
        yield return closed
            ? Capped(length / 2, length / 2 + third, width, double.PositiveInfinity)
            : Capped(length - third, length, width, length);
    }

    /// <summary>A dash less its round ends, but for an end at which the whole line ends.</summary>
    private static (double From, double To) Capped(double from, double to, double width, double length)
    {
        var (first, final) = (from == 0 && double.IsFinite(length), to >= length);
        var (start, end) = (first ? from : from + width / 2, final ? to : to - width / 2);
        if (end - start >= Dot) return (start, end);
        if (first) return (0, Math.Min(Dot, length));
        if (final) return (Math.Max(0, length - Dot), length);
        var middle = (from + to) / 2;
        return (middle - Dot / 2, middle + Dot / 2);
    }

    private static Path Cut(ImmutableArray<Segment> segments, double from, double to)
    {
        var parts = new List<Segment>();
        var start = 0.0;
        for (var i = 0; start < to - Tolerance.Merge && i < 2 * segments.Length; i++)
        {
            var segment = segments[i % segments.Length];
            var (first, last) = (Math.Max(0, from - start), Math.Min(segment.Length, to - start));
            if (first == 0 && last == segment.Length) parts.Add(segment);
            // A sliver at either end of the dash is less than anybody sees, and too short to be a segment.
            else if (last - first > 2 * Tolerance.Merge) parts.Add(segment.Part(first / segment.Length, last / segment.Length));
            start += segment.Length;
        }
        return new(parts);
    }
}
