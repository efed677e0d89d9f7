using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads the values of a table: each within what a shop can mean, and complained of where it is not.</summary>
internal static class ShopFields
{
    private const int LongestName = 40;

    /// <summary>The entries of a group, each opened; one that is no group, or whose name cannot be called, is complained of.</summary>
    /// <param name="table">The table.</param>
    /// <param name="key">The group in it, which must be there.</param>
    /// <param name="what">What an entry is, as "brake".</param>
    /// <param name="complaints">Where complaints go.</param>
    public static IEnumerable<(ScalarNode Name, Fields Entry)> Entries(Fields table, string key, string what, ICollection<Complaint> complaints)
    {
        if (!table.RequiredGroup(key, out var group)) yield break;
        foreach (var (name, node) in group.Entries)
        {
            if (!IsName(name.Text)) complaints.Add(Wordings.NotAName(name.Place, name.Text));
            if (Fields.TryOpen(node, $"The {what} {name.Text}", complaints, out var entry)) yield return (name, entry);
        }
    }

    /// <summary>Whether the group is there; a table from before it was thought of has none.</summary>
    public static bool Has(Fields table, string key) => table.Optional(key, out _);

    public static double Length(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        Of(fields, key, Unit.Millimetre, Quantity.Length(least), Quantity.Length(most), complaints);

    /// <summary>A length that may be left out.</summary>
    public static double LengthOr(double otherwise, Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        fields.Optional(key, out _) ? Length(fields, key, least, most, complaints) : otherwise;

    public static double Number(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        Of(fields, key, Unit.None, Quantity.Number(least), Quantity.Number(most), complaints);

    /// <summary>A number that may be left out.</summary>
    public static double NumberOr(double otherwise, Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        fields.Optional(key, out _) ? Number(fields, key, least, most, complaints) : otherwise;

    /// <summary>In degrees.</summary>
    public static double Angle(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        Of(fields, key, Unit.Degree, Quantity.Angle(least), Quantity.Angle(most), complaints);

    public static string Words(Fields fields, string key) => fields.RequiredText(key, out var text) ? text.Text.Trim() : "";

    public static bool Truth(Fields fields, string key, ICollection<Complaint> complaints)
    {
        if (!fields.RequiredText(key, out var text)) return false;
        if (text.Text is not ("yes" or "no")) complaints.Add(Wordings.YesOrNoWanted(text.Place, key, text.Text));
        return text.Text == "yes";
    }

    /// <summary>A length for each thickness, as <c>{1 mm: 5 mm, 3 mm: 8 mm}</c>; unstated where it is left out.</summary>
    public static ByThickness LengthByThickness(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        ByThickness(fields, key, Unit.Millimetre, Quantity.Length(least), Quantity.Length(most), complaints);

    /// <summary>A number for each thickness, as <c>{0.5 mm: 0.24, 0.7 mm: 0.26}</c>; unstated where it is left out.</summary>
    public static ByThickness NumberByThickness(Fields fields, string key, double least, double most, ICollection<Complaint> complaints) =>
        ByThickness(fields, key, Unit.None, Quantity.Number(least), Quantity.Number(most), complaints);



    /// <summary>A value within its range; complains where it is none, or lies outside.</summary>
    public static bool TryWithin(
        ScalarNode text, string key, Unit unit, Quantity least, Quantity most, ICollection<Complaint> complaints, out double found)
    {
        found = least.Value;
        if (!QuantityReader.TryRead(text.Writing, unit, complaints, out var value, key)) return false;
        if (!(value.Value >= least.Value && value.Value <= most.Value))
        {
            complaints.Add(Wordings.OutOfRange(text.Place, key, value, least, most));
            return false;
        }
        found = value.Value;
        return true;
    }

    private static ByThickness ByThickness(
        Fields fields, string key, Unit unit, Quantity least, Quantity most, ICollection<Complaint> complaints)
    {
        if (!fields.OptionalGroup(key, out var group)) return Fabrication.ByThickness.Unstated;
        var rows = ImmutableArray.CreateBuilder<(double UpTo, double Value)>();
        foreach (var (thickness, node) in group.Entries)
        {
            if (!TryWithin(thickness, key, Unit.Millimetre, Quantity.Length(0.1), Quantity.Length(100), complaints, out var upTo)) continue;
            if (!node.TryText($"`{key}`", complaints, out var text)) continue;
            if (!TryWithin(text, key, unit, least, most, complaints, out var value)) continue;
            if (rows.Any(r => r.UpTo == upTo)) complaints.Add(Wordings.ThicknessTwice(thickness.Place, key, thickness.Text));
            else rows.Add((upTo, value));
        }
        return new(rows);
    }

    private static double Of(Fields fields, string key, Unit unit, Quantity least, Quantity most, ICollection<Complaint> complaints) =>
        fields.RequiredText(key, out var text) && TryWithin(text, key, unit, least, most, complaints, out var found) ? found : least.Value;

    private static bool IsName(string name) =>
        name.Length is > 0 and <= LongestName && char.IsAsciiLetter(name[0]) && name.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');
}
