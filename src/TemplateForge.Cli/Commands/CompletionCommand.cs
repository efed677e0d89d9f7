using System.Collections.Immutable;
using System.CommandLine;
using TemplateForge.Cli.Printing;

namespace TemplateForge.Cli.Commands;

/// <summary>Prints what a shell needs to complete commands, options, profiles and values with the tab key.</summary>
/// <remarks>The scripts hold no words of their own: they ask the program, so a profile that is new is completed at once.</remarks>
internal static class CompletionCommand
{
    public const string Name = "completion";

    public static ImmutableArray<string> Shells => ["bash", "zsh", "powershell"];

    public static Command Create(Terminal terminal)
    {
        var shell = new Argument<string>("shell") { Description = "bash, zsh or powershell." };
        var command = new Command(Name, "Print a script that lets a shell complete commands, options, profiles and values.") { shell };
        command.SetAction(parsed =>
        {
            var asked = parsed.GetRequiredValue(shell);
            var script = asked.ToLowerInvariant() switch { "bash" => Bash, "zsh" => Zsh, "powershell" => PowerShell, _ => "" };
            if (script.Length == 0)
            {
                var line = new CommandLine(parsed.Tokens.Select(t => t.Value).ToList(), []);
                ComplaintPrinter.Print([Wordings.UnknownShell(new(asked, line.PlaceOf(asked)), Shells)], terminal);
                return ExitCode.Refused;
            }
            terminal.Output.Write(script);
            return ExitCode.Done;
        });
        return command;
    }

    // Bash ends a word at an equals sign and replaces only what follows it, so what stands before it is taken off.
    private const string Bash =
        """
        # templateforge: completion for bash. In ~/.bashrc:  source <(templateforge completion bash)
        _templateforge() {
            local line=${COMP_LINE:0:COMP_POINT} word found=() i
            mapfile -t found < <(templateforge suggest "$line" 2>/dev/null)
            word=${line##*[[:space:]]}
            if [[ $word == *=* && $COMP_WORDBREAKS == *=* ]]; then
                for i in "${!found[@]}"; do found[i]=${found[i]#*=}; done
            fi
            COMPREPLY=("${found[@]}")
            [[ ${#found[@]} -eq 1 && ${found[0]} == *= ]] && compopt -o nospace 2>/dev/null
            return 0
        }
        complete -o bashdefault -o default -F _templateforge templateforge

        """;

    // Words are those of this command alone, whatever stands before it on the line; the last is taken up to the cursor, less its quote.
    private const string Zsh =
        """
        #compdef templateforge
        # templateforge: completion for zsh. In ~/.zshrc, after compinit:  source <(templateforge completion zsh)
        _templateforge() {
            local -a found open
            found=("${(@f)$(templateforge suggest "${(j: :)words[1,CURRENT-1]} $PREFIX" 2>/dev/null)}")
            found=(${found:#})
            if (( ! $#found )); then _files; return; fi
            open=(${(M)found:#*=})
            (( $#open )) && compadd -S '' -- "${open[@]}"
            found=(${found:#*=})
            (( $#found )) && compadd -- "${found[@]}"
            return 0
        }
        compdef _templateforge templateforge

        """;

    // The cursor is counted from the beginning of the line, the command's text from that of the command.
    private const string PowerShell =
        """
        # templateforge: completion for PowerShell. In $PROFILE:  templateforge completion powershell | Out-String | Invoke-Expression
        Register-ArgumentCompleter -Native -CommandName templateforge -ScriptBlock {
            param($wordToComplete, $commandAst, $cursorPosition)
            $length = $cursorPosition - $commandAst.Extent.StartOffset
            $line = $commandAst.ToString().PadRight($length).Substring(0, $length)
            templateforge suggest $line 2>$null | ForEach-Object {
                [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
            }
        }

        """;
}
