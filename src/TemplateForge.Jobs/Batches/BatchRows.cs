using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs;

/// <summary>The rows of a table of values as jobs.</summary>
/// <remarks>
/// A heading is the name of a parameter, or of another way to measure one, or one of three words: <c>job</c> for the job's name,
/// <c>hand</c> and <c>measured-on</c> for the hands; capitals are understood. An empty cell gives nothing. Where there are no names, rows are numbered.
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
    /// <returns>All rows that are sound, also where headings or names were complained of: what is wrong in their cells can be told as well.</returns>
    public static ImmutableArray<BatchRow> Of(CsvTable table, JobRequest shared, Profile profile, ICollection<Complaint> complaints)
    {
        ImmutableArray<string> known = [.. profile.Parameters.Select(p => p.Name), .. Words];
        var columns = new List<(int At, string Name)>();
        foreach (var (heading, at) in table.Headings.Select((heading, at) => (heading, at)))
        {
            if (!TryName(heading.Text.Trim(), known, out var column)) complaints.Add(Wordings.UnknownColumn(heading, profile.Name, known));
            else if (columns.Any(c => c.Name == column)) complaints.Add(Wordings.ColumnTwice(heading));
            else columns.Add((at, column));
        }
        foreach (var (name, choice) in (ReadOnlySpan<(string, Choice)>)
            [.. shared.Settings.Select(s => (s.Name, new Choice(s.Text, s.Place))), (Hand, shared.Hand), (MeasuredOn, shared.MeasuredOn)])
        {
            // Rows then have it from one place only, and are not complained of as well.
            if (choice.IsMade && columns.RemoveAll(c => c.Name == name) > 0) complaints.Add(Wordings.GivenInTableToo(name, choice.Place));
        }
        if (table.Rows.IsEmpty) complaints.Add(Wordings.NoRows(table.Headings[0].Place));

        var digits = table.Rows.Length.ToString(CultureInfo.InvariantCulture).Length;
        var rows = ImmutableArray.CreateBuilder<BatchRow>(table.Rows.Length);
        var names = new Dictionary<string, Place>(StringComparer.Ordinal);
        foreach (var (cells, i) in table.Rows.Select((row, i) => (row.Cells, i)))
        {
            if (!table.Rows[i].IsSound) continue;
            var place = table.Rows[i].Place;
            var given = columns.Where(c => cells[c.At].Text.Trim().Length > 0).ToDictionary(c => c.Name, c => cells[c.At]);
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
        return rows.ToImmutable();
    }

    private static bool TryName(string heading, ImmutableArray<string> known, out string name)
    {
        name = known.Contains(heading) ? heading : known.FirstOrDefault(k => k.Equals(heading, StringComparison.OrdinalIgnoreCase), "");
        return name.Length > 0;
    }
}
