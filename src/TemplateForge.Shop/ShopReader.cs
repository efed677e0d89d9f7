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
    private const string Materials = "materials.yaml";
    private const string Machines = "machines.yaml";
    private const string Processes = "processes.yaml";
    private const string Fasteners = "fasteners.yaml";
    private const string Steps = "steps.yaml";
    private const string Jigs = "jigs.yaml";
    private const string Printers = "printers.yaml";

    /// <summary>How a day is written in the tables.</summary>
    public const string Day = PrinterTable.Day;

    /// <summary>The files that make up a shop's tables.</summary>
    public static ImmutableArray<string> FileNames => [Papers, Cautions, Habits, Materials, Machines, Processes, Fasteners, Steps, Jigs, Printers];

    /// <summary>Whether a shop may do without a table: then it has no materials, machines, processes, fasteners, steps, jig plates or printers of its own.</summary>
    /// <param name="name">One of <see cref="FileNames"/>.</param>
    public static bool IsOptional(string name) => name is Materials or Machines or Processes or Fasteners or Steps or Jigs or Printers;

    /// <summary>Reads the tables.</summary>
    /// <param name="files">Each of <see cref="FileNames"/>, by the last part of its name. A table may be there more than once: entries of
    /// a later file replace those of an earlier one by their names, and come first.</param>
    /// <param name="complaints">Where complaints go.</param>
    /// <param name="shop">The tables as plain values.</param>
    public static bool TryRead(ImmutableArray<TextFile> files, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out ShopTables shop)
    {
        shop = null;
        var before = complaints.Count;
        var papers = TableFiles.TryOpen(files, Papers, complaints, out var paperFile) ? PaperTable.Read(paperFile, complaints) : [];
        var cautions = TableFiles.TryOpen(files, Cautions, complaints, out var cautionFile)
            ? CautionTable.Read(cautionFile, complaints)
            : ImmutableDictionary<string, Caution>.Empty;
        var materials = TryOptional(files, Materials, complaints, out var materialFile)
            ? MaterialTable.Read(materialFile, complaints)
            : ImmutableDictionary<string, Material>.Empty;
        var machines = TryOptional(files, Machines, complaints, out var machineFile) ? MachineTable.Read(machineFile, cautions, complaints) : MachineTable.None;
        var processes = TryOptional(files, Processes, complaints, out var processFile)
            ? ProcessTable.Read(processFile, complaints)
            : ImmutableDictionary<string, WeldingProcess>.Empty;
        var fasteners = TryOptional(files, Fasteners, complaints, out var fastenerFile) ? FastenerTable.Read(fastenerFile, complaints) : FastenerTable.None;
        var steps = TryOptional(files, Steps, complaints, out var stepFile)
            ? StepTable.Read(stepFile, cautions, complaints)
            : ImmutableDictionary<string, ShopStep>.Empty;
        var plates = TryOptional(files, Jigs, complaints, out var jigFile) ? JigTable.Read(jigFile, complaints) : ImmutableDictionary<string, PlateStock>.Empty;
        var printers = TryOptional(files, Printers, complaints, out var printerFile)
            ? PrinterTable.Read(printerFile, papers.Select(p => p.Paper), complaints)
            : ImmutableDictionary<string, Printer>.Empty;
        if (!TableFiles.TryOpen(files, Habits, complaints, out var habits)) return false;

        var name = ShopFields.Words(habits, "shop");
        var overlap = ShopFields.Length(habits, "overlap", least: 5, most: 30, complaints);
        habits.RequiredText("paper", out var usual);
        var usualPaper = papers.Select(p => p.Paper).FirstOrDefault(p => p.Name == usual.Text);
        if (usualPaper is null) complaints.Add(Wordings.UnknownPaper(usual.Place, usual.Text, papers.Select(p => p.Paper.Name)));
        var hasCutter = habits.OptionalText("cutter", out var cutter);
        if (hasCutter && !machines.Cutters.ContainsKey(cutter.Text))
            complaints.Add(Wordings.UnknownCutter(cutter.Place, cutter.Text, machines.Cutters.Keys.Order(StringComparer.Ordinal)));
        var usualDxf = DxfFormat.Usual;
        if (habits.OptionalText("dxf", out var dxf) && !DxfFormat.TryNamed(dxf.Text, out usualDxf))
            complaints.Add(Wordings.UnknownDxf(dxf.Place, dxf.Text, DxfFormat.All.Select(f => f.Name)));
        var hasPrinter = habits.OptionalText("printer", out var printer);
        if (hasPrinter && !printers.ContainsKey(printer.Text))
            complaints.Add(Wordings.UnknownPrinter(printer.Place, printer.Text, printers.Keys.Order(StringComparer.Ordinal)));
        var line = ShopFields.LengthOr(LineWidth.Usual, habits, "line", LineWidth.Least, LineWidth.Most, complaints);
        habits.Done(listsAll: true);
        if (complaints.Count == before) CheckRoom(papers, overlap, complaints);
        if (complaints.Count > before || usualPaper is null) return false;

        shop = new ShopTables
        {
            Name = name,
            Papers = [.. papers.Select(p => p.Paper)],
            UsualPaper = usualPaper,
            Overlap = overlap,
            Cautions = cautions,
            Materials = materials,
            NamedBrakes = machines.Brakes,
            Cutters = machines.Cutters,
            UsualCutter = hasCutter ? cutter.Text : "",
            UsualDxf = usualDxf!,
            Processes = processes,
            Bolts = fasteners.Bolts,
            Rivets = fasteners.Rivets,
            Steps = steps,
            JigPlates = plates,
            Printers = printers,
            UsualPrinter = hasPrinter ? printer.Text : "",
            Line = line,
        };
        return true;
    }

    private static bool TryOptional(ImmutableArray<TextFile> files, string name, ICollection<Complaint> complaints, out Fields table)
    {
        if (TableFiles.Has(files, name)) return TableFiles.TryOpen(files, name, complaints, out table);
        table = new(new(new(name, 1, 1), []), "The table", complaints);
        return false;
    }

    // A paper on which the drawing would have no room is told here, where somebody can put it right.
    private static void CheckRoom(ImmutableArray<(Place Place, Paper Paper)> papers, double overlap, ICollection<Complaint> complaints)
    {
        var layout = new PageLayout(PageLayout.Usual.SideStrip, PageLayout.Usual.FootStrip, overlap);
        foreach (var (place, paper) in papers.Where(p => !Tiling.HasRoom(p.Paper, layout)))
            complaints.Add(Wordings.PaperWithoutRoom(place, paper, overlap));
    }
}
