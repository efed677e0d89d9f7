using System.Globalization;

namespace TemplateForge.Notation;

/// <summary>The wording of every complaint that this project makes, one function each; here the parts of sentences that they share.</summary>
/// <remarks>The author's own words come first, then what is wrong with them, then what would be right. Tests name the function.</remarks>
public static partial class Wordings
{
    private const int LongestQuote = 60;

    /// <summary>"butt or lap", "a, b or c".</summary>
    public static string EitherOf(IEnumerable<string> words) => Listed(words, "or");

    internal static string Listed(IEnumerable<string> words, string last)
    {
        var all = words.Take(13).ToList();
        if (all.Count > 12)
            all[12] = "others";
        return all.Count < 2 ? string.Concat(all) : string.Join(", ", all.Take(all.Count - 1)) + $" {last} {all[^1]}";
    }

    private static string Nearest(string word, IEnumerable<string> known, string otherwise)
    {
        var names = known.ToList();
        return Spelling.Nearest(word, names, out var nearest) ? $"Did you mean {nearest}?"
            : names.Count > 0 ? $"{otherwise}: {Listed(names, "or")}."
            : $"{otherwise}; none is known here.";
    }

    /// <summary>Where one of two is a number written without a unit, it lacks that of the other.</summary>
    private static string GiveUnit(string bare, Dimension a, Dimension b, string otherwise)
    {
        var wanted = a == Dimension.Number ? b : a;
        var unit = wanted == Dimension.Length ? "mm" : wanted == Dimension.Angle ? "deg" : wanted == Dimension.Area ? "mm²" : "";
        return bare.Length > 0 && unit.Length > 0 ? $"Write its unit: {Plain(bare)} {unit}." : otherwise;
    }

    private static string Thicknesses(int gauge) =>
        Listed(GaugeSystem.All.Select(system => $"{gauge} ga {system.Name} ({Quantity.Length(system.Thickness(gauge))})"), "or");

    private static string Example(Unit unit) => unit.Dimension switch
    {
        var d when d == Dimension.Number => "a number such as 3 or 0.5",
        var d when d == Dimension.Length => "a length such as 12 mm, 1.5 or 1/2 in",
        var d when d == Dimension.Angle => "an angle such as 30 deg",
        _ => "an area such as 100 mm²",
    };

    /// <summary>What can stand before a unit: a number as it is, anything else as so many times one unit.</summary>
    private static string Factor(string text) =>
        text.All(c => char.IsAsciiDigit(c) || c == '.') ? Plain(text)
        : Expression.IsName(text) || text.StartsWith('(') ? $"{Plain(text)} * 1"
        : $"({Plain(text)}) * 1";

    private static string Counted(int count, string what) => $"{Number(count)} {what}{(count == 1 ? "" : "s")}";

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Named(char character) =>
        char.IsControl(character) || char.IsSurrogate(character) ? "This character" : Quoted(character.ToString());

    private static string Quoted(string text) => $"`{Plain(text)}`";

    /// <summary>The author's text on one line, shortened where it is long.</summary>
    private static string Plain(string text)
    {
        var line = new string([.. text.Trim().Select(c => char.IsControl(c) || char.IsSurrogate(c) ? ' ' : c)]);
        return line.Length <= LongestQuote ? line : line[..(LongestQuote - 1)] + "…";
    }
}
