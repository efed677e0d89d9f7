using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>papers.yaml</c>: the sheets that the shop's printer takes.</summary>
internal static class PaperTable
{
    private const double WidestMargin = 30;

    public static ImmutableArray<(Place Place, Paper Paper)> Read(Fields table, ICollection<Complaint> complaints)
    {
        var papers = ImmutableArray.CreateBuilder<(Place, Paper)>();
        foreach (var (name, paper) in ShopFields.Entries(table, "papers", "paper", complaints))
        {
            var width = ShopFields.Length(paper, "width", PaperWords.LeastSide, PaperWords.MostWidth, complaints);
            var height = ShopFields.Length(paper, "height", PaperWords.LeastSide, PaperWords.MostHeight, complaints);
            var margins = MarginsOf(paper, "margin", complaints);
            if (width > height) complaints.Add(Wordings.PaperOnItsSide(name.Place, name.Text));
            papers.Add((name.Place, new(name.Text, width, height, margins)));
            paper.OptionalText("source", out _); // for whoever reads the table; standard sheets have theirs at its head
            paper.Done();
        }
        table.Done();
        return papers.ToImmutable();
    }

    /// <summary>One margin for all four edges, or one for each: <c>{left: 5 mm, right: 5 mm, top: 4 mm, bottom: 12 mm}</c>.</summary>
    public static Margins MarginsOf(Fields fields, string key, ICollection<Complaint> complaints)
    {
        if (!fields.Optional(key, out var node) || node is not MappingNode)
            return Margins.Alike(ShopFields.Length(fields, key, least: 0, WidestMargin, complaints));
        if (!Fields.TryOpen(node, $"The {key}", complaints, out var edges)) return default;
        var margins = new Margins(Edge("left"), Edge("right"), Edge("top"), Edge("bottom"));
        edges.Done();
        return margins;

        double Edge(string edge) => ShopFields.Length(edges, edge, least: 0, WidestMargin, complaints);
    }
}
