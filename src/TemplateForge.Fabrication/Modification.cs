using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A profile with values put in: the pieces, and all that a person must know to use them.</summary>
public sealed record Modification
{
    /// <summary>What every output of a demonstration says.</summary>
    public const string DemonstrationWarning = "DEMONSTRATION, DO NOT CUT";

    public required string Shop { get; init; }
    public required string Profile { get; init; }
    public required int Version { get; init; }
    public required string Title { get; init; }
    public required string About { get; init; }
    public required Hand Hand { get; init; }

    /// <summary>Whether the values were measured on a vehicle's panel of this hand, not on its mirror image.</summary>
    public required bool HandWasMeasured { get; init; }

    /// <summary>Whether the pieces are the mirror image of what the profile draws: then left and right in the words of its values are the other hand's.</summary>
    public bool IsMirrored { get; init; }

    public required ImmutableArray<UsedValue> Values { get; init; }
    public required ImmutableArray<Piece> Pieces { get; init; }
    public required ImmutableArray<Caution> Cautions { get; init; }

    /// <summary>The work in order.</summary>
    public required ImmutableArray<WorkStep> Steps { get; init; }

    /// <summary>Some measured value still stands at its default: good to look at, not to cut from.</summary>
    public bool IsDemonstration => Values.Any(v => v.Source == ValueSource.Measured && v.GivenAs.Length == 0);
}

/// <summary>Left or right as seated in the vehicle facing forward.</summary>
public enum Hand
{
    /// <summary>The pieces are their own mirror image.</summary>
    Either,
    Left,
    Right,
}

/// <summary>A parameter as it was used.</summary>
/// <param name="Name">Its name in the profile.</param>
/// <param name="Label">What it is, in a few words.</param>
/// <param name="Text">The value with its unit, as it is printed.</param>
/// <param name="Source">Whether it must be measured.</param>
/// <param name="GivenAs">The fabricator's own words; empty where the default stands.</param>
/// <param name="Explanation">How it is measured, or why the shop chose it.</param>
public sealed record UsedValue(string Name, string Label, string Text, ValueSource Source, string GivenAs, string Explanation);

/// <summary>Where a value must come from.</summary>
public enum ValueSource
{
    /// <summary>From this vehicle or component.</summary>
    Measured,

    /// <summary>From the shop's habit.</summary>
    Shop,
}

/// <summary>What the outputs say where work can hurt someone.</summary>
public sealed record Caution(string Title, string Text);

/// <summary>One step of the work.</summary>
/// <param name="Text">What is done; of a hold point, what must be so before the work goes on.</param>
/// <param name="IsHold">Whether the work stops here until somebody has signed.</param>
/// <param name="Cautions">What can hurt at this step.</param>
public sealed record WorkStep(string Text, bool IsHold, ImmutableArray<Caution> Cautions)
{
    /// <summary>A plain step.</summary>
    public static WorkStep FromString(string text) => new(text, IsHold: false, []);

    /// <summary>A sentence alone is a plain step.</summary>
    public static implicit operator WorkStep(string text) => FromString(text);
}
