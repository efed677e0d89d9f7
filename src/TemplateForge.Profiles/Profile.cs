using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>A repeatable modification, read from one YAML file and found to be sound.</summary>
public sealed class Profile
{
    private readonly Definitions definitions;
    private readonly ImmutableArray<Arrow> arrows;
    private readonly ShopTables shop;

    internal Profile(Definitions definitions, ImmutableArray<Arrow> arrows, ShopTables shop) =>
        (this.definitions, this.arrows, this.shop) = (definitions, arrows, shop);

    public required TextFile Source { get; init; }
    public required string Name { get; init; }
    public required int Version { get; init; }
    public required string Title { get; init; }
    public required string About { get; init; }

    /// <summary>The hand for which it is drawn.</summary>
    public required Hand Hand { get; init; }

    /// <summary>Whether some values make it its own mirror image, so that one fits either hand.</summary>
    public bool MayBeAlike => !definitions.AlikeWhen.IsEmpty;

    public ImmutableArray<ParameterInfo> Parameters => [.. definitions.Parameters.SelectMany(p => p.Infos)];

    /// <summary>Reads a profile; every complaint about the file comes at once.</summary>
    public static bool TryRead(TextFile source, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Profile profile) =>
        ProfileReader.TryRead(source, shop, complaints, out profile);

    /// <summary>Puts values into the profile.</summary>
    /// <param name="settings">What the fabricator gave; the others stand at their defaults.</param>
    /// <param name="hand">The hand that is wanted; <see cref="Hand.Either"/> when, and only when, the profile is for either.</param>
    /// <param name="measuredOn">The hand on which the values were measured.</param>
    /// <param name="complaints">Where complaints about the values go, all of them at once.</param>
    /// <param name="modification">The exact shapes and what to know about them; for <see cref="Hand.Either"/> where the values make both hands alike.</param>
    /// <exception cref="ArgumentException">The profile is for either hand and one is wanted, or the other way round.</exception>
    public bool TryMake(
        ImmutableArray<Setting> settings,
        Hand hand,
        Hand measuredOn,
        ICollection<Complaint> complaints,
        [MaybeNullWhen(false)] out Modification modification)
    {
        if ((hand == Hand.Either) != (Hand == Hand.Either))
            throw new ArgumentException($"{Name} is drawn for the hand {Hand}, so it cannot be made for {hand}.", nameof(hand));
        modification = null;
        if (!UsedValues.TryRead(Name, definitions, settings, complaints, out var parameters, out var used)) return false;
        var evaluation = new Evaluation(definitions, parameters, complaints);

        var kept = true;
        foreach (var rule in definitions.Rules) kept &= rule.IsKept(evaluation);
        if (!kept) return false;
        var isAlike = MayBeAlike;
        if (isAlike && !evaluation.TryHolds(definitions.AlikeWhen, out isAlike)) return false;
        var isMirrored = !isAlike && hand != Hand;
        if (isAlike) (hand, measuredOn) = (Hand.Either, Hand.Either);

        var sound = evaluation.TryMany(
            [.. definitions.Pieces.Select(p => new Conditional<PieceRecipe>(p.When, p))],
            (PieceRecipe recipe, out Piece piece) => recipe.TryMake(evaluation, arrows, out piece!),
            out var pieces);
        var jigs = ImmutableArray<JigPlate>.Empty;
        if (sound)
        {
            sound = evaluation.TryMany(
                [.. definitions.Jigs.Select(j => new Conditional<JigRecipe>(j.When, j))],
                (JigRecipe recipe, out JigPlate plate) => recipe.TryMake(evaluation, pieces, isMirrored, out plate!),
                out jigs);
        }
        sound &= evaluation.TryMany(
            definitions.Cautions,
            (string name, out Caution caution) => shop.Cautions.TryGetValue(name, out caution!),
            out var cautions);
        sound &= evaluation.TryMany(
            definitions.Steps,
            (StepRecipe recipe, out WorkStep step) => recipe.TryMake(evaluation, shop, out step),
            out var steps);
        if (sound && pieces.IsEmpty) sound = evaluation.Refuse(Wordings.NoPieceLeft(Source.Name));
        if (!sound) return false;

        modification = new Modification
        {
            Shop = shop.Name,
            Profile = Name,
            Version = Version,
            Title = Title,
            About = About,
            Hand = hand,
            HandWasMeasured = hand == measuredOn,
            IsMirrored = isMirrored,
            Values = used,
            Pieces =
            [
                .. isMirrored ? [.. pieces.Select(p => p.Mirrored())] : pieces,
                .. jigs.SelectMany(j => JigPieces.Of(j, new($"{Name}, version {Version}", hand, hand == measuredOn))),
            ],
            Cautions = [.. cautions.Concat(steps.SelectMany(s => s.Cautions)).Distinct()],
            Steps = steps,
        };
        return true;
    }

    /// <summary>Sets of values that between them choose every word of every choice at least once, the rest at their defaults: what
    /// a check of a profile tries out.</summary>
    public IEnumerable<ImmutableArray<Setting>> Rehearsals()
    {
        var sets = new List<ImmutableArray<Setting>> { ImmutableArray<Setting>.Empty };
        foreach (var choice in definitions.Parameters.OfType<ChoiceParameter>().OrderBy(c => c.When.Length))
        {
            // One that is only asked for with certain words of others is tried with those.
            var asked = sets.FindIndex(set => IsAskedFor(choice, set));
            if (asked < 0) continue;
            sets.AddRange(choice.Options.Where(o => o.Word != choice.Default).Select(o => sets[asked].Add(new(choice.Name, o.Word, choice.Place))).ToList());
        }
        return sets;
    }

    private bool IsAskedFor(ChoiceParameter choice, ImmutableArray<Setting> settings)
    {
        UsedValues.TryRead(Name, definitions, settings, new List<Complaint>(), out var values, out _);
        return values.ContainsKey(choice.Name);
    }
}
