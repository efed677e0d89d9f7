using static TemplateForge.Drawing.Tests.Dxf.Reading.WrittenDxf;

namespace TemplateForge.Drawing.Tests.Dxf.Reading;

/// <summary>What a repair writes, and that it says all that it changed.</summary>
public class DxfRepairTests
{
    private static readonly string Square = Line(0, 0, 100, 0, "CUT") + Line(100, 0, 100, 60, "CUT") + Line(100, 60, 0, 60, "CUT") + Line(0, 60, 0, 0, "CUT");

    [Theory]
    [InlineData(0, 0.15)]
    [InlineData(0.15, 0)]
    [InlineData(0.1, 0.1)]
    [InlineData(-0.1, 0.1)]
    public void A_corner_whose_sides_stop_short_or_run_past_is_square_again(double one, double other) =>
        // 100 × 60.
        Assert.Equal(6000, Area(Line(0, 0, 100, 0) + Line(100, 0, 100, 60) + Line(100, 60, one, 60) + Line(0, 60 - other, 0, 0)), 1e-6);

    [Fact]
    public void A_corner_of_a_line_and_an_arc_leaves_the_arc_on_its_circle()
    {
        // A quarter of a disc of radius 50; its arc begins 0.1 mm late and ends 0.1 mm early.
        var late = 0.1 / 50 * 180 / Math.PI;
        Assert.Equal(
            Math.PI * 2500 / 4, Area(Line(0, 0, 50, 0) + Entity("ARC", (10, 0), (20, 0), (40, 50), (50, late), (51, 90 - late)) + Line(0, 50, 0, 0)), 1e-6);
    }

    [Fact]
    public void Two_arcs_run_on_to_the_point_that_their_circles_share()
    {
        // A lens of two circles of radius 50 whose centres are 60 apart: half angle arccos(30/50), area r² (2a − sin 2a).
        var (half, late) = (Math.Acos(0.6), 0.05 / 50);
        double Degrees(double radians) => radians * 180 / Math.PI;
        var lens = Entity("ARC", (10, 0), (20, 0), (40, 50), (50, Degrees(-half + late)), (51, Degrees(half - late)))
            + Entity("ARC", (10, 60), (20, 0), (40, 50), (50, Degrees(Math.PI - half)), (51, Degrees(Math.PI + half)));
        Assert.Equal(2500 * (2 * half - Math.Sin(2 * half)), Area(lens), 1e-6);
    }

    [Fact]
    public void Ends_whose_lines_meet_far_away_come_together_halfway()
    {
        // Two sides that turn by half a degree at the gap: they would meet metres off or nowhere near.
        var run = Line(0, 0, 50, 0) + Line(50, 0.1, 100, 0.2);
        var chain = Assert.Single(DxfCheck.Of(Read(DxfWriter.Write(Repair(run).Drawing)), DxfPurposes.AllCut).Chains);
        Assert.Equal(0, chain.Segments[0].End.DistanceTo(new(50, 0.05)), 1e-7);
    }

    [Fact]
    public void What_is_hidden_is_left_out_and_listed()
    {
        var tables = Entity("LAYER", (2, "OLD"), (70, 0), (62, -7));
        var repair = Repair(Square + Line(10, 10, 20, 10, "OLD") + Line(10, 20, 20, 20, "OLD"), tables: tables);
        Assert.Equal(["CUT"], repair.Drawing.Layers.Select(l => l.Name));
        Assert.Equal("2", Assert.Single(repair.Mended, m => m.Kind == DxfFindingKind.HiddenLayer).Detail);

        var marks = DxfRepair.Of(Read(File(Square + Line(10, 10, 20, 10, "OLD"), tables: tables)), new(["CUT"], NamedAreCut: true), 0, DxfFormat.Usual);
        Assert.Equal(["CUT"], marks.Drawing.Layers.Select(l => l.Name));
    }

    [Fact]
    public void Unit_release_and_names_of_layers_that_change_are_listed()
    {
        var file = File(Line(0, 0, 1, 0, "0") + Line(0, 1, 1, 1, "Ä") + Line(0, 2, 1, 2, "Ö") + Line(0, 3, 1, 3, "-"), header: "9\n$INSUNITS\n70\n1\n9\n$ACADVER\n1\nAC1032\n");
        var repair = DxfRepair.Of(Read(file), DxfPurposes.AllCut, 0, DxfFormat.Usual);
        Assert.Equal(
            [
                (DxfFindingKind.UnitConverted, "", "in to mm: each number times 25.4"), (DxfFindingKind.ReleaseWritten, "", "AC1032 AC1015"),
                (DxfFindingKind.LayerRenamed, "0", "LAYER-0"), (DxfFindingKind.LayerRenamed, "Ä", "--2"), (DxfFindingKind.LayerRenamed, "Ö", "--3"),
            ],
            repair.Mended.Select(m => (m.Kind, m.Layer, m.Detail)));
        Assert.Equal(["LAYER-0", "--2", "--3", "-"], repair.Drawing.Layers.Select(l => l.Name));
    }

    [Fact]
    public void Nothing_is_listed_where_nothing_changes()
    {
        var once = Repair(Square);
        Assert.Empty(DxfRepair.Of(Read(DxfWriter.Write(once.Drawing)), DxfPurposes.AllCut, 0.2, DxfFormat.Usual).Mended);
    }

    [Fact]
    public void What_could_not_be_read_is_not_passed_over()
    {
        var repair = Repair(Square + Entity("LINE", (10, "one"), (20, 0)) + Entity("INSERT", (2, "GONE")) + Line(2e6, 0, 2e6, 1));
        Assert.Equal([DxfFindingKind.Unreadable, DxfFindingKind.LostBlock, DxfFindingKind.TooFar], repair.Lost.Select(f => f.Kind));
    }

    [Fact]
    public void Marks_are_written_as_they_are_on_layers_that_are_marks_still()
    {
        var cut = new DxfPurposes(["cut"], NamedAreCut: true);
        var contents = Read(File(Square + Line(10, 10, 40, 40, "pen") + Line(10, 40, 40, 10, "pen")));
        Assert.Empty(DxfCheck.Of(contents, cut).Findings);
        var repair = DxfRepair.Of(contents, cut, 0.2, DxfFormat.Usual);
        Assert.Equal([("CUT", 1), ("PEN", 2)], repair.Drawing.Layers.Select(l => (l.Name, l.Marks.Length)));
        Assert.Empty(DxfCheck.Of(Read(DxfWriter.Write(repair.Drawing)), repair.Purposes).Findings);
    }

    private static double Area(string entities)
    {
        var written = Read(DxfWriter.Write(Repair(entities).Drawing));
        var check = DxfCheck.Of(written, DxfPurposes.AllCut);
        Assert.Empty(check.Findings);
        return DxfCheck.Bounded(check.Chains).Area;
    }

    private static DxfRepair Repair(string entities, string tables = "") =>
        DxfRepair.Of(Read(File(entities, tables: tables)), DxfPurposes.AllCut, DxfRepair.UsualGap, DxfFormat.Usual);
}
