using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An expression that has been checked: its names are known and its answer is of the kind that is wanted.</summary>
internal sealed record Term(Expression Expression, Place Place)
{
    /// <summary>The expression as the profile writes it.</summary>
    public string Text => Expression.Text;
}

/// <summary>A shape, called by its name.</summary>
internal sealed record ShapeName(string Name, Place Place);
