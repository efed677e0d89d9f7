using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli.Commands;

/// <summary>Makes a modification's files, from a profile or from the record of a job.</summary>
internal sealed class MakeCommand
{
    public const string Name = "make";

    private static readonly Option<string[]> Set = new("--set") { Description = "A value: name=190, name=\"7 1/2 in\". Give it as often as needed.", HelpName = "name=value" };
    private static readonly Option<string> Hand = new("--hand") { Description = "The hand to make; without it, the one that the profile is drawn for.", HelpName = "left|right|both" };
    private static readonly Option<string> MeasuredOn = new("--measured-on") { Description = "The hand on which the values were measured; without it, the one that the profile is drawn for.", HelpName = "left|right" };
    private static readonly Option<string> Paper = new("--paper") { Description = "The paper in the printer: a4, a3, letter and what else the shop's table has.", HelpName = "name" };
    private static readonly Option<string> JobFile = new("--job") { Description = "Make a job again from its job.json, whatever the library says by now.", HelpName = "file" };
    private static readonly Option<string> Out = new("--out") { Description = "The job's folder; without it, out/ and the profile's name.", HelpName = "dir" };
    private static readonly Option<bool> Replace = new("--replace") { Description = "Let another job in that folder go." };
    private static readonly Argument<string> Named = new("profile") { Description = "Its name in the library, or a .yaml file.", Arity = ArgumentArity.ZeroOrOne };

    private static readonly Option[] Valued = [Set, Hand, MeasuredOn, Paper, JobFile, Out];

    private readonly Terminal terminal;
    private readonly CancellationToken cancellation;
    private readonly ParseResult parsed;
    private readonly CommandLine line;
    private readonly bool asJson;
    private readonly List<Complaint> complaints = [];

    private MakeCommand(ParseResult parsed, bool asJson, Terminal terminal, CancellationToken cancellation)
    {
        (this.parsed, this.asJson, this.terminal, this.cancellation) = (parsed, asJson, terminal, cancellation);
        line = new([.. parsed.Tokens.Select(t => t.Value)], [.. Valued.Select(o => o.Name)]);
    }

    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var json = CommonOptions.Json();
        var command = new Command(Name, "Make the template, the cut files, the pictures, the job sheet and the record of a job.")
        {
            Named, Set, Hand, MeasuredOn, Paper, JobFile, Out, Replace, json,
        };
        command.SetAction(parsed => new MakeCommand(parsed, parsed.GetValue(json), terminal, cancellation).Run());
        return command;
    }

    private int Run()
    {
        var named = parsed.GetValue(Named) ?? "";
        var job = line.Single(JobFile.Name);
        if (named.Length > 0 == job.IsMade) return NotUnderstood(Wordings.ProfileOrJob(CommandLine.Start));
        return job.IsMade ? MakeAgain(job) : Make(named);
    }

    private int Make(string named)
    {
        if (!TryRequest(named, out var request)) return Refuse();
        // Even where a setting could not be read, so that what is wrong with the others is told as well.
        if (!JobPlan.TryMake(request, complaints, out var plan) || complaints.Count > 0) return Refuse();
        return Save(Drawn(plan), Remade.No);
    }

    private int MakeAgain(Choice job)
    {
        foreach (var option in (Option[])[Set, Hand, MeasuredOn, Paper])
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

    private bool TryRequest(string named, [MaybeNullWhen(false)] out JobRequest request)
    {
        request = null;
        var settings = line.Settings(Set.Name, complaints);
        if (!Bench.TryOpen(terminal, complaints, out var bench) || !bench.TryFind(terminal, named, line.PlaceOf(named), complaints, out var profile)) return false;
        request = new()
        {
            Profile = profile,
            ShopFiles = bench.Library.ShopFiles,
            Settings = settings,
            Hand = line.Single(Hand.Name),
            MeasuredOn = line.Single(MeasuredOn.Name),
            Paper = line.Single(Paper.Name),
        };
        return true;
    }

    private JobSet Drawn(JobPlan plan) => Waiting.For(() => plan.Drawn(cancellation), $"Drawing {plan.Profile.Name}", terminal);

    private int Save(JobSet set, Remade remade)
    {
        var given = line.Single(Out.Name);
        var folder = given.IsMade ? given.Word : System.IO.Path.Combine("out", set.Profile.Name);
        var place = given.IsMade ? given.Place : CommandLine.Start;
        if (!JobFolder.TrySave(terminal.PathOf(folder), set.Files, parsed.GetValue(Replace), place, complaints, cancellation)) return Refuse();

        var report = MakeReport.Of(set, folder, remade);
        if (asJson) Reports.Print(report, ReportText.Default.MakeReport, terminal);
        else MakePrinter.Print(report, terminal);
        if (remade == Remade.Otherwise) terminal.Errors.WriteLine(MakePrinter.MadeOtherwise);
        return ExitCode.Done;
    }

    private int Refuse() => ComplaintPrinter.Refuse(complaints, asJson, terminal);

    private int NotUnderstood(Complaint complaint)
    {
        ComplaintPrinter.Refuse([complaint], asJson, terminal);
        return ExitCode.NotUnderstood;
    }
}
