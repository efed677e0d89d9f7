using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in the library's files, and in what a profile asks of the shop.</summary>
internal static partial class Wordings
{
    public static Complaint NoLibrary(string folder) =>
        new(folder, 1, 1, "There is no library of profiles here.", "Put the folder profiles beside the program.");

    public static Complaint UnknownProfile(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "profile in the library", known);

    public static Complaint FileTooLarge(string file, int most) =>
        new(file, 1, 1, "This file is too large for a text that a person wrote.", $"Keep it under {most / 1000} kB.");

    public static Complaint FileUnreadable(string file, bool missing) =>
        new(file, 1, 1, missing ? "There is no such file." : "This file cannot be read.", missing ? "Check its name." : "Check that you may read it.");

    public static Complaint NoShopFolder(Place place, string folder) =>
        place.Complain($"There is no folder {Quoted(folder)} that can be read.", "Name the folder with the shop's own tables.");

    public static Complaint NoTableInFolder(Place place, string folder, IEnumerable<string> known) =>
        place.Complain($"{folder} has no table of a shop.", $"Put one or more of {string.Join(", ", known)} there.");

    public static Complaint UnknownTableFile(Place place, string name, IEnumerable<string> known) =>
        place.Complain(
            $"{name} is no table of a shop.",
            Spelling.Nearest(name, known, out var nearest) ? $"Did you mean {nearest}?" : $"The tables are {string.Join(", ", known)}.");

    public static Complaint UnknownShopEntry(Place place, string name, ShopTable table, IEnumerable<string> known) =>
        Unknown(place, name, $"{table.Entry} in the shop's table", known);

    public static Complaint UnknownShopWord(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "value of the shop", known);

    public static Complaint ShopDoesNotSay(Place place, ShopWord word, string entry, ImmutableArray<double> sizes)
    {
        var given = word.Sizes.Zip(sizes, (name, size) => $"{name.Replace('_', ' ')} {Mm(size)}");
        var where = sizes.IsEmpty ? "" : $" for {string.Join(" and ", given)}";
        return place.Complain(
            $"The shop's table says nothing of the {word.Name} of {entry}{where}.",
            $"Add it to the entry {entry} in the shop's own table, or choose another {word.Table.Entry}.");
    }
}
