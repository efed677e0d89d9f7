using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The strokes of a drawing as LINE, ARC, CIRCLE and LWPOLYLINE; in R12 as LINE, ARC, CIRCLE and POLYLINE.</summary>
internal static class DxfEntities
{
    /// <summary>Above this radius, in mm, an angle written to 1e-12 degrees no longer places an arc's end to 1e-8 mm.</summary>
    private const double LargestArc = 1e5;

    public static DxfTags Section(LineDrawing drawing, DxfHandles handles, DxfFormat format)
    {
        var tags = new DxfTags(format.Unit).Add(0, "SECTION").Add(2, "ENTITIES");
        foreach (var layer in drawing.Layers)
        {
            foreach (var mark in layer.Marks) Add(mark, new(tags, handles, layer.Name, format.Release));
        }
        return tags.Add(0, "ENDSEC");
    }

    /// <summary>Bounds of what the file holds, or nothing when it holds no strokes.</summary>
    public static Box? Bounds(LineDrawing drawing)
    {
        var boxes = drawing.Layers.SelectMany(l => l.Marks).SelectMany(BoundsOfStrokes).ToList();
        return boxes.Count == 0 ? null : Box.Around(boxes);
    }

    private static IEnumerable<Box> BoundsOfStrokes(Mark mark) => mark switch
    {
        Fill => [],
        Lettering words => Alphabet.Strokes(words).Select(p => p.Bounds),
        _ => [mark.Bounds],
    };

    private readonly record struct Target(DxfTags Tags, DxfHandles Handles, string Layer, DxfRelease Release)
    {
        public bool IsOld => Release == DxfRelease.R12;

        public DxfTags Begin(string entity, string subclass) => IsOld
            ? Tags.Add(0, entity).Add(8, Layer)
            : Tags.Add(0, entity).AddHandle(5, Handles.Take()).AddHandle(330, Handles.ModelSpace)
                .Add(100, "AcDbEntity").Add(8, Layer).Add(100, subclass);

        // An arc is a circle and more.
        public void Narrow(string subclass)
        {
            if (!IsOld) Tags.Add(100, subclass);
        }
    }

    private static void Add(Mark mark, Target target)
    {
        switch (mark)
        {
            case OpenStroke open:
                AddPath(open.Path, target);
                break;
            case ClosedStroke closed:
                AddContour(closed.Contour, target);
                break;
            case Lettering words:
                foreach (var stroke in Alphabet.Strokes(words)) AddPath(stroke, target);
                break;
        }
    }

    private static void AddPath(Path path, Target target)
    {
        switch (path.Segments)
        {
            case [{ IsLine: true } line]:
                target.Begin("LINE", "AcDbLine").AddPointInSpace(10, line.Start).AddPointInSpace(11, line.End);
                break;
            case [{ Radius: <= LargestArc } arc]:
                var (from, to) = arc.Bulge > 0 ? (arc.Start, arc.End) : (arc.End, arc.Start);
                target.Begin("ARC", "AcDbCircle").AddPointInSpace(10, arc.Centre).AddLength(40, arc.Radius);
                target.Narrow("AcDbArc");
                target.Tags.Add(50, Degrees(from - arc.Centre)).Add(51, Degrees(to - arc.Centre));
                break;
            default:
                AddPolyline(path.Segments, closed: false, target);
                break;
        }
    }

    private static void AddContour(Contour contour, Target target)
    {
        if (IsOneCircle(contour.Segments))
        {
            var arc = contour.Segments[0];
            target.Begin("CIRCLE", "AcDbCircle").AddPointInSpace(10, arc.Centre).AddLength(40, arc.Radius);
        }
        else
        {
            AddPolyline(contour.Segments, closed: true, target);
        }
    }

    private static void AddPolyline(ImmutableArray<Segment> segments, bool closed, Target target)
    {
        if (target.IsOld)
        {
            AddOldPolyline(segments, closed, target);
            return;
        }
        target.Begin("LWPOLYLINE", "AcDbPolyline")
            .Add(90, segments.Length + (closed ? 0 : 1)).Add(70, closed ? 1 : 0).AddLength(43, 0);
        foreach (var segment in segments)
        {
            target.Tags.AddPoint(10, segment.Start);
            if (!segment.IsLine) target.Tags.Add(42, Written.Ratio(segment.Bulge));
        }
        if (!closed) target.Tags.AddPoint(10, segments[^1].End);
    }

    // Vertices are entities of their own, until one says that the sequence ends.
    private static void AddOldPolyline(ImmutableArray<Segment> segments, bool closed, Target target)
    {
        target.Begin("POLYLINE", "").Add(66, 1).AddPointInSpace(10, default).Add(70, closed ? 1 : 0);
        foreach (var segment in segments)
        {
            target.Begin("VERTEX", "").AddPointInSpace(10, segment.Start);
            if (!segment.IsLine) target.Tags.Add(42, Written.Ratio(segment.Bulge));
        }
        if (!closed) target.Begin("VERTEX", "").AddPointInSpace(10, segments[^1].End);
        target.Begin("SEQEND", "");
    }

    /// <summary>Arcs that turn once round one centre.</summary>
    private static bool IsOneCircle(ImmutableArray<Segment> segments)
    {
        if (segments.Any(s => s.IsLine)) return false;
        var (centre, radius) = (segments[0].Centre, segments[0].Radius);
        return segments.All(s =>
                s.Centre.DistanceTo(centre) <= Tolerance.Merge
                && Math.Abs(s.Radius - radius) <= Tolerance.Merge
                && Math.Sign(s.Bulge) == Math.Sign(segments[0].Bulge))
            && Math.Abs(Math.Abs(segments.Sum(s => s.Sweep.Radians)) - 2 * Math.PI) < 1e-6;
    }

    private static string Degrees(Vector direction)
    {
        var degrees = direction.Direction.Degrees;
        return Written.Ratio(degrees < 0 ? degrees + 360 : degrees);
    }
}
