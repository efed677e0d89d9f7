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
    public static ShopTable JigPlates { get; } = new("jig plate", shop => Ordered(shop.JigPlates.Keys));
    public static ShopTable Rivets { get; } = new("rivet", shop => Ordered(shop.Rivets.Keys));

    /// <summary>The entry that a word means. Hyphens and underscores are alike, for the words of a choice have no hyphens; so are m6 and M6.</summary>
    public bool TryEntry(ShopTables shop, string word, out string entry)
    {
        var names = Names(shop);
        entry = names.Contains(word) ? word : names.FirstOrDefault(name => Plain(name) == Plain(word), "");
        return entry.Length > 0;

        static string Plain(string name) => name.Replace('-', '_').ToUpperInvariant();
    }

    private static ImmutableArray<string> Ordered(IEnumerable<string> names) => [.. names.Order(StringComparer.Ordinal)];
}
