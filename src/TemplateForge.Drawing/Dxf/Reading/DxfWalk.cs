using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Goes through entities, and through the blocks that they insert, and keeps what is drawn.</summary>
internal sealed class DxfWalk(DxfSections sections, DxfShapes shapes, List<DxfFinding> findings)
{
    private const int DeepestBlock = 16;

    // A file from a stranger, blocks of blocks of blocks, must not keep a computer busy for ever.
    private const int MostStrokes = 200_000;

    private readonly HashSet<string> inside = new(StringComparer.OrdinalIgnoreCase);
    private string onLayer = "0";
    private bool isOutOfSight;

    public List<DxfStroke> Strokes { get; } = [];

    public void Draw(ImmutableArray<DxfEntity> entities, Frame3 frame)
    {
        foreach (var entity in entities)
        {
            var record = entity.Record;
            if (record.IsOnPaper) Find(DxfFindingKind.OnPaper, record, Point.Origin);
            else if (record.Name == "INSERT") Insert(record, frame);
            else if (Strokes.Count >= MostStrokes) Find(DxfFindingKind.Unreadable, record, Point.Origin);
            else Draw(entity, frame);
        }
    }

    private void Draw(DxfEntity entity, Frame3 frame)
    {
        var record = entity.Record;
        var isHidden = isOutOfSight || IsHidden(record);
        if (!DxfShapes.IsDrawn(entity))
        {
            if (!isHidden) Find(DxfFindingKind.NotCut, record, frame.Place(record.At(10)).Flat);
            return;
        }
        var (at, isFlat) = DxfShapes.Where(entity, frame);
        ImmutableArray<Segment> segments = [];
        if (!at.IsFinite) Find(DxfFindingKind.Unreadable, record, Point.Origin);
        else if (DxfShapes.IsTooFar(entity, frame)) Find(DxfFindingKind.TooFar, record, at.Flat);
        else if (!shapes.TrySegments(entity, frame, out segments)) Find(DxfFindingKind.Unreadable, record, at.Flat);
        else if (segments.IsEmpty && !isHidden) Find(DxfFindingKind.ZeroLength, record, at.Flat);
        if (segments.IsEmpty) return;
        Strokes.Add(new(LayerOf(record), record.Name, record.Line, segments) { IsHidden = isHidden });
        if (!isHidden) FindIn(entity, frame, at.Flat, isFlat);
    }

    private void FindIn(DxfEntity entity, Frame3 frame, Point at, bool isFlat)
    {
        var record = entity.Record;
        if (!isFlat) Find(DxfFindingKind.NotFlat, record, at);
        if (DxfShapes.IsFromBelow(record)) Find(DxfFindingKind.FromBelow, record, at);
        if (record.Name == "SPLINE") Find(DxfFindingKind.Spline, record, at);
        if (record.Name == "ELLIPSE") Find(DxfFindingKind.Ellipse, record, at);
        if (DxfShapes.Repeated(entity, frame) is [var first, ..] repeated)
            Find(DxfFindingKind.ZeroLength, record, first, repeated.Length == 1 ? $"{record.Name}, a vertex twice," : $"{record.Name}, {repeated.Length} vertices twice,");
    }

    // A layer that is off has a negative colour, one that is frozen the first bit of its flags; an entity may be invisible itself.
    private bool IsHidden(DxfRecord record) =>
        record.Whole(60, 0) == 1 || (sections.Layers.TryGetValue(LayerOf(record), out var entry) && (entry.Whole(62, 7) < 0 || IsFrozen(entry)));

    private static bool IsFrozen(DxfRecord layer) => (layer.Whole(70, 0) & 1) != 0;

    // Rows and columns stand apart in the block's turned directions, unscaled.
    private void Insert(DxfRecord insert, Frame3 frame)
    {
        var name = insert.Text(2, "");
        var own = Frame3.Of(insert.Extrusion).Then(frame);
        var at = own.Place(insert.At(10));
        if (!sections.Blocks.TryGetValue(name, out var block) || !at.IsFinite || inside.Count >= DeepestBlock || !inside.Add(name))
        {
            Find(DxfFindingKind.LostBlock, insert, at.IsFinite ? at.Flat : Point.Origin, name);
            return;
        }
        var outer = (onLayer, isOutOfSight);
        onLayer = LayerOf(insert);
        // A frozen layer takes all of a block out of sight, one that is off only what lies on layer 0 in it.
        isOutOfSight |= insert.Whole(60, 0) == 1 || (sections.Layers.TryGetValue(onLayer, out var entry) && IsFrozen(entry));
        if (!isOutOfSight) Find(DxfFindingKind.Block, insert, at.Flat, name);
        var turned = Frame3.Turned(Angle.FromDegrees(insert.Number(50, 0))).Then(Frame3.Moved(insert.At(10))).Then(own);
        var scaled = Frame3.Moved(block.Base * -1).Then(Frame3.Scaled(insert.Number(41, 1), insert.Number(42, 1), insert.Number(43, 1)));
        var (columns, rows) = (Math.Clamp(insert.Whole(70, 1), 1, 1000), Math.Clamp(insert.Whole(71, 1), 1, 1000));
        for (var row = 0; row < rows && Strokes.Count < MostStrokes; row++)
        {
            for (var column = 0; column < columns && Strokes.Count < MostStrokes; column++)
                Draw(block.Entities, scaled.Then(Frame3.Moved(new(column * insert.Number(44, 0), row * insert.Number(45, 0), 0))).Then(turned));
        }
        (onLayer, isOutOfSight) = outer;
        inside.Remove(name);
    }

    // In a block layer 0 means that of whoever inserts it.
    private string LayerOf(DxfRecord record) => record.Layer == "0" ? onLayer : record.Layer;

    private void Find(DxfFindingKind kind, DxfRecord record, Point at, string detail = "") =>
        findings.Add(new(kind, LayerOf(record), record.Line, at, 0, detail.Length > 0 ? detail : record.Name));
}
