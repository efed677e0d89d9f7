using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A character for capitals 1 high: strokes that stand on y = 0 and lie between x = 0 and the width.</summary>
/// <param name="Strokes">In the order of writing.</param>
/// <param name="Bounds">Bounds of the strokes; those of a blank are no more than a point.</param>
/// <param name="Width">Room that it takes on the line.</param>
internal sealed record Glyph(ImmutableArray<Path> Strokes, Box Bounds, double Width)
{
    /// <summary>The small open box for a character that the alphabet does not have.</summary>
    public static Glyph Unknown { get; } = Fitting(StrokeNotation.Strokes("0,1 4,1 4,7 0,7 0,1", references: []));

    public static Glyph Blank(double width) => new([], default, width);

    /// <summary>As wide as its strokes.</summary>
    public static Glyph Fitting(IEnumerable<Path> strokes)
    {
        ImmutableArray<Path> all = [.. strokes];
        var bounds = Box.Around(all.Select(s => s.Bounds));
        return new Glyph(all, bounds, bounds.Width).Moved(-bounds.Min.X);
    }

    /// <summary>In the middle of a given width.</summary>
    public static Glyph Centred(IEnumerable<Path> strokes, double width)
    {
        var glyph = Fitting(strokes);
        return glyph.Moved((width - glyph.Width) / 2) with { Width = width };
    }

    /// <summary>With an accent over its middle, at a height that follows from that of its own top.</summary>
    public Glyph With(ImmutableArray<Path> accent, Func<double, double> heightOver) =>
        Fitting([.. Strokes, .. Placed(accent, Placement.Moved(new(Bounds.Centre.X, heightOver(Bounds.Max.Y))))]);

    /// <summary>Smaller, with its foot at this height.</summary>
    public ImmutableArray<Path> Small(double scale, double left, double foot) =>
        Placed(Strokes, Placement.Scaled(scale, Point.Origin).Then(Placement.Moved(new(left, foot))));

    private Glyph Moved(double right)
    {
        var by = new Vector(right, 0);
        return this with { Strokes = Placed(Strokes, Placement.Moved(by)), Bounds = new(Bounds.Min + by, Bounds.Max + by) };
    }

    private static ImmutableArray<Path> Placed(ImmutableArray<Path> strokes, Placement by) =>
        [.. strokes.Select(s => s.Placed(by))];
}
