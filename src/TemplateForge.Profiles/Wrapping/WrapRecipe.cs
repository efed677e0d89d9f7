using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a wrap is made from values, and laid flat.</summary>
internal abstract record WrapRecipe(WrapCommon Common)
{
    public abstract bool TryMake(Evaluation from, [MaybeNullWhen(false)] out WrapPattern pattern);
}

/// <summary>A wrap, called by its name.</summary>
internal sealed record WrapName(string Name, Place Place);
