using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>The tables that ship.</summary>
internal static class TheShop
{
    public static ImmutableArray<TextFile> Shipped { get; } =
    [
        .. ShopReader.FileNames.Select(name =>
            new TextFile($"shop/{name}", File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "shop", name)))),
    ];

    public static ShopTables Read(IEnumerable<TextFile> files)
    {
        var complaints = new List<Complaint>();
        Assert.True(ShopReader.TryRead([.. files], complaints, out var shop), string.Join('\n', complaints));
        return shop;
    }

    /// <summary>The shipped tables with something else written in one of them.</summary>
    public static ImmutableArray<TextFile> With(string file, string there, string instead) =>
        [.. Shipped.Select(f => f.Name == $"shop/{file}" ? f with { Text = f.Text.Replace(there, instead, StringComparison.Ordinal) } : f)];
}
