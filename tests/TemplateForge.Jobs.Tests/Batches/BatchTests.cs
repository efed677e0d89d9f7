using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs.Tests.Batches;

public sealed class BatchTests : IDisposable
{
    private const string File = "values.csv";
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("templateforge-");

    public void Dispose() => folder.Delete(recursive: true);

    private static Batch Read(string table, params string[] shared)
    {
        var complaints = new List<Complaint>();
        Assert.True(TryRead(table, shared, complaints, out var batch), string.Join('\n', complaints));
        return batch!;
    }

    private static List<Complaint> Refuse(string table, params string[] shared)
    {
        var complaints = new List<Complaint>();
        Assert.False(TryRead(table, shared, complaints, out _));
        return complaints;
    }

    private static bool TryRead(string table, string[] shared, List<Complaint> complaints, out Batch? batch) =>
        Batch.TryRead(new(File, table), Jobsite.Request(Jobsite.Patch, shared), () => { }, complaints, CancellationToken.None, out batch);

    private ImmutableArray<BatchOutcome> Make(Batch batch, List<Complaint> complaints) =>
        batch.Make(folder.FullName, replace: false, Jobsite.OnTheLine(3), () => { }, complaints, CancellationToken.None);

    [Fact]
    public void Each_row_becomes_the_job_that_make_makes_of_its_values()
    {
        var complaints = new List<Complaint>();
        var outcomes = Make(Read("job,diameter,joint\nfirst,31.5,\nsecond,\"1 1/4 in\",lap\n", "sheet=1"), complaints);

        Assert.Empty(complaints);
        Assert.All(outcomes, o => Assert.True(o.IsSaved));
        var alone = Jobsite.Make(Jobsite.Request(Jobsite.Patch, "sheet=1", "diameter=1 1/4 in", "joint=lap"));
        foreach (var file in alone.Files)
            Assert.Equal(file.Bytes, ImmutableArray.Create(System.IO.File.ReadAllBytes(System.IO.Path.Combine(folder.FullName, "second", file.Name))));
        Assert.Equal(alone.Files.Sum(f => (long)f.Bytes.Length), outcomes[1].Bytes);
    }

    [Fact]
    public void Rows_without_a_name_are_numbered_so_that_they_sort() =>
        Assert.Equal(
            Enumerable.Range(1, 10).Select(i => i.ToString("00", System.Globalization.CultureInfo.InvariantCulture)),
            Read("diameter\n" + string.Concat(Enumerable.Range(31, 10).Select(d => $"{d}\n"))).Rows.Select(r => r.Name));

    [Fact]
    public void An_empty_cell_leaves_the_default_and_any_other_counts_as_measured()
    {
        var rows = Read("diameter,sheet\n,1\n30,\n").Rows;
        Assert.Equal(["sheet"], rows[0].Request.Settings.Select(s => s.Name));
        Assert.Equal(["diameter"], rows[1].Request.Settings.Select(s => s.Name));
    }

    [Theory]
    [InlineData("diametr\n30\n", 1, 1)]            // no such parameter
    [InlineData("diameter,diameter\n30,30\n", 1, 10)] // twice
    [InlineData("diameter\n", 1, 1)]               // no row
    [InlineData("job,diameter\nA/b,30\n", 2, 1)]   // no folder's name
    [InlineData("job,diameter\na,30\na,31\n", 3, 1)]
    [InlineData("job,diameter\na,\"30\"\nb,\"x1\"\n", 3, 4)] // not a length: in the cell, behind the quote
    [InlineData("job,diameter\na,30\nb,99999\n", 3, 3)]
    public void What_is_wrong_is_told_with_the_place_of_its_cell(string table, int line, int column)
    {
        var complaint = Assert.Single(Refuse(table));
        Assert.Equal((File, line, column), (complaint.File, complaint.Line, complaint.Column));
    }

    [Fact]
    public void All_rows_are_told_of_at_once_and_a_rule_of_the_profile_names_the_row_that_it_refuses()
    {
        var complaints = Refuse("job,diameter,sheet\none,x,1\ntwo,30,y\nthree,30,1\n");
        Assert.Equal([2, 3], complaints.Select(c => c.Line));
    }

    [Fact]
    public void What_is_wrong_with_headings_names_and_rows_hides_nothing_that_is_wrong_in_cells()
    {
        var complaints = Refuse("job,diameter,shet,sheet\nA/b,banana,1,1\ntwo,-5,1,1\ntwo,30,1,y\nthree,30\nfour,9999,1,1\nfive,30,1,1\n");
        // A misspelt heading; a name and a cell of line 2; a cell of line 3; the same name again and a cell of line 4; a row too short; a cell.
        Assert.Equal([1, 2, 2, 3, 4, 4, 5, 6], complaints.Select(c => c.Line));
        Assert.Contains(complaints, c => c.Line == 2 && c.Problem.Contains("banana", StringComparison.Ordinal));
        Assert.All(complaints, c => Assert.Equal(File, c.File));
    }

    [Fact]
    public void What_is_wrong_with_the_command_is_told_once_whatever_number_of_rows_there_is()
    {
        foreach (var table in (string[])["diameter\n30\n", "diameter\n30\n31\n32\n"])
        {
            var complaints = new List<Complaint>();
            var request = Jobsite.Request(Jobsite.Patch) with { Paper = new("leter", Jobsite.OnTheLine(7)) };
            Assert.False(Batch.TryRead(new(File, table), request, () => { }, complaints, CancellationToken.None, out _));
            var complaint = Assert.Single(complaints);
            Assert.Equal(Jobsite.OnTheLine(7), new Place(complaint.File, complaint.Line, complaint.Column));
        }
    }

    [Theory]
    [InlineData("hand,diameter\nleft,190\n")]
    [InlineData("Hand;Diameter\nleft;190\n")]
    public void A_hand_that_all_rows_have_and_a_column_for_it_are_refused_like_any_other_value(string table)
    {
        var request = Jobsite.Request(Jobsite.Notch) with { Hand = new("left", Jobsite.OnTheLine(7)) };
        var complaints = new List<Complaint>();
        Assert.False(Batch.TryRead(new(File, table), request, () => { }, complaints, CancellationToken.None, out _));
        Assert.Contains("hand", Assert.Single(complaints).Problem, StringComparison.Ordinal);
        complaints.Clear();
        request = Jobsite.Request(Jobsite.Notch) with { MeasuredOn = new("left", Jobsite.OnTheLine(7)) };
        Assert.False(Batch.TryRead(new(File, "measured-on\nleft\n"), request, () => { }, complaints, CancellationToken.None, out _));
        Assert.Contains("measured-on", Assert.Single(complaints).Problem, StringComparison.Ordinal);
        // Beside a column for the one the other holds for all rows.
        complaints.Clear();
        Assert.True(Batch.TryRead(new(File, "hand\nleft\n"), request, () => { }, complaints, CancellationToken.None, out _));
    }

    [Fact]
    public void Headings_may_have_capitals_and_cells_may_be_parted_by_semicolons_or_tabs()
    {
        foreach (var separator in ";\t,")
        {
            var row = Assert.Single(Read($"Job{separator}DIAMETER{separator} Joint\nfirst{separator}31.5{separator}Lap\n").Rows);
            Assert.Equal("first", row.Name);
            Assert.Equal([("diameter", "31.5"), ("joint", "Lap")], row.Request.Settings.Select(s => (s.Name, s.Text)));
        }
    }

    [Fact]
    public void A_decimal_comma_between_semicolons_is_told_with_what_would_be_right()
    {
        var complaint = Assert.Single(Refuse("job;diameter\na;31,5\n"));
        Assert.Equal((2, 5), (complaint.Line, complaint.Column));
        Assert.Contains("31.5 with a point", complaint.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_all_rows_have_and_a_column_for_it_are_refused()
    {
        var complaint = Assert.Single(Refuse("diameter\n30\n", "diameter=31"));
        Assert.Contains("diameter", complaint.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_that_cannot_be_saved_leaves_its_place_as_it_was_and_the_others_are_made()
    {
        var taken = System.IO.Path.Combine(folder.FullName, "b");
        Directory.CreateDirectory(taken);
        System.IO.File.WriteAllText(System.IO.Path.Combine(taken, "notes.txt"), "precious");
        var complaints = new List<Complaint>();

        var outcomes = Make(Read("job,diameter\na,30\nb,31\nc,32\n"), complaints);

        Assert.Equal([true, false, true], outcomes.Select(o => o.IsSaved));
        Assert.Equal(3, Assert.Single(complaints).Line);
        Assert.Equal(["notes.txt"], Directory.EnumerateFileSystemEntries(taken).Select(System.IO.Path.GetFileName));
    }

    [Fact]
    public void Stopped_it_leaves_whole_jobs_only()
    {
        using var stop = new CancellationTokenSource();
        var batch = Read("diameter\n" + string.Concat(Enumerable.Range(31, 9).Select(d => $"{d}\n")));
        Assert.ThrowsAny<OperationCanceledException>(() => batch.Make(folder.FullName, replace: false, Jobsite.OnTheLine(3), stop.Cancel, [], stop.Token));
        var made = Directory.GetDirectories(folder.FullName);
        Assert.InRange(made.Length, 1, 8);
        Assert.All(made, job => Assert.Equal(Jobsite.SmallJob.Files.Length, Directory.GetFiles(job).Length));
    }

    [Fact]
    public void The_headings_of_a_table_are_the_jobs_name_its_hand_where_there_is_one_and_every_parameter() =>
        Assert.Equal("job,hand,diameter", string.Join(',', Batch.HeadingsFor(Profile(Jobsite.Notch)))[..17]);

    private static Profile Profile(string name) => Jobsite.Plan(Jobsite.Request(name)).Profile;
}
