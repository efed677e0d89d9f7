using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles.Tests;

/// <summary>The library that ships, and short ways to put values into it.</summary>
internal static class TheLibrary
{
    public static ProfileLibrary Library { get; } = Open();

    public static ShopTables Shop { get; } = ReadShop();

    public static Profile Profile(string name)
    {
        var entry = Library.Entries.Single(e => e.Name == name);
        return Read(entry.File);
    }

    public static Profile Read(TextFile file)
    {
        var complaints = new List<Complaint>();
        Assert.True(Profiles.Profile.TryRead(file, Shop, complaints, out var profile), string.Join('\n', complaints));
        return profile;
    }

    public static ImmutableArray<Setting> Settings(params string[] given) =>
        [.. given.Select((g, i) => new Setting(g.Split('=')[0], g.Split('=', 2)[1], new Place("command line", 1, 1 + i)))];

    public static Modification Make(this Profile profile, params string[] given)
    {
        var complaints = new List<Complaint>();
        Assert.True(profile.TryMake(Settings(given), profile.Hand, profile.Hand, complaints, out var made), string.Join('\n', complaints));
        Assert.Empty(complaints);
        return made;
    }

    public static List<Complaint> Refuse(this Profile profile, params string[] given)
    {
        var complaints = new List<Complaint>();
        Assert.False(profile.TryMake(Settings(given), profile.Hand, profile.Hand, complaints, out _));
        Assert.NotEmpty(complaints);
        return complaints;
    }

    public static Piece Piece(this Modification modification, string name) => modification.Pieces.Single(p => p.Name == name);

    private static ProfileLibrary Open()
    {
        var complaints = new List<Complaint>();
        Assert.True(ProfileLibrary.TryOpen(System.IO.Path.Combine(AppContext.BaseDirectory, "profiles"), complaints, out var library));
        return library;
    }

    private static ShopTables ReadShop()
    {
        var complaints = new List<Complaint>();
        Assert.True(ShopReader.TryRead(Library.ShopFiles, complaints, out var shop), string.Join('\n', complaints));
        return shop;
    }
}
