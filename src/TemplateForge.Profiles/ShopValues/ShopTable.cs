using System.Collections.Immutable;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>One of the shop's tables, from which profiles take things by their names.</summary>
/// <param name="Entry">What an entry of it is, as "material".</param>
/// <param name="Names">The names of its entries, in alphabetical order.</param>
internal sealed record ShopTable(string Entry, Func<ShopTables, ImmutableArray<string>> Names)
{
    public static ShopTable Materials { get; } = new("material", shop => Ordered(shop.Materials.Keys));
    public static ShopTable Brakes { get; } = new("brake", shop => Ordered(shop.NamedBrakes.Select(b => b.Name)));
    public static ShopTable Cutters { get; } = new("cutter", shop => Ordered(shop.Cutters.Keys));
    public static ShopTable Processes { get; } = new("welding process", shop => Ordered(shop.Processes.Keys));
    public static ShopTable Bolts { get; } = new("bolt", shop => Ordered(shop.Bolts.Keys));
    public static ShopTable Rivets { get; } = new("solid rivet", shop => Ordered(shop.Rivets.Keys));

    /// <summary>The entry that a word means: hyphens and underscores are alike, for the words of a choice have no hyphens.</summary>
    public bool TryEntry(ShopTables shop, string word, out string entry)
    {
        entry = Names(shop).FirstOrDefault(name => name == word || name.Replace('-', '_') == word.Replace('-', '_'), "");
        return entry.Length > 0;
    }

    private static ImmutableArray<string> Ordered(IEnumerable<string> names) => [.. names.Order(StringComparer.Ordinal)];
}
