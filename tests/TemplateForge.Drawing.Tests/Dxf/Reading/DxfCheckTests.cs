using static TemplateForge.Drawing.Tests.Dxf.Reading.WrittenDxf;

namespace TemplateForge.Drawing.Tests.Dxf.Reading;

/// <summary>What a table would choke on is found where it is, and mended where that can be.</summary>
public class DxfCheckTests
{
    private static readonly string Square = Line(0, 0, 100, 0) + Line(100, 0, 100, 60) + Line(100, 60, 0, 60) + Line(0, 60, 0, 0);

    [Fact]
    public void A_closed_outline_of_loose_lines_has_nothing_wrong_with_it()
    {
        var check = Check(Square);
        Assert.Empty(check.Findings);
        Assert.True(Assert.Single(check.Chains).IsClosed);
        Assert.Equal(6000, DxfCheck.Bounded(check.Chains).Area, 1e-6);
    }

    [Fact]
    public void Lines_drawn_either_way_round_and_out_of_order_are_one_outline() =>
        Assert.True(Assert.Single(Check(Line(0, 60, 0, 0) + Line(100, 60, 100, 0) + Line(0, 0, 100, 0) + Line(100, 60, 0, 60)).Chains).IsClosed);

    [Fact]
    public void A_gap_is_told_with_its_width_and_closed()
    {
        var open = Line(0, 0, 100, 0) + Line(100, 0, 100, 60) + Line(100, 60.15, 0, 60) + Line(0, 60, 0, 0);
        var gap = Assert.Single(Check(open).Findings);
        Assert.Equal((DxfFindingKind.Gap, 0.15), (gap.Kind, Math.Round(gap.Size, 9)));
        var (mended, left) = Repaired(open);
        Assert.Empty(left.Findings);
        Assert.Equal(DxfFindingKind.Gap, Assert.Single(mended).Kind);
        // The upright at x = 100 runs on to where the leaning side ends: nothing is skewed.
        Assert.Equal(6000 + 100 * 0.15 / 2, DxfCheck.Bounded(left.Chains).Area, 1e-6);
    }

    [Fact]
    public void A_gap_wider_than_asked_for_stays_and_is_told() =>
        Assert.Equal(DxfFindingKind.Gap, Assert.Single(Repaired(Line(0, 0, 100, 0) + Line(100, 0.5, 100, 60) + Line(100, 60, 0, 60) + Line(0, 60, 0, 0)).Left.Findings).Kind);

    [Fact]
    public void An_open_cut_is_told_once() =>
        Assert.Equal(DxfFindingKind.OpenEnd, Assert.Single(Check(Line(0, 0, 50, 0) + Line(50, 0, 50, 30)).Findings).Kind);

    [Fact]
    public void Doubled_and_overlapping_lines_are_told_and_left_out()
    {
        var twice = Square + Line(100, 0, 0, 0) + Line(20, 60, 70, 60);
        Assert.Equal([DxfFindingKind.Doubled, DxfFindingKind.Overlapping], Check(twice).Findings.Select(f => f.Kind));
        var (_, left) = Repaired(twice);
        Assert.Empty(left.Findings);
        Assert.Equal(320, left.Chains.Sum(c => c.Length), 1e-6);
    }

    [Fact]
    public void Two_arcs_over_each_other_leave_one()
    {
        string Arc(double from, double to) => Entity("ARC", (10, 0), (20, 0), (40, 50), (50, from), (51, to));
        var (mended, left) = Repaired(Arc(0, 200) + Arc(150, 0));
        Assert.Equal(DxfFindingKind.Overlapping, Assert.Single(mended).Kind);
        Assert.Empty(left.Findings);
        Assert.Equal(2 * Math.PI * 50, left.Chains.Sum(c => c.Length), 1e-4);
    }

    [Fact]
    public void Lines_that_cross_are_told_where_they_do()
    {
        var crossing = Assert.Single(Check(Line(0, 0, 100, 60) + Line(100, 0, 0, 60)).Findings, f => f.Kind == DxfFindingKind.Crossing);
        Assert.Equal(0, crossing.At.DistanceTo(new(50, 30)), 1e-9);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(36)]
    public void Chords_of_a_circle_are_told_and_become_it(int count)
    {
        var pairs = new List<(int, object)> { (90, count), (70, 1) };
        for (var i = 0; i < count; i++) pairs.AddRange([(10, 20 + 15 * Math.Cos(2 * Math.PI * i / count)), (20, 30 + 15 * Math.Sin(2 * Math.PI * i / count))]);
        var chords = Entity("LWPOLYLINE", [.. pairs]);
        var found = Assert.Single(Check(chords).Findings);
        Assert.Equal((DxfFindingKind.ChordsOfArc, 15.0, $"{count}"), (found.Kind, Math.Round(found.Size, 6), found.Detail));
        var (_, left) = Repaired(chords);
        Assert.Empty(left.Findings);
        Assert.Equal(Math.PI * 225, DxfCheck.Bounded(left.Chains).Area, 1e-4);
    }

    [Theory]
    [InlineData(6, 15)]
    [InlineData(16, 15)]
    [InlineData(12, 20)]
    [InlineData(10, 2)]
    public void A_regular_polygon_is_meant(int sides, double radius) => Assert.Empty(Check(Polygon(sides, radius)).Findings);

    [Theory]
    [InlineData(12, 5)]
    [InlineData(16, 5)]
    [InlineData(24, 5)]
    [InlineData(12, 1.5)]
    public void A_polygon_of_so_many_sides_and_so_small_was_a_hole(int sides, double radius)
    {
        var found = Assert.Single(Check(Polygon(sides, radius)).Findings);
        Assert.Equal((DxfFindingKind.ChordsOfArc, radius), (found.Kind, Math.Round(found.Size, 9)));
        Assert.Equal(Math.PI * radius * radius, DxfCheck.Bounded(Repaired(Polygon(sides, radius)).Left.Chains).Area, 1e-6);
    }

    [Theory]
    [InlineData(0.005)]
    [InlineData(0.02)]
    [InlineData(0.04)]
    public void A_rectangle_that_lies_on_itself_within_half_the_narrowest_kerf_is_doubled(double aside)
    {
        var twice = Square + Line(aside, aside, 100 + aside, aside) + Line(100 + aside, aside, 100 + aside, 60 + aside) + Line(100 + aside, 60 + aside, aside, 60 + aside) + Line(aside, 60 + aside, aside, aside);
        Assert.All(Check(twice).Findings, f => Assert.Equal(DxfFindingKind.Doubled, f.Kind));
        Assert.Equal(320, Repaired(twice).Left.Chains.Sum(c => c.Length), 1e-6);
    }

    [Fact]
    public void Lines_a_tenth_of_a_millimetre_apart_are_two() =>
        Assert.DoesNotContain(Check(Line(0, 0, 100, 0) + Line(0, 0.1, 100, 0.1)).Findings, f => f.Kind is DxfFindingKind.Doubled or DxfFindingKind.Overlapping);

    [Fact]
    public void A_doubled_arc_is_told_with_its_length_along_the_arc()
    {
        var arc = Entity("ARC", (10, 0), (20, 0), (40, 50), (50, 0), (51, 90));
        Assert.Equal(50 * Math.PI / 2, Assert.Single(Check(arc + arc).Findings, f => f.Kind == DxfFindingKind.Doubled).Size, 1e-9);
    }

    [Fact]
    public void A_vertex_that_is_there_twice_is_a_line_without_length()
    {
        var found = Assert.Single(Check(Entity("LWPOLYLINE", (90, 5), (70, 1), (10, 0), (20, 0), (10, 100), (20, 0), (10, 100), (20, 0), (10, 100), (20, 60), (10, 0), (20, 60))).Findings);
        Assert.Equal((DxfFindingKind.ZeroLength, new Geometry.Point(100, 0)), (found.Kind, found.At));
    }

    [Fact]
    public void An_empty_file_is_no_part() => Assert.Equal(DxfFindingKind.Empty, Assert.Single(Check("").Findings).Kind);

    [Fact]
    public void What_is_larger_than_any_sheet_is_told_with_its_size()
    {
        Assert.Empty(Check(Entity("CIRCLE", (10, 0), (20, 0), (40, 2999))).Findings);
        var wide = Assert.Single(Check(Entity("CIRCLE", (10, 0), (20, 0), (40, 3001))).Findings);
        Assert.Equal((DxfFindingKind.TooWide, 6002.0), (wide.Kind, Math.Round(wide.Size, 6)));
    }

    private static string Polygon(int sides, double radius)
    {
        var pairs = new List<(int, object)> { (90, sides), (70, 1) };
        for (var i = 0; i < sides; i++) pairs.AddRange([(10, radius * Math.Cos(2 * Math.PI * i / sides)), (20, radius * Math.Sin(2 * Math.PI * i / sides))]);
        return Entity("LWPOLYLINE", [.. pairs]);
    }

    [Fact]
    public void A_tiny_arc_is_told() =>
        Assert.Equal(DxfFindingKind.TinyArc, Assert.Single(Check(Line(0, 0, 100, 0) + Line(100, 0, 100.03, 0.03) + Line(100.03, 0.03, 0, 60) + Line(0, 60, 0, 0)).Findings).Kind);

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.0005, false)]
    [InlineData(0.004, true)]
    public void A_tiny_line_that_goes_straight_on_is_run_through(double aside, bool isTold) =>
        // 0.05 mm long; aside 0.0005 it turns by 0.57° at one end and by nothing to speak of at the other, aside 0.004 by 4.6°.
        Assert.Equal(isTold, Check(Line(0, 0, 100, 0) + Line(100, 0, 100.05, aside) + Line(100.05, aside, 200, aside * 2000) + Line(200, aside * 2000, 100, 90) + Line(100, 90, 0, 0)).Findings.Any(f => f.Kind == DxfFindingKind.TinyArc));

    [Fact]
    public void A_repaired_file_has_holes_before_outlines()
    {
        var contents = Read(File(Square + Entity("CIRCLE", (10, 50), (20, 30), (40, 10))));
        var marks = Assert.Single(DxfRepair.Of(contents, DxfPurposes.AllCut, 0, DxfFormat.Usual).Drawing.Layers).Marks;
        Assert.Equal([20, 100], marks.Select(m => Math.Round(m.Bounds.Width)));
    }

    private static DxfCheck Check(string entities) => DxfCheck.Of(Read(File(entities)), DxfPurposes.AllCut);

    private static (IReadOnlyCollection<DxfFinding> Mended, DxfCheck Left) Repaired(string entities)
    {
        var repair = DxfRepair.Of(Read(File(entities)), DxfPurposes.AllCut, DxfRepair.UsualGap, DxfFormat.Usual);
        return ([.. repair.Mended.Where(m => m.Kind is not (DxfFindingKind.ReleaseWritten or DxfFindingKind.LayerRenamed))], DxfCheck.Of(Read(DxfWriter.Write(repair.Drawing)), repair.Purposes));
    }
}
