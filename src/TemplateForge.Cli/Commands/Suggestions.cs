using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using TemplateForge.Jobs;
using TemplateForge.Profiles;

namespace TemplateForge.Cli.Commands;

/// <summary>The words that may come next on a line: commands, options, and what the library and the shop's tables have for their values.</summary>
/// <remarks>Nothing where a file or a folder is meant: that the shell knows itself.</remarks>
internal sealed class Suggestions(RootCommand root, Terminal terminal)
{
    /// <param name="line">The line up to the cursor, the program's name first.</param>
    public ImmutableArray<string> For(string line)
    {
        var words = Words(line);
        var begun = words.Length > 1 ? words[^1] : "";
        ImmutableArray<string> before = words.Length > 1 ? words[1..^1] : [];
        return [.. After(before, begun).Where(word => word.StartsWith(begun, StringComparison.Ordinal)).Distinct().Order(StringComparer.Ordinal)];
    }

    private IEnumerable<string> After(ImmutableArray<string> before, string begun)
    {
        if (before.IsEmpty) return Shown(root.Subcommands).Select(c => c.Name).Concat(OptionsOf(root, before));
        var command = Shown(root.Subcommands).FirstOrDefault(c => c.Name == before[0]);
        if (command is null) return [];
        if (command.Options.FirstOrDefault(o => o.Name == before[^1]) is { } option && TakesAValue(option)) return ValuesOf(option, before, begun);
        if (begun.StartsWith('-')) return OptionsOf(command, before);
        if (TakesAFile(command, before)) return [];
        return ArgumentsOf(command, before).Concat(begun.Length == 0 ? OptionsOf(command, before) : []);
    }

    private static IEnumerable<Command> Shown(IEnumerable<Command> commands) => commands.Where(c => !c.Hidden);

    private static bool TakesAValue(Option option) => option.ValueType != typeof(bool) && option is not System.CommandLine.Help.HelpOption;

    // Options would keep the shell from offering its files; they come once a hyphen is typed.
    private static bool TakesAFile(Command command, ImmutableArray<string> before) =>
        command.Name == CheckProfileCommand.Name || (command.Name == CheckDxfCommand.Name && WordIn(command, before).Length == 0);

    // Only --set is given more than once.
    private static IEnumerable<string> OptionsOf(Command command, ImmutableArray<string> before) =>
        command.Options.Where(o => !o.Hidden && (o.ValueType == typeof(string[]) || !before.Contains(o.Name))).Select(o => o.Name);

    private IEnumerable<string> ArgumentsOf(Command command, ImmutableArray<string> before) => command.Name switch
    {
        MakeCommand.Name or ShowCommand.Name when WordIn(command, before).Length == 0 => Opened(before) is [var bench] ? bench.Library.Entries.Select(e => e.Name) : [],
        CouponCommand.Name when WordIn(command, before).Length == 0 => Opened(before) is [var bench] ? bench.Shop.Printers.Keys : [],
        CompletionCommand.Name when before.Length == 1 => CompletionCommand.Shells,
        _ => [],
    };

    private IEnumerable<string> ValuesOf(Option option, ImmutableArray<string> before, string begun)
    {
        // What an option takes stands in its help where it is a few words; a length, a name or degrees stand for what somebody fills in.
        var words = (option.HelpName ?? "").Split('|');
        if (words.Length > 1 && !words.Contains("name")) return words.Where(word => word != MakeOptions.Degrees);
        if (Opened(before) is not [var bench]) return [];
        return option.Name switch
        {
            "--paper" => bench.Shop.Papers.Select(p => p.Name),
            "--cutter" => bench.Shop.Cutters.Keys.Append("none"),
            "--printer" => bench.Shop.Printers.Keys.Append(ChosenPrinting.None),
            "--set" => SettingsFor(bench, before, begun),
            _ => [],
        };
    }

    private IEnumerable<string> SettingsFor(Bench bench, ImmutableArray<string> before, string begun)
    {
        var named = WordIn(root.Subcommands.First(c => c.Name == MakeCommand.Name), before);
        if (!bench.TryFind(terminal, named, CommandLine.Start, [], out var file) || !Profile.TryRead(file, bench.Shop, [], out var profile)) return [];
        var given = before.Where(w => w.Contains('=')).Select(w => w.Split('=')[0]).ToHashSet(StringComparer.Ordinal);
        var name = begun.Split('=')[0];
        // A choice is completed to its words; what has a unit must be measured.
        return begun.Contains('=')
            ? profile.Parameters.Where(p => p.Name == name && p.Unit.Length == 0).SelectMany(p => p.Range.Split(", ")).Where(word => !word.Contains(' ')).Select(word => $"{name}={word}")
            : profile.Parameters.Where(p => !given.Contains(p.Name)).Select(p => p.Name + "=");
    }

    // The library, with the shop's own tables where the line names them; nothing where they cannot be read.
    private ImmutableArray<Bench> Opened(ImmutableArray<string> before)
    {
        var shop = before.IndexOf("--shop") is >= 0 and var i && i + 1 < before.Length ? new Choice(before[i + 1], CommandLine.Start) : Choice.Open;
        return Bench.TryOpen(terminal, shop, [], out var bench) ? [bench] : [];
    }

    // The first word that is neither the command, nor an option, nor an option's value.
    private static string WordIn(Command command, ImmutableArray<string> before)
    {
        for (var i = 1; i < before.Length; i++)
        {
            if (command.Options.FirstOrDefault(o => o.Name == before[i]) is { } option) i += TakesAValue(option) ? 1 : 0;
            else if (!before[i].StartsWith('-')) return before[i];
        }
        return "";
    }

    // Words as a shell has them: blanks part them but for those in quotes or behind a backslash. The last is the one that was begun.
    private static ImmutableArray<string> Words(string line)
    {
        var (words, word, quote) = (ImmutableArray.CreateBuilder<string>(), new StringBuilder(), '\0');
        var isBegun = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (quote == '\0' && char.IsWhiteSpace(c))
            {
                if (isBegun) words.Add(word.ToString());
                word.Clear();
                isBegun = false;
                continue;
            }
            isBegun = true;
            if (c == '\\' && i + 1 < line.Length && quote != '\'') word.Append(line[++i]);
            else if (c == quote) quote = '\0';
            else if (quote == '\0' && c is '"' or '\'') quote = c;
            else word.Append(c);
        }
        words.Add(word.ToString());
        return words.ToImmutable();
    }
}
