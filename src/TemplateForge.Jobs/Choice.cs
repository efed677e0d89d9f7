using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>A word that somebody chose, and where they wrote it; or that they left the choice to the profile and the shop.</summary>
public readonly record struct Choice
{
    private readonly string? word;

    public Choice(string word, Place place) => (this.word, Place) = (word, place);

    public static Choice Open => default;

    /// <summary>The word as it was written; empty while the choice is open.</summary>
    public string Word => word ?? "";

    public Place Place { get; }
    public bool IsMade => word is not null;

    /// <summary>Whether this word was chosen, with capitals or without.</summary>
    public bool Is(string one) => Word.Equals(one, StringComparison.OrdinalIgnoreCase);

    /// <summary>The entry of a table that the word means: the one that is so called, else one that differs in capitals only; the word itself where there is none.</summary>
    public string Among(IEnumerable<string> names)
    {
        var (chosen, all) = (Word, names.ToList());
        return all.Contains(chosen) ? chosen : all.Order(StringComparer.Ordinal).FirstOrDefault(n => n.Equals(chosen, StringComparison.OrdinalIgnoreCase), chosen);
    }
}
