using System.Text.Json;
using System.Text.Json.Nodes;
using TemplateForge.Notation;

namespace TemplateForge.Jobs.Tests.Records;

public sealed class JobRecordTests
{
    private static readonly string Record = Jobsite.RecordOf(Jobsite.SmallJob.Jobs[0]);

    [Fact]
    public void A_job_is_made_again_from_its_record_byte_for_byte()
    {
        var request = Jobsite.Request(Jobsite.Notch, "diameter=7 1/2 in", "axis_in=-20") with
        {
            Hand = Jobsite.Choose("right"),
            Paper = Jobsite.Choose("letter"),
        };
        Remakes(Jobsite.Make(request));
    }

    [Fact]
    public void A_job_is_made_again_as_it_was_where_the_library_has_another_profile_by_now()
    {
        var request = Jobsite.Request(Jobsite.Patch);
        var changed = request.Profile with { Text = request.Profile.Text.Replace("default: 30", "default: 31", StringComparison.Ordinal) };
        Assert.NotEqual(request.Profile, changed);
        var now = Jobsite.Make(request with { Profile = changed });

        Assert.NotEqual(Record, Jobsite.RecordOf(now.Jobs[0]));
        Remakes(Jobsite.SmallJob);
    }

    [Fact]
    public void The_profile_stands_in_the_record_letter_for_letter_and_where_it_lies_does_not()
    {
        var request = Jobsite.Request(Jobsite.Patch);
        var text = request.Profile.Text.Replace("\n", "\r\n", StringComparison.Ordinal) + "# \"µ\" \\ \t<é>\r\n";
        var elsewhere = request with
        {
            Profile = new($"/home/somebody/secret/{Jobsite.Patch}.yaml", text),
            ShopFiles = [.. request.ShopFiles.Select(f => f with { Name = $"/home/somebody/{f.Name}" })],
        };

        var record = Jobsite.RecordOf(Jobsite.Make(elsewhere).Jobs[0]);

        Assert.DoesNotContain("somebody", record, StringComparison.Ordinal);
        var read = Jobsite.Read(record).Request;
        Assert.Equal(text, read.Profile.Text);
        Assert.Equal(request.ShopFiles.Select(f => f.Text), read.ShopFiles.Select(f => f.Text));
    }

    [Fact]
    public void There_is_no_user_machine_or_path_in_the_record()
    {
        foreach (var secret in (string[])[Environment.MachineName, AppContext.BaseDirectory, Environment.CurrentDirectory])
            Assert.DoesNotContain(secret, Record, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain($"{DateTime.UtcNow:yyyy}", Record, StringComparison.Ordinal);
    }

    // A round hole of 30 mm less a weld gap of 0.8 mm all round: a disc of radius 14.2 mm.
    [Fact]
    public void A_round_patch_is_recorded_with_the_area_and_length_of_a_disc()
    {
        var patch = Piece(Record, "patch");
        Assert.Equal(Math.PI * 14.2 * 14.2, Number(patch, "area"), tolerance: 1e-6 * 2 * Math.PI * 14.2);
        Assert.Equal(2 * Math.PI * 14.2, Number(patch, "length"), tolerance: 1e-6);
        Assert.Equal(2 * Math.PI * 14.2, Number(patch["cut"]!, "length"), tolerance: 1e-6);
        Assert.Equal("[-14.2,-14.2]", patch["bounds"]!["min"]!.ToJsonString());
        Assert.Equal("patch-cut.dxf", patch["cut"]!["file"]!.GetValue<string>());
        Assert.Empty(patch["holes"]!.AsArray());
    }

    [Fact]
    public void Paper_has_no_cut_file() => Assert.Null(Piece(Record, "opening")["cut"]);

    // Lap 16 mm round a 30 mm hole: the holes' centres lie 1.5 diameters in from the edge at 15 + 16 − 10.5 = 20.5 mm.
    [Fact]
    public void A_lapped_patch_is_recorded_with_its_plug_holes()
    {
        var set = Jobsite.Make(Jobsite.Request(Jobsite.Patch, "joint=lap"));
        var holes = Piece(Jobsite.RecordOf(set.Jobs[0]), "patch")["holes"]!.AsArray();

        Assert.NotEmpty(holes);
        Assert.All(holes, hole =>
        {
            Assert.Equal(7, Number(hole!, "diameter"), tolerance: 1e-6);
            var centre = hole!["centre"]!.AsArray().Select(v => v!.GetValue<double>()).ToArray();
            Assert.Equal(20.5, Math.Sqrt(centre[0] * centre[0] + centre[1] * centre[1]), tolerance: 1e-6);
        });
    }

    [Fact]
    public void A_notch_is_one_open_cut_that_runs_past_its_finish_line()
    {
        var panel = Piece(Jobsite.RecordOf(Jobsite.Pair.Jobs[0]), "panel");

        Assert.Equal((1, 0), ((int)Number(panel["cut"]!, "open"), (int)Number(panel["cut"]!, "closed")));
        Assert.True(Number(panel["cut"]!, "length") > Number(panel, "length") + 2 * Sheets.CutSheet.RunOut);
        // The panel's edge is where y is 0, so the finish line begins and ends there.
        var vertices = Assert.Single(panel["finish"]!.AsArray())!["vertices"]!.AsArray();
        Assert.Equal(0, vertices[0]![1]!.GetValue<double>(), tolerance: 1e-6);
        Assert.Equal(0, vertices[^1]![1]!.GetValue<double>(), tolerance: 1e-6);
    }

    [Fact]
    public void The_other_hand_is_recorded_as_the_mirror_image()
    {
        var both = Jobsite.Pair;
        var (left, right) = (Piece(Jobsite.RecordOf(both.Jobs[0]), "panel"), Piece(Jobsite.RecordOf(both.Jobs[1]), "panel"));

        Assert.Equal(Number(left, "area"), Number(right, "area"), tolerance: 1e-6 * Number(left, "boundary"));
        Assert.Equal(left["bounds"]!["min"]![0]!.GetValue<double>(), -right["bounds"]!["max"]![0]!.GetValue<double>(), tolerance: 1e-6);
        Assert.Equal(
            left["datums"]!.AsArray().Select(d => -d!["at"]![0]!.GetValue<double>()),
            right["datums"]!.AsArray().Select(d => d!["at"]![0]!.GetValue<double>()));
    }

    [Fact]
    public void The_record_names_every_file_of_the_job() =>
        Assert.Equal(Jobsite.SmallJob.Files.Select(f => f.Name), Jobsite.Read(Record).Files);

    [Fact]
    public void The_record_ends_its_lines_the_same_way_everywhere()
    {
        Assert.DoesNotContain('\r', Record);
        Assert.EndsWith("}\n", Record, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("profile: notch", 1, 1)]
    [InlineData("{\n  \"format\": \"templateforge job\",\n  \"version\": 1,,\n}", 3, 16)]
    [InlineData("{} {}", 1, 4)]
    public void What_is_not_JSON_is_told_with_its_place(string text, int line, int column) =>
        Assert.Equal([Wordings.NotJson(new("job.json", line, column))], Refused(text));

    [Fact]
    public void Nesting_without_end_is_refused() => Assert.Single(Refused(new string('[', 100_000)));

    [Fact]
    public void A_text_longer_than_any_record_is_refused() =>
        Assert.Equal([Wordings.RecordTooLong(new("job.json", 1, 1))], Refused(new string(' ', JobRecord.LongestText + 1)));

    [Theory, InlineData("{}"), InlineData("[1]"), InlineData("null"), InlineData("{\"format\": \"a shopping list\"}")]
    public void JSON_that_is_no_job_record_is_refused(string text) =>
        Assert.Equal([Wordings.NotAJobRecord(new("job.json", 1, 1))], Refused(text));

    [Fact]
    public void A_record_of_a_later_version_is_refused() =>
        Assert.Equal([Wordings.OtherRecordVersion(new("job.json", 3, 14), "2")], Refused(Record.Replace("\"version\": 1,\n  \"profile\"", "\"version\": 2,\n  \"profile\"", StringComparison.Ordinal)));

    [Fact]
    public void All_that_is_wrong_with_a_record_is_told_at_once()
    {
        const string text = """
            {
              "format": "templateforge job",
              "version": 1,
              "profile": { "name": "µ", "version": 1, "file": "a.yaml", "text": 7 },
              "shop": "none",
              "hand": "left", "hand": "right",
              "papper": "a4",
              "given": [ { "name": "µ", "value": "12" } ],
              "files": []
            }
            """;
        var complaints = Refused(text);
        Assert.Contains(Wordings.WrongKindInRecord(At(4, 69), "text", JsonTokenType.String), complaints);
        Assert.Contains(Wordings.WrongKindInRecord(At(5, 11), "shop", JsonTokenType.StartArray), complaints);
        Assert.Contains(Wordings.TwiceInRecord(At(6, 19), "hand"), complaints);
        Assert.Contains(complaints, c => c is { Line: 7, Column: 3, Remedy: "Did you mean paper?" });
        Assert.Contains(complaints, c => c is { Line: 8, Column: 29 } && c.Problem.Contains("value", StringComparison.Ordinal));
        Assert.Contains(Wordings.MissingInRecord(At(8, 14), "text"), complaints);
        Assert.Contains(Wordings.MissingInRecord(At(1, 1), "measured_on"), complaints);
        Assert.Contains(Wordings.MissingInRecord(At(1, 1), "paper"), complaints);
        Assert.Equal(8, complaints.Count);
    }

    [Theory, InlineData("both"), InlineData("upper"), InlineData("")]
    public void A_hand_that_is_none_is_refused(string hand)
    {
        var complaint = Assert.Single(Refused(Record.Replace("\"hand\": \"either\"", $"\"hand\": \"{hand}\"", StringComparison.Ordinal)));
        Assert.Equal(Wordings.UnknownHand(new(hand, new("job.json", complaint.Line, 11)), ["left", "right", "either"]), complaint);
    }

    [Fact]
    public void A_damaged_record_is_refused_or_read_but_never_breaks_the_reader()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 300; i++)
        {
            var from = random.Next(Record.Length);
            var damaged = Record.Remove(from, Math.Min(random.Next(1, 400), Record.Length - from));
            var complaints = new List<Complaint>();
            if (!JobRecord.TryRead(new("job.json", damaged), complaints, out _)) Assert.NotEmpty(complaints);
        }
    }

    private static Place At(int line, int column) => new("job.json", line, column);

    private static void Remakes(JobSet set)
    {
        var record = Jobsite.RecordOf(Assert.Single(set.Jobs));
        var again = Jobsite.Make(Jobsite.Read(record).Request);
        Jobsite.AreTheSame(set.Files, again.Files);
        Assert.True(again.HasRecord(new("job.json", record)));
        Assert.False(again.HasRecord(new("job.json", record + " ")));
    }

    private static List<Complaint> Refused(string text)
    {
        var complaints = new List<Complaint>();
        Assert.False(JobRecord.TryRead(new("job.json", text), complaints, out _));
        return complaints;
    }

    private static JsonNode Piece(string record, string name) =>
        JsonNode.Parse(record)!["pieces"]!.AsArray().Single(p => p!["name"]!.GetValue<string>() == name)!;

    private static double Number(JsonNode of, string name) => of[name]!.GetValue<double>();
}
