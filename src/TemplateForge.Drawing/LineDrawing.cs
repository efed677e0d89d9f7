using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Layers of strokes and lettering, in mm, y upwards.</summary>
public sealed record LineDrawing(ImmutableArray<Layer> Layers)
{
    /// <summary>Bounds of everything drawn, lettering included, without the width of the pens.</summary>
    /// <exception cref="InvalidOperationException">Nothing is drawn.</exception>
    public Box Bounds => Box.Around(Layers.SelectMany(l => l.Marks).Select(m => m.Bounds));

    public LineDrawing With(params IEnumerable<Layer> more) => new(Layers.AddRange(more));
}

/// <summary>What is drawn with one pen because it means one thing.</summary>
/// <param name="Name">ASCII capitals, digits and hyphens; the layer's name in a DXF or SVG.</param>
/// <param name="Pen">How its lines look.</param>
/// <param name="Marks">What is on it, in the order in which it is drawn or cut.</param>
public sealed record Layer(string Name, Pen Pen, ImmutableArray<Mark> Marks);

/// <summary>How a line looks.</summary>
/// <param name="Width">Width in mm on paper.</param>
/// <param name="Dash">Lengths in mm of a line and the gap after it, in turns; empty for an unbroken line.</param>
/// <param name="Colour">Its colour.</param>
public sealed record Pen(double Width, ImmutableArray<double> Dash, Colour Colour)
{
    public static Pen Solid(double width, Colour colour) => new(width, [], colour);
}

/// <summary>A colour on screen and paper.</summary>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    public static Colour Black => new(0, 0, 0);
    public static Colour White => new(255, 255, 255);
}

/// <summary>One thing on a layer.</summary>
public abstract record Mark
{
    private protected Mark() { }

    public abstract Box Bounds { get; }
}

/// <summary>An open line.</summary>
public sealed record OpenStroke(Path Path) : Mark
{
    public override Box Bounds => Path.Bounds;
}

/// <summary>A closed line.</summary>
public sealed record ClosedStroke(Contour Contour) : Mark
{
    public override Box Bounds => Contour.Bounds;
}

/// <summary>An area of one colour, for the eye only: a DXF does not have it.</summary>
public sealed record Fill(Region Region, Colour Colour) : Mark
{
    public override Box Bounds => Region.Bounds;
}
