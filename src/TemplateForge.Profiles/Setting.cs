using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What the fabricator gave for a parameter, in their own words, and where they wrote it.</summary>
/// <param name="Name">Name of the parameter, or of another way to measure it.</param>
/// <param name="Text">The value as it was written: <c>12</c>, <c>1/2 in</c>, <c>slot</c>.</param>
/// <param name="Place">Where the name begins; unless it is said otherwise the value begins after it and an equals sign.</param>
public sealed record Setting(string Name, string Text, Place Place)
{
    public Place ValuePlace { get; init; } = Place.Right(Name.Length + 1);
}
