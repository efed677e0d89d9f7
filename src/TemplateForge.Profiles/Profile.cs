using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>A repeatable modification, read from one YAML file and found to be sound.</summary>
public sealed class Profile
{
    public required TextFile Source { get; init; }
    public required string Name { get; init; }
    public required int Version { get; init; }
    public required string Title { get; init; }
    public required string About { get; init; }

    /// <summary>The hand for which it is drawn.</summary>
    public required Hand Hand { get; init; }

    public required ImmutableArray<ParameterInfo> Parameters { get; init; }

    /// <summary>Reads a profile; every complaint about the file comes at once.</summary>
    public static bool TryRead(TextFile source, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Profile profile) =>
        throw new NotSupportedException();

    /// <summary>Puts values into the profile.</summary>
    /// <param name="settings">What the fabricator gave; the others stand at their defaults.</param>
    /// <param name="hand">The hand that is wanted; <see cref="Hand.Either"/> when, and only when, the profile is for either.</param>
    /// <param name="measuredOn">The hand on which the values were measured.</param>
    /// <param name="complaints">Where complaints about the values go, all of them at once.</param>
    /// <param name="modification">The exact shapes and what to know about them.</param>
    public bool TryMake(
        ImmutableArray<Setting> settings,
        Hand hand,
        Hand measuredOn,
        ICollection<Complaint> complaints,
        [MaybeNullWhen(false)] out Modification modification) =>
        throw new NotSupportedException();
}
