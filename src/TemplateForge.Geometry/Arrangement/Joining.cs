using System.Diagnostics.CodeAnalysis;

namespace TemplateForge.Geometry;

/// <summary>Makes a contour of a loop of half-edges: neighbours on one line or circle become one segment again.</summary>
internal sealed class Joining(Arrangement arrangement)
{
    private readonly Buffer<Step> _steps = new();
    private readonly Buffer<Segment> _segments = new();

    /// <summary>Begins a loop.</summary>
    public void Begin() => _steps.Clear();

    /// <summary>Adds the half-edge that begins where the last one ends.</summary>
    public void Add(int half)
    {
        ref readonly var edge = ref arrangement.Edges[half >> 1];
        var (start, end) = (arrangement.Nodes[edge.Start], arrangement.Nodes[edge.End]);
        _steps.Add((half & 1) == 0
            ? new(start, end, edge.Bulge, edge.Parent, Forward: true)
            : new(end, start, -edge.Bulge, edge.Parent, Forward: false));
    }

    /// <summary>The contour round the loop; there is none where the loop is thinner than the tolerance. And which way it is turned.</summary>
    public bool TryContour([NotNullWhen(true)] out Contour? contour, out bool counterClockwise)
    {
        Join();
        (contour, counterClockwise) = (null, false);
        if (_segments.Count < 2 || !HasArea(out counterClockwise)) return false;
        contour = Contour.Trusted(_segments.Items.ToArray());
        return true;
    }

    /// <summary>Gathers the steps that follow one curve, beginning where a curve begins.</summary>
    private void Join()
    {
        var steps = _steps.Items;
        _segments.Clear();
        if (steps.Length == 2)
        {
            // Two sides of something; and a full circle is two arcs.
            foreach (ref readonly var step in steps) _segments.Add(Segment.Trusted(step.Start, step.End, step.Bulge));
            return;
        }
        var begin = 0;
        for (var i = 0; i < steps.Length; i++)
        {
            if (MayFollow(steps[i == 0 ? ^1 : i - 1], steps[i])
                && TryAdd(steps[i == 0 ? ^1 : i - 1], new(i == 0 ? steps.Length - 1 : i - 1, 1), i, out _)) continue;
            begin = i;
            break;
        }
        for (var i = 0; i < steps.Length;)
        {
            var run = new Run((begin + i) % steps.Length, 1);
            var along = steps[run.First];
            while (i + run.Count < steps.Length)
            {
                var next = (begin + i + run.Count) % steps.Length;
                if (!MayFollow(steps[next == 0 ? ^1 : next - 1], steps[next]) || !TryAdd(along, run, next, out var newAlong)) break;
                (along, run) = (newAlong, run with { Count = run.Count + 1 });
            }
            AddSegments(run, along);
            i += run.Count;
        }
    }

    /// <summary>False where two steps, one after the other, certainly do not lie on one line or circle: a quick look at how they bend.</summary>
    private static bool MayFollow(in Step a, in Step b)
    {
        if (a.Parent == b.Parent) return true;
        var (chordA, chordB) = (a.End - a.Start, b.End - b.Start);
        var (squareA, squareB) = (chordA.LengthSquared, chordB.LengthSquared);
        var (bendA, bendB) = (a.Bulge * a.Bulge * squareA, b.Bulge * b.Bulge * squareB); // each (2 rise)²
        const double noticeable = 1e4 * Tolerance.Merge * Tolerance.Merge;
        if (bendA == 0 && bendB == 0)
        {
            var cross = chordA.Cross(chordB);
            return cross * cross <= noticeable * Math.Max(squareA, squareB) && chordA.Dot(chordB) > 0;
        }
        if (bendA > noticeable && bendB > noticeable) return a.Bulge > 0 == b.Bulge > 0;
        // A long chord of hardly any rise and an arc that clearly bends: over the chord's length the arc's circle would rise.
        if (bendA <= noticeable && bendB > noticeable) return bendB * squareA * squareA <= 100 * noticeable * squareB * squareB;
        if (bendB <= noticeable && bendA > noticeable) return bendA * squareB * squareB <= 100 * noticeable * squareA * squareA;
        return true;
    }

    /// <summary>
    /// Whether a step goes on along a run: it follows the curve of the run, or the whole run follows that of the step; the longer curve is asked first.
    /// </summary>
    private bool TryAdd(in Step along, Run run, int next, out Step newAlong)
    {
        var step = _steps[next];
        newAlong = along;
        if (step.Parent == along.Parent) return step.Forward == along.Forward;
        var (curveOfStep, curveOfRun) = (CurveOf(step), CurveOf(along));
        if (curveOfStep.Reach > curveOfRun.Reach)
        {
            if (RunFollows(run, step, curveOfStep)) newAlong = step;
            else return Follows(step, along, curveOfRun);
        }
        else if (!Follows(step, along, curveOfRun))
        {
            if (!RunFollows(run, step, curveOfStep)) return false;
            newAlong = step;
        }
        return true;
    }

    private Curve CurveOf(in Step step) => arrangement.Pieces[step.Parent].Curve;

    private bool RunFollows(Run run, in Step along, in Curve curve)
    {
        for (var i = 0; i < run.Count; i++)
        {
            if (!Follows(_steps[(run.First + i) % _steps.Count], along, curve)) return false;
        }
        return true;
    }

    private static bool Follows(in Step step, in Step along, in Curve curve)
    {
        if (step.Parent == along.Parent) return true;
        if (!IsOn(step.Start, curve) || !IsOn(step.End, curve)) return false;
        var middle = step.Middle;
        // The gradient points to the right, so ahead lies to its left; backwards the other way.
        var ahead = curve.PowerGradient(middle).Left * (along.Forward ? 1 : -1);
        return IsOn(middle, curve) && ahead.Dot(step.End - step.Start) > 0;

        // Half the tolerance: what was clear of these edges by the tolerance is not brought near by joining them.
        static bool IsOn(Point p, in Curve curve) => Math.Abs(curve.RightOf(p)) < Tolerance.Merge / 2;
    }

    private void AddSegments(Run run, in Step along)
    {
        ref readonly var first = ref _steps[run.First];
        if (run.Count == 1)
        {
            _segments.Add(Segment.Trusted(first.Start, first.End, first.Bulge));
            return;
        }
        var (start, end) = (first.Start, _steps[(run.First + run.Count - 1) % _steps.Count].End);
        var curve = CurveOf(along);
        if (curve.IsLine)
        {
            _segments.Add(Segment.Trusted(start, end, 0));
            return;
        }
        var sweep = SweepOf(run, curve, start, end);
        var radius = 1 / Math.Abs(curve.Curvature);
        if (Math.Abs(sweep) - Math.PI <= Tolerance.Merge / 10 / radius)
        {
            _segments.Add(Segment.Trusted(start, end, Math.Clamp(Math.Tan(sweep / 4), -1, 1)));
            return;
        }
        var middle = curve.Centre + (start - curve.Centre).Turned(Angle.FromRadians(sweep / 2));
        var bulge = Math.Tan(sweep / 8);
        _segments.Add(Segment.Trusted(start, middle, bulge));
        _segments.Add(Segment.Trusted(middle, end, bulge));
    }

    /// <summary>How far a run turns: measured on its curve, whole turns by adding up its steps.</summary>
    private double SweepOf(Run run, in Curve curve, Point start, Point end)
    {
        var roughly = 0.0;
        for (var i = 0; i < run.Count; i++) roughly += 4 * Math.Atan(_steps[(run.First + i) % _steps.Count].Bulge);
        var turn = curve.TurnTo(end) - curve.TurnTo(start);
        return turn + 2 * Math.PI * Math.Round((roughly - turn) / (2 * Math.PI));
    }

    /// <summary>Whether the loop is on the whole thicker than twice the tolerance, by which either side of it may be out; and which way it is turned.</summary>
    private bool HasArea(out bool counterClockwise)
    {
        // An arc and its chord enclose between 2/3 and π/4 of chord times rise: most often that is enough to know.
        var (origin, area, doubt, length) = (_segments[0].Start, 0.0, 0.0, 0.0);
        foreach (ref readonly var s in _segments.Items)
        {
            var chord = s.End - s.Start;
            var bulged = s.Bulge * chord.LengthSquared / 2;
            area += (s.Start - origin).Cross(s.End - origin) / 2 + 0.726 * bulged;
            doubt += 0.06 * Math.Abs(bulged);
            length += Math.Abs(chord.X) + Math.Abs(chord.Y);
        }
        if (Math.Abs(area) < doubt + 2 * Tolerance.Merge * length)
        {
            var contour = Contour.Trusted(_segments.Items.ToArray());
            area = contour.SignedArea;
            counterClockwise = area > 0;
            return Math.Abs(area) >= Tolerance.Merge * contour.Length;
        }
        counterClockwise = area > 0;
        return true;
    }

    /// <summary>An edge as the loop runs along it.</summary>
    private readonly record struct Step(Point Start, Point End, double Bulge, int Parent, bool Forward)
    {
        public Point Middle => Start.MidpointTo(End) - (End - Start).Left * (Bulge / 2);
    }

    /// <summary>Steps that follow one curve.</summary>
    private readonly record struct Run(int First, int Count);
}
