using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An expression that has been checked: its names are known and its answer is of the kind that is wanted. It may differ
/// with the word of a choice.</summary>
internal sealed record Term(Chosen<Expression> Choice, Place Place)
{
    public Term(Expression expression, Place place) : this(Chosen<Expression>.Always(expression, place), place) { }

    /// <summary>The expression as the profile writes it.</summary>
    public string Text => Choice.By.Length == 0 ? Choice.Options[""].Text : $"what {Choice.By} chooses";
}

/// <summary>A shape, called by its name.</summary>
internal sealed record ShapeName(string Name, Place Place);
