namespace TemplateForge.Geometry;

/// <summary>Makes a contour of a loop of half-edges: neighbours on one line or circle become one segment again.</summary>
internal sealed class Joining(Arrangement arrangement, Windings windings)
{
    /// <summary>The contour round a loop, or null where the loop is thinner than the tolerance.</summary>
    public Contour? Contour(List<int> loop)
    {
        var steps = loop.ConvertAll(StepOf);
        var runs = Runs(steps);
        var segments = new List<Segment>(runs.Count + 2);
        foreach (var run in runs) AddSegments(run, segments);
        if (segments.Count < 2) return null;
        var contour = new Contour(segments);
        return contour.Area < Tolerance.Merge * contour.Length / 2 ? null : contour;
    }

    private Step StepOf(int half)
    {
        var edge = arrangement.Edges[half >> 1];
        var forward = (half & 1) == 0;
        return new(
            arrangement.Nodes[windings.Origin(half)],
            arrangement.Nodes[windings.Origin(half ^ 1)],
            forward ? edge.Bulge : -edge.Bulge,
            edge.Parent,
            forward);
    }

    /// <summary>Gathers the steps that follow one curve, beginning where a curve begins.</summary>
    private List<Run> Runs(List<Step> steps)
    {
        var begin = 0;
        for (var i = 0; i < steps.Count; i++)
        {
            if (new Run(steps[(i + steps.Count - 1) % steps.Count]).TryAdd(steps[i], arrangement.Parents)) continue;
            begin = i;
            break;
        }
        var runs = new List<Run> { new(steps[begin]) };
        for (var i = 1; i < steps.Count; i++)
        {
            var step = steps[(begin + i) % steps.Count];
            if (!runs[^1].TryAdd(step, arrangement.Parents)) runs.Add(new(step));
        }
        return runs;
    }

    private void AddSegments(Run run, List<Segment> segments)
    {
        var (start, end) = (run.Steps[0].Start, run.Steps[^1].End);
        var curve = arrangement.Parents[run.Along.Parent];
        if (run.Steps.Count == 1)
        {
            segments.Add(Segment.Arc(start, end, run.Steps[0].Bulge));
            return;
        }
        if (curve.IsLine)
        {
            segments.Add(Segment.Line(start, end));
            return;
        }
        var sweep = SweepOf(run, curve);
        var radius = 1 / Math.Abs(curve.Curvature);
        if (Math.Abs(sweep) - Math.PI <= Tolerance.Merge / 10 / radius)
        {
            segments.Add(Segment.Arc(start, end, Math.Clamp(Math.Tan(sweep / 4), -1, 1)));
            return;
        }
        var middle = curve.Centre + (start - curve.Centre).Turned(Angle.FromRadians(sweep / 2));
        var bulge = Math.Tan(sweep / 8);
        segments.Add(Segment.Arc(start, middle, bulge));
        segments.Add(Segment.Arc(middle, end, bulge));
    }

    /// <summary>How far a run turns: measured on its curve, whole turns by adding up its steps.</summary>
    private static double SweepOf(Run run, Curve curve)
    {
        var roughly = run.Steps.Sum(s => 4 * Math.Atan(s.Bulge));
        var turn = curve.TurnTo(run.Steps[^1].End) - curve.TurnTo(run.Steps[0].Start);
        return turn + 2 * Math.PI * Math.Round((roughly - turn) / (2 * Math.PI));
    }

    /// <summary>An edge as the loop runs along it.</summary>
    private readonly record struct Step(Point Start, Point End, double Bulge, int Parent, bool Forward)
    {
        public Point Middle => Curve.Between(Start, End, Bulge).Apex;
        public Vector Chord => End - Start;
    }

    /// <summary>Steps that follow one curve.</summary>
    private sealed class Run(Step first)
    {
        public List<Step> Steps { get; } = [first];

        /// <summary>The step whose parent all follow.</summary>
        public Step Along { get; private set; } = first;

        /// <summary>Adds a step when it follows the parent of the run, or the run that of the step; the longer parent is asked first.</summary>
        public bool TryAdd(Step step, IReadOnlyList<Curve> parents)
        {
            if (step.Parent == Along.Parent)
            {
                if (step.Forward != Along.Forward) return false;
            }
            else if (parents[step.Parent].Reach > parents[Along.Parent].Reach)
            {
                if (RunFollows()) Along = step;
                else if (!Follows(step, Along)) return false;
            }
            else if (!Follows(step, Along))
            {
                if (!RunFollows()) return false;
                Along = step;
            }
            Steps.Add(step);
            return true;

            bool RunFollows() => Steps.TrueForAll(s => Follows(s, step));

            bool Follows(Step s, Step along)
            {
                var curve = parents[along.Parent];
                return s.Parent == along.Parent
                    || IsOn(s.Start) && IsOn(s.End) && IsOn(s.Middle) && AheadAt(s.Middle).Dot(s.Chord) > 0;

                bool IsOn(Point p) => Math.Abs(curve.RightOf(p)) < Tolerance.Merge;

                // The gradient points to the right, so ahead lies to its left; backwards the other way.
                Vector AheadAt(Point p) => curve.PowerGradient(p).Left * (along.Forward ? 1 : -1);
            }
        }
    }
}
