using System.Collections.Immutable;

namespace TemplateForge.Profiles;

/// <summary>A thing that is there only when a condition holds; without one, always.</summary>
internal sealed record Conditional<T>(ImmutableArray<Term> When, T Thing);
