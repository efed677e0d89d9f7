using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The flat of a flange on one edge.</summary>
internal sealed class FlangeStrip
{
    private readonly FlangeEnd _start;
    private readonly FlangeEnd _end;

    public FlangeStrip(int index, Flange flange, BaseEdge edge, FoldedFlange folded, FlangeEnd start, FlangeEnd end, int run)
    {
        (Index, Wanted, Edge, Flange, _start, _end, Run) = (index, flange, edge, folded, start, end, run);
        HasWidth = Zones().All(z => z.InnerTo - z.InnerFrom > Tolerance.Length && z.OuterTo - z.OuterFrom > Tolerance.Length);
        Outlines = HasWidth && !IsPastCentre ? [.. Zones().Select(z => edge.Strip(z.Inner, z.InnerFrom, z.InnerTo, z.Outer, z.OuterFrom, z.OuterTo))] : [];
    }

    /// <summary>Of its flange in the sheet, from 0.</summary>
    public int Index { get; }
    public Flange Wanted { get; }
    public BaseEdge Edge { get; }
    public FoldedFlange Flange { get; }

    /// <summary>What is bent together with it has the same number.</summary>
    public int Run { get; }

    public bool HasWidth { get; }

    /// <summary>Whether it would reach past the centre of its arc, flat or folded.</summary>
    public bool IsPastCentre => !Edge.Side.IsLine
        && Flange.Panels.Any(p => new[] { p.FlatEnd, p.Start.X, p.Middle(p.Length).X }.Any(outwards => Edge.RadiusAt(outwards) < BaseEdge.LeastRadius));

    /// <summary>Its parts, one beside the other: from the outline out, and where it runs past its bend also inside of it.</summary>
    public ImmutableArray<Contour> Outlines { get; }

    /// <summary>What of the base makes way: beneath a first panel that begins inside the outline, and beside an end that is to be clear of it.</summary>
    public IEnumerable<Contour> CutFromBase()
    {
        var (bent, from, to) = (Math.Min(0, Flange.EndOf(0)), -_start.Bends[0], Edge.Length + _end.Bends[0]);
        if (bent < -Tolerance.Length) yield return Edge.Strip(bent, from, to, 0, from, to);
        if (Flange.FirstTangent > -Tolerance.Length) yield break;
        if (_start.Clear - _start.Bends[0] > Tolerance.Length) yield return Beside(-_start.Clear, from);
        if (_end.Clear - _end.Bends[0] > Tolerance.Length) yield return Beside(to, Edge.Length + _end.Clear);

        // Out past the outline, which may turn away from that of the edge carried on.
        Contour Beside(double from, double to) => Edge.Strip(Flange.FirstTangent, from, to, Math.Min(to - from, Edge.Side.Radius / 2), from, to);
    }

    /// <summary>What of it may lie on the base, in mm²: where its first panel begins inside the outline.</summary>
    public double AreaInside => Zones().Where(z => z.Inner < 0).Sum(z => (Math.Min(0, z.Outer) - z.Inner) * Math.Max(z.InnerTo - z.InnerFrom, z.OuterTo - z.OuterFrom));

    /// <summary>The line of a bend that runs so far outwards, from end to end.</summary>
    public Segment Beside(int fold, double outwards) => Edge.Beside(outwards, -_start.Bends[fold], Edge.Length + _end.Bends[fold]);

    /// <summary>The free edge.</summary>
    public Segment FreeEdge => Edge.Beside(Flange.FreeEdge, -_start.Panels[^1].End, Edge.Length + _end.Panels[^1].End);

    public FlangeFault Fault(FlangeFaultKind kind) => new(kind, Index, Edge.At(Edge.Length / 2, 0));

    // A first panel that begins inside the outline is drawn whole; what is bent before it is the base's own metal.
    private IEnumerable<Zone> Zones()
    {
        for (var i = 0; i < Flange.Folds.Length; i++)
        {
            var (bend, panel) = ((_start.Bends[i], _end.Bends[i]), Flange.Panels[i]);
            var (from, to) = (i == 0 ? Math.Max(0, Flange.StartOf(i)) : Flange.StartOf(i), Flange.EndOf(i));
            if (to - from > Tolerance.Length) yield return Between(from, to, bend, bend);
            var (start, end) = ((_start.Panels[i].Start, _end.Panels[i].Start), (_start.Panels[i].End, _end.Panels[i].End));
            if (panel.Length > Tolerance.Length) yield return Between(panel.FlatStart, panel.FlatEnd, start, end);
        }
    }

    private Zone Between(double inner, double outer, (double Start, double End) near, (double Start, double End) far) =>
        new(inner, -near.Start, Edge.Length + near.End, outer, -far.Start, Edge.Length + far.End);

    private readonly record struct Zone(double Inner, double InnerFrom, double InnerTo, double Outer, double OuterFrom, double OuterTo);
}
