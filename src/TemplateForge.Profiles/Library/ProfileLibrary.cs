using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.IO;
using TemplateForge.Notation;
using TemplateForge.Shop;
using FilePath = System.IO.Path;

namespace TemplateForge.Profiles;

/// <summary>A folder of profiles: one folder a family, one YAML file a profile, and the shop's tables in <c>shop/</c>.</summary>
public sealed class ProfileLibrary
{
    private const string ShopFolder = "shop";
    private const int LargestFile = 1_000_000;

    private ProfileLibrary(ImmutableArray<LibraryEntry> entries, ImmutableArray<TextFile> shopFiles) => (Entries, ShopFiles) = (entries, shopFiles);

    /// <summary>The profiles, by family and name.</summary>
    public ImmutableArray<LibraryEntry> Entries { get; }

    /// <summary>The shop's tables, as they are written.</summary>
    public ImmutableArray<TextFile> ShopFiles { get; }

    /// <summary>Reads the texts of a library; the profiles themselves are read when they are wanted.</summary>
    public static bool TryOpen(string folder, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out ProfileLibrary library)
    {
        library = null;
        if (!Directory.Exists(folder))
        {
            complaints.Add(Wordings.NoLibrary(folder));
            return false;
        }
        var before = complaints.Count;
        var shop = ImmutableArray.CreateBuilder<TextFile>();
        foreach (var name in ShopReader.FileNames)
        {
            if (ShopReader.IsOptional(name) && !File.Exists(FilePath.Combine(folder, ShopFolder, name))) continue;
            if (TryReadText(FilePath.Combine(folder, ShopFolder, name), $"{ShopFolder}/{name}", complaints, out var file)) shop.Add(file);
        }
        var entries = ImmutableArray.CreateBuilder<LibraryEntry>();
        foreach (var family in Directory.EnumerateDirectories(folder).Order(StringComparer.Ordinal))
        {
            var familyName = FilePath.GetFileName(family);
            if (familyName == ShopFolder) continue;
            foreach (var path in Directory.EnumerateFiles(family, "*.yaml").Order(StringComparer.Ordinal))
            {
                var name = FilePath.GetFileName(path);
                if (TryReadText(path, $"{familyName}/{name}", complaints, out var file))
                    entries.Add(new(FilePath.GetFileNameWithoutExtension(name), familyName, file));
            }
        }
        library = new(entries.ToImmutable(), shop.ToImmutable());
        return complaints.Count == before;
    }

    /// <summary>Finds a profile by its name.</summary>
    /// <param name="name">The name as somebody wrote it.</param>
    /// <param name="place">Where they wrote it.</param>
    /// <param name="complaints">Where the complaint goes when there is no such profile.</param>
    /// <param name="entry">The profile's text.</param>
    public bool TryFind(string name, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out LibraryEntry entry)
    {
        entry = Entries.FirstOrDefault(e => e.Name == name);
        if (entry is not null) return true;
        complaints.Add(Wordings.UnknownProfile(place, name, Entries.Select(e => e.Name)));
        return false;
    }

    /// <summary>Reads one text file of a size that a person might write.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="name">How complaints call it.</param>
    /// <param name="complaints">Where the complaint goes when it cannot be read.</param>
    /// <param name="file">Its text.</param>
    public static bool TryReadText(string path, string name, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out TextFile file)
    {
        file = null;
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > LargestFile })
            {
                complaints.Add(Wordings.FileTooLarge(name, LargestFile));
                return false;
            }
            file = new(name, File.ReadAllText(path));
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            complaints.Add(Wordings.FileUnreadable(name, trouble is FileNotFoundException or DirectoryNotFoundException));
            return false;
        }
    }
}

/// <summary>A profile in the library.</summary>
/// <param name="Name">Its name, which is also the file's.</param>
/// <param name="Family">The folder it is in.</param>
/// <param name="File">Its text.</param>
public sealed record LibraryEntry(string Name, string Family, TextFile File);
