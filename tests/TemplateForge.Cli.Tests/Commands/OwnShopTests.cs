using System.IO;

namespace TemplateForge.Cli.Tests.Commands;

/// <summary>A shop's own tables, named on the command line.</summary>
public sealed class OwnShopTests
{
    private const string Profile = """
        profile: own-plate
        version: 1
        title: Plate
        about: A plate.
        hand: either
        face_up: outer face
        values:
          slot: {from_shop: kerf, of: router}
        shapes:
          plate:
            rectangle: {from: [0, 0], to: [100 mm + slot, 100 mm]}
        pieces:
          plate: {title: Plate, blank: plate, material: dc01, thickness: 1 mm}
        steps: [Cut it.]

        """;

    private const string Cutters = "brakes: {}\ncutters:\n  router: {title: our router, kerf: 2 mm, least_hole: 4 mm, source: measured}\n";

    private static readonly string[] Made = ["make", "own-plate.yaml", "--out", "job"];

    [Fact]
    public void A_shops_own_number_replaces_that_of_the_library()
    {
        using var typed = Shop("machines.yaml", Cutters);
        Assert.Equal(ExitCode.Done, typed.Again([.. Made, "--shop", "ours"]));
        Assert.Contains("102.0 × 100.0 mm", typed.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, typed.Again([.. Made, "--replace"]));
        Assert.Contains("106.0 × 100.0 mm", typed.Output, StringComparison.Ordinal);
    }

    // 1 mm of DC01, 106 by 100: 7850 kg/m³ make 83.2 g.
    [Fact]
    public void The_weight_is_in_the_table_of_what_was_made()
    {
        using var typed = Shop("machines.yaml", Cutters);
        typed.Again(Made);
        Assert.Contains("mild steel DC01", typed.Output, StringComparison.Ordinal);
        Assert.Contains("0.08", typed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_is_made_again_from_its_record_without_the_folder()
    {
        using var typed = Shop("machines.yaml", Cutters);
        typed.Again([.. Made, "--shop", "ours"]);
        Directory.Delete(typed["ours"], recursive: true);
        Assert.Equal(ExitCode.Done, typed.Again("make", "--job", "job/job.json", "--out", "again"));
        foreach (var name in typed.Files.Where(f => f.StartsWith("job/", StringComparison.Ordinal)).ToList())
            Assert.Equal(File.ReadAllBytes(typed[name]), File.ReadAllBytes(typed[name.Replace("job/", "again/", StringComparison.Ordinal)]));
    }

    [Theory]
    [InlineData("machines.yaml", "cutters:\n  router: {title: t, kerf: 2 deg, least_hole: 4 mm, source: s}\n", "ours/machines.yaml:2:28: ")]
    [InlineData("machine.yaml", "cutters: {}\n", "ours/machine.yaml:1:1: machine.yaml is no table of a shop.\n    Did you mean machines.yaml?")]
    [InlineData("readme.txt", "hello\n", "ours has no table of a shop.")]
    [InlineData("habits.yaml", "paper: a9\n", "ours/habits.yaml:1:8: ")]
    public void A_fault_in_the_folder_is_told_with_its_place(string name, string text, string told)
    {
        using var typed = Shop(name, text);
        foreach (var words in (string[][])[Made, ["list"], ["show", "own-plate.yaml"], ["check-profile", "own-plate.yaml"]])
        {
            Assert.Equal(ExitCode.Refused, typed.Again([.. words, "--shop", "ours/"]));
            Assert.Contains(told, typed.Errors, StringComparison.Ordinal);
        }
        Assert.DoesNotContain(typed.Files, f => f.StartsWith("job/", StringComparison.Ordinal));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told_where_it_was_named()
    {
        using var typed = Shop("habits.yaml", "paper: a3\n");
        Assert.Equal(ExitCode.Refused, typed.Again("list", "--shop", "theirs"));
        Assert.StartsWith("command line:1:13: ", typed.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_is_made_again_takes_no_other_tables()
    {
        using var typed = Shop("habits.yaml", "paper: a3\n");
        typed.Again(Made);
        Assert.Equal(ExitCode.NotUnderstood, typed.Again("make", "--job", "job/job.json", "--shop", "ours"));
    }

    private static Typed Shop(string name, string text)
    {
        var typed = new Typed();
        File.WriteAllText(typed["own-plate.yaml"], Profile);
        Directory.CreateDirectory(typed["ours"]);
        File.WriteAllText(Path.Combine(typed["ours"], name), text);
        return typed;
    }
}
