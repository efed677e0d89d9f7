using System.Text;
using TemplateForge.Notation;

namespace TemplateForge.Jobs.Tests;

/// <summary>A job that is cut by a machine: chosen by name, its kerf known or refused, made again from its record.</summary>
public class CuttingTests
{
    private static readonly JobRequest Patch = Jobsite.Request(Jobsite.Patch, "sheet=1");

    [Fact]
    public void Without_a_cutter_a_record_says_nothing_of_one()
    {
        var record = Jobsite.RecordOf(Jobsite.SmallJob.Jobs[0]);
        Assert.DoesNotContain("\"cutter\"", record, StringComparison.Ordinal);
        Assert.DoesNotContain("\"plan\"", record, StringComparison.Ordinal);
        Assert.DoesNotContain(Jobsite.SmallJob.Files, f => f.Name.EndsWith("-cut.svg", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_with_a_cutter_and_a_given_kerf_is_made_again_byte_for_byte()
    {
        var set = Jobsite.Make(Patch with { Cutter = Jobsite.Choose("plasma-table"), Kerf = Jobsite.Choose("1.5 mm") });
        var record = Jobsite.RecordOf(set.Jobs[0]);
        Assert.Contains("\"cutter\": \"plasma-table\"", record, StringComparison.Ordinal);
        Assert.Contains("\"kerf\": \"1.5 mm\"", record, StringComparison.Ordinal);
        Assert.Contains("\"kerf_from\": \"given\"", record, StringComparison.Ordinal);
        Jobsite.AreTheSame(set.Files, Jobsite.Make(Jobsite.Read(record).Request).Files);
    }

    [Fact]
    public void A_machine_is_given_nothing_that_it_does_not_cut()
    {
        var steel = Jobsite.Request("plug-welded-doubler") with { Cutter = Jobsite.Choose("router") };
        Assert.StartsWith("The router with a 6 mm cutter does not cut ", Assert.Single(Jobsite.Refuse(steel)).Problem, StringComparison.Ordinal);
        // An aluminium plate with a gauge of steel: the plate is planned, the gauge is for another machine.
        var jig = Jobsite.Plan(Jobsite.Request("booster-clearance-notch", "jig=router") with { Cutter = Jobsite.Choose("router") }).Modifications[0].Pieces;
        Assert.False(jig.Single(p => p.Name == "notch-jig").Planned.IsNone);
        var gauge = jig.Single(p => p.Name == "notch-jig-gauge");
        Assert.True(gauge.Planned.IsNone);
        Assert.Contains(gauge.Notes, n => n.Contains("for another machine", StringComparison.Ordinal));
    }

    [Fact]
    public void The_holes_of_a_jig_plate_are_left_to_drill_and_reamer()
    {
        var jig = Jobsite.Plan(Jobsite.Request("booster-clearance-notch", "jig=torch") with { Cutter = Jobsite.Choose("plasma-table"), Kerf = Jobsite.Choose("1.5 mm") });
        var plate = jig.Modifications[0].Pieces.Single(p => p.Name == "notch-jig");
        Assert.Equal(2, plate.Planned.Drilled.Length);
        Assert.All(plate.Planned.Drilled, d => Assert.Equal(Fabrication.DrillReason.Wanted, d.Reason));
    }

    [Fact]
    public void A_job_in_another_DXF_says_so_in_its_files_and_is_made_again_byte_for_byte()
    {
        var set = Jobsite.Make(Patch with { Dxf = Jobsite.Choose("r12-in") });
        var cut = set.Files.Single(f => f.Name.EndsWith("-cut.dxf", StringComparison.Ordinal));
        Assert.EndsWith("R12 in inches", cut.What, StringComparison.Ordinal);
        var text = Encoding.ASCII.GetString(cut.Bytes.AsSpan());
        Assert.StartsWith("999\r\nUnit: in\r\n", text, StringComparison.Ordinal);
        Assert.Contains("AC1009", text, StringComparison.Ordinal);
        var record = Jobsite.RecordOf(set.Jobs[0]);
        Assert.Contains("\"dxf\": \"r12-in\"", record, StringComparison.Ordinal);
        Jobsite.AreTheSame(set.Files, Jobsite.Make(Jobsite.Read(record).Request).Files);
    }

    [Fact]
    public void A_shop_says_once_which_DXF_its_controller_takes()
    {
        var habits = Patch with { ShopFiles = [.. Patch.ShopFiles, new TextFile("ours/habits.yaml", "dxf: r12\n")] };
        Assert.Equal("r12", Jobsite.Make(habits).Jobs[0].Dxf.Name);
        Assert.Equal("r2000-in", Jobsite.Make(habits with { Dxf = Jobsite.Choose("r2000-in") }).Jobs[0].Dxf.Name);
        var wrong = Patch with { ShopFiles = [.. Patch.ShopFiles, new TextFile("ours/habits.yaml", "dxf: r14\n")] };
        Assert.Contains("r2000, r2000-in, r12, r12-in", Assert.Single(Jobsite.Refuse(wrong)).Remedy, StringComparison.Ordinal);
        Assert.Contains("r2000, r2000-in, r12, r12-in", Assert.Single(Jobsite.Refuse(Patch with { Dxf = Jobsite.Choose("r13") })).Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cut_file_carries_the_path_and_says_the_kerf()
    {
        var set = Jobsite.Make(Patch with { Cutter = Jobsite.Choose("router") });
        var cut = set.Files.Single(f => f.Name.EndsWith("-cut.svg", StringComparison.Ordinal));
        var text = Encoding.UTF8.GetString(cut.Bytes.AsSpan());
        Assert.All((string[])["CUT", "PIERCE", "FINISHED-EDGE"], layer => Assert.Contains(layer, text, StringComparison.Ordinal));
        Assert.Contains("kerf 6 mm", set.Files.Single(f => f.Name.EndsWith("-cut.dxf", StringComparison.Ordinal)).What, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_hurt_where_a_torch_cuts_comes_to_the_cautions_of_the_profile_once()
    {
        var plain = Jobsite.SmallJob.Jobs[0].Modification.Cautions.Select(c => c.Title).ToList();
        var torch = Jobsite.Plan(Patch with { Cutter = Jobsite.Choose("plasma-table"), Kerf = Jobsite.Choose("1 mm") });
        var titles = torch.Modifications[0].Cautions.Select(c => c.Title).ToList();
        Assert.Equal(plain, titles.Take(plain.Count));
        Assert.Contains("Light and fume of the torch", titles);
        Assert.Equal(titles.Distinct(), titles);
    }

    // It is the thickness that decides, so the complaint says which.
    [Fact]
    public void A_kerf_that_nobody_has_measured_is_never_guessed()
    {
        var complaint = Assert.Single(Jobsite.Refuse(Patch with { Cutter = Jobsite.Choose("plasma-table") }));
        Assert.Contains("in sheet of 1 mm", complaint.Problem, StringComparison.Ordinal);
        Assert.Contains("halved", complaint.Remedy, StringComparison.Ordinal);
        Assert.Equal(20, complaint.Column);
    }

    [Fact]
    public void A_shop_that_has_measured_its_kerf_by_thickness_need_not_give_it()
    {
        var request = Patch with { ShopFiles = [.. Patch.ShopFiles, Own("kerf: {1.5 mm: 1.3 mm}")], Cutter = Jobsite.Choose("plasma-table") };
        Assert.Contains("\"kerf\": 1.3,", Jobsite.RecordOf(Jobsite.Make(request).Jobs[0]), StringComparison.Ordinal);
        var thick = Jobsite.Refuse(request with { Settings = Jobsite.Request(Jobsite.Patch, "sheet=2").Settings });
        Assert.Contains("in sheet of 2 mm", thick[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_controller_that_compensates_needs_no_kerf_and_refuses_one()
    {
        var request = Patch with { ShopFiles = [.. Patch.ShopFiles, Own("compensates: yes")], Cutter = Jobsite.Choose("plasma-table") };
        var record = Jobsite.RecordOf(Jobsite.Make(request).Jobs[0]);
        Assert.Contains("\"kerf_from\": \"controller\"", record, StringComparison.Ordinal);
        Assert.Contains("taken twice", Jobsite.Refuse(request with { Kerf = Jobsite.Choose("1 mm") })[0].Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shop_may_usually_cut_with_something_and_a_job_may_do_without_it()
    {
        var request = Patch with { ShopFiles = [.. Patch.ShopFiles, new TextFile("ours/habits.yaml", "cutter: router\n")] };
        Assert.Contains("\"cutter\": \"router\"", Jobsite.RecordOf(Jobsite.Make(request).Jobs[0]), StringComparison.Ordinal);
        var without = Jobsite.Make(request with { Cutter = Jobsite.Choose("none") });
        var record = Jobsite.RecordOf(without.Jobs[0]);
        Assert.Contains("\"cutter\": \"none\"", record, StringComparison.Ordinal);
        Jobsite.AreTheSame(without.Files, Jobsite.Make(Jobsite.Read(record).Request).Files);
    }

    [Theory]
    [InlineData("ruoter", "", "'ruoter'")]
    [InlineData("", "1.5", "not what cuts")]
    [InlineData("plasma-table", "0 mm", "no kerf")]
    [InlineData("plasma-table", "21 mm", "no kerf")]
    [InlineData("plasma-table", "wide", "wide")]
    public void What_cannot_be_is_refused(string cutter, string kerf, string said)
    {
        var request = Patch with
        {
            Cutter = cutter.Length > 0 ? Jobsite.Choose(cutter) : Choice.Open,
            Kerf = kerf.Length > 0 ? Jobsite.Choose(kerf) : Choice.Open,
        };
        Assert.Contains(said, Assert.Single(Jobsite.Refuse(request)).Problem, StringComparison.Ordinal);
    }

    private static TextFile Own(string line) =>
        new("ours/machines.yaml", $"brakes: {{}}\ncutters:\n  plasma-table:\n    title: our torch\n    least_hole: 4 mm\n    {line}\n    source: measured\n");
}
