using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Cli.Commands;

/// <summary>Makes a modification's files, from a profile or from the record of a job.</summary>
internal sealed class MakeCommand
{
    public const string Name = "make";

    private readonly MakeOptions options;
    private readonly Terminal terminal;
    private readonly CancellationToken cancellation;
    private readonly ParseResult parsed;
    private readonly CommandLine line;
    private readonly List<Complaint> complaints = [];

    private MakeCommand(MakeOptions options, ParseResult parsed, Terminal terminal, CancellationToken cancellation)
    {
        (this.options, this.parsed, this.terminal, this.cancellation) = (options, parsed, terminal, cancellation);
        line = new([.. parsed.Tokens.Select(t => t.Value)], [.. options.Valued.Select(o => o.Name)]);
    }

    private bool AsJson => parsed.GetValue(options.Json);

    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var words = new MakeOptions();
        var command = new Command(Name, "Make the template, the cut files, the pictures, the job sheet and the record of a job.") { words.Named };
        foreach (var option in (IEnumerable<Option>)[.. words.Valued, words.Replace, words.Json]) command.Add(option);
        command.SetAction(parsed => new MakeCommand(words, parsed, terminal, cancellation).Run());
        return command;
    }

    private int Run()
    {
        var named = parsed.GetValue(options.Named) ?? "";
        var job = line.Single(options.JobFile.Name);
        if (named.Length > 0 == job.IsMade) return NotUnderstood(Wordings.ProfileOrJob(CommandLine.Start));
        if (job.IsMade) return MakeAgain(job);
        return line.Single(options.From.Name) is { IsMade: true } table ? MakeMany(named, table) : Make(named);
    }

    private int Make(string named)
    {
        if (!TryRequest(named, out var request, out var shop)) return Refuse();
        // Even where a setting could not be read, so that what is wrong with the others is told as well.
        if (!JobPlan.TryMake(request, shop, complaints, out var plan) || complaints.Count > 0) return Refuse();
        return Save(Drawn(plan), Remade.No);
    }

    private int MakeMany(string named, Choice table)
    {
        // Even where a setting could not be read, so that what is wrong in the table is told as well.
        if (!TryRequest(named, out var request, out _)) return Refuse();
        return new BatchRun(table, request, terminal, cancellation).Run(line.Single(options.Out.Name), parsed.GetValue(options.Replace), AsJson, complaints);
    }

    private int MakeAgain(Choice job)
    {
        foreach (var option in (Option[])[options.Set, options.Hand, options.MeasuredOn, .. options.Printing, options.Cutter, options.Kerf, options.Dxf, options.Shop, options.From])
            if (line.Single(option.Name) is { IsMade: true } given) complaints.Add(Wordings.NotWithJob(given.Place, option.Name));
        if (complaints.Count > 0)
        {
            Refuse();
            return ExitCode.NotUnderstood;
        }
        if (!TextFiles.TryRead(terminal.PathOf(job.Word), JobRecord.LongestText, job.Place, complaints, out var file)) return Refuse();
        if (!JobRecord.TryRead(file with { Name = job.Word }, complaints, out var record)) return Refuse();
        if (!JobPlan.TryMake(record.Request, complaints, out var plan)) return Refuse();
        var set = Drawn(plan);
        return Save(set, set.HasRecord(file) ? Remade.Alike : Remade.Otherwise);
    }

    private bool TryRequest(string named, [MaybeNullWhen(false)] out JobRequest request, [MaybeNullWhen(false)] out ShopTables shop)
    {
        (request, shop) = (null, null);
        var settings = line.Settings(options.Set.Name, complaints);
        if (!Bench.TryOpen(terminal, line.Single(options.Shop.Name), complaints, out var bench)) return false;
        if (!bench.TryFind(terminal, named, line.PlaceOf(named), complaints, out var profile)) return false;
        shop = bench.Shop;
        request = new()
        {
            Profile = profile,
            ShopFiles = bench.ShopFiles,
            Settings = settings,
            Hand = line.Single(options.Hand.Name),
            MeasuredOn = line.Single(options.MeasuredOn.Name),
            Paper = line.Single(options.Paper.Name),
            Overlap = line.Single(options.Overlap.Name),
            Printer = line.Single(options.Printer.Name),
            Turn = line.Single(options.Turn.Name),
            Line = line.Single(options.Line.Name),
            Cutter = line.Single(options.Cutter.Name),
            Kerf = line.Single(options.Kerf.Name),
            Dxf = line.Single(options.Dxf.Name),
        };
        return true;
    }

    private JobSet Drawn(JobPlan plan) => Waiting.For(() => plan.Drawn(onAllCores: true, cancellation), $"Drawing {plan.Profile.Name}", terminal);

    private int Save(JobSet set, Remade remade)
    {
        var given = line.Single(options.Out.Name);
        var folder = given.IsMade ? given.Word : System.IO.Path.Combine("out", set.Profile.Name);
        var place = given.IsMade ? given.Place : CommandLine.Start;
        if (!JobFolder.TrySave(terminal.PathOf(folder), set.Files, parsed.GetValue(options.Replace), place, complaints, cancellation)) return Refuse();

        var report = MakeReport.Of(set, folder, remade);
        if (AsJson) Reports.Print(report, ReportText.Default.MakeReport, terminal);
        else MakePrinter.Print(report, terminal);
        if (remade == Remade.Otherwise) terminal.Errors.WriteLine(MakePrinter.MadeOtherwise);
        return ExitCode.Done;
    }

    private int Refuse() => ComplaintPrinter.Refuse(complaints, AsJson, terminal);

    private int NotUnderstood(Complaint complaint)
    {
        ComplaintPrinter.Refuse([complaint], AsJson, terminal);
        return ExitCode.NotUnderstood;
    }
}
