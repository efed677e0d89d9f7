namespace TemplateForge.Fabrication;

/// <summary>One line of a part list.</summary>
/// <param name="Quantity">How many.</param>
/// <param name="What">What it is and what it is made of.</param>
/// <param name="Size">Its size and fit, in words.</param>
public sealed record JigPart(int Quantity, string What, string Size);
