using System.CommandLine;
using System.CommandLine.Help;
using TemplateForge.Cli.Printing;

namespace TemplateForge.Cli.Commands;

/// <summary>The commands, and what happens to words that are none.</summary>
internal static class CommandTree
{
    public static int Run(string[] args, Terminal terminal, CancellationToken cancellation)
    {
        var root = new RootCommand("Full-size templates and cut files for modifying body panels, from profiles and measured values.")
        {
            ListCommand.Create(terminal),
            ShowCommand.Create(terminal),
            MakeCommand.Create(terminal, cancellation),
            CheckProfileCommand.Create(terminal, cancellation),
            CheckDxfCommand.Create(terminal),
            CouponCommand.Create(terminal),
            CompletionCommand.Create(terminal),
        };
        root.Add(SuggestCommand.Create(root, terminal));
        // Nothing but the commands above: no words that begin with [ and steer the parser.
        root.Directives.Clear();
        foreach (var help in root.Options.OfType<HelpOption>()) help.Action = new HelpWithExamples((HelpAction)help.Action!, terminal);

        // No response files: a word that begins with @ is a word.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpWithExamples) return NotUnderstood(args, parsed, terminal);
        return parsed.Invoke(new InvocationConfiguration { Output = terminal.Output, Error = terminal.Errors, EnableDefaultExceptionHandler = false });
    }

    private static int NotUnderstood(string[] args, ParseResult parsed, Terminal terminal)
    {
        var command = parsed.CommandResult.Command;
        var line = new CommandLine(args, []);
        var known = command.Options.Select(o => o.Name).Concat(command.Subcommands.Select(c => c.Name)).ToList();
        var complaints = parsed.UnmatchedTokens.Select(word => Wordings.UnknownWord(line.PlaceOf(word), word, known)).ToList();
        // The parser says of a wrong word that the right one is missing as well; that is one fault, not two.
        if (complaints.Count == 0) complaints.AddRange(parsed.Errors.Select(e => Wordings.NotUnderstood(CommandLine.Start, e.Message)).Distinct());
        ComplaintPrinter.Print(complaints, terminal);
        return ExitCode.NotUnderstood;
    }
}
