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
}
