using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests;

/// <summary>Text as these tests write it: 10 mm high from the origin, so that a millimetre is a tenth of the height.</summary>
internal static class Written
{
    public static ImmutableArray<char> Characters { get; } =
        [.. Enumerable.Range(0, char.MaxValue + 1).Select(c => (char)c).Where(Alphabet.Has)];

    public static Lettering Out(string text) => new(text, Point.Origin, Height: 10, Angle.Zero, Anchor.BaseStart);

    public static Lettering Out(char character) => Out(character.ToString());

    public static Box Bounds(char character) => Out(character).Bounds;

    public static double Width(string text) => Alphabet.Width(text, height: 10);

    public static IEnumerable<Point> Points(this IEnumerable<Path> strokes, int steps = 200) =>
        from stroke in strokes
        from segment in stroke.Segments
        from step in Enumerable.Range(0, steps + 1)
        select segment.At((double)step / steps);
}
