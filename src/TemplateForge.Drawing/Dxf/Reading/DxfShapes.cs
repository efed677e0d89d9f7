using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Entities that are lines to cut, as lines and arcs in the plane.</summary>
/// <param name="fit">How far, in mm, arcs may stray from a curve that is none.</param>
internal sealed class DxfShapes(double fit)
{
    private const double Level = 1e-6;

    /// <summary>In mm: no sheet is a kilometre off, and what was misread is.</summary>
    private const double Furthest = 1e6;

    public static bool IsDrawn(DxfEntity entity) => entity.Record.Name switch
    {
        "LINE" or "ARC" or "CIRCLE" or "ELLIPSE" or "SPLINE" or "LWPOLYLINE" => true,
        "POLYLINE" => (entity.Record.Whole(70, 0) & (Mesh | FaceMesh)) == 0,
        _ => false,
    };

    private const int Closed = 1;
    private const int SplineFit = 4;
    private const int InSpace = 8;
    private const int Mesh = 16;
    private const int FaceMesh = 64;
    private const int FrameOfSpline = 16; // of a vertex

    /// <summary>Where an entity begins, and whether it lies level, so that from above it is seen at its true size.</summary>
    public static (Spot At, bool IsFlat) Where(DxfEntity entity, Frame3 frame)
    {
        var spots = Spots(entity, frame);
        if (spots.IsEmpty) return (OwnFrame(entity, frame).Origin, true);
        return (spots.All(s => s.IsFinite) ? spots[0] : new(double.NaN, 0, 0), spots.All(s => Math.Abs(s.Z - spots[0].Z) <= Level));
    }

    /// <summary>Whether it lies so far off that lengths are no longer what they say.</summary>
    public static bool IsTooFar(DxfEntity entity, Frame3 frame) => Spots(entity, frame).Any(s => s.Length > Furthest);

    /// <summary>Whether its own plane is seen from its back, so that a reader that does not know of planes has its mirror image.</summary>
    public static bool IsFromBelow(DxfRecord record) =>
        record.Name is "ARC" or "CIRCLE" or "LWPOLYLINE" or "POLYLINE" && Frame3.Of(record.Extrusion).Mirrors;

    /// <summary>Where a polyline has a vertex once more: a stretch without length.</summary>
    public static ImmutableArray<Point> Repeated(DxfEntity entity, Frame3 frame)
    {
        if (entity.Record.Name is not ("LWPOLYLINE" or "POLYLINE")) return [];
        var own = OwnFrame(entity, frame);
        var at = Vertices(entity).Select(v => own.Place(v.At).Flat).ToArray();
        return [.. at.Zip(IsClosed(entity.Record) ? at.Skip(1).Append(at[0]) : at.Skip(1)).Where(p => p.First.DistanceTo(p.Second) <= Tolerance.Merge).Select(p => p.First)];
    }

    private static ImmutableArray<Spot> Spots(DxfEntity entity, Frame3 frame)
    {
        var record = entity.Record;
        var own = OwnFrame(entity, frame);
        return record.Name switch
        {
            "LINE" => [own.Place(record.At(10)), own.Place(record.At(11))],
            "POLYLINE" => [.. entity.Vertices.Select(v => own.Place(v.At(10)))],
            "SPLINE" => [.. record.AllAt(10).Concat(record.AllAt(11)).Select(own.Place)],
            "LWPOLYLINE" => [.. record.AllAt(10).Select(p => own.Place(p with { Z = record.Number(38, 0) }))],
            "ELLIPSE" => [own.Place(record.At(10)), own.Place(record.At(10) + record.At(11)), own.Place(record.At(10) + MinorAxis(record))],
            _ => [own.Place(record.At(10)), own.Place(record.At(10)) + own.AlongX, own.Place(record.At(10)) + own.AlongY],
        };
    }

    /// <summary>False where its numbers make no shape; nothing where it has no length.</summary>
    public bool TrySegments(DxfEntity entity, Frame3 frame, out ImmutableArray<Segment> segments)
    {
        try
        {
            return TryDraw(entity, frame, out segments)
                && segments.All(s => Math.Max((s.Start - Point.Origin).Length, (s.End - Point.Origin).Length) <= Furthest);
        }
        catch (ArgumentException)
        {
            // A curve that no arcs can follow: its numbers are a stranger's.
            segments = [];
            return false;
        }
    }

    private bool TryDraw(DxfEntity entity, Frame3 frame, out ImmutableArray<Segment> segments)
    {
        var (record, own) = (entity.Record, OwnFrame(entity, frame));
        segments = [];
        switch (record.Name)
        {
            case "LINE":
                segments = Lines([own.Place(record.At(10)).Flat, own.Place(record.At(11)).Flat]);
                return true;
            case "ARC":
                segments = Arc(own, record.At(10), record.Number(40, double.NaN), Radians(record.Number(50, 0)), Radians(record.Number(51, 360)));
                return record.Number(40, double.NaN) >= 0;
            case "CIRCLE":
                segments = Arc(own, record.At(10), record.Number(40, double.NaN), 0, 2 * Math.PI);
                return record.Number(40, double.NaN) >= 0;
            case "ELLIPSE":
                segments = Ellipse(own, record);
                return record.Number(40, double.NaN) > 0;
            case "SPLINE":
                return TrySpline(own, record, out segments);
            case "LWPOLYLINE" or "POLYLINE":
                segments = Polyline(own, Vertices(entity), IsClosed(record));
                return true;
            default:
                return false;
        }
    }

    private static bool IsClosed(DxfRecord polyline) => (polyline.Whole(70, 0) & Closed) != 0;

    private static ImmutableArray<(Spot At, double Bulge)> Vertices(DxfEntity entity)
    {
        if (entity.Record.Name == "LWPOLYLINE") return LightVertices(entity.Record);
        var isSpline = (entity.Record.Whole(70, 0) & SplineFit) != 0;
        return [.. entity.Vertices.Where(v => !isSpline || (v.Whole(70, 0) & FrameOfSpline) == 0).Select(v => (v.At(10), v.Number(42, 0)))];
    }

    // LINE, ELLIPSE, SPLINE and polylines in space have coordinates of the world; all others those of their own plane.
    private static Frame3 OwnFrame(DxfEntity entity, Frame3 frame) => entity.Record.Name switch
    {
        "LINE" or "ELLIPSE" or "SPLINE" => frame,
        "POLYLINE" when (entity.Record.Whole(70, 0) & InSpace) != 0 => frame,
        _ => Frame3.Of(entity.Record.Extrusion).Then(frame),
    };

    private static double Radians(double degrees) => degrees * (Math.PI / 180);

    private static ImmutableArray<Segment> Lines(IReadOnlyList<Point> points) =>
        [.. points.Zip(points.Skip(1)).Where(p => p.First.DistanceTo(p.Second) > Tolerance.Merge).Select(p => Segment.Line(p.First, p.Second))];

    private ImmutableArray<Segment> Arc(Frame3 own, Spot centre, double radius, double from, double to)
    {
        if (!(radius > 0) || !double.IsFinite(from + to)) return [];
        var turn = (to - from) % (2 * Math.PI);
        if (turn <= 1e-12) turn += 2 * Math.PI;
        return ConicArc.Segments(own.Place(centre).Flat, Flat(own.AlongX * radius), Flat(own.AlongY * radius), from, from + turn, fit);
    }

    private ImmutableArray<Segment> Ellipse(Frame3 own, DxfRecord record)
    {
        var (from, to) = (record.Number(41, 0), record.Number(42, 2 * Math.PI));
        if (!double.IsFinite(from + to)) return [];
        var turn = (to - from) % (2 * Math.PI);
        if (turn <= 1e-9) turn += 2 * Math.PI;
        return ConicArc.Segments(own.Place(record.At(10)).Flat, Flat(own.Way(record.At(11))), Flat(own.Way(MinorAxis(record))), from, from + turn, fit);
    }

    private static Spot MinorAxis(DxfRecord ellipse) => ellipse.Extrusion.Unit.Cross(ellipse.At(11)) * ellipse.Number(40, double.NaN);

    private static Vector Flat(Spot way) => new(way.X, way.Y);

    private bool TrySpline(Frame3 own, DxfRecord record, out ImmutableArray<Segment> segments)
    {
        segments = [];
        var controls = record.AllAt(10);
        if (controls.IsEmpty)
        {
            var through = record.AllAt(11).Select(p => own.Place(p).Flat).Aggregate(
                ImmutableList<Point>.Empty, (kept, p) => kept.Count > 0 && kept[^1].DistanceTo(p) <= Tolerance.Merge ? kept : kept.Add(p));
            if (through.Count >= 2) segments = SmoothArcs.Through(through, fit).Segments;
            return through.Count >= 2;
        }
        if (!NurbsCurve.TryMake(
            record.Whole(71, 3), [.. record.Numbers(40)], [.. controls.Select(p => own.Place(p).Flat)], [.. record.Numbers(41)], out var curve)) return false;
        segments = curve.Segments(fit);
        return true;
    }

    private static ImmutableArray<(Spot At, double Bulge)> LightVertices(DxfRecord record)
    {
        var vertices = ImmutableArray.CreateBuilder<(Spot At, double Bulge)>();
        var height = record.Number(38, 0);
        foreach (var pair in record.Pairs)
        {
            var number = DxfRecord.Number(pair);
            if (pair.Code == 10) vertices.Add((new(number, 0, height), 0));
            else if (vertices.Count > 0 && pair.Code == 20) vertices[^1] = (vertices[^1].At with { Y = number }, vertices[^1].Bulge);
            else if (vertices.Count > 0 && pair.Code == 42) vertices[^1] = (vertices[^1].At, number);
        }
        return vertices.ToImmutable();
    }

    private ImmutableArray<Segment> Polyline(Frame3 own, ImmutableArray<(Spot At, double Bulge)> vertices, bool closed)
    {
        var segments = ImmutableArray.CreateBuilder<Segment>();
        for (var i = 0; i + (closed ? 0 : 1) < vertices.Length; i++)
        {
            var (from, bulge) = vertices[i];
            var to = vertices[(i + 1) % vertices.Length].At;
            var (start, end) = (own.Place(from).Flat, own.Place(to).Flat);
            if (!double.IsFinite(bulge) || start.DistanceTo(end) <= Tolerance.Merge) continue;
            if (bulge == 0) segments.Add(Segment.Line(segments.Count > 0 && segments[^1].End.DistanceTo(start) <= Tolerance.Merge ? segments[^1].End : start, end));
            else segments.AddRange(Bulged(own, from, to, bulge));
        }
        return segments.ToImmutable();
    }

    // In its own plane the arc is one of a circle; a frame may squeeze it.
    private ImmutableArray<Segment> Bulged(Frame3 own, Spot from, Spot to, double bulge)
    {
        var (start, end) = (own.Place(from).Flat, own.Place(to).Flat);
        if (own.KeepsArcs && Math.Abs(bulge) <= 1) return [Segment.Arc(start, end, own.Mirrors ? -bulge : bulge)];

        var chord = to.Flat - from.Flat;
        var centre = from.Flat.MidpointTo(to.Flat) + chord.Left * ((1 - bulge * bulge) / (4 * bulge));
        var (sweep, radius) = (4 * Math.Atan(bulge), chord.Length * (1 + bulge * bulge) / (4 * Math.Abs(bulge)));
        var first = (from.Flat - centre).Direction.Radians;
        var (u, v) = (new Vector(own.AlongX.X, own.AlongX.Y) * radius, new Vector(own.AlongY.X, own.AlongY.Y) * radius);
        var at = own.Of(centre.X, centre.Y, from.Z).Flat;
        var arcs = sweep > 0 ? ConicArc.Segments(at, u, v, first, first + sweep, fit) : ConicArc.Segments(at, u, -v, -first, -first - sweep, fit);
        // Its ends are those of the vertices, not what comes back from the centre.
        return arcs.IsEmpty ? [] : [.. arcs.Select((s, i) => Segment.Arc(i == 0 ? start : s.Start, i == arcs.Length - 1 ? end : s.End, s.Bulge))];
    }
}
