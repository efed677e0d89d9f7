using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>A character for capitals 1 high: strokes that stand on y = 0 and lie between x = 0 and the width.</summary>
internal sealed record Glyph(ImmutableArray<Path> Strokes, double Width)
{
    /// <summary>The small open box for a character that the alphabet does not have.</summary>
    public static Glyph Unknown { get; } = Fitting(StrokeNotation.Strokes("0,1 4,1 4,7 0,7 0,1", references: []));

    public static Glyph Blank(double width) => new([], width);

    /// <summary>As wide as its strokes.</summary>
    public static Glyph Fitting(IEnumerable<Path> strokes)
    {
        ImmutableArray<Path> all = [.. strokes];
        var bounds = Box.Around(all.Select(s => s.Bounds));
        return new(Placed(all, Placement.Moved(new(-bounds.Min.X, 0))), bounds.Width);
    }

    /// <summary>In the middle of a given width.</summary>
    public static Glyph Centred(IEnumerable<Path> strokes, double width)
    {
        var glyph = Fitting(strokes);
        return new(Placed(glyph.Strokes, Placement.Moved(new((width - glyph.Width) / 2, 0))), width);
    }

    /// <summary>With an accent over its middle, at a height that follows from that of its own top.</summary>
    public Glyph With(ImmutableArray<Path> accent, Func<double, double> heightOver)
    {
        var bounds = Box.Around(Strokes.Select(s => s.Bounds));
        return Fitting([.. Strokes, .. Placed(accent, Placement.Moved(new(bounds.Centre.X, heightOver(bounds.Max.Y))))]);
    }

    /// <summary>Smaller, with its foot at this height.</summary>
    public ImmutableArray<Path> Small(double scale, double left, double foot) =>
        Placed(Strokes, Placement.Scaled(scale, Point.Origin).Then(Placement.Moved(new(left, foot))));

    private static ImmutableArray<Path> Placed(ImmutableArray<Path> strokes, Placement by) =>
        [.. strokes.Select(s => s.Placed(by))];
}
