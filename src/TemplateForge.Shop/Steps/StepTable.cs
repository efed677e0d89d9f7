using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>steps.yaml</c>: what a shop does the same way in many profiles, as re-coating after a weld.</summary>
internal static class StepTable
{
    public static ImmutableDictionary<string, ShopStep> Read(
        Fields table, ImmutableDictionary<string, Caution> cautions, ICollection<Complaint> complaints)
    {
        var steps = ImmutableDictionary.CreateBuilder<string, ShopStep>(StringComparer.Ordinal);
        foreach (var (name, step) in ShopFields.Entries(table, "steps", "step", complaints))
        {
            steps[name.Text] = new(ShopFields.Words(step, "text"), ReadCautions(step, cautions, complaints));
            step.RequiredText("source", out _); // for whoever reads the table; the outputs do not quote it
            step.Done();
        }
        table.Done();
        return steps.ToImmutable();
    }

    private static ImmutableArray<string> ReadCautions(Fields step, ImmutableDictionary<string, Caution> cautions, ICollection<Complaint> complaints)
    {
        if (!step.Optional("caution", out var node)) return [];
        var names = ImmutableArray.CreateBuilder<string>();
        foreach (var item in node is SequenceNode list ? list.Items : [node])
        {
            if (!item.TryText("`caution`", complaints, out var name)) continue;
            if (cautions.ContainsKey(name.Text)) names.Add(name.Text);
            else complaints.Add(Wordings.UnknownCaution(name.Place, name.Text, cautions.Keys));
        }
        return names.ToImmutable();
    }
}
