using System.CommandLine;

namespace TemplateForge.Cli.Commands;

/// <summary>What a shell asks when somebody presses the tab key: the words that may come next, one a line.</summary>
internal static class SuggestCommand
{
    public const string Name = "suggest";

    public static Command Create(RootCommand root, Terminal terminal)
    {
        var line = new Argument<string>("line") { Description = "The line up to the cursor, the program's name first." };
        var command = new Command(Name, "Say what may come next on a line; for the scripts that completion prints.") { line };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            foreach (var word in new Suggestions(root, terminal).For(parsed.GetRequiredValue(line))) terminal.Output.WriteLine(word);
            return ExitCode.Done;
        });
        return command;
    }
}
