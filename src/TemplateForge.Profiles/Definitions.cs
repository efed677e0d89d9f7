using System.Collections.Immutable;

namespace TemplateForge.Profiles;

/// <summary>Everything that a profile defines, read and checked.</summary>
internal sealed record Definitions
{
    public required ImmutableArray<Parameter> Parameters { get; init; }
    public required ImmutableDictionary<string, Table> Tables { get; init; }
    public required ImmutableDictionary<string, ValueRecipe> Values { get; init; }
    public required ImmutableDictionary<string, SectionRecipe> Sections { get; init; }
    public required ImmutableDictionary<string, FlangedRecipe> Flanged { get; init; }
    public required ImmutableDictionary<string, WrapRecipe> Wraps { get; init; }
    public required ImmutableDictionary<string, ComponentRecipe> Components { get; init; }
    public required ImmutableDictionary<string, TransitionRecipe> Transitions { get; init; }
    public required ImmutableDictionary<string, CurvedPanelRecipe> CurvedPanels { get; init; }
    public required ImmutableDictionary<string, ShapeRecipe> Shapes { get; init; }
    public required ImmutableDictionary<string, PointTerm> Points { get; init; }
    public required ImmutableDictionary<string, PathRecipe> Paths { get; init; }
    public required ImmutableDictionary<string, StationsRecipe> Stations { get; init; }

    /// <summary>When both hands are alike; nothing where they never are, or always.</summary>
    public required ImmutableArray<Term> AlikeWhen { get; init; }
    public required ImmutableArray<Rule> Rules { get; init; }
    public required ImmutableArray<PieceRecipe> Pieces { get; init; }
    public required ImmutableArray<JigRecipe> Jigs { get; init; }
    public required ImmutableArray<Conditional<string>> Cautions { get; init; }
    public required ImmutableArray<Conditional<StepRecipe>> Steps { get; init; }

    /// <summary>When a parameter is asked for, in the profile's words; empty for always.</summary>
    public string WhenOf(string parameter) =>
        Parameters.Where(p => p.Name == parameter).Select(p => p.WhenText).FirstOrDefault("");
}
