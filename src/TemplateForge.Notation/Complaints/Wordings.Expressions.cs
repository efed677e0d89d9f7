namespace TemplateForge.Notation;

/// <summary>What is complained of in an expression: as it is read, checked and computed.</summary>
public static partial class Wordings
{
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
}
