using System.Collections.Immutable;
using System.CommandLine;
using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli.Commands;

/// <summary>Tells the author of a profile whether it is sound.</summary>
internal static class CheckProfileCommand
{
    public const string Name = "check-profile";

    public static Command Create(Terminal terminal, CancellationToken cancellation)
    {
        var files = new Argument<string[]>("file") { Description = "A profile's .yaml file.", Arity = ArgumentArity.OneOrMore };
        var (shop, json) = (CommonOptions.Shop(), CommonOptions.Json());
        var command = new Command(Name, "Read profiles, try every choice in them, and tell all that is wrong.") { files, shop, json };
        command.SetAction(parsed =>
        {
            var line = new CommandLine(parsed.Tokens.Select(t => t.Value).ToList(), [shop.Name]);
            return Run([.. parsed.GetRequiredValue(files)], line, line.Single(shop.Name), parsed.GetValue(json), terminal, cancellation);
        });
        return command;
    }

    private static int Run(
        ImmutableArray<string> files, CommandLine line, Choice shop, bool asJson, Terminal terminal, CancellationToken cancellation)
    {
        var complaints = new List<Complaint>();
        if (!Bench.TryOpen(terminal, shop, complaints, out var bench)) return ComplaintPrinter.Refuse(complaints, asJson, terminal);

        var isSound = new List<CheckedFile>();
        foreach (var named in files)
        {
            var found = new List<Complaint>();
            if (Bench.TryReadFile(terminal, named, line.PlaceOf(named), found, out var file))
                Waiting.For(() => ProfileCheck.TryCheck(file, bench.Shop, found, cancellation, out _), $"Trying every choice in {named}", terminal);
            isSound.Add(new(named, found.Count == 0));
            complaints.AddRange(found);
        }
        var report = new CheckReport([.. isSound], Reports.Of(complaints));
        if (asJson) Reports.Print(report, ReportText.Default.CheckReport, terminal);
        else foreach (var file in isSound.Where(f => f.IsSound)) terminal.Output.WriteLine($"{Wordings.Plain(file.File)}: sound");
        ComplaintPrinter.Print(complaints, terminal);
        return complaints.Count == 0 ? ExitCode.Done : ExitCode.Refused;
    }
}
