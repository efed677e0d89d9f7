using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs;

/// <summary>The rows of a table of values as jobs.</summary>
/// <remarks>
/// A heading is the name of a parameter, or of another way to measure one, or one of three words: <c>job</c> for the job's name,
/// <c>hand</c> and <c>measured-on</c> for the hands. An empty cell gives nothing. Where there are no names, rows are numbered.
/// </remarks>
internal static class BatchRows
{
    public const string Job = "job";
    public const string Hand = "hand";
    public const string MeasuredOn = "measured-on";

    public static ImmutableArray<string> Words => [Job, Hand, MeasuredOn];

    /// <param name="table">The table.</param>
    /// <param name="shared">What all rows have in common; what a row says of hands goes before it.</param>
    /// <param name="profile">The profile that the values are for.</param>
    /// <param name="complaints">Where complaints go, all of them at once.</param>
    public static ImmutableArray<BatchRow> Of(CsvTable table, JobRequest shared, Profile profile, ICollection<Complaint> complaints)
    {
        ImmutableArray<string> known = [.. profile.Parameters.Select(p => p.Name), .. Words];
        var headings = new HashSet<string>(StringComparer.Ordinal);
        foreach (var heading in table.Headings)
        {
            if (!known.Contains(heading.Text)) complaints.Add(Wordings.UnknownColumn(heading, profile.Name, known));
            else if (!headings.Add(heading.Text)) complaints.Add(Wordings.ColumnTwice(heading));
        }
        foreach (var setting in shared.Settings.Where(s => headings.Contains(s.Name))) complaints.Add(Wordings.GivenInTableToo(setting));
        if (table.Rows.IsEmpty) complaints.Add(Wordings.NoRows(table.Headings[0].Place));

        var digits = table.Rows.Length.ToString(CultureInfo.InvariantCulture).Length;
        var rows = ImmutableArray.CreateBuilder<BatchRow>(table.Rows.Length);
        var names = new Dictionary<string, Place>(StringComparer.Ordinal);
        foreach (var (cells, i) in table.Rows.Select((row, i) => (row.Cells, i)))
        {
            var place = table.Rows[i].Place;
            var given = table.Headings.Zip(cells).Where(c => c.Second.Text.Trim().Length > 0).DistinctBy(c => c.First.Text).ToDictionary(c => c.First.Text, c => c.Second);
            var name = Choice(Job);
            var folder = name.IsMade ? name.Word : (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0');
            var where = name.IsMade ? name.Place : place;
            if (folder.Contains('/') || !NamedBytes.IsSafe(folder)) complaints.Add(Wordings.NotAJobName(where, folder));
            else if (!names.TryAdd(folder, where)) complaints.Add(Wordings.JobNameTwice(where, folder, names[folder]));
            rows.Add(new(folder, place, shared with
            {
                Settings = [.. shared.Settings, .. given.Where(g => !Words.Contains(g.Key)).Select(g => new Setting(g.Key, g.Value.Text, g.Value.Place) { ValuePlace = g.Value.Place })],
                Hand = Choice(Hand) is { IsMade: true } hand ? hand : shared.Hand,
                MeasuredOn = Choice(MeasuredOn) is { IsMade: true } measuredOn ? measuredOn : shared.MeasuredOn,
            }));

            Choice Choice(string word) => given.TryGetValue(word, out var cell) ? new(cell.Text.Trim(), cell.Place) : Jobs.Choice.Open;
        }
        return rows.MoveToImmutable();
    }
}
