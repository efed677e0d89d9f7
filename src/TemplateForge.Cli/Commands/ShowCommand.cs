using System.CommandLine;
using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Cli.Commands;

/// <summary>Shows what a profile makes and what it asks for.</summary>
internal static class ShowCommand
{
    public const string Name = "show";

    public static Command Create(Terminal terminal)
    {
        var named = new Argument<string>("profile") { Description = "Its name in the library, or a .yaml file." };
        var (shop, json) = (CommonOptions.Shop(), CommonOptions.Json());
        var csv = new Option<bool>("--csv") { Description = "Print the headings of a table of values for make --from, and nothing else." };
        var command = new Command(Name, "Show what a profile makes and the values that it asks for.") { named, shop, csv, json };
        command.SetAction(parsed =>
        {
            var line = new CommandLine(parsed.Tokens.Select(t => t.Value).ToList(), [shop.Name]);
            return Run(parsed.GetRequiredValue(named), line, line.Single(shop.Name), parsed.GetValue(csv), parsed.GetValue(json), terminal);
        });
        return command;
    }

    private static int Run(string named, CommandLine line, Choice shop, bool asTable, bool asJson, Terminal terminal)
    {
        var complaints = new List<Complaint>();
        if (!Bench.TryOpen(terminal, shop, complaints, out var bench)
            || !bench.TryFind(terminal, named, line.PlaceOf(named), complaints, out var file)
            || !Profile.TryRead(file, bench.Shop, complaints, out var profile))
        {
            return ComplaintPrinter.Refuse(complaints, asJson, terminal);
        }
        if (asTable)
        {
            terminal.Output.WriteLine(string.Join(',', Batch.HeadingsFor(profile)));
            return ExitCode.Done;
        }
        var report = ProfileReport.Of(profile);
        if (asJson) Reports.Print(report, ReportText.Default.ProfileReport, terminal);
        else ProfilePrinter.Print(report, terminal);
        return ExitCode.Done;
    }
}
