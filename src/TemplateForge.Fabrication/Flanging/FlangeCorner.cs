using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A corner of a base at which two flanges meet: how far each may run, and what is taken out between them.</summary>
/// <remarks>
/// <code>
///        |   flange that follows          C  corner of the outline
///      P +- - - - - -+                    P  where the first tangent lines cross: there the relief is
///   base .           :  C
///     ---+- - - - - -+                    flanges that meet keep to their side of the plane that halves the corner, or, where
///        :   flange that comes before     one laps or they differ, to the inside of the other's face
/// </code>
/// </remarks>
internal sealed class FlangeCorner
{
    private readonly FlangedSheet _sheet;
    private readonly (BaseEdge Edge, FoldedFlange Flange) _before;
    private readonly (BaseEdge Edge, FoldedFlange Flange) _after;
    private readonly double _turn;
    private readonly Point _tangentsCross;

    /// <param name="sheet">The sheet.</param>
    /// <param name="before">The edge that ends here, the metal on its left, and its flange.</param>
    /// <param name="after">The edge that begins here, and its flange.</param>
    public FlangeCorner(FlangedSheet sheet, (BaseEdge Edge, FoldedFlange Flange) before, (BaseEdge Edge, FoldedFlange Flange) after)
    {
        (_sheet, _before, _after) = (sheet, before, after);
        _turn = TurnOf(before.Edge, after.Edge);
        _tangentsCross = TangentsCross();
    }

    /// <summary>How far an outline turns where one edge goes on to the next, in radians; above 0 at an outer corner.</summary>
    public static double TurnOf(BaseEdge before, BaseEdge after)
    {
        var (from, to) = (before.Side.EndDirection, after.Side.StartDirection);
        return Math.Atan2(from.Cross(to), from.Dot(to));
    }

    public static bool IsSmooth(BaseEdge before, BaseEdge after) => Math.Abs(TurnOf(before, after)) < 1e-6;

    private bool IsInner => _turn < 0;
    private bool IsOpen => _sheet.Corners == CornerJoint.Open || !_before.Edge.Side.IsLine || !_after.Edge.Side.IsLine;
    private Point Corner => _after.Edge.Side.Start;

    // At an inner corner the flanges would lie over each other on the flat: a slot of this width is between them.
    private double Slot => Math.Max(_sheet.ReliefSize, _sheet.Gap);
    private double SlotAside => Slot / 2 / Math.Cos(_turn / 2);

    /// <summary>Where the flange that comes before ends.</summary>
    /// <param name="laps">Whether it laps over the other in a closed corner.</param>
    public FlangeEnd EndOfBefore(bool laps) => End(_before, _after.Flange, _before.Edge.PastEnd(_tangentsCross), laps);

    /// <summary>Where the flange that follows begins.</summary>
    /// <param name="laps">Whether it laps over the other in a closed corner.</param>
    public FlangeEnd StartOfAfter(bool laps) => End(_after, _before.Flange, _after.Edge.BeforeStart(_tangentsCross), laps);

    /// <summary>What of the base lies past both tangent lines and belongs to neither flange.</summary>
    public ImmutableArray<Contour> CutAway()
    {
        if (IsInner) return [];
        var (before, after) = (_before.Edge.PastEnd(_tangentsCross), _after.Edge.BeforeStart(_tangentsCross));
        var (along, on) = (_before.Edge.Beside(0, _before.Edge.Length + before, _before.Edge.Length), _after.Edge.Beside(0, 0, -after));
        Segment[] sides = [Segment.Line(_tangentsCross, along.Start), along, on, Segment.Line(on.End, _tangentsCross)];
        return [new Contour(sides.Where(s => s.Start.DistanceTo(s.End) > Tolerance.Length))];
    }

    /// <summary>The relief between the two bends.</summary>
    public ImmutableArray<Contour> Relief()
    {
        if (IsInner)
        {
            var reach = Math.Max(-_before.Flange.FirstTangent, -_after.Flange.FirstTangent);
            return [Outline.Circle(Corner, Math.Max(Slot / 2, Math.Sqrt(reach * reach + SlotAside * SlotAside)))];
        }
        var half = _sheet.ReliefSize / 2;
        switch (_sheet.Relief)
        {
            case CornerRelief.Round: return [Outline.Circle(_tangentsCross, half)];
            case CornerRelief.Square:
                var (along, aside) = (_before.Edge.Side.EndDirection * half, _before.Edge.Side.EndDirection.Left * half);
                return [Outline.Polygon(
                    _tangentsCross - along - aside, _tangentsCross + along - aside, _tangentsCross + along + aside, _tangentsCross - along + aside)];
            default: return [];
        }
    }

    private FlangeEnd End((BaseEdge Edge, FoldedFlange Flange) own, FoldedFlange other, double tangentsCross, bool laps)
    {
        var panels = own.Flange.Panels.Select((panel, i) =>
        {
            var (start, end) = (Limit(own.Flange, i, 0, other, laps), Limit(own.Flange, i, panel.Length, other, laps));
            if (IsInner) return (Math.Min(start, OnTheFlat(panel.FlatStart)), Math.Min(end, OnTheFlat(panel.FlatEnd)));
            return IsOpen ? (Math.Min(start, tangentsCross), Math.Min(end, tangentsCross)) : (start, end);
        }).ToImmutableArray();
        var first = IsInner ? -SlotAside : tangentsCross;
        var bends = panels.Select((panel, i) => Math.Min(panel.Item1, i == 0 ? first : panels[i - 1].Item2));
        var found = new FlangeEnd([.. bends], [.. panels.Select(p => (p.Item1, p.Item2))]);
        return own.Edge.Side.IsLine ? found : found.Straightened();
    }

    private double OnTheFlat(double outwards) => Math.Max(0, outwards) * Math.Tan(_turn / 2) - SlotAside;

    // How far past the corner a panel may run at a place along it, so that neither of its faces meets the other flange.
    private double Limit(FoldedFlange own, int panel, double along, FoldedFlange other, bool laps) =>
        Math.Min(Limit(own, panel, own.Panels[panel].Face(along, up: true), other, laps), Limit(own, panel, own.Panels[panel].Face(along, up: false), other, laps));

    private double Limit(FoldedFlange own, int panel, Point face, FoldedFlange other, bool laps)
    {
        var halving = face.X * Math.Tan(_turn / 2) - _sheet.Gap / (2 * Math.Cos(_turn / 2));
        var closed = _sheet.Corners == CornerJoint.Closed && !IsOpen;
        var sameWay = own.Folds[0].Way == other.Folds[0].Way;
        if (IsInner || !sameWay || (own.IsLike(other, panel) && !(closed && panel == 0))) return halving;
        // The other's face inside or, where this one laps, outside.
        var inside = other.Folds[0].Way == BendWay.Up;
        var through = closed && laps && panel == 0;
        var wall = other.Panels[0].FaceAt(face.Y, through ? !inside : inside) - (through ? 0 : _sheet.Gap);
        var beside = (wall - face.X * Math.Cos(_turn)) / Math.Sin(_turn);
        return panel == 0 ? (double.IsFinite(beside) ? beside : halving) : Math.Min(beside, halving);
    }

    // Where both are as far inside the outline as their first tangent lines.
    private Point TangentsCross()
    {
        var at = Corner;
        for (var i = 0; i < 20; i++)
        {
            var (a, wayA) = _before.Edge.From(at);
            var (b, wayB) = _after.Edge.From(at);
            var (offA, offB) = (_before.Flange.FirstTangent - a, _after.Flange.FirstTangent - b);
            var cross = wayA.Cross(wayB);
            if (Math.Abs(cross) < 1e-12) break;
            at += new Vector((offA * wayB.Y - offB * wayA.Y) / cross, (offB * wayA.X - offA * wayB.X) / cross);
            if (Math.Abs(offA) + Math.Abs(offB) < 1e-12) break;
        }
        return at;
    }
}
