using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>What is said of tables of values.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownColumn(CsvCell heading, string profile, IEnumerable<string> known)
    {
        var all = known.ToList();
        var remedy = Spelling.Nearest(heading.Text, all, out var nearest) ? $"Did you mean {nearest}?"
            : heading.Text.Contains(';') || heading.Text.Contains('\t') ? "Part all headings and all cells with the same sign: commas, semicolons or tabs."
            : $"show {profile} --csv prints the headings that it can have.";
        return heading.Place.Complain($"{profile} asks for nothing called {Quoted(heading.Text)}.", remedy);
    }

    public static Complaint ColumnTwice(CsvCell heading) => heading.Place.Complain(
        $"There are two columns for {heading.Text}.", "Keep one of them.");

    public static Complaint GivenInTableToo(string name, Place place) => place.Complain(
        $"{name} is given here for all rows, and the table has a column for it.", "Leave one of the two out.");

    public static Complaint NoRows(Place place) => place.Complain(
        "There is no row under the headings.", "Write a row for each job.");

    public static Complaint NotAJobName(Place place, string name) => place.Complain(
        $"{Quoted(name)} cannot be the name of a folder on every system.",
        "Take small letters, digits, dots, hyphens and underscores, with a letter or a digit first.");

    public static Complaint JobNameTwice(Place place, string name, Place first) => place.Complain(
        $"There is a job called {Quoted(name)} already, in line {first.Line}.", "Give every job a name of its own.");

    /// <summary>A complaint that points elsewhere, told of the row that it is about.</summary>
    public static Complaint InRow(BatchRow row, Complaint complaint) => row.Place.Complain(
        $"Job {row.Name}: {complaint.Problem}", $"{complaint.Remedy} ({complaint.File}:{complaint.Line}:{complaint.Column})");
}
