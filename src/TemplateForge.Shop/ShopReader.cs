using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads a shop's tables; every complaint about them comes at once.</summary>
public static class ShopReader
{
    private const string Papers = "papers.yaml";
    private const string Cautions = "cautions.yaml";
    private const string Habits = "habits.yaml";
    private const string Materials = "materials.yaml";
    private const string Machines = "machines.yaml";

    /// <summary>The files that make up a shop's tables.</summary>
    public static ImmutableArray<string> FileNames => [Papers, Cautions, Habits, Materials, Machines];

    /// <summary>Whether a shop may do without a table: then it has no materials, or no machines.</summary>
    /// <param name="name">One of <see cref="FileNames"/>.</param>
    public static bool IsOptional(string name) => name is Materials or Machines;

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
        var materials = Has(files, Materials) && Table(files, Materials, complaints, out var metals) ? MaterialTable.Read(metals, complaints) : [];
        var brakes = Has(files, Machines) && Table(files, Machines, complaints, out var machines) ? MachineTable.Brakes(machines, complaints) : [];
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
            Materials = materials.ToImmutableDictionary(m => m.Name, StringComparer.Ordinal),
            Brakes = brakes,
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

    private static bool Has(ImmutableArray<TextFile> files, string name) => files.Any(f => f.Name.Split('/')[^1] == name);

    private static bool Table(ImmutableArray<TextFile> files, string name, ICollection<Complaint> complaints, out Fields fields)
    {
        var file = files.FirstOrDefault(f => f.Name.Split('/')[^1] == name) ?? new(name, "");
        fields = new(new(new(file.Name, 1, 1), []), "The table", complaints);
        return YamlReader.TryRead(file.Name, file.Text, complaints, out var root)
            && Fields.TryOpen(root, "The table", complaints, out fields);
    }

    private static class MaterialTable
    {
        private static readonly ImmutableArray<string> Families = ["steel", "stainless steel", "aluminium", "other"];

        public static List<Material> Read(Fields table, ICollection<Complaint> complaints)
        {
            var materials = new List<Material>();
            foreach (var (name, node) in Values.Named(table, "materials"))
            {
                if (!Fields.TryOpen(node, $"The material {name.Text}", complaints, out var material)) continue;
                material.RequiredText("title", out var title);
                var family = material.RequiredText("family", out var word) ? Families.IndexOf(word.Text) : 0;
                if (family < 0) complaints.Add(Wordings.UnknownFamily(word.Place, word.Text, Families));
                materials.Add(new(
                    name.Text,
                    title.Text.Trim(),
                    (MetalFamily)Math.Max(0, family),
                    Values.Number(material, "density", least: 1000, most: 12_000, complaints),
                    Values.Number(material, "least_inside_radius", least: 0, most: 20, complaints),
                    Values.Number(material, "k_factor", least: 0, most: 0.5, complaints),
                    Values.Number(material, "stretch_limit", least: 0.01, most: 1, complaints),
                    Values.Truth(material, "zinc", complaints)));
                material.RequiredText("source", out _); // for whoever reads the table
                material.Done();
            }
            table.Done();
            return materials;
        }
    }

    private static class MachineTable
    {
        public static ImmutableArray<Brake> Brakes(Fields table, ICollection<Complaint> complaints)
        {
            var brakes = ImmutableArray.CreateBuilder<Brake>();
            foreach (var (name, node) in Values.Named(table, "brakes"))
            {
                if (!Fields.TryOpen(node, $"The brake {name.Text}", complaints, out var brake)) continue;
                brake.RequiredText("title", out var title);
                brakes.Add(new(
                    title.Text.Trim(),
                    Values.Length(brake, "length", least: 50, most: 10_000, complaints),
                    Values.Length(brake, "table_depth", least: 1, most: 1000, complaints),
                    Values.Length(brake, "leaf_width", least: 1, most: 1000, complaints),
                    Values.Length(brake, "nose_depth", least: 1, most: 1000, complaints),
                    Values.Length(brake, "nose_height", least: 1, most: 1000, complaints),
                    Angle.FromDegrees(Values.Angle(brake, "nose_angle", least: 10, most: 80, complaints))));
                brake.RequiredText("source", out _); // for whoever reads the table
                brake.Done();
            }
            table.Done();
            return brakes.ToImmutable();
        }
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

        public static double Length(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
            Of(fields, key, Unit.Millimetre, Quantity.Length(least), Quantity.Length(most), complaints);

        public static double Number(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
            Of(fields, key, Unit.None, Quantity.Number(least), Quantity.Number(most), complaints);

        /// <summary>In degrees.</summary>
        public static double Angle(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
            Of(fields, key, Unit.Degree, Quantity.Angle(least), Quantity.Angle(most), complaints);

        public static bool Truth(Fields fields, string key, ICollection<Complaint> complaints)
        {
            if (!fields.RequiredText(key, out var text)) return false;
            if (text.Text is not ("yes" or "no")) complaints.Add(Wordings.YesOrNoWanted(text.Place, key, text.Text));
            return text.Text == "yes";
        }

        private static double Of(Fields fields, string key, Unit unit, Quantity least, Quantity most, ICollection<Complaint> complaints)
        {
            if (!fields.RequiredText(key, out var text)
                || !QuantityReader.TryRead(text.Writing, unit, complaints, out var value, key)) return least.Value;
            if (value.Value >= least.Value && value.Value <= most.Value) return value.Value;
            complaints.Add(Wordings.OutOfRange(text.Place, key, value, least, most));
            return least.Value;
        }
    }
}
