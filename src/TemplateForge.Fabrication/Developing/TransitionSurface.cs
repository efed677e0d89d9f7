using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The chain of triangles between two outlines, from the seam round to the seam.</summary>
internal sealed class TransitionSurface
{
    // A rough chain first, then a fine one that stays beside it: so many steps to a quarter, so many steps away.
    private const int Rough = 4;
    private const double Beside = 1.6;

    // So little, for each mm, that it only chooses between seams beside which the sheet bends alike.
    private const double Shorter = 1e-7;
    private const double Elsewhere = 2;
    private const double MostTurn = 3 * Math.PI;
    private const double Reversal = 170 * Math.PI / 180;
    private const double LeastClear = 0.001;

    private TransitionSurface(TransitionEdge lower, TransitionEdge upper, ImmutableArray<Ruling> rulings, ImmutableArray<int> breaks) =>
        (Lower, Upper, Rulings, Breaks) = (lower, upper, rulings, breaks);

    public TransitionEdge Lower { get; }
    public TransitionEdge Upper { get; }
    public ImmutableArray<Ruling> Rulings { get; }

    /// <summary>The rulings at which parts begin and end, the first and the last among them.</summary>
    public ImmutableArray<int> Breaks { get; }

    // 1. Places: where the seam and the breaks stand, where fans meet.
    // 2. Where on the upper outline the seam ends, by rough chains from the likely places.
    // 3. The fine chain beside the rough one.
    public static bool TryOf(Transition transition, out TransitionSurface surface, out TransitionFault fault)
    {
        (surface, fault) = (null!, TransitionFault.OutlinesCross);
        var (lower, upper) = (transition.Lower, transition.Upper);
        if (!IsClear(lower, upper)) return false;

        var seam = transition.IsClosed ? SeamOf(transition) : 0;
        var breaks = Enumerable.Range(0, transition.Parts).Select(k => (seam + k * lower.Length / transition.Parts) % lower.Length).ToList();
        var onLower = TransitionMarks.TouchedByLines(lower, upper).Concat(breaks).ToList();
        var onUpper = TransitionMarks.TouchedByLines(upper, lower).Concat(breaks.SelectMany(at => TransitionMarks.Across(lower, at, upper))).ToList();

        var roughLower = TransitionEdge.Of(lower, TransitionEdge.Evenly(Rough), onLower, seam);
        var (start, roughUpper, roughJoints) = BestStart(transition, roughLower, seam, onUpper);
        if (roughJoints.IsEmpty) return Refused(TransitionFault.DoublesBack, out fault);

        var steps = transition.Work == TransitionWork.Rolled ? TransitionEdge.Finely(transition.Divisions, lower, upper) : TransitionEdge.Evenly(transition.Divisions);
        var (fineLower, fineUpper) = (TransitionEdge.Of(lower, steps, onLower, seam), TransitionEdge.Of(upper, steps, onUpper, start));
        TransitionPairing.Join(At(fineLower), At(fineUpper), BesideOf(roughLower, roughUpper, roughJoints, fineLower, fineUpper), BulgeOf(transition), out var joints);
        if (joints.IsEmpty) return Refused(TransitionFault.DoublesBack, out fault);

        var rulings = RulingsOf(fineLower, fineUpper, joints);
        if (rulings.Any(r => Math.Abs(r.Turn) > Reversal) || Math.Abs(rulings.Sum(r => r.Turn)) > MostTurn) return Refused(TransitionFault.DoublesBack, out fault);
        surface = new(fineLower, fineUpper, rulings, BreaksAt(transition, fineLower, rulings));
        return true;
    }

    private static bool Refused(TransitionFault why, out TransitionFault fault)
    {
        fault = why;
        return false;
    }

    private static bool IsClear(TransitionEnd lower, TransitionEnd upper)
    {
        return All(lower, upper, below: true) && All(upper, lower, below: false);

        static bool All(TransitionEnd end, TransitionEnd other, bool below)
        {
            var (on, normal) = (other.InSpace(Point.Origin), below ? other.Normal * -1 : other.Normal);
            return TransitionEdge.Of(end, TransitionEdge.Evenly(8), []).Points.All(p => (p.At - on).Dot(normal) > LeastClear);
        }
    }

    private static double SeamOf(Transition transition)
    {
        var end = transition.Lower;
        if (transition.SeamAt is [var at]) return TransitionMarks.Nearest(end, at) % end.Length;
        var ends = TransitionEdge.EndsOf(end);
        var lines = Enumerable.Range(0, end.Outline.Length).Where(i => end.Outline[i].IsLine).ToList();
        if (lines.Count == 0) return 0;
        var longest = lines.Max(i => end.Outline[i].Length);
        var first = lines.First(i => end.Outline[i].Length > longest - Tolerance.Length);
        return ends[first] + end.Outline[first].Length / 2;
    }

    private static (double Start, TransitionEdge Upper, ImmutableArray<(int A, int B)> Joints) BestStart(
        Transition transition, TransitionEdge lower, double seam, List<double> marks)
    {
        var (upper, bulge) = (transition.Upper, BulgeOf(transition));
        var divided = TransitionEdge.Of(upper, TransitionEdge.Evenly(Rough), marks);
        // The sheet touches both outlines along a ruling: it ends where a tangent does, or at a corner.
        List<(double At, double Dear)> starts = transition.IsClosed
            ? [.. TransitionMarks.Across(transition.Lower, seam, upper).Concat(upper.Corners()).Select(at => (at, 1.0)), .. divided.Points.SkipLast(1).Select(p => (p.Distance, Elsewhere))]
            : [(0, 1)];
        var (least, best) = (double.PositiveInfinity, (Start: 0.0, Upper: divided, Joints: ImmutableArray<(int A, int B)>.Empty));
        foreach (var (start, dear) in starts)
        {
            var from = TransitionEdge.Of(upper, TransitionEdge.Evenly(Rough), marks, start);
            var (a, b) = (At(lower), At(from));
            var cost = TransitionPairing.Join(a, b, _ => (0, b.Length - 1), bulge, out var joints);
            if (joints.IsEmpty) continue;
            if (transition.IsClosed) cost += TransitionPairing.CostOfSeam(a, b, joints, bulge) + Shorter * a[0].DistanceTo(b[0]);
            cost *= dear;
            if (cost < least) (least, best) = (cost, (start, from, joints));
        }
        return best;
    }

    private static int BulgeOf(Transition transition) =>
        transition.Lower.Bulge == transition.Upper.Bulge ? transition.Lower.Bulge : 0;

    private static ImmutableArray<SpacePoint> At(TransitionEdge edge) => [.. edge.Points.Select(p => p.At)];

    private static Func<int, (int From, int To)> BesideOf(
        TransitionEdge roughLower, TransitionEdge roughUpper, ImmutableArray<(int A, int B)> joints, TransitionEdge lower, TransitionEdge upper)
    {
        var (a, b) = (Places(roughLower, lower), Places(roughUpper, upper));
        return i =>
        {
            var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
            foreach (var (roughA, roughB) in joints)
            {
                if (Math.Abs(roughA - a[i]) > Beside) continue;
                (low, high) = (Math.Min(low, roughB - Beside), Math.Max(high, roughB + Beside));
            }
            return (Array.FindIndex(b, place => place >= low), Array.FindLastIndex(b, place => place <= high));
        };

        // Where each fine point lies between the rough ones, counted in them.
        static double[] Places(TransitionEdge rough, TransitionEdge fine)
        {
            var k = 0;
            return [.. fine.Points.Select(p =>
            {
                while (k < rough.Points.Length - 2 && rough.Points[k + 1].Distance <= p.Distance) k++;
                return k + (p.Distance - rough.Points[k].Distance) / (rough.Points[k + 1].Distance - rough.Points[k].Distance);
            })];
        }
    }

    private static ImmutableArray<Ruling> RulingsOf(TransitionEdge lower, TransitionEdge upper, ImmutableArray<(int A, int B)> joints)
    {
        return [.. joints.Select((joint, i) => new Ruling(lower.Points[joint.A].At, upper.Points[joint.B].At, TurnAt(i), joint.A, joint.B))];

        double TurnAt(int i)
        {
            if (i == 0 || i == joints.Length - 1) return 0;
            var (before, here, after) = (joints[i - 1], joints[i], joints[i + 1]);
            return TransitionPairing.Turn(
                lower.Points[here.A].At, upper.Points[here.B].At,
                before.A < here.A ? lower.Points[before.A].At : upper.Points[before.B].At,
                after.A > here.A ? lower.Points[after.A].At : upper.Points[after.B].At);
        }
    }

    // Of the rulings through the place of a break the shortest: the others are diagonals of what it halves.
    private static ImmutableArray<int> BreaksAt(Transition transition, TransitionEdge lower, ImmutableArray<Ruling> rulings)
    {
        var breaks = ImmutableArray.CreateBuilder<int>();
        breaks.Add(0);
        for (var k = 1; k < transition.Parts; k++)
        {
            var at = k * transition.Lower.Length / transition.Parts;
            var nearest = lower.Points.MinBy(p => Math.Abs(p.Distance - at));
            var through = Enumerable.Range(1, rulings.Length - 2).Where(i => rulings[i].LowerIndex > 0 && Math.Abs(lower.Points[rulings[i].LowerIndex].Distance - nearest.Distance) < 1e-4).ToList();
            if (through.Count == 0) continue;
            breaks.Add(through.MinBy(i => rulings[i].Lower.DistanceTo(rulings[i].Upper)));
        }
        breaks.Add(rulings.Length - 1);
        return [.. breaks.Distinct()];
    }
}

/// <summary>A straight line of the sheet from one outline to the other.</summary>
/// <param name="Lower">Its end on the lower outline, in space.</param>
/// <param name="Upper">Its end on the upper outline, in space.</param>
/// <param name="Turn">How far the sheet turns at it, in radians: above 0 towards the inside. 0 where the sheet begins and ends.</param>
/// <param name="LowerIndex">Which point of the divided lower outline it begins at.</param>
/// <param name="UpperIndex">Which point of the divided upper outline it ends at.</param>
internal readonly record struct Ruling(SpacePoint Lower, SpacePoint Upper, double Turn, int LowerIndex, int UpperIndex);
