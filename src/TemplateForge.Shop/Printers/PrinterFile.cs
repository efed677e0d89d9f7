using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Enters what was measured on a coupon into the text of a shop's <c>printers.yaml</c>, and leaves everything else as it stands there.</summary>
public static class PrinterFile
{
    public const string Name = "printers.yaml";

    private const string Printers = "printers";
    private const string Coupons = "coupons";

    // A tenth of a micrometre: no rule is read so finely.
    private const int Decimals = 4;
    private const string Heading = "# What this shop prints with: where each cannot print, and what was measured on its coupons.";

    /// <summary>Reads a day, as 2026-11-28.</summary>
    public static bool TryDay(string text, out DateOnly day) => PrinterTable.TryDay(text, out day);

    /// <summary>A complaint about lengths that cannot be a printer's.</summary>
    public static Complaint Fault(Place place, CouponLengths lengths) => Wordings.NoPrintersLengths(place, lengths);

    /// <summary>The line that stands for a coupon.</summary>
    public static string LineOf(string paper, Coupon coupon)
    {
        var c = coupon.Lengths;
        return $"{paper}: {{measured_on: {coupon.MeasuredOn.ToString(PrinterTable.Day, CultureInfo.InvariantCulture)}, "
            + $"level: {{drawn: {Mm(c.DrawnLevel)}, measured: {Mm(c.Level)}}}, upright: {{drawn: {Mm(c.DrawnUpright)}, measured: {Mm(c.Upright)}}}, "
            + $"rising: {Mm(c.Rising)}, falling: {Mm(c.Falling)}}}";
    }

    /// <summary>Enters a coupon in the place of an earlier one of the same printer and paper.</summary>
    /// <param name="text">The file as it is; empty where there is none.</param>
    /// <param name="papers">The shop's papers.</param>
    /// <param name="printer">The printer's name.</param>
    /// <param name="paper">Name of the paper.</param>
    /// <param name="coupon">What was measured; it is entered to 0.0001 mm.</param>
    /// <param name="entered">The file as it should be.</param>
    /// <returns>Whether the file could be changed so that it says this and, of everything else, what it said before.</returns>
    public static bool TryEnter(string text, ImmutableArray<Paper> papers, string printer, string paper, Coupon coupon, [MaybeNullWhen(false)] out string entered)
    {
        entered = null;
        coupon = AsWritten(coupon);
        if (!TryRead(text, papers, out var root, out var before)) return false;
        entered = Entered(text, root, printer, LineOf(paper, coupon), paper);
        if (!TryRead(entered, papers, out _, out var after) || !after.TryGetValue(printer, out var own)) return false;
        var wanted = before.TryGetValue(printer, out var known) ? known.Coupons : ImmutableDictionary<string, Coupon>.Empty;
        return own.Coupons.GetValueOrDefault(paper) == coupon
            && own.Coupons.Remove(paper).SequenceEqual(wanted.Remove(paper))
            && after.Remove(printer).Keys.Order(StringComparer.Ordinal).SequenceEqual(before.Remove(printer).Keys.Order(StringComparer.Ordinal));
    }

    // What is read back from the decimals of the file, to the last bit; an inch value in binary is not.
    private static Coupon AsWritten(Coupon coupon)
    {
        var c = coupon.Lengths;
        return coupon with { Lengths = new(Rounded(c.DrawnLevel), Rounded(c.DrawnUpright), Rounded(c.Level), Rounded(c.Upright), Rounded(c.Rising), Rounded(c.Falling)) };

        static double Rounded(double length) => Math.Round(length, Decimals);
    }

    private static string Entered(string text, MappingNode root, string printer, string line, string paper)
    {
        var lines = text.Length == 0 ? [Heading] : text.TrimEnd('\n').Split('\n').ToList();
        if (!TryFind(root, Printers, out var printers, out var group)) return Joined([.. lines, $"{Printers}:", .. Printer(2, printer, line)]);
        if (!TryFind(group, printer, out var own, out var entry)) return Inserted(printers, Printer(Indent(group, printers), printer, line));
        if (!TryFind(entry, Coupons, out var coupons, out var list))
        {
            var indent = Indent(entry, own);
            return Inserted(own, [$"{Space(indent)}{Coupons}:", $"{Space(indent + 2)}{line}"]);
        }
        if (!TryFind(list, paper, out var there, out _)) return Inserted(coupons, [$"{Space(Indent(list, coupons))}{line}"]);
        var end = there.Place.Line;
        while (end < lines.Count && (lines[end].Trim().Length == 0 || lines[end].Length - lines[end].TrimStart().Length >= there.Place.Column)) end++;
        lines.RemoveRange(there.Place.Line - 1, end - there.Place.Line + 1);
        lines.Insert(there.Place.Line - 1, Space(there.Place.Column - 1) + line);
        return Joined(lines);

        string Inserted(ScalarNode under, IEnumerable<string> what)
        {
            // An empty group in braces becomes one whose entries stand below it.
            var last = lines[under.Place.Line - 1].TrimEnd();
            if (last.EndsWith("{}", StringComparison.Ordinal)) lines[under.Place.Line - 1] = last[..^2].TrimEnd();
            lines.InsertRange(under.Place.Line, what);
            return Joined(lines);
        }
    }

    private static string[] Printer(int indent, string printer, string line) =>
        [$"{Space(indent)}{printer}:", $"{Space(indent + 2)}{Coupons}:", $"{Space(indent + 4)}{line}"];

    private static int Indent(MappingNode group, ScalarNode under) =>
        group.Entries.IsEmpty ? under.Place.Column + 1 : group.Entries[0].Key.Place.Column - 1;

    private static bool TryFind(MappingNode mapping, string key, [MaybeNullWhen(false)] out ScalarNode name, [MaybeNullWhen(false)] out MappingNode group)
    {
        var found = mapping.Entries.FirstOrDefault(e => e.Key.Text == key);
        (name, group) = (found.Key, found.Value as MappingNode ?? (found.Key is null ? null : new MappingNode(found.Key.Place, [])));
        return name is not null;
    }

    private static bool TryRead(
        string text, ImmutableArray<Paper> papers, [MaybeNullWhen(false)] out MappingNode root, out ImmutableDictionary<string, Printer> printers)
    {
        (root, printers) = (new(new(Name, 1, 1), []), ImmutableDictionary<string, Printer>.Empty);
        if (text.Split('\n').All(l => l.Trim().Length == 0 || l.TrimStart().StartsWith('#'))) return true;
        var complaints = new List<Complaint>();
        if (!YamlReader.TryRead(Name, text, complaints, out var node) || node is not MappingNode mapping) return false;
        root = mapping;
        printers = PrinterTable.Read(new(mapping, "The table", complaints), papers, complaints);
        return complaints.Count == 0;
    }

    private static string Joined(IEnumerable<string> lines) => string.Join('\n', lines) + "\n";

    private static string Space(int columns) => new(' ', columns);

    private static string Mm(double length) => string.Create(CultureInfo.InvariantCulture, $"{length:0.####} mm");
}
