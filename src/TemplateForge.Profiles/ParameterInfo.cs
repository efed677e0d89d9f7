using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>A parameter as a person reads about it.</summary>
/// <param name="Name">Its name in the profile.</param>
/// <param name="Label">What it is, in a few words.</param>
/// <param name="Unit">Unit that a bare number has; empty for a choice.</param>
/// <param name="Default">The default as the profile writes it.</param>
/// <param name="Range">Least to most as the profile writes it, or the words to choose from.</param>
/// <param name="Source">Whether it must be measured.</param>
/// <param name="Explanation">How it is measured, or why the shop chose it.</param>
/// <param name="When">When it is asked for, in the profile's words; empty for always.</param>
/// <param name="InsteadOf">The parameter that follows from this one, if this is another way to measure it; else empty.</param>
public sealed record ParameterInfo(
    string Name,
    string Label,
    string Unit,
    string Default,
    string Range,
    ValueSource Source,
    string Explanation,
    string When,
    string InsteadOf);
