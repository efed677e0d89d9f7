using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>What is complained of in a value: its number, its unit, its gauge.</summary>
public static partial class Wordings
{
    public static Complaint EmptyValue(Place place, Unit declared) =>
        place.Complain("No value is given.", $"Write {Example(declared)}.");

    public static Complaint TextTooLong(Place place, int length, int limit) =>
        place.Complain($"This text has {Number(length)} characters.", $"Keep it to {Number(limit)} characters.");

    public static Complaint StrangeCharacter(Place place, char character) =>
        place.Complain($"{Named(character)} has no meaning here.", character switch
        {
            '.' => "Write a decimal as 0.5.",
            '%' => "Write 5 % as 0.05.",
            '½' or '¼' or '¾' or '⅛' or '⅜' or '⅝' or '⅞' => "Write the fraction with a stroke: 1/2, 1 3/8.",
            '\'' => "Write feet as ft, inches as in or \".",
            '{' or '}' or '[' or ']' => "Group with parentheses ( ).",
            '!' => "Write `is not` for a choice, <> for numbers.",
            '&' or '|' => "Write `and`, `or`.",
            _ => "Use letters, digits, _ and the signs + - * / ^ ( ) < > = only.",
        });

    public static Complaint NotANumber(Place place, string text, Unit declared) =>
        place.Complain($"{Quoted(text)} is not a number.", $"Write {Example(declared)}.");

    public static Complaint TooLarge(Place place, string text) =>
        place.Complain(
            $"{Quoted(text)} is larger than anything that can be made.",
            "Write a number below 1000000000 mm or degrees.");

    public static Complaint UnknownUnit(Place place, string unit, string number, bool inExpression)
    {
        var close = Spelling.Nearest(unit, Unit.Known.SelectMany(known => known.Spellings), out var nearest) && unit.Length > 1;
        return place.Complain(
            $"{Quoted(unit)} is not a unit.",
            (close ? $"Did you mean {number} {nearest}? " : "") + $"Units are {Listed(Unit.Known.Select(known => known.Name), "and")}"
            + (inExpression ? $"; to multiply write {number} * {Plain(unit)}." : "."));
    }

    public static Complaint FractionByZero(Place place, string fraction) =>
        place.Complain($"{Quoted(fraction)} divides by zero.", "Write a fraction such as 3/8.");

    public static Complaint FractionOfMixedNumber(Place place, string fraction) =>
        place.Complain(
            $"{Quoted(fraction)} behind a whole number is not less than one.",
            "Write a mixed number such as 1 3/8, with the smaller number above the line.");

    public static Complaint WrongDimension(Place place, string text, Dimension found, string subject, Unit declared) =>
        place.Complain(
            $"{Quoted(text)} is {found.Name}, but {(subject.Length > 0 ? $"{subject} is {declared.Dimension.Name}" : $"{declared.Dimension.Name} is wanted here")}.",
            $"Write {Example(declared)}.");

    internal static Complaint SomethingBehind(Writing writing, ImmutableArray<Token> tokens, Literal literal)
    {
        var token = tokens[literal.Next];
        var number = writing.Text[literal.Start..literal.End];
        if (token.IsSymbol(",") && tokens[literal.Next + 1].Kind == TokenKind.Number)
            return DecimalComma(writing.At(token.Start), number, tokens[literal.Next + 1].Text);
        if (token.IsSymbol("-") && tokens[literal.Next + 1].IsWhole)
            return HyphenInMixedNumber(writing.At(token.Start), writing.Text.Trim(), writing.Text.Trim().Replace('-', ' '));
        return MoreThanOneValue(writing.At(token.Start), writing.Text[token.Start..], number);
    }

    public static Complaint DecimalComma(Place place, string whole, string decimals) =>
        place.Complain(
            $"{Quoted(whole + "," + decimals)} has a comma in it.",
            decimals.Contains('.', StringComparison.Ordinal) ? $"Write {whole}{decimals} without it."
            : decimals.Length == 3 && whole is { Length: <= 3 } and not ['0', ..] ? $"Write {whole}.{decimals} with a point if it is a decimal, or {whole}{decimals} if thousands are meant."
            : $"Write {whole}.{decimals} with a point.");

    public static Complaint HyphenInMixedNumber(Place place, string text, string right) =>
        place.Complain(
            $"{Quoted(text)} could be a mixed number or a subtraction.",
            $"Write the mixed number with a space: {Plain(right)}.");

    public static Complaint MoreThanOneValue(Place place, string behind, string value) =>
        place.Complain($"{Quoted(behind)} behind {Quoted(value)} is not understood.", "Write one value, with one unit.");

    // Gauges

    public static Complaint GaugeOutOfRange(Place place, string gauge) =>
        place.Complain(
            $"{Quoted(gauge)} is not in the gauge tables, which run from {GaugeSystem.Least} to {GaugeSystem.Greatest} in whole numbers.",
            "Measure the sheet and write its thickness, for example 1.2 mm.");

    public static Complaint GaugeWithoutSystem(Place place, string written, int gauge) =>
        place.Complain(
            $"{Quoted(written)} is a different thickness in every gauge system.",
            $"Write {Thicknesses(gauge)}; or the thickness measured.");

    public static Complaint UnknownGaugeSystem(Place place, string system, string written, int gauge) =>
        place.Complain(
            $"{Quoted(system)} is not a gauge system known here, and {Quoted(written)} alone is not a thickness.",
            $"Write {Thicknesses(gauge)}; or the thickness measured.");
}
