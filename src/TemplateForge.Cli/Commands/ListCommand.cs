using System.Collections.Immutable;
using System.CommandLine;
using TemplateForge.Cli.Printing;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Cli.Commands;

/// <summary>Lists the profiles in the library.</summary>
internal static class ListCommand
{
    public const string Name = "list";

    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("words") { Description = "Show only profiles that have all these words.", Arity = ArgumentArity.ZeroOrMore };
        var (shop, json) = (CommonOptions.Shop(), CommonOptions.Json());
        var command = new Command(Name, "List the profiles in the library.") { words, shop, json };
        command.SetAction(parsed =>
        {
            var line = new CommandLine(parsed.Tokens.Select(t => t.Value).ToList(), [shop.Name]);
            return Run([.. parsed.GetValue(words) ?? []], line.Single(shop.Name), parsed.GetValue(json), terminal);
        });
        return command;
    }

    private static int Run(ImmutableArray<string> words, Choice shop, bool asJson, Terminal terminal)
    {
        var complaints = new List<Complaint>();
        if (!Bench.TryOpen(terminal, shop, complaints, out var bench)) return ComplaintPrinter.Refuse(complaints, asJson, terminal);

        var found = Waiting.For(() => Found(bench, words, complaints), "Reading the library", terminal);
        if (found.IsEmpty && complaints.Count == 0) complaints.Add(Wordings.NothingFound(CommandLine.Start, words));
        if (found.IsEmpty) return ComplaintPrinter.Refuse(complaints, asJson, terminal);

        var report = new ListReport(found, Reports.Of(complaints));
        if (asJson) Reports.Print(report, ReportText.Default.ListReport, terminal);
        else ProfilePrinter.Print(report, terminal);
        ComplaintPrinter.Print(complaints, terminal);
        return complaints.Count == 0 ? ExitCode.Done : ExitCode.Refused;
    }

    private static ImmutableArray<ListedProfile> Found(Bench bench, ImmutableArray<string> words, List<Complaint> complaints)
    {
        var found = ImmutableArray.CreateBuilder<ListedProfile>();
        foreach (var entry in bench.Library.Entries)
        {
            if (!Profile.TryRead(entry.File, bench.Shop, complaints, out var profile)) continue;
            var text = $"{profile.Name} {entry.Family} {profile.Title} {profile.About}";
            if (words.All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)))
                found.Add(new(entry.Name, entry.Family, profile.Title, Reports.Word(profile.Hand), profile.MayBeAlike, profile.Version));
        }
        return found.ToImmutable();
    }
}
