using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A thing that may differ with the word that a choice parameter has.</summary>
/// <param name="By">The choice; empty where the thing is the same for all.</param>
/// <param name="Place">Where the choice is named.</param>
/// <param name="Options">The thing for each word; for the empty word where it is the same for all.</param>
internal sealed record Chosen<T>(string By, Place Place, ImmutableDictionary<string, T> Options)
{
    public static Chosen<T> Always(T thing, Place place) => new("", place, ImmutableDictionary<string, T>.Empty.Add("", thing));
}
