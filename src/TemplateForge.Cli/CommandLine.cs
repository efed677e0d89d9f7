using System.Collections.Immutable;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Cli;

/// <summary>The words of a command, and where each stands.</summary>
/// <remarks>A column is counted as if the words stood with one space between them, the command's name first.</remarks>
internal sealed class CommandLine
{
    public const string Name = "command line";

    private readonly ImmutableArray<(string Option, Choice Value)> values;

    /// <param name="words">The words as they came, options' values among them.</param>
    /// <param name="valued">The options that a value follows.</param>
    public CommandLine(IReadOnlyList<string> words, IReadOnlyCollection<string> valued)
    {
        var found = ImmutableArray.CreateBuilder<(string, Choice)>();
        var places = Places(words);
        for (var i = 0; i < words.Count; i++)
        {
            var word = words[i];
            var end = word.StartsWith("--", StringComparison.Ordinal) ? word.IndexOfAny(['=', ':']) : -1;
            if (valued.Contains(word) && i + 1 < words.Count)
            {
                i++;
                found.Add((word, new(words[i], places[i])));
            }
            else if (end > 0 && valued.Contains(word[..end]))
            {
                found.Add((word[..end], new(word[(end + 1)..], places[i].Right(end + 1))));
            }
            else
            {
                found.Add(("", new(word, places[i])));
            }
        }
        values = found.ToImmutable();
    }

    /// <summary>Where the command begins.</summary>
    public static Place Start => new(Name, 1, 1);

    /// <summary>What was given for an option, in order.</summary>
    public ImmutableArray<Choice> Given(string option) => [.. values.Where(v => v.Option == option).Select(v => v.Value)];

    /// <summary>What was given for an option that takes one value; an open choice if it was not given.</summary>
    public Choice Single(string option) => Given(option) is [var only, ..] ? only : Choice.Open;

    /// <summary>The first place of a word that is no option's value.</summary>
    public Place PlaceOf(string word) => values.Where(v => v.Option.Length == 0 && v.Value.Word == word).Select(v => v.Value.Place).FirstOrDefault(Start);

    /// <summary>The values that an option set, each <c>name=value</c>.</summary>
    public ImmutableArray<Setting> Settings(string option, ICollection<Complaint> complaints)
    {
        var settings = ImmutableArray.CreateBuilder<Setting>();
        foreach (var given in Given(option))
        {
            if (given.Word.Split('=', 2) is [{ Length: > 0 } name, var text]) settings.Add(new(name, text, given.Place));
            else complaints.Add(Wordings.NotASetting(given));
        }
        return settings.ToImmutable();
    }

    private static ImmutableArray<Place> Places(IReadOnlyList<string> words)
    {
        var places = ImmutableArray.CreateBuilder<Place>(words.Count);
        var next = Start;
        foreach (var word in words)
        {
            places.Add(next);
            next = next.Right(word.Length + 1);
        }
        return places.MoveToImmutable();
    }
}
