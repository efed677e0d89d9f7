using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Every sentence with which a shop's tables are complained of.</summary>
public static partial class Wordings
{
    public static Complaint UnknownCaution(Place place, string name, IEnumerable<string> known) =>
        place.Complain($"{name} is no caution of the shop.", $"Choose one of {string.Join(", ", known.Order(StringComparer.Ordinal))}.");

    public static Complaint UnknownPaper(Place place, string name, IEnumerable<string> known) =>
        place.Complain(
            $"There is no paper {name} in the shop's table.",
            Spelling.Nearest(name, known, out var nearest) ? $"Did you mean {nearest}?" : $"Choose one of {string.Join(", ", known)}.");

    public static Complaint PaperOnItsSide(Place place, string name) =>
        place.Complain($"The paper {name} is wider than it is high.", "Write the shorter side as its width.");

    public static Complaint PaperWithoutRoom(Place place, Paper paper, double overlap) =>
        place.Complain(
            $"The paper {paper.Name} leaves no room for a drawing beside its margins and an overlap of {Quantity.Length(overlap)}.",
            "Take it out of the table, or lower its margin or the overlap.");

    public static Complaint UnknownFamily(Place place, string word, IEnumerable<string> known) =>
        place.Complain($"There is no family of metals called {word}.", $"Choose one of {string.Join(", ", known)}.");

    public static Complaint YesOrNoWanted(Place place, string name, string word) =>
        place.Complain($"{name} is {word}, but takes yes or no.", "Write yes or no.");

    public static Complaint NotAName(Place place, string name) =>
        place.Complain(
            $"{(name.Length == 0 ? "empty" : name)} cannot be the name of an entry.",
            "Use letters, digits, hyphens and underscores, a letter first, at most 40 characters.");

    public static Complaint CoatingWithoutZinc(Place place) =>
        place.Complain("A coating is given, but zinc is no.", "Write zinc: yes, or take the coating away.");

    public static Complaint UnknownCoating(Place place, string word, IEnumerable<string> known) =>
        place.Complain(
            $"There is no coating called {word} in the table.",
            $"Choose one of {string.Join(", ", known)}, or give both_faces and least_on_one_face in g/m².");

    public static Complaint FaceOverHalf(Place place, double one, double both) =>
        place.Complain(
            FormattableString.Invariant($"One face is said to have {one:0.#} g/m² at least, which is more than half of {both:0.#} g/m² on both."),
            "Write what both faces have together, and what the worse of them has at least.");

    public static Complaint UnknownSpringback(Place place, string word, IEnumerable<string> known) =>
        place.Complain($"There is no springback of {word} in the table.", $"Choose one of {string.Join(", ", known)}, or leave it out.");

    public static Complaint ThicknessTwice(Place place, string name, string thickness) =>
        place.Complain($"{name} has a row for {thickness} already.", "Keep one of the two.");

    public static Complaint NoHole(Place place, string name, IEnumerable<string> holes) =>
        place.Complain($"Nothing is said of what is drilled for {name}.", $"Give one or more of {string.Join(", ", holes)}.");

    public static Complaint UnknownGuide(Place place, string word, IEnumerable<string> known) =>
        place.Complain($"{(word.Length == 0 ? "This" : word)} is nothing that runs along a jig plate.", $"Choose of {string.Join(", ", known)}.");

    public static Complaint BurnsUnderATorch(Place place) =>
        place.Complain("A plate that burns is said to guide a torch's shroud.", "Take shroud out of its list: never wood or board under a torch.");

    public static Complaint OutOfRange(Place place, string name, Quantity value, Quantity least, Quantity most) =>
        place.Complain($"{name} is {value}, but takes {least} to {most}.", $"Bring {name} within {least} to {most}.");
}
