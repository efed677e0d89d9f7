using System.Collections.Immutable;
using System.Globalization;

namespace TemplateForge.Notation;

/// <summary>The wording of every complaint that this project makes, one function each.</summary>
/// <remarks>The author's own words come first, then what is wrong with them, then what would be right. Tests name the function.</remarks>
public static class Wordings
{
    private const int LongestQuote = 60;

    // Values

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
        place.Complain($"{Quoted(whole + "," + decimals)} has a comma in it.", $"Write {whole}.{decimals} with a point.");

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

    // Reading an expression

    internal static Complaint MissingValue(Writing writing, Token token)
    {
        if (token.Kind == TokenKind.End)
            return UnfinishedExpression(writing.At(token.Start));
        if (token.IsWord("if"))
            return ConditionInside(writing.At(token.Start));
        return ValueExpected(writing.At(token.Start), writing.Text[token.Start..token.End]);
    }

    public static Complaint UnfinishedExpression(Place place) =>
        place.Complain(
            "The expression ends where a value should follow.",
            "Write a number or a name at its end, or take the last sign away.");

    public static Complaint ConditionInside(Place place) =>
        place.Complain("`if` stands in the middle of an expression.", "Put it in parentheses: 2 * (if a > b then a else b).");

    public static Complaint ValueExpected(Place place, string found) =>
        place.Complain(
            $"{Quoted(found)} stands where a value should be.",
            "Write a number, a name or an opening parenthesis here.");

    internal static Complaint MissingSign(Writing writing, Token token, Token before)
    {
        var place = writing.At(token.Start);
        var found = writing.Text[token.Start..token.End];
        if (token.IsSymbol(","))
            return CommaOutside(place);
        if (token.IsSymbol(")"))
            return ClosingParenthesis(place);
        return token.Kind is TokenKind.Symbol
            ? SignNotUnderstood(place, found)
            : SignExpected(place, writing.Text[before.Start..before.End], found);
    }

    public static Complaint CommaOutside(Place place) =>
        place.Complain(
            "A comma stands here only between what a function takes, as in min(a, b).",
            "Write a decimal with a point: 1.5.");

    public static Complaint ClosingParenthesis(Place place) =>
        place.Complain("This closing parenthesis has no opening one.", "Take it away, or open it earlier.");

    public static Complaint SignNotUnderstood(Place place, string sign) =>
        place.Complain($"{Quoted(sign)} is not understood here.", "Use + - * / ^ to compute, < <= > >= = <> to compare.");

    public static Complaint SignExpected(Place place, string before, string found) =>
        place.Complain(
            $"{Quoted(found)} follows {Quoted(before)} without a sign between them.",
            $"Write what to do with them, for example {Plain(before)} * {Plain(found)}.");

    internal static Complaint MissingChoice(Writing writing, Token token) => ChoiceExpected(writing.At(token.Start));

    public static Complaint ChoiceExpected(Place place) =>
        place.Complain("After `is` a word is missing.", "Write one of the choices, as in `process is mig`.");

    internal static Complaint MissingKeyword(Writing writing, Token token, string word) => KeywordExpected(writing.At(token.Start), word);

    public static Complaint KeywordExpected(Place place, string word) =>
        place.Complain($"`if` needs `{word}` here.", "Write it whole: if a > b then a else b.");

    public static Complaint OpenParenthesis(Place place) =>
        place.Complain("This parenthesis is never closed.", "Write a closing parenthesis where it should end.");

    public static Complaint NestedTooDeep(Place place, int limit) =>
        place.Complain($"More than {limit} things stand one inside the other.", "Give parts of it names of their own.");

    public static Complaint PowerOfUnit(Place place, string quantity) =>
        place.Complain(
            $"{Quoted(quantity + "^")} could raise the unit alone or the whole quantity.",
            $"Write ({Plain(quantity)})^2 to raise all of it, or 12 mm² for square millimetres.");

    public static Complaint DivisionByFraction(Place place, string fraction) =>
        place.Complain(
            $"Dividing by {Quoted(fraction)} without parentheses could be taken two ways.",
            $"Write ({Plain(fraction)}).");

    public static Complaint LoneBrace(Place place, char brace) =>
        place.Complain(
            brace == '{' ? "This { is never closed." : "This } has no { before it.",
            $"Put an expression in {{ }}, or write {brace}{brace} for a brace itself.");

    // Checking an expression

    public static Complaint UnknownName(Place place, string name, IEnumerable<string> known) =>
        place.Complain($"{Quoted(name)} is not known here.", Nearest(name, known, "Use a name that is given above"));

    public static Complaint UnknownFunction(Place place, string name, IEnumerable<string> known) =>
        place.Complain($"{Quoted(name)} is no function or measure known here.", Nearest(name, known, "Use one of these"));

    public static Complaint UnknownShape(Place place, string name, IEnumerable<string> known) =>
        place.Complain($"{Quoted(name)} is no shape known here.", Nearest(name, known, "Use the name of a shape"));

    public static Complaint ShapeAsValue(Place place, string name, string measure) =>
        place.Complain(
            $"{Quoted(name)} is a shape, not a value.",
            measure.Length > 0 ? $"Measure it, for example with {measure}({name})." : "Use the name of a value.");

    public static Complaint AddsUnlike(Place place, string text, bool isSum, Dimension left, Dimension right, string bare)
    {
        var what = isSum ? $"adds {left.Name} to {right.Name}" : $"takes {right.Name} from {left.Name}";
        return place.Complain($"{Quoted(text)} {what}.", GiveUnit(bare, left, right, "Only like can be added to like."));
    }

    public static Complaint ComparesUnlike(Place place, string text, Dimension left, Dimension right, string bare) =>
        place.Complain(
            $"{Quoted(text)} compares {left.Name} with {right.Name}.",
            GiveUnit(bare, left, right, "Only like can be compared with like."));

    public static Complaint ArgumentsUnlike(Place place, string function, Dimension first, Dimension other, string bare) =>
        place.Complain(
            $"{function} takes {first.Name} and {other.Name} together.",
            GiveUnit(bare, first, other, "Give it quantities of one kind."));

    public static Complaint BranchesUnlike(Place place, ValueKind then, ValueKind otherwise, string bare) =>
        place.Complain(
            $"`then` gives {then.Name}, but `else` gives {otherwise.Name}.",
            then is QuantityKind first && otherwise is QuantityKind second
                ? GiveUnit(bare, first.Dimension, second.Dimension, "Let both give the same kind of value.")
                : "Let both give the same kind of value.");

    public static Complaint NeedsAngle(Place place, string function, string text, Dimension found) =>
        place.Complain(
            $"{function} takes an angle, but {Quoted(text)} is {found.Name}.",
            found == Dimension.Number ? $"Write its unit: {function}({Factor(text)} deg)." : "Give it an angle, such as 30 deg.");

    public static Complaint NeedsNumber(Place place, string function, string text, Dimension found) =>
        place.Complain(
            $"{function} takes a plain number, but {Quoted(text)} is {found.Name}.",
            "Divide one length by another, as in asin(a / b).");

    public static Complaint RootOf(Place place, string text, Dimension found) =>
        place.Complain(
            $"{Quoted(text)} is {found.Name}, which has no square root.",
            "Take the square root of an area or of a plain number.");

    public static Complaint WrongCount(Place place, string function, int least, int most, int found) =>
        place.Complain(
            $"{function} is given {Counted(found, "value")}.",
            most == int.MaxValue ? $"Give it {least} or more, with commas between."
            : least == most ? $"Give it {Number(least)}{(least > 1 ? ", with a comma between" : "")}."
            : $"Give it {least} or {most}.");

    public static Complaint WrongShapeCount(Place place, string measure, int found) =>
        place.Complain(
            $"{measure} does not measure {Counted(found, "shape")}.",
            $"Give {measure} the shapes that it needs, with commas between.");

    public static Complaint NotAShape(Place place, string measure, string text) =>
        place.Complain($"{measure} measures shapes, but {Quoted(text)} is none.", "Write the name of a shape.");

    public static Complaint ExponentWithUnit(Place place, string text, Dimension found) =>
        place.Complain($"The exponent {Quoted(text)} is {found.Name}.", "An exponent is a plain number.");

    public static Complaint ExponentNotWhole(Place place, string text, Dimension found, int highest) =>
        place.Complain(
            $"{Quoted(text)} is {found.Name}, which only a whole number that is written out can raise.",
            $"Write an exponent from -{highest} to {highest}, or sqrt for a root.");

    public static Complaint PowerTooHigh(Place place, string text) =>
        place.Complain(
            $"{Quoted(text)} is a power of a length or an angle that nothing has.",
            "Divide by a length or an angle before multiplying on.");

    public static Complaint ChoiceWithEquals(Place place, string name, bool isEqual, string word) =>
        place.Complain(
            $"{Quoted(name)} is a choice of words, not a number.",
            $"Write {Plain(name)} is {(isEqual ? "" : "not ")}{Plain(word)}.");

    public static Complaint UnknownOption(Place place, string word, string name, IEnumerable<string> options) =>
        place.Complain(
            $"{Quoted(word)} is not one of the choices of {Quoted(name)}.",
            Nearest(word, options, "Use one of these"));

    public static Complaint IsNeedsChoice(Place place, string text, ValueKind found) =>
        place.Complain($"{Quoted(text)} is {found.Name}; `is` goes with a choice of words.", "Compare numbers with = < <= > >=.");

    public static Complaint NeedsQuantity(Place place, string text, ValueKind found) =>
        place.Complain($"{Quoted(text)} is {found.Name}, where a number is wanted.", found is ChoiceKind
            ? $"Choose a number by it: if {Plain(text)} is … then … else …."
            : "Choose a number by it: if … then … else ….");

    public static Complaint NeedsTruth(Place place, string text, ValueKind found) =>
        place.Complain($"{Quoted(text)} is {found.Name}, where a yes or no is wanted.", found is ChoiceKind choice
            ? $"Ask for one of its words: {Plain(text)} is {choice.Options.FirstOrDefault("…")}."
            : $"Compare it with something: {Plain(text)} > 0.");

    // Computing an expression

    public static Complaint DividesByZero(Place place, string text) =>
        place.Complain(
            $"{Quoted(text)} is zero here, and nothing can be divided by zero.",
            "Keep it from being zero, or ask first: if … = 0 then … else ….");

    public static Complaint PowerOfNegative(Place place, string text, Quantity value) =>
        place.Complain(
            $"{Quoted(text)} is {value} here, and a number below zero has no such power.",
            "Use a whole exponent, or keep it from being negative.");

    public static Complaint NoAnswer(Place place, string text, string function, IEnumerable<Quantity> values) =>
        place.Complain($"{Quoted(text)} has no answer for {Listed(values.Select(value => value.ToString()), "and")}.", function switch
        {
            "sqrt" => "Take the root of nothing below zero.",
            "asin" or "acos" => "Keep it between -1 and 1.",
            "tan" => "Keep the angle off 90° and 270°.",
            "atan2" => "One of the two must not be zero.",
            _ => "The step must be more than zero.",
        });

    public static Complaint NoMeasure(Place place, string text) =>
        place.Complain(
            $"{Quoted(text)} cannot be measured for these values: one of the shapes has nothing left in it.",
            "Change the values that make the shape.");

    public static Complaint ResultTooLarge(Place place, string text) =>
        place.Complain($"{Quoted(text)} comes to more than can be computed.", "Use smaller numbers.");

    // Files

    public static Complaint FileTooLong(Place place, int limit) =>
        place.Complain($"The file has more than {Number(limit)} characters.", "Split it into smaller files.");

    public static Complaint EmptyFile(Place place) =>
        place.Complain("The file is empty.", "Write at least one line such as `name: value`.");

    public static Complaint NotText(Place place) =>
        place.Complain(
            "This is not text: a character stands here that no editor writes.",
            "Save the file as plain text in UTF-8, and give the right file.");

    public static Complaint TooManyParts(Place place, int limit) =>
        place.Complain($"The file has more than {Number(limit)} values in it.", "Split it into smaller files.");

    public static Complaint NestedFileTooDeep(Place place, int limit) =>
        place.Complain(
            $"Here the file is nested more than {Number(limit)} deep.",
            "Bring lists and groups nearer to the margin.");

    public static Complaint Anchor(Place place) =>
        place.Complain(
            "Anchors (&) and aliases (*) are not used here.",
            "Write the value out, or put text that begins with & or * in quotes.");

    public static Complaint Tag(Place place) =>
        place.Complain("Tags (!) are not used here.", "Take it away, or put text that begins with ! in quotes.");

    public static Complaint SecondDocument(Place place) =>
        place.Complain("A second document begins here (---).", "Put it in a file of its own.");

    public static Complaint DuplicateField(Place place, string name, int firstLine) =>
        place.Complain(
            $"{Quoted(name)} stands here a second time; the first is in line {Number(firstLine)}.",
            "Keep one of the two.");

    public static Complaint FieldNotPlain(Place place) =>
        place.Complain(
            "What stands before a colon must be a plain word here.",
            "Write it without quotes or brackets, as in `name: value`.");

    public static Complaint TabIndent(Place place) =>
        place.Complain("A tab stands at the beginning of this line.", "Indent with spaces.");

    public static Complaint QuoteNotClosed(Place place) =>
        place.Complain(
            "The text in quotes that begins here is never closed, or runs out of its lines.",
            "Close it with the same quote.");

    public static Complaint EscapeNotUnderstood(Place place) =>
        place.Complain(
            "In text in double quotes, a backslash stands for something that is not understood.",
            "Use single quotes, or write the backslash twice.");

    public static Complaint SignBeforeText(Place place) =>
        place.Complain("No text can begin with this sign.", "Put the text in quotes.");

    public static Complaint BracketNotClosed(Place place) =>
        place.Complain(
            "A list in [ ] or a group in { } is not closed, or lacks a comma.",
            "Close it, and put commas between its parts; put text with such signs in quotes.");

    public static Complaint ColonNotUnderstood(Place place) =>
        place.Complain(
            "The colon here is not understood.",
            "Indent by the same number of spaces as its neighbours, or put text with a colon in quotes.");

    public static Complaint IndentNotUnderstood(Place place) =>
        place.Complain(
            "This line does not fit to the lines above it.",
            "Indent it by as many spaces as its neighbours, with `name: value` or `- value` on it.");

    public static Complaint NotYaml(Place place) =>
        place.Complain(
            "From here on the file cannot be read.",
            "Look at the spaces, quotes and colons of this line and the one above; the file must be YAML.");

    public static Complaint UnknownField(Place place, string name, IEnumerable<string> known)
    {
        var names = known.ToList();
        return Spelling.Nearest(name, names, out var nearest)
            ? place.Complain($"{Quoted(name)} is not understood here; did you mean `{nearest}`?", $"Write {nearest}, or take it away.")
            : place.Complain($"{Quoted(name)} is not understood here.", names.Count > 0 ? $"Here stand {Listed(names, "and")}." : "Take it away.");
    }

    public static Complaint MissingField(Place place, string what, string name) =>
        place.Complain($"{what} lacks `{name}`.", $"Add a line `{name}: …` to it.");

    public static Complaint WrongKindOfNode(Place place, string what, string found, string wanted) =>
        place.Complain($"{what} is {found}, but must be {wanted}.", wanted switch
        {
            "a list" => "Write each of its parts on a line that begins with `- `.",
            "a group of fields" => "Write lines such as `name: value` under it, indented.",
            _ => "Write it behind the colon, on the same line.",
        });

    // Parts of sentences

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
