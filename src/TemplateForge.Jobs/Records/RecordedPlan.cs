using System.Collections.Immutable;
using System.Text.Json.Serialization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Jobs;

/// <summary>How a machine cuts a piece, as it stands in the record.</summary>
/// <param name="Kerf">Width of the slot that was allowed for, in mm; 0 where the controller does.</param>
/// <param name="KerfFrom">given, table or controller.</param>
/// <param name="PartOn">left or right of the torch as it travels.</param>
/// <param name="Pierces">How often the torch is lit in metal.</param>
/// <param name="Moves">Length of the moves between cuts, in mm.</param>
/// <param name="MovesAtLeast">What they cannot be shorter than.</param>
/// <param name="Minutes">How long the cutting takes; absent where the shop has not said how fast it cuts.</param>
/// <param name="Cuts">In their order.</param>
/// <param name="Drilled">Holes that are drilled and not cut.</param>
/// <param name="NotCut">Places where what is drawn is not cut, or not wholly.</param>
internal sealed record RecordedPlan(
    double Kerf,
    string KerfFrom,
    string PartOn,
    int Pierces,
    double Moves,
    double MovesAtLeast,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Minutes,
    ImmutableArray<RecordedTorch> Cuts,
    ImmutableArray<RecordedDrill> Drilled,
    ImmutableArray<RecordedTrouble> NotCut)
{
    public static RecordedPlan Of(CutPlan plan) => new(
        Rounded(plan.Kerf),
        plan.Cutter.Compensates ? "controller" : plan.KerfIsGiven ? "given" : "table",
        plan.Cutter.PartOn == Side.Left ? "left" : "right",
        plan.Pierces,
        Rounded(plan.RapidLength),
        Rounded(plan.RapidBound),
        plan.TryTime(out var minutes) ? Rounded(minutes) : null,
        [.. plan.Cuts.Select(c => new RecordedTorch(
            c.Role switch { CutRole.Hole => "hole", CutRole.Outline => "outline", _ => "open" },
            c.Pierces,
            Rounded(c.Length),
            Recorded(c.Path.Start),
            Recorded(c.Path.End)))],
        [.. plan.Drilled.Select(d => new RecordedDrill(Recorded(d.Centre), Rounded(d.Diameter)))],
        [.. plan.Troubles.Select(t => new RecordedTrouble(t.Kind.ToString(), Recorded(t.At), Rounded(t.Size)))]);

    private static Numbers Recorded(Point point) => new(Rounded(point.X), Rounded(point.Y));

    // Adding nothing turns a negative zero into zero.
    private static double Rounded(double number) => Math.Round(number, 8) + 0.0;
}

/// <param name="Makes">hole, outline or open.</param>
/// <param name="Pierces">Whether the torch is lit in metal.</param>
/// <param name="Length">In mm, leads and run-outs included.</param>
/// <param name="From">Where it is lit.</param>
/// <param name="To">Where it goes out.</param>
internal sealed record RecordedTorch(string Makes, bool Pierces, double Length, Numbers From, Numbers To);

internal sealed record RecordedDrill(Numbers Centre, double Diameter);

internal sealed record RecordedTrouble(string What, Numbers At, double Size);
