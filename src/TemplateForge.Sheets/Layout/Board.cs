using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A drawing board: marks are put on it by what they mean, and it becomes a drawing.</summary>
internal sealed class Board
{
    // There is one of each kind; what it is made of need not be compared for every line of text.
    private readonly Dictionary<LineKind, List<Mark>> _marks = new(ReferenceEqualityComparer.Instance);

    public void Add(LineKind kind, params IEnumerable<Mark> marks)
    {
        if (!_marks.TryGetValue(kind, out var list)) _marks.Add(kind, list = []);
        list.AddRange(marks);
    }

    /// <summary>All that is on another board, put where it belongs.</summary>
    public void Add(Board other, Placement by)
    {
        foreach (var (kind, marks) in other._marks) Add(kind, marks.Select(m => m.Placed(by)));
    }

    public void Line(LineKind kind, Point from, Point to) => Add(kind, new OpenStroke(Path.Line(from, to)));

    public void Frame(LineKind kind, Box box) => Add(kind, new ClosedStroke(Outline.Rectangle(box)));

    /// <summary>A line of text; from 3.5 mm on with the heavier pen.</summary>
    public void Text(string text, Point at, double height, Anchor anchor = Anchor.BaseStart, bool strong = false)
    {
        if (text.Length > 0) Add(strong ? LineKinds.Heading : LineKinds.Note, new Lettering(text, at, height, Angle.Zero, anchor));
    }

    public IEnumerable<Mark> Marks => Kinds.SelectMany(On);

    public IEnumerable<Mark> On(LineKind kind) => _marks.TryGetValue(kind, out var list) ? list : [];

    public LineDrawing ToDrawing() => new(
    [
        .. Kinds.Where(k => On(k).Any()).Select(k => new Layer(k.Layer, k.Pen, [.. On(k)])),
    ]);

    // What has a place in the order comes first, then the rest as it was put on.
    private IEnumerable<LineKind> Kinds => LineKinds.InOrder.Concat(_marks.Keys.Where(k => !LineKinds.InOrder.Contains(k)));
}
