using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads <c>papers.yaml</c>: the sheets that the shop's printer takes.</summary>
internal static class PaperTable
{
    public static ImmutableArray<(Place Place, Paper Paper)> Read(Fields table, ICollection<Complaint> complaints)
    {
        var papers = ImmutableArray.CreateBuilder<(Place, Paper)>();
        foreach (var (name, paper) in ShopFields.Entries(table, "papers", "paper", complaints))
        {
            var width = ShopFields.Length(paper, "width", least: 140, most: 2000, complaints);
            var height = ShopFields.Length(paper, "height", least: 140, most: 5000, complaints);
            var margin = ShopFields.Length(paper, "margin", least: 0, most: 30, complaints);
            if (width > height) complaints.Add(Wordings.PaperOnItsSide(name.Place, name.Text));
            papers.Add((name.Place, new(name.Text, width, height, margin)));
            paper.Done();
        }
        table.Done();
        return papers.ToImmutable();
    }
}
