using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;
using TemplateForge.Shop;
using FilePath = System.IO.Path;

namespace TemplateForge.Profiles;

/// <summary>A folder with a shop's own tables, which are laid over those of the library.</summary>
public static class ShopFolder
{
    /// <summary>Reads the texts of the tables that are there; the others stay as the library has them.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="called">How somebody called it; complaints about what stands in it say so.</param>
    /// <param name="place">Where they did.</param>
    /// <param name="complaints">Where complaints go: there is no such folder, it has no table, or a file whose name is that of none.</param>
    /// <param name="files">The texts, in the order of <see cref="ShopReader.FileNames"/>.</param>
    public static bool TryRead(string folder, string called, Place place, ICollection<Complaint> complaints, out ImmutableArray<TextFile> files)
    {
        files = [];
        var before = complaints.Count;
        if (!TryNames(folder, called, place, complaints, out var names)) return false;
        foreach (var strange in names.Where(n => !ShopReader.FileNames.Contains(n)))
            complaints.Add(Wordings.UnknownTableFile(new($"{called}/{strange}", 1, 1), strange, ShopReader.FileNames));
        if (names.IsEmpty) complaints.Add(Wordings.NoTableInFolder(place, called, ShopReader.FileNames));
        var read = ImmutableArray.CreateBuilder<TextFile>();
        foreach (var name in ShopReader.FileNames.Where(names.Contains))
        {
            if (ProfileLibrary.TryReadText(FilePath.Combine(folder, name), $"{called}/{name}", complaints, out var file)) read.Add(file);
        }
        files = read.ToImmutable();
        return complaints.Count == before;
    }

    private static bool TryNames(string folder, string called, Place place, ICollection<Complaint> complaints, out ImmutableArray<string> names)
    {
        names = [];
        try
        {
            names = [.. Directory.EnumerateFiles(folder).Select(f => FilePath.GetFileName(f)).Where(IsYaml).Order(StringComparer.Ordinal)];
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            complaints.Add(Wordings.NoShopFolder(place, called));
            return false;
        }
    }

    private static bool IsYaml(string name) => FilePath.GetExtension(name).ToUpperInvariant() is ".YAML" or ".YML";
}
