using System.Collections.Immutable;

namespace TemplateForge.Shop;

/// <summary>A step of the work that the shop does the same way whatever it makes.</summary>
/// <param name="Text">What is done.</param>
/// <param name="Cautions">What can hurt in it, by the names of its own table.</param>
public sealed record ShopStep(string Text, ImmutableArray<string> Cautions);
