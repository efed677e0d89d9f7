using TemplateForge.Fabrication;

namespace TemplateForge.Jobs;

/// <summary>The words for the hands, as they are given and recorded.</summary>
internal static class HandWords
{
    public const string Both = "both";

    public static string Word(this Hand hand) => hand switch
    {
        Hand.Left => "left",
        Hand.Right => "right",
        _ => "either",
    };

    /// <summary>Reads a hand; capitals are understood.</summary>
    public static bool TryRead(string word, out Hand hand)
    {
        (var known, hand) = word.ToLowerInvariant() switch
        {
            "left" => (true, Hand.Left),
            "right" => (true, Hand.Right),
            "either" => (true, Hand.Either),
            _ => (false, Hand.Either),
        };
        return known;
    }
}
