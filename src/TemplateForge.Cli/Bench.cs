using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Cli;

/// <summary>What lies ready for every command: the library beside the program, and the shop's tables.</summary>
/// <param name="Library">The library.</param>
/// <param name="ShopFiles">The texts of the library's tables, then those of the shop's own.</param>
/// <param name="Shop">What they say.</param>
internal sealed record Bench(ProfileLibrary Library, ImmutableArray<TextFile> ShopFiles, ShopTables Shop)
{
    /// <summary>The most bytes that a profile may have.</summary>
    private const int LongestProfile = 1_000_000;

    /// <param name="terminal">Where the command stands.</param>
    /// <param name="ownShop">The folder with the shop's own tables; open where it has none.</param>
    /// <param name="complaints">Where complaints go.</param>
    /// <param name="bench">What lies ready.</param>
    public static bool TryOpen(Terminal terminal, Choice ownShop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Bench bench)
    {
        bench = null;
        if (!ProfileLibrary.TryOpen(terminal.LibraryFolder, complaints, out var library)) return false;
        ImmutableArray<TextFile> own = [];
        if (ownShop.IsMade && !ShopFolder.TryRead(terminal.PathOf(ownShop.Word), Called(ownShop.Word), ownShop.Place, complaints, out own)) return false;
        ImmutableArray<TextFile> files = [.. library.ShopFiles, .. own];
        if (!ShopReader.TryRead(files, complaints, out var shop)) return false;
        bench = new(library, files, shop);
        return true;
    }

    /// <summary>The text of a profile that was named: a file where the name looks like one, else a name in the library.</summary>
    public bool TryFind(Terminal terminal, string named, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out TextFile file)
    {
        if (LooksLikeAFile(named)) return TryReadFile(terminal, named, place, complaints, out file);
        file = null;
        if (!Library.TryFind(named, place, complaints, out var entry)) return false;
        file = entry.File;
        return true;
    }

    /// <summary>The text of a profile that lies anywhere.</summary>
    public static bool TryReadFile(
        Terminal terminal,
        string named,
        Place place,
        ICollection<Complaint> complaints,
        [MaybeNullWhen(false)] out TextFile file)
    {
        if (!TextFiles.TryRead(terminal.PathOf(named), LongestProfile, place, complaints, out file)) return false;
        file = file with { Name = named };
        return true;
    }

    // As it was typed, less a slash at its end: what stands in it is called folder/file.
    private static string Called(string folder) => folder.Replace('\\', '/').TrimEnd('/') is { Length: > 0 } name ? name : "/";

    private static bool LooksLikeAFile(string named) =>
        named.Contains('/') || named.Contains('\\')
        || named.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase)
        || named.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
}
