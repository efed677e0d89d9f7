namespace TemplateForge.Notation;

/// <summary>What is complained of in a file of YAML.</summary>
public static partial class Wordings
{
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
}
