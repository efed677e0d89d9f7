using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Opens one table, which may stand in several files of one name: the table that ships, and over it a shop's own.</summary>
/// <remarks>
/// Entries are told apart by their names. An entry of a later file stands in the place of one of the same name, whole, so that every
/// number stays beside its source; entries of a later file come first, so that a shop's own brake is the one that is used.
/// </remarks>
internal static class TableFiles
{
    public static bool Has(ImmutableArray<TextFile> files, string name) => files.Any(f => IsNamed(f, name));

    /// <summary>Opens the table. Where there is no such file, or one that cannot be read, complains and answers with no fields.</summary>
    public static bool TryOpen(ImmutableArray<TextFile> files, string name, ICollection<Complaint> complaints, out Fields fields)
    {
        var sound = true;
        var read = new List<MappingNode>();
        foreach (var file in files.Where(f => IsNamed(f, name)).DefaultIfEmpty(new(name, "")))
        {
            if (YamlReader.TryRead(file.Name, file.Text, complaints, out var root) && root.TryGroup("The table", complaints, out var table)) read.Add(table);
            else sound = false;
        }
        var empty = new MappingNode(new(name, 1, 1), []);
        fields = new(read.Aggregate(empty, (under, own) => Over(own, under)), "The table", complaints);
        return sound;
    }

    private static bool IsNamed(TextFile file, string name) => file.Name.Split('/')[^1] == name;

    // A group of entries is filled up with those of the table below that have no name in it; what is no group stands in the place of another.
    private static MappingNode Over(MappingNode own, MappingNode under) =>
        Beside(own with { Entries = [.. own.Entries.Select(e => (e.Key, OverNamesake(e.Key.Text, e.Value, under)))] }, under);

    private static Node OverNamesake(string name, Node own, MappingNode under) =>
        own is MappingNode group && under.Entries.FirstOrDefault(e => e.Key.Text == name).Value is MappingNode below ? Beside(group, below) : own;

    private static MappingNode Beside(MappingNode own, MappingNode under) =>
        own with { Entries = [.. own.Entries, .. under.Entries.Where(u => own.Entries.All(e => e.Key.Text != u.Key.Text))] };
}
