using System.Collections.Immutable;

namespace TemplateForge.Profiles;

/// <summary>A group of fields that the language knows: what the reader takes there, and what an editor is told.</summary>
/// <param name="Name">The word before the group, or the field by which one group is told from others in the same place.</param>
/// <param name="Meaning">What it makes or says, in a few words.</param>
/// <param name="Fields">Everything that may stand in it.</param>
internal sealed record Word(string Name, string Meaning, params ImmutableArray<Field> Fields)
{
    /// <summary>The same word with more fields.</summary>
    public Word With(params ImmutableArray<Field> more) => this with { Fields = [.. Fields, .. more] };
}

/// <summary>One field of a group.</summary>
/// <param name="Name">As the profile writes it.</param>
/// <param name="Holds">What stands in it.</param>
/// <param name="Meaning">What it says, in a few words.</param>
/// <param name="IsRequired">Whether the group is wrong without it.</param>
internal sealed record Field(string Name, Holds Holds, string Meaning, bool IsRequired)
{
    public static Field Must(string name, Holds holds, string meaning) => new(name, holds, meaning, IsRequired: true);

    public static Field May(string name, Holds holds, string meaning) => new(name, holds, meaning, IsRequired: false);

    /// <summary>The condition that nearly everything may have.</summary>
    public static Field When { get; } = May("when", Holds.Expression, "there only where this holds");
}

/// <summary>What stands in a field.</summary>
internal abstract record Holds
{
    /// <summary>Plain words.</summary>
    public static Holds PlainWords { get; } = new DefinedHolds("words");

    /// <summary>Words with values in braces.</summary>
    public static Holds Sentence { get; } = new DefinedHolds("sentence");

    /// <summary>An expression: a length, an angle, a number, or what holds or does not.</summary>
    public static Holds Expression { get; } = new DefinedHolds("expression");

    public static Holds Point { get; } = new DefinedHolds("point");

    /// <summary>A shape by its name.</summary>
    public static Holds Name { get; } = new DefinedHolds("name");

    /// <summary>A literal: a number with its unit.</summary>
    public static Holds Literal { get; } = new DefinedHolds("literal");

    public static Holds TwoPoints { get; } = ListOf(Point, 2, 2);

    public static Holds TwoExpressions { get; } = ListOf(Expression, 2, 2);

    public static Holds YesOrNo { get; } = OneOf("yes", "no");

    public static Holds Defined(string definition) => new DefinedHolds(definition);

    public static Holds ListOf(Holds item, int least = 0, int most = int.MaxValue) => new ListHolds(item, least, most);

    /// <summary>Names of one's own with something to each.</summary>
    public static Holds NamesOf(Holds thing) => new NamesHolds(thing);

    public static Holds OneOf(params ImmutableArray<string> words) => new OneOfHolds(words);

    public static Holds Group(Word word) => new GroupHolds(word);

    /// <summary>The thing itself, or one for each word of a choice.</summary>
    public static Holds ByChoice(Holds thing) => AnyOf(thing, new ByHolds(thing));

    public static Holds AnyOf(params ImmutableArray<Holds> others) => new AnyHolds(others);
}

internal sealed record DefinedHolds(string Definition) : Holds;

internal sealed record ListHolds(Holds Item, int Least, int Most) : Holds;

internal sealed record NamesHolds(Holds Thing) : Holds;

internal sealed record OneOfHolds(ImmutableArray<string> Words) : Holds;

internal sealed record GroupHolds(Word Word) : Holds;

internal sealed record ByHolds(Holds Thing) : Holds;

internal sealed record AnyHolds(ImmutableArray<Holds> Others) : Holds;
