using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using TemplateForge.Fabrication;
using TemplateForge.Jobs;
using TemplateForge.Profiles;

namespace TemplateForge.Cli.Commands;

/// <summary>Help that ends with commands to copy, made from what the library holds.</summary>
internal sealed class HelpWithExamples(HelpAction help, Terminal terminal) : SynchronousCommandLineAction
{
    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var code = help.Invoke(parseResult);
        terminal.Output.WriteLine("Examples:");
        foreach (var example in Examples(parseResult.CommandResult.Command.Name)) terminal.Output.WriteLine($"  {RootCommand.ExecutableName} {example}");
        return code;
    }

    private IEnumerable<string> Examples(string command)
    {
        var (profile, setting) = FromTheLibrary();
        return command switch
        {
            ListCommand.Name => [ListCommand.Name, $"{ListCommand.Name} {profile.Split('-')[0]}", $"{ListCommand.Name} --json"],
            ShowCommand.Name => [$"{ShowCommand.Name} {profile}", $"{ShowCommand.Name} my-profile.yaml", $"{ShowCommand.Name} {profile} --csv > values.csv"],
            MakeCommand.Name =>
            [
                $"{MakeCommand.Name} {profile}",
                $"{MakeCommand.Name} {profile} --set {setting} --paper a3",
                $"{MakeCommand.Name} {profile} --set {setting} --out jobs/next --replace",
                $"{MakeCommand.Name} {profile} --from values.csv --out jobs",
                $"{MakeCommand.Name} --job out/{profile}/job.json --out again",
            ],
            CheckProfileCommand.Name => [$"{CheckProfileCommand.Name} my-profile.yaml", $"{CheckProfileCommand.Name} family/*.yaml --json"],
            CheckDxfCommand.Name => [$"{CheckDxfCommand.Name} part.dxf", $"{CheckDxfCommand.Name} part.dxf --layer CUT", $"{CheckDxfCommand.Name} part.dxf --unit in --repair part-for-the-table.dxf"],
            CouponCommand.Name =>
            [
                $"{CouponCommand.Name} office-laser --paper a3",
                $"{CouponCommand.Name} office-laser --paper a3 {CouponCommand.LengthsFor("a3", terminal)} --shop my-shop",
            ],
            CompletionCommand.Name => [$"{CompletionCommand.Name} bash", $"{CompletionCommand.Name} powershell"],
            _ => [ListCommand.Name, $"{ShowCommand.Name} {profile}", $"{MakeCommand.Name} {profile} --set {setting}"],
        };
    }

    // Words that stand for themselves where there is no library to take some from.
    private (string Profile, string Setting) FromTheLibrary()
    {
        var (profile, setting) = ("PROFILE", "NAME=VALUE");
        if (!Bench.TryOpen(terminal, Choice.Open, [], out var bench) || bench.Library.Entries.IsEmpty) return (profile, setting);
        var entry = bench.Library.Entries[0];
        if (!Profile.TryRead(entry.File, bench.Shop, [], out var read)) return (entry.Name, setting);
        var measured = read.Parameters.FirstOrDefault(p => p.Source == ValueSource.Measured && p.Unit.Length > 0);
        return (entry.Name, measured is null ? setting : $"{measured.Name}=\"{measured.Default}\"");
    }
}
