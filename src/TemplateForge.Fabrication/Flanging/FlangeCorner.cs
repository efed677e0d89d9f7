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
    // On the flat two flanges stay apart by this angle, in radians, so that there is a line to cut along.
    private const double Slit = 0.0035;

    /// <summary>An outline that turns by less than this, in radians, goes on without a corner.</summary>
    public const double Smooth = 1e-6;

    private readonly FlangedSheet _sheet;
    private readonly (BaseEdge Edge, FoldedFlange Flange) _before;
    private readonly (BaseEdge Edge, FoldedFlange Flange) _after;
    private readonly double _turn;
    private readonly Point _tangentsCross;

    /// <param name="sheet">The sheet.</param>
    /// <param name="before">The edge that ends here, the metal on its left, and its flange.</param>
    /// <param name="after">The edge that begins here, and its flange.</param>
    /// <param name="beforeLaps">Which of them laps over the other in a closed corner.</param>
    public FlangeCorner(
        FlangedSheet sheet, (BaseEdge Edge, FoldedFlange Flange) before, (BaseEdge Edge, FoldedFlange Flange) after, bool beforeLaps)
    {
        (_sheet, _before, _after) = (sheet, before, after);
        _turn = TurnOf(before.Edge, after.Edge);
        _tangentsCross = TangentsCross();
        var (pastBefore, pastAfter) = (before.Edge.PastEnd(_tangentsCross), after.Edge.BeforeStart(_tangentsCross));
        var (end, start) = (End(_before, _after.Flange, pastBefore, beforeLaps), End(_after, _before.Flange, pastAfter, !beforeLaps));
        if (!IsInner)
        {
            // Seen from where the tangent lines cross, what one does not need of the corner the other may have.
            var (room, ofBefore, ofAfter) = (_turn - Slit, end.Spread(before.Flange, pastBefore), start.Spread(after.Flange, pastAfter));
            end = end.Within(before.Flange, pastBefore, Math.Max(room / 2, room - ofAfter));
            start = start.Within(after.Flange, pastAfter, Math.Max(room / 2, room - ofBefore));
        }
        EndOfBefore = before.Edge.Side.IsLine ? end : end.Straightened();
        StartOfAfter = after.Edge.Side.IsLine ? start : start.Straightened();
    }

    /// <summary>Where the flange that comes before ends.</summary>
    public FlangeEnd EndOfBefore { get; }

    /// <summary>Where the flange that follows begins.</summary>
    public FlangeEnd StartOfAfter { get; }

    /// <summary>How far an outline turns where one edge goes on to the next, in radians; above 0 at an outer corner.</summary>
    public static double TurnOf(BaseEdge before, BaseEdge after)
    {
        var (from, to) = (before.Side.EndDirection, after.Side.StartDirection);
        return Math.Atan2(from.Cross(to), from.Dot(to));
    }

    public static bool IsSmooth(BaseEdge before, BaseEdge after) => Math.Abs(TurnOf(before, after)) < Smooth;

    private bool IsInner => _turn < 0;
    private bool IsOpen => _sheet.Corners == CornerJoint.Open || !_before.Edge.Side.IsLine || !_after.Edge.Side.IsLine;
    private Point Corner => _after.Edge.Side.Start;

    // At an inner corner the flanges would lie over each other on the flat: a slot of this width is between them.
    private double Slot => Math.Max(_sheet.ReliefSize, _sheet.Gap);
    private double SlotAside => Slot / 2 / Math.Cos(_turn / 2);

    /// <summary>What of the base lies outside of the tangent lines and is bent with neither flange.</summary>
    public Region CutAway()
    {
        if (IsInner) return Region.Empty;
        var (before, after) = (EndOfBefore.Bends[0], StartOfAfter.Bends[0]);
        var outside = Beside(_before, atEnd: true, before, Wider(_before)).Concat(Beside(_after, atEnd: false, after, Wider(_after)));
        var bent = Beside(_before, atEnd: true, Back(_before.Edge, before), before).Concat(Beside(_after, atEnd: false, Back(_after.Edge, after), after));
        return Combination.Union(outside.Select(Region.Of)).Subtract(bent.Select(Region.Of));

        // No longer than the edge: an arc is at most half a circle.
        static double Back(BaseEdge edge, double from) => Math.Max(0, from) - edge.Length;

        // At a blunt corner the base goes on past the end of the edge.
        double Wider((BaseEdge Edge, FoldedFlange Flange) at) => Math.Max(0, -at.Flange.FirstTangent * Math.Cos(_turn) / Math.Sin(_turn));
    }

    // Between the first tangent line and the outline, so far past the corner.
    private static IEnumerable<Contour> Beside((BaseEdge Edge, FoldedFlange Flange) at, bool atEnd, double from, double to)
    {
        if (to - from < Tolerance.Length || at.Flange.FirstTangent > -Tolerance.Length) yield break;
        if (atEnd) (from, to) = (at.Edge.Length + from, at.Edge.Length + to);
        else (from, to) = (-to, -from);
        yield return at.Edge.Strip(at.Flange.FirstTangent, from, to, 0, from, to);
    }

    /// <summary>The relief between the two bends.</summary>
    public ImmutableArray<Contour> Relief()
    {
        if (IsInner)
        {
            var reach = Math.Max(-_before.Flange.FirstTangent, -_after.Flange.FirstTangent);
            var aside = Math.Max(Aside(_before.Edge, EndOfBefore), Aside(_after.Edge, StartOfAfter));
            return [Outline.Circle(Corner, Math.Max(Slot / 2, Math.Sqrt(reach * reach + aside * aside)))];
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
        return new([.. bends], [.. panels.Select(p => (p.Item1, p.Item2))], bends.First());
    }

    // To where a bend ends; a flange along an arc may end far off, on its ray.
    private double Aside(BaseEdge edge, FlangeEnd end) => edge.Side.IsLine ? -end.Bends[0] : SlotAside;

    private double OnTheFlat(double outwards) => Math.Max(0, outwards) * Math.Tan(_turn / 2) - SlotAside;

    // How far past the corner a panel may run at a place along it, so that neither of its faces meets the other flange.
    private double Limit(FoldedFlange own, int panel, double along, FoldedFlange other, bool laps)
    {
        return Math.Min(OfFace(up: true), OfFace(up: false));

        double OfFace(bool up) => Limit(own, panel, own.Panels[panel].Face(along, up), other, laps, begins: along == 0);
    }

    private double Limit(FoldedFlange own, int panel, Point face, FoldedFlange other, bool laps, bool begins)
    {
        var halving = face.X * Math.Tan(_turn / 2) - _sheet.Gap / (2 * Math.Cos(_turn / 2));
        var closed = _sheet.Corners == CornerJoint.Closed && !IsOpen;
        var sameWay = own.Folds[0].Way == other.Folds[0].Way;
        // Past the plane that halves the corner there is then the other's first panel: before this one, or where this one turns out from its own.
        var lapped = closed && (panel == 0 || (begins && !laps && other.Reaches(face.Y)));
        if (IsInner || !sameWay || (own.IsLike(other, panel) && !lapped)) return halving;
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
