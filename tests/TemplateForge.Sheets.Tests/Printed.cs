using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>What a document or a drawing shows, in the coordinates of the page.</summary>
internal sealed record Printed(Box Window, string Layer, Mark Mark)
{
    private static readonly Box Everywhere = new(new(-1e6, -1e6), new(1e6, 1e6));

    public static IReadOnlyList<Printed> On(Page page) =>
        [.. page.Views.SelectMany(v => v.Drawing.Layers.SelectMany(l => l.Marks.Select(m => new Printed(v.Window, l.Name, Placed(m, v.Placement)))))];

    public static IReadOnlyList<Printed> On(LineDrawing drawing) =>
        [.. drawing.Layers.SelectMany(l => l.Marks.Select(m => new Printed(Everywhere, l.Name, m)))];

    /// <summary>The words of the lettering on it, as a person reads them.</summary>
    public static string Words(IEnumerable<Printed> printed) =>
        string.Join(" ", printed.Select(p => p.Mark).OfType<Lettering>().Select(l => l.Text)).Replace('\u00A0', ' ');

    /// <summary>The segments of a stroke; of lettering its strokes'.</summary>
    public IEnumerable<Segment> Segments => Mark switch
    {
        OpenStroke open => open.Path.Segments,
        ClosedStroke closed => closed.Contour.Segments,
        Lettering words => Alphabet.Strokes(words).SelectMany(s => s.Segments),
        _ => [],
    };

    /// <summary>The segments that lie wholly or partly in the window.</summary>
    public IEnumerable<Segment> Seen => Segments.Where(s => s.Bounds.Touches(Window));

    private static Mark Placed(Mark mark, Placement by) => mark switch
    {
        OpenStroke open => new OpenStroke(open.Path.Placed(by)),
        ClosedStroke closed => new ClosedStroke(closed.Contour.Placed(by)),
        Lettering words => new Lettering(
            words.Text, by.Of(words.At), words.Height * by.Scale, by.Of(Vector.Polar(1, words.Turn)).Direction, words.Anchor),
        _ => mark,
    };
}
