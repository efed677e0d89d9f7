using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads a shop's tables; every complaint about them comes at once.</summary>
public static class ShopReader
{
    private const string Papers = "papers.yaml";
    private const string Cautions = "cautions.yaml";
    private const string Habits = "habits.yaml";

    /// <summary>The files that make up a shop's tables.</summary>
    public static ImmutableArray<string> FileNames => [Papers, Cautions, Habits];

    /// <summary>Reads the tables.</summary>
    /// <param name="files">Each of <see cref="FileNames"/>, by the last part of its name.</param>
    /// <param name="complaints">Where complaints go.</param>
    /// <param name="shop">The tables as plain values.</param>
    public static bool TryRead(ImmutableArray<TextFile> files, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out ShopTables shop)
    {
        shop = null;
        var before = complaints.Count;
        var papers = Table(files, Papers, complaints, out var paperFile) ? PaperTable.Read(paperFile, complaints) : [];
        var cautions = Table(files, Cautions, complaints, out var cautionFile) ? CautionTable.Read(cautionFile, complaints) : [];
        if (!Table(files, Habits, complaints, out var habits)) return false;

        var name = habits.RequiredText("shop", out var shopName) ? shopName.Text : "";
        var overlap = Values.Length(habits, "overlap", least: 5, most: 30, complaints);
        habits.RequiredText("paper", out var usual);
        var usualPaper = papers.FirstOrDefault(p => p.Name == usual.Text);
        if (usualPaper is null) complaints.Add(Wordings.UnknownPaper(usual.Place, usual.Text, papers.Select(p => p.Name)));
        habits.Done();
        if (complaints.Count == before) CheckRoom(papers, overlap, files, complaints);
        if (complaints.Count > before || usualPaper is null) return false;

        shop = new ShopTables
        {
            Name = name,
            Papers = papers,
            UsualPaper = usualPaper,
            Overlap = overlap,
            Cautions = cautions.ToImmutableDictionary(StringComparer.Ordinal),
        };
        return true;
    }

    // A paper on which the drawing would have no room is told here, where somebody can put it right.
    private static void CheckRoom(ImmutableArray<Paper> papers, double overlap, ImmutableArray<TextFile> files, ICollection<Complaint> complaints)
    {
        var layout = new PageLayout(PageLayout.Usual.SideStrip, PageLayout.Usual.FootStrip, overlap);
        var file = files.First(f => f.Name.EndsWith(Papers, StringComparison.Ordinal)).Name;
        foreach (var paper in papers.Where(p => !Tiling.HasRoom(p, layout))) complaints.Add(Wordings.PaperWithoutRoom(new(file, 1, 1), paper, overlap));
    }

    private static bool Table(ImmutableArray<TextFile> files, string name, ICollection<Complaint> complaints, out Fields fields)
    {
        var file = files.FirstOrDefault(f => f.Name.Split('/')[^1] == name) ?? new(name, "");
        fields = new(new(new(file.Name, 1, 1), []), "The table", complaints);
        return YamlReader.TryRead(file.Name, file.Text, complaints, out var root)
            && Fields.TryOpen(root, "The table", complaints, out fields);
    }

    private static class PaperTable
    {
        public static ImmutableArray<Paper> Read(Fields table, ICollection<Complaint> complaints)
        {
            var papers = ImmutableArray.CreateBuilder<Paper>();
            foreach (var (name, node) in Values.Named(table, "papers"))
            {
                if (!Fields.TryOpen(node, $"The paper {name.Text}", complaints, out var paper)) continue;
                var width = Values.Length(paper, "width", least: 140, most: 2000, complaints);
                var height = Values.Length(paper, "height", least: 140, most: 5000, complaints);
                var margin = Values.Length(paper, "margin", least: 0, most: 30, complaints);
                if (width > height) complaints.Add(Wordings.PaperOnItsSide(name.Place, name.Text));
                papers.Add(new(name.Text, width, height, margin));
                paper.Done();
            }
            table.Done();
            return papers.ToImmutable();
        }
    }

    private static class CautionTable
    {
        public static List<KeyValuePair<string, Caution>> Read(Fields table, ICollection<Complaint> complaints)
        {
            var cautions = new List<KeyValuePair<string, Caution>>();
            foreach (var (name, node) in Values.Named(table, "cautions"))
            {
                if (!Fields.TryOpen(node, $"The caution {name.Text}", complaints, out var caution)) continue;
                caution.RequiredText("title", out var title);
                caution.RequiredText("text", out var text);
                caution.RequiredText("source", out _); // for whoever reads the table; the outputs do not quote it
                cautions.Add(new(name.Text, new(title.Text.Trim(), text.Text.Trim())));
                caution.Done();
            }
            table.Done();
            return cautions;
        }
    }

    private static class Values
    {
        public static ImmutableArray<(ScalarNode Key, Node Value)> Named(Fields table, string key) =>
            table.RequiredGroup(key, out var group) ? group.Entries : [];

        public static double Length(Fields fields, string key, double least, double most, ICollection<Complaint> complaints)
        {
            if (!fields.RequiredText(key, out var text)
                || !QuantityReader.TryRead(text.Writing, Unit.Millimetre, complaints, out var length, key)) return least;
            if (length.Value >= least && length.Value <= most) return length.Value;
            complaints.Add(Wordings.OutOfRange(text.Place, key, length, Quantity.Length(least), Quantity.Length(most)));
            return least;
        }
    }
}
