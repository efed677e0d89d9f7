using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A panel that is curved one way only, ready to carry onto it what is drawn on a flat view of it, and to lay that flat.</summary>
/// <remarks>
/// A point of the view, x along the rulings and y across them, comes to (x, s(y)): s is the length along the section from the datum line. On
/// a cylinder of radius R seen square at the datum s = R asin(y / R). Formulas and promises: docs/curved-panels.md.
/// </remarks>
public sealed partial class CurvedPanel
{
    /// <summary>The most that the panel may lean from the view where something lies: there 1 mm in the view is 5.8 mm on the panel.</summary>
    public static Angle Steepest { get; } = Angle.FromDegrees(80);

    private readonly PanelSection _panel;
    private readonly ImmutableArray<Segment> _outsideSegments, _insideSegments;
    private readonly SeenFace _outside, _inside;
    private readonly double _datumAlong;

    private CurvedPanel(PanelSection panel, ImmutableArray<Segment> outside, ImmutableArray<Segment> inside, SeenFace seenOutside, SeenFace seenInside)
    {
        (_panel, _outsideSegments, _insideSegments, _outside, _inside) = (panel, outside, inside, seenOutside, seenInside);
        _datumAlong = LaidOn.AlongAt(Behind(0));
    }

    public PanelSection Measured => _panel;

    /// <summary>How far the view is turned about the rulings.</summary>
    public Angle Tilt { get; private init; }

    /// <summary>How far the view reaches below and above the datum line, in mm.</summary>
    public (double From, double To) Seen => CutsStraightInside ? (_inside.From, _inside.To) : (_outside.From, _outside.To);

    /// <summary>The sheet seen on its edge: across to the right, the outside above.</summary>
    public Region Edge => _insideSegments == _outsideSegments ? new Path(_outsideSegments).Slot(_panel.Thickness, PathEnds.Flat) : Region.FromContours(
    [
        new Contour(
            [
                .. _insideSegments,
                Segment.Line(_insideSegments[^1].End, _outsideSegments[^1].End),
                .. _outsideSegments.Reverse().Select(s => s.Reversed()),
                Segment.Line(_outsideSegments[0].Start, _insideSegments[0].Start),
            ]),
    ]);

    /// <exception cref="ArgumentOutOfRangeException">The thickness is not more than 0.</exception>
    public static bool TryOf(PanelSection panel, [MaybeNullWhen(false)] out CurvedPanel made, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        if (!(panel.Thickness > 0)) throw new ArgumentOutOfRangeException(nameof(panel), panel.Thickness, "A sheet has a thickness.");
        (made, fault) = (null, null);
        var section = panel.Section.Start.X <= panel.Section.End.X ? panel.Section : panel.Section.Reversed();

        // 1. The straight edge: where the datum lies, and how the panel leans there.
        if (!SeenFace.TrySee(section.Segments, new(1, 0), Point.Origin, out var edge, out var back))
            return Fails(CurvedPanelFault.At(CurvedPanelFaultKind.RunsBack, back), out fault);
        foreach (var place in panel.SquareAt.Append(panel.Datum))
        {
            if (place < edge.From - Tolerance.Length || place > edge.To + Tolerance.Length)
                return Fails(new(CurvedPanelFaultKind.PastTheEnd, place, Math.Clamp(place, edge.From, edge.To)), out fault);
        }

        // 2. The two faces, with a line or arc of one behind each of the other.
        if (!TryFaces(section.Segments, panel, out var outside, out var inside, out fault)) return false;

        // 3. The view: its across, and what lies at 0.
        var across = Vector.Polar(1, panel.Tilt);
        if (panel.SquareAt is [var square, ..])
        {
            var at = edge.PlaceSeenAt(square);
            if (IsInACorner(edge, at)) return Fails(new(CurvedPanelFaultKind.SquareInACorner, square, 0), out fault);
            across = edge.DirectionAt(at);
        }
        var datum = edge.PlaceSeenAt(panel.Datum);
        var origin = outside[datum.Index].At(datum.Share);
        if (!SeenFace.TrySee(outside, across, origin, out var seenOutside, out var hidden))
            return Fails(CurvedPanelFault.At(CurvedPanelFaultKind.Hides, hidden), out fault);
        var seenInside = seenOutside;
        if (panel.LiesOn == PanelFace.Inside && !SeenFace.TrySee(inside, across, origin, out seenInside, out hidden))
            return Fails(CurvedPanelFault.At(CurvedPanelFaultKind.Hides, hidden), out fault);
        if (panel is { LiesOn: PanelFace.Inside, Cut: ThroughCut.Straight } && !(seenInside!.From <= 0 && seenInside.To >= 0))
            return Fails(new(CurvedPanelFaultKind.PastTheEnd, panel.Datum, panel.Datum), out fault);
        made = new(panel, outside, inside, seenOutside, seenInside) { Tilt = across.Direction };
        return true;
    }

    /// <summary>A point of the view on the flat pattern.</summary>
    /// <returns>False where the view there passes the section's ends or meets the panel too steeply.</returns>
    public bool TryCarry(Point point, out Point carried, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        var along = ToRulings.Of(point);
        carried = default;
        if (!IsWithin(along.Y, along.Y, out fault)) return false;
        carried = OnPaper(along);
        return true;
    }

    /// <summary>Distances along the panel from the datum line, a step apart, and the same as they are seen; in mm, below it with a minus.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not more than 0.</exception>
    public ImmutableArray<(double Along, double Seen)> Steps(double step)
    {
        if (!(step > 0)) throw new ArgumentOutOfRangeException(nameof(step), step, "A step is more than 0.");
        var (from, to) = (Math.Max(AlongAt(Seen.From), -100 * step), Math.Min(AlongAt(Seen.To), 100 * step));
        var steps = ImmutableArray.CreateBuilder<(double, double)>();
        for (var i = (int)Math.Ceiling(from / step - 1e-9); i * step <= to + 1e-9; i++)
        {
            if (i == 0) continue;
            var place = LaidOn.PlaceAlong(_datumAlong + i * step);
            steps.Add((i * step, (CutsStraightInside ? _inside : _outside).SeenAt(place)));
        }
        return steps.ToImmutable();
    }

    /// <summary>A direction along the rulings (x) and across them (y) as it lies in the drawing of the flat pattern.</summary>
    internal Vector OnPaper(Vector alongRulings) => ToPaper.Of(Point.Origin + alongRulings) - ToPaper.Of(Point.Origin);

    /// <summary>Whether the flat is that of the inside, which is drawn as one looks at it: left and right exchanged.</summary>
    public bool IsMirrored => _panel.LiesOn == PanelFace.Inside;

    private SeenFace LaidOn => _panel.LiesOn == PanelFace.Outside ? _outside : _inside;

    private bool CutsStraightInside => _panel is { LiesOn: PanelFace.Inside, Cut: ThroughCut.Straight };

    /// <summary>The place, on the face that the pattern lies on, of what is seen there. Square through the sheet both faces share it.</summary>
    private SectionPlace Behind(double seen) => (CutsStraightInside ? _inside : _outside).PlaceSeenAt(seen);

    private double AlongAt(double seen) => LaidOn.AlongAt(Behind(seen)) - _datumAlong;

    private static bool IsInACorner(SeenFace face, SectionPlace at)
    {
        const double near = 1e-6;
        var (along, length) = (at.Share, face.LengthOf(at.Index));
        return (along * length < near && at.Index > 0 && Math.Abs(face.TurnBefore(at.Index)) > SeenFace.Corner)
            || ((1 - along) * length < near && at.Index + 1 < face.Count && Math.Abs(face.TurnBefore(at.Index + 1)) > SeenFace.Corner);
    }

    private static bool TryFaces(
        ImmutableArray<Segment> measured, PanelSection panel, out ImmutableArray<Segment> outside, out ImmutableArray<Segment> inside, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        // The outside lies to the left of a section that runs across.
        var toOther = panel.MeasuredOn == PanelFace.Outside ? -panel.Thickness : panel.Thickness;
        var isNeeded = panel.MeasuredOn == PanelFace.Inside || panel.LiesOn == PanelFace.Inside;
        var sound = OtherFace.TryBeside(measured, toOther, isNeeded, out var other, out fault);
        (outside, inside) = panel.MeasuredOn == PanelFace.Outside ? (measured, other) : (other, measured);
        return sound;
    }

    private static bool Fails(CurvedPanelFault because, out CurvedPanelFault fault)
    {
        fault = because;
        return false;
    }
}
