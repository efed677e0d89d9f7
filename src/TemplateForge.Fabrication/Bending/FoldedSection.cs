using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A section with some of its bends made, as the runs along the middle of its sheet; used to see what meets what.</summary>
internal sealed class FoldedSection
{
    /// <summary>Layers that merely touch, as those of a closed hem, do not run through each other.</summary>
    private const double Touching = 0.001;

    private readonly List<Run> _runs = [];
    private readonly List<EdgeViewBend> _bends = [];
    private readonly double _thickness;

    private FoldedSection(double thickness) => _thickness = thickness;

    /// <summary>The whole section, every bend at its angle.</summary>
    public static FoldedSection Whole(Section section)
    {
        var folded = new FoldedSection(section.Thickness);
        var angles = section.Folds.Select(f => f.Bend.Angle).ToList();
        var start = new Point(0, section.Thickness / 2);
        var end = folded.Line(start, new(1, 0), section.Straights[0], place: 0, leg: 0);
        folded.Walk(section, 0, step: 1, end, new(1, 0), upIsLeft: true, angles);
        return folded;
    }

    /// <summary>Clamped at a bend: its tangent line on the clamped side at the origin, the lower face at y = 0, what is clamped at x below 0.</summary>
    /// <remarks>The bend turns up; for one that turns down the sheet lies with its marked face on the table.</remarks>
    /// <param name="section">The section.</param>
    /// <param name="bend">Which bend, from 0.</param>
    /// <param name="clamped">What lies on the table.</param>
    /// <param name="angles">How far every bend is bent now.</param>
    public static FoldedSection Clamped(Section section, int bend, ClampedSide clamped, IReadOnlyList<Angle> angles)
    {
        var folded = new FoldedSection(section.Thickness);
        var markedUp = section.Folds[bend].Way == BendWay.Up;
        var middle = new Point(0, section.Thickness / 2);
        var step = clamped == ClampedSide.First ? 1 : -1;
        folded.Walk(section, bend, step, middle, new(1, 0), upIsLeft: markedUp, angles);
        var leg = clamped == ClampedSide.First ? bend : bend + 1;
        var end = folded.Line(middle, new(-1, 0), section.Straights[leg], 2 * leg, leg);
        folded.Walk(section, bend - step, -step, end, new(-1, 0), upIsLeft: !markedUp, angles);
        return folded;
    }

    /// <summary>The sheet seen on its edge, layers that touch kept apart by a hair.</summary>
    public Region Sheet => Combination.Union(_runs.Select(Solid));

    /// <summary>Where the bends are, in the order of the section.</summary>
    public ImmutableArray<EdgeViewBend> Bends => [.. _bends];

    /// <summary>Two legs, from 1, of which one runs through the other; legs that share a bend are not looked at.</summary>
    public IEnumerable<(int, int)> Meetings()
    {
        for (var i = 0; i < _runs.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (a, b) = (_runs[i], _runs[j]);
                if (Math.Abs(a.Place - b.Place) < 2 || !(a.Middle.DistanceTo(b.Middle) < _thickness - Touching)) continue;
                if (!Solid(a).Intersect(Solid(b)).IsEmpty) yield return (Math.Min(a.Leg, b.Leg), Math.Max(a.Leg, b.Leg));
            }
        }
    }

    public bool Meets(IEnumerable<Segment> tool, Func<int, bool> legs) => _runs
        .Where(r => legs(r.Leg))
        .Any(r => tool.Any(edge => r.Middle.DistanceTo(edge) < _thickness / 2 - Touching));

    private Region Solid(Run run) => new Path(run.Middle).Slot(_thickness - Touching, PathEnds.Flat);

    // From the near side of a bend on; step 1 is towards the last leg, -1 towards the first.
    private void Walk(Section section, int bend, int step, Point at, Vector direction, bool upIsLeft, IReadOnlyList<Angle> angles)
    {
        for (; bend >= 0 && bend < section.Folds.Length; bend += step)
        {
            var (fold, leg) = (section.Folds[bend], step > 0 ? bend + 1 : bend);
            (at, direction) = Arc(at, direction, fold, angles[bend], left: fold.Way == BendWay.Up == upIsLeft, 2 * bend + 1, leg);
            at = Line(at, direction, section.Straights[leg], 2 * leg, leg);
        }
    }

    private Point Line(Point at, Vector direction, double length, int place, int leg)
    {
        if (length < Tolerance.Length) return at;
        var end = at + direction * length;
        _runs.Add(new(place, leg + 1, Segment.Line(at, end)));
        return end;
    }

    // What is not bent yet stays straight, behind what is.
    private (Point, Vector) Arc(Point at, Vector direction, Fold fold, Angle angle, bool left, int place, int leg)
    {
        var pieces = (int)Math.Ceiling(angle.Radians / Math.PI - 1e-9);
        var radius = fold.Bend.InsideRadius + fold.Bend.Thickness / 2;
        var sweep = angle / Math.Max(1, pieces) * (left ? 1 : -1);
        var outwards = direction.Turned(sweep * pieces / 2).Left * (left ? -1 : 1);
        var axis = at + direction.Left * (left ? radius : -radius);
        _bends.Add(new(_bends.Count + 1, axis + outwards * (radius + _thickness / 2), outwards));
        for (var i = 0; i < pieces; i++)
        {
            var half = direction.Turned(sweep / 2);
            var end = at + half * (2 * radius * Math.Abs((sweep / 2).Sin));
            if (at.DistanceTo(end) > Tolerance.Length) _runs.Add(new(place, leg + 1, Segment.Arc(at, end, Math.Clamp((sweep / 4).Tan, -1, 1))));
            (at, direction) = (end, direction.Turned(sweep));
        }
        var unbent = fold.Bend.Allowance * (1 - Math.Min(1, angle.Radians / fold.Bend.Angle.Radians));
        return (Line(at, direction, unbent, place, leg), direction);
    }

    private readonly record struct Run(int Place, int Leg, Segment Middle);
}
