using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>cautions.yaml</c>: what the outputs say where work can hurt someone.</summary>
internal static class CautionTable
{
    public static ImmutableDictionary<string, Caution> Read(Fields table, ICollection<Complaint> complaints)
    {
        var cautions = ImmutableDictionary.CreateBuilder<string, Caution>(StringComparer.Ordinal);
        foreach (var (name, caution) in ShopFields.Entries(table, "cautions", "caution", complaints))
        {
            cautions[name.Text] = new(ShopFields.Words(caution, "title"), ShopFields.Words(caution, "text"));
            caution.RequiredText("source", out _); // for whoever reads the table; the outputs do not quote it
            caution.Done();
        }
        table.Done();
        return cautions.ToImmutable();
    }
}
