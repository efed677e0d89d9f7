using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where a strip is bent, how far and which way.</summary>
/// <remarks>
/// Pressed, every ruling at which two flats meet is a bend of its own. Rolled, a ruling at which the sheet turns sharply is; between such the
/// sheet curves, and each stretch that curves one way is pressed at lines that share its turn evenly, half a share from either end.
/// </remarks>
internal static class TransitionBends
{
    /// <summary>What turns by less than this, in degrees, is flat.</summary>
    public const double LeastTurn = 0.05;

    // A turn that is rolled is spread over many rulings; what turns by more at one of them is a crease. A turn back by less is no curve of its own.
    private const double Crease = 4;
    private const double LeastCurve = 0.5;

    /// <summary>A bend: from the lower end of its line to the upper, the turn in degrees, above 0 towards the inside; the curve that it is part of, by a number of its own, or 0.</summary>
    public readonly record struct Found(Point Lower, Point Upper, double Turn, int Curve);

    public static ImmutableArray<Found> Of(TransitionStrip strip, Transition transition)
    {
        var found = new List<Found>();
        if (transition.Work == TransitionWork.Pressed)
        {
            for (var i = 1; i < strip.Flat.Length - 1; i++)
            {
                if (Math.Abs(Degrees(strip, i)) >= LeastTurn) found.Add(new(strip.Flat[i].Lower, strip.Flat[i].Upper, Degrees(strip, i), 0));
            }
            return [.. found];
        }
        foreach (var (from, turns) in Curved(strip))
        {
            if (IsCrease(strip, from, turns)) found.Add(new(strip.Flat[from].Lower, strip.Flat[from].Upper, turns[0], 0));
            else found.AddRange(Curves(strip, from, turns, transition.Divisions));
        }
        return [.. found];
    }

    /// <summary>How far, in degrees, a strip that is rolled turns to and fro where it should turn one way: 0 of what unrolls.</summary>
    public static double Twist(TransitionStrip strip) =>
        Curved(strip).Where(c => !IsCrease(strip, c.From, c.Turns)).Sum(c => c.Turns.Sum(Math.Abs) - Stretches(c.Turns).Sum(s => Math.Abs(s.Turn)));

    // Runs of rulings between which nothing is flat: the first of them, and the turns at all. A ruling at which the sheet turns sharply is a run alone.
    private static IEnumerable<(int From, List<double> Turns)> Curved(TransitionStrip strip)
    {
        var (from, turns) = (1, new List<double>());
        for (var i = 1; i < strip.Flat.Length - 1; i++)
        {
            var isSharp = Math.Abs(Degrees(strip, i)) >= Crease;
            if (turns.Count > 0 && (isSharp || Math.Abs(turns[^1]) >= Crease || strip.IsFlatBefore(i)))
            {
                yield return (from, turns);
                (from, turns) = (i, []);
            }
            turns.Add(Degrees(strip, i));
        }
        if (turns.Count > 0) yield return (from, turns);
    }

    private static bool IsCrease(TransitionStrip strip, int from, List<double> turns) =>
        turns is [var turn] && (Math.Abs(turn) >= Crease || (Math.Abs(turn) >= LeastTurn && strip.IsFlatBefore(from) && strip.IsFlatBefore(from + 1)));

    private static IEnumerable<Found> Curves(TransitionStrip strip, int from, List<double> turns, int divisions)
    {
        foreach (var (first, last, turn) in Stretches(turns))
        {
            if (Math.Abs(turn) < LeastCurve) continue;
            var lines = (int)Math.Ceiling(Math.Abs(turn) / 90 * divisions - 1e-6);
            var (sofar, next) = (0.0, 0);
            for (var k = first; k < last && next < lines; k++)
            {
                sofar += turns[k];
                // Several lines can stand at one ruling only where the stretch is hardly divided.
                while (next < lines && Math.Abs(sofar) >= Math.Abs(turn) * (next + 0.5) / lines - 1e-9 && sofar * turn > 0)
                {
                    var (lower, upper) = strip.Flat[from + k];
                    yield return new(lower, upper, turn / lines, from + first);
                    next++;
                }
            }
        }
    }

    // From where the turn, summed up, begins to go one way to where it begins to go back for good.
    private static List<(int First, int Last, double Turn)> Stretches(List<double> turns)
    {
        var found = new List<(int First, int Last, double Turn)>();
        var (first, sum, extreme, extremeAt) = (0, 0.0, 0.0, 0);
        for (var k = 0; k < turns.Count; k++)
        {
            sum += turns[k];
            if (Math.Abs(extreme) < LeastCurve ? Math.Abs(sum) >= Math.Abs(extreme) : sum * Math.Sign(extreme) > Math.Abs(extreme)) (extreme, extremeAt) = (sum, k + 1);
            if (Math.Abs(extreme - sum) <= LeastCurve || Math.Abs(extreme) < LeastCurve) continue;
            found.Add((first, extremeAt, extreme));
            (first, sum) = (extremeAt, sum - extreme);
            (extreme, extremeAt) = (sum, k + 1);
        }
        found.Add((first, extremeAt, extreme));
        return found;
    }

    private static double Degrees(TransitionStrip strip, int i) => i > 0 && i < strip.Flat.Length - 1 ? strip.Rulings[i].Turn * 180 / Math.PI : 0;
}
