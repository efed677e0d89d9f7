using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What is said of a plan of cutting.</summary>
internal static partial class Wording
{
    private const int MostPlaces = 6;

    /// <summary>What the line on layer CUT is.</summary>
    public static string KerfOf(CutPlan plan) => plan.IsNone ? NoKerf
        : plan.Cutter.Compensates
            ? $"Finished line with leads: the controller of the {plan.Cutter.Title} allows for its kerf, to the {Waste(plan)} of travel."
            : $"Path of the {plan.Cutter.Title}: kerf {Kerf(plan)} ({KerfFrom(plan)}), half of it allowed for on the waste side.";

    /// <summary>Order, leads, and what is not cut; nothing where there is no plan.</summary>
    public static ImmutableArray<string> WaysOf(CutPlan plan)
    {
        if (plan.IsNone) return [];
        var order = plan.Cutter.Spread > 0 ? $"spread {Short(plan.Cutter.Spread)} mm against heat" : "short moves";
        return
        [
            $"Cut in the order of the file, {plan.Cuts.Length} {Many(plan.Cuts.Length, "cut", "cuts")}, {plan.Pierces} {Many(plan.Pierces, "pierce", "pierces")}: "
            + $"holes before outlines, inner parts first, {order}. The part lies on the {(plan.Cutter.PartOn == Side.Left ? "left" : "right")} of travel. "
            + "PIERCE, DRILL and FINISHED-EDGE are marks.",
            .. Drills(plan),
            .. NotReached(plan),
        ];
    }

    /// <summary>Where the kerf is from.</summary>
    public static string KerfFrom(CutPlan plan) => plan.Cutter.Compensates ? "the controller's" : plan.KerfIsGiven ? "as given" : "shop's table";

    public static string Kerf(CutPlan plan) => string.Create(CultureInfo.InvariantCulture, $"{plan.Kerf:0.###} mm");

    /// <summary>How much longer the moves are than they must be.</summary>
    public static string MovesOf(CutPlan plan) => plan.RapidBound <= Tolerance.Length
        ? Metres(plan.RapidLength)
        : string.Create(CultureInfo.InvariantCulture, $"{Metres(plan.RapidLength)}, {100 * (plan.RapidLength / plan.RapidBound - 1):0} % over the bound");

    public static string Metres(double length) => (length / 1000).ToString("0.00", CultureInfo.InvariantCulture);

    public static string TimeOf(CutPlan plan) => plan.TryTime(out var minutes) ? minutes.ToString("0.0", CultureInfo.InvariantCulture) : "no feed";

    /// <summary>On what the estimate of the time stands.</summary>
    public const string TimeBasis =
        "Moves: from the end of a cut to the next; no order can be under the bound (the shortest tree that joins the cuts). Minutes: an estimate from the "
        + "shop's feeds and pierce times, without speeding up and slowing down; none where the shop has not written its feed.";

    private static IEnumerable<string> Drills(CutPlan plan) =>
        plan.Drilled.GroupBy(d => (d.Reason, Diameter: Math.Round(d.Diameter, 2))).Select(g =>
        {
            var why = g.Key.Reason switch
            {
                DrillReason.StopHole => "before cutting, stop holes in inside corners",
                DrillReason.Wanted => "as the piece asks",
                DrillReason.NoRoom => "no room for the torch",
                _ => "too small for the process",
            };
            return $"Drill {g.Count()} × {Short(g.Key.Diameter)} mm ({why}) at {Places(g.Select(d => d.Centre))}.";
        });

    private static IEnumerable<string> NotReached(CutPlan plan)
    {
        var left = plan.Troubles.Where(t => t.Kind == CutTroubleKind.NotReached).ToList();
        if (left.Count == 0) yield break;
        yield return $"Inside corners keep a radius of {Short(plan.Kerf / 2)} mm, {left.Count} {Many(left.Count, "place", "places")}, "
            + $"metal up to {Short(left.Max(t => t.Size))} mm deep, at {Places(left.OrderByDescending(t => t.Size).Select(t => t.At))}.";
    }

    // From the lower left of nothing but the drawing's own origin, as the file has them.
    private static string Places(IEnumerable<Point> points)
    {
        var all = points.ToList();
        var shown = string.Join(", ", all.Take(MostPlaces).Select(p => string.Create(CultureInfo.InvariantCulture, $"({p.X + 0.0:0.0}, {p.Y + 0.0:0.0})")));
        return all.Count > MostPlaces ? $"{shown} and {all.Count - MostPlaces} more" : shown;
    }

    private static string Many(int count, string one, string many) => count == 1 ? one : many;

    private static string Waste(CutPlan plan) => plan.Cutter.PartOn == Side.Left ? "right" : "left";
}
