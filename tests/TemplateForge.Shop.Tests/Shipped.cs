using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>The tables that ship.</summary>
internal static class Shipped
{
    public static ImmutableArray<TextFile> Files { get; } =
    [
        .. ShopReader.FileNames.Select(name =>
            new TextFile($"shop/{name}", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "shop", name)))),
    ];

    public static ShopTables Tables { get; } = Read(Files);

    public static ShopTables Read(IEnumerable<TextFile> files)
    {
        var complaints = new List<Complaint>();
        Assert.True(ShopReader.TryRead([.. files], complaints, out var shop), string.Join('\n', complaints));
        return shop;
    }
}
