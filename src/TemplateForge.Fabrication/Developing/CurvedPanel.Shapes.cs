using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Whole shapes carried onto the panel and laid flat.</summary>
public sealed partial class CurvedPanel
{
    // 1. Each line and arc of the view is cut where the section goes over from straight to curved, or has a corner.
    // 2. Where the section is straight it stays what it is, unless it is stretched across; a line along or square to the rulings always does.
    // 3. Elsewhere it becomes a curve, and that arcs.

    /// <summary>The jump of the stretch from face to face, as a share, that makes a corner worth keeping.</summary>
    private const double Kink = 0.005;

    private Placement ToRulings => Placement.Turned(-_panel.Rulings, Point.Origin);

    private Placement ToPaper
    {
        get
        {
            var turned = Placement.Turned(_panel.Rulings, Point.Origin);
            return IsMirrored ? turned.Then(Placement.Mirrored(Point.Origin, Angle.QuarterTurn)) : turned;
        }
    }

    /// <summary>A shape of the view on the flat pattern. Curves become arcs within <see cref="Tolerance.Curve"/>; corners stay where they were.</summary>
    public bool TryCarry(Region shape, [MaybeNullWhen(false)] out Region carried, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        (carried, fault) = (Region.Empty, null);
        if (shape.IsEmpty) return true;
        var view = shape.Placed(ToRulings);
        if (!IsWithin(view.Bounds.Min.Y, view.Bounds.Max.Y, out fault)) return false;
        var breaks = Breaks();
        try
        {
            var contours = view.Contours.Select(c => new Contour(c.Segments.SelectMany(s => PanelCuts.At(s, breaks)).SelectMany(Carried)));
            carried = Region.FromContours(contours).Placed(ToPaper);
            return true;
        }
        catch (ArgumentException)
        {
            // So the fitting says that a curve asks for thousands of arcs.
            fault = new(CurvedPanelFaultKind.TooFine, view.Bounds.Centre.Y, 0);
            return false;
        }
    }

    /// <summary>Where, as it is seen, the section turns from straight to curved, has a corner, or its faces begin to differ otherwise.</summary>
    private ImmutableArray<double> Breaks()
    {
        var face = CutsStraightInside ? _inside : _outside;
        return
        [
            .. Enumerable.Range(1, face.Count - 1)
                .Where(i => face.IsStraight(i - 1) || face.IsStraight(i)
                    || Math.Abs(face.TurnBefore(i)) > SeenFace.Corner
                    || Math.Abs(LaidOn.LengthOf(i - 1) / face.LengthOf(i - 1) - LaidOn.LengthOf(i) / face.LengthOf(i)) > Kink)
                .Select(face.SeenAtStart),
        ];
    }

    private IEnumerable<Segment> Carried(Segment part)
    {
        var (start, end) = (OnPanel(part.Start), OnPanel(part.End));
        var place = Behind(part.At(0.5).Y);
        if (part.IsLine && (LaidOn.IsStraight(place.Index) || IsLevel(part.End.Y - part.Start.Y) || IsLevel(part.End.X - part.Start.X)))
            return [Segment.Line(start, end)];
        if (LaidOn.IsStraight(place.Index) && Math.Abs(Stretch(place) - 1) * part.Bounds.Height < Tolerance.Merge)
            return [Segment.Arc(start, end, part.Bulge)];
        // In quarters, so that what lies furthest along and across is exact.
        return PanelCuts.Quarters(part).SelectMany(quarter => SmoothArcs.Along(t => OnPanel(quarter.At(t)), t => Way(quarter, t), 0, 1).Segments);
    }

    private Vector Way(Segment part, double share)
    {
        var way = part.DirectionAt(share);
        return new(way.X, way.Y * Stretch(Behind(part.At(share).Y)));
    }

    private static bool IsLevel(double difference) => Math.Abs(difference) < Tolerance.Merge;

    private Point OnPanel(Point view) => new(view.X, AlongAt(view.Y));

    private Point OnPaper(Point view) => ToPaper.Of(OnPanel(view));

    /// <summary>How much longer it is along the panel than it is seen.</summary>
    private double Stretch(SectionPlace place)
    {
        var seen = CutsStraightInside ? _inside : _outside;
        return LaidOn.LengthOf(place.Index) / seen.LengthOf(place.Index) / Math.Max(seen.Facing(place), Steepest.Cos / 2);
    }

    private bool IsWithin(double from, double to, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        fault = null;
        var (first, last) = Seen;
        if (from < first - Tolerance.Length) fault = new(CurvedPanelFaultKind.PastTheEnd, from, first);
        else if (to > last + Tolerance.Length) fault = new(CurvedPanelFaultKind.PastTheEnd, to, last);
        else if (SteepIn(from, to) is [var steep, ..]) fault = new(CurvedPanelFaultKind.TooSteep, steep, Math.Round(Math.Acos(Facing(steep)) * 180 / Math.PI));
        return fault is null;
    }

    private double Facing(double seen) => (CutsStraightInside ? _inside : _outside).Facing(Behind(seen));

    /// <summary>Of what is seen, a place at which the panel leans too far. It leans furthest at an end of a line or arc.</summary>
    private double[] SteepIn(double from, double to)
    {
        var face = CutsStraightInside ? _inside : _outside;
        return
        [
            .. Enumerable.Range(0, face.Count).Select(face.SeenAtStart).Where(seen => seen > from && seen < to)
                .SelectMany(seen => (double[])[seen - 1e-6, seen]).Append(from).Append(to)
                .Where(seen => Facing(Math.Clamp(seen, face.From, face.To)) < Steepest.Cos),
        ];
    }
}
