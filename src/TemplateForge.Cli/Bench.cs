using System.Diagnostics.CodeAnalysis;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Cli;

/// <summary>What lies ready for every command: the library beside the program, and the shop's tables in it.</summary>
internal sealed record Bench(ProfileLibrary Library, ShopTables Shop)
{
    /// <summary>The most bytes that a profile may have.</summary>
    private const int LongestProfile = 1_000_000;

    public static bool TryOpen(Terminal terminal, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Bench bench)
    {
        bench = null;
        if (!ProfileLibrary.TryOpen(terminal.LibraryFolder, complaints, out var library)) return false;
        if (!ShopReader.TryRead(library.ShopFiles, complaints, out var shop)) return false;
        bench = new(library, shop);
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

    private static bool LooksLikeAFile(string named) =>
        named.Contains('/') || named.Contains('\\')
        || named.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase)
        || named.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
}
