using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class FlangeExtensionTests
{
    private static readonly Profile Extension = TheLibrary.Profile("bulkhead-flange-extension");

    // Sheet 1.2, inside radius 1.5, bent square: both legs outside less what the bend takes off, by hand:
    // 2 (1.5 + 1.2) − π/2 (1.5 + 0.44 × 1.2) with the K-factor of the steel.
    private const double Deduction = 5.4 - Math.PI / 2 * 2.028;

    [Theory]
    [InlineData(600, 8, 16)]
    [InlineData(600, 16, 8)]
    [InlineData(250, 0, 60)]
    [InlineData(1250, 25, 25)]
    public void The_blank_is_as_high_at_A_and_B_as_the_drops_ask_for(double length, double dropA, double dropB)
    {
        var strip = Extension.Make($"length={length}", $"drop_a={dropA}", $"drop_b={dropB}", "wall_cut=25", "holes=0").Piece("strip");
        var cosine = length / Math.Sqrt(length * length + (dropB - dropA) * (dropB - dropA));
        // The cut stands 25 above the old edge; a gap of 1.2 comes off and 0.3 of shrinkage on. Heights are square to the new bend.
        Approximately.Equal(18 - Deduction + (24.1 + dropA) * cosine, Check(strip, "At A").Distance, Tolerance.Length);
        Approximately.Equal(18 - Deduction + (24.1 + dropB) * cosine, Check(strip, "At B").Distance, Tolerance.Length);
        Approximately.Equal(length, Check(strip, "Weld edge").Distance, Tolerance.Length);
    }

    [Fact]
    public void The_bend_line_runs_askew_to_the_weld_edge_by_the_difference_of_the_drops()
    {
        var strip = Extension.Make().Piece("strip");
        var (seam, bend) = (Check(strip, "Weld edge"), Assert.Single(strip.BendLines));
        var askew = (seam.To - seam.From).Unit.Cross((bend.To.X > bend.From.X ? bend.To - bend.From : bend.From - bend.To).Unit);
        Approximately.Equal(Math.Sin(Math.Atan(8.0 / 600)), Math.Abs(askew), 1e-9);
    }

    [Theory]
    [InlineData("mig", 1.2)]
    [InlineData("tig", 0)]
    [InlineData("gas", 0)]
    public void The_weld_gap_of_the_shop_s_table_comes_off_the_blank(string process, double gap)
    {
        var strip = Extension.Make($"process={process}", "shrinkage=0", "drop_a=10", "drop_b=10").Piece("strip");
        Approximately.Equal(18 - Deduction + 20 + 10 - gap, Check(strip, "At A").Distance, Tolerance.Length);
    }

    // 600 mm at 30 at most: twenty gaps. Ends, middle, quarters; common practice, no source.
    [Fact]
    public void It_is_tacked_at_A_at_B_in_the_middle_and_then_half_way_between()
    {
        var strip = Extension.Make().Piece("strip");
        var seam = Check(strip, "Weld edge");
        var along = strip.Tacks.Select(t => Math.Round(t.At.DistanceTo(seam.From), 6)).ToList();
        Assert.Equal([0, 600, 300], along[..3]);
        Assert.Equal([150, 450], along[3..5].Order());
        Assert.Equal(21, along.Count);
        Assert.All(strip.Tacks, t => Assert.True(strip.Shape.BoundaryDistanceTo(t.At) < Tolerance.Length));
    }

    [Theory]
    [InlineData(20, "renew")]
    [InlineData(40, "renew")]
    [InlineData(33, "add")]
    public void No_two_neighbouring_tacks_are_further_apart_than_the_pitch_and_one_stands_in_the_middle(double pitch, string method)
    {
        var piece = Extension.Make("length=610", $"tack_pitch={pitch}", $"method={method}").Pieces[0];
        var seam = Check(piece, "Weld edge");
        var along = piece.Tacks.Select(t => t.At.DistanceTo(seam.From)).Order().ToList();
        Assert.All(along.Zip(along.Skip(1)), pair => Assert.True(pair.Second - pair.First <= pitch + 1e-9));
        Assert.Contains(along, a => Math.Abs(a - 305) < 1e-6);
    }

    // Bent up, the flange stands square to the wall: what lay so far along the old edge lies so far along it still.
    [Fact]
    public void Pilots_stand_where_the_old_holes_were_along_the_old_edge_and_as_far_from_the_bend()
    {
        var strip = Extension.Make("drop_a=0", "drop_b=60", "holes=3", "first_hole=50", "hole_pitch=200", "hole_in=11").Piece("strip");
        var seam = Check(strip, "Weld edge");
        var along = (seam.To - seam.From).Unit;
        var centres = strip.ScribeLines.Chunk(4).Select(cross => new Point(cross.Average(l => l.Start.X), cross.Average(l => l.Start.Y))).ToList();
        Assert.Equal(3, centres.Count);
        for (var i = 0; i < 3; i++)
        {
            Approximately.Equal(18 - 11, centres[i].Y - strip.Shape.Bounds.Min.Y, Tolerance.Length);
            var foot = new Point(centres[i].X, strip.Shape.Bounds.Min.Y + 18 - Deduction);
            Approximately.Equal(50 + 200 * i, (foot - seam.From).Dot(along), Tolerance.Length);
        }
        Assert.Single(strip.Shape.Contours); // marked, not cut
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(4, 4)]
    public void As_many_pilots_are_marked_as_there_were_holes(int holes, int crosses) =>
        Assert.Equal(4 * crosses, Extension.Make($"holes={holes}").Piece("strip").ScribeLines.Length);

    [Fact]
    public void Added_to_the_old_edge_it_is_a_flat_strip_as_wide_as_the_drops_with_gap_and_shrinkage()
    {
        var made = Extension.Make("method=add", "edge_cut=2", "drop_a=8", "drop_b=20", "ends_long=0");
        var strip = made.Piece("edge-strip");
        Assert.Equal(["edge-strip", "trim-line"], made.Pieces.Select(p => p.Name));
        Approximately.Equal(8 + 2 - 1.2 + 0.3, Check(strip, "Width at A").Distance, Tolerance.Length);
        Approximately.Equal(20 + 2 - 1.2 + 0.3, Check(strip, "Width at B").Distance, Tolerance.Length);
        Approximately.Equal(600 * (9.1 + 21.1) / 2, strip.Shape.Area, 1e-6);
        Assert.Empty(strip.BendLines);
        Approximately.Equal(18 - 2, made.Piece("trim-line").Shape.Bounds.Height, Tolerance.Length);
    }

    [Fact]
    public void The_paper_is_as_wide_as_the_wall_is_cut_above_the_old_bend()
    {
        var paper = Extension.Make("wall_cut=24").Piece("trim-line");
        Assert.Equal(PieceKind.Paper, paper.Kind);
        Approximately.Equal(24, paper.Shape.Bounds.Height, Tolerance.Length);
        Approximately.Equal(600, paper.Shape.Bounds.Width, Tolerance.Length);
    }

    // The wall's outer face is seen from behind, where A is at the right; the flange's from below, its free edge up, where A is at the left.
    [Theory]
    [InlineData("renew", 600)]
    [InlineData("add", 0)]
    public void The_paper_says_where_A_is_on_the_face_that_it_lies_on(string method, double at)
    {
        var a = Extension.Make($"method={method}").Piece("trim-line").Labels.Single(l => l.Text == "A");
        Approximately.Equal(at, a.At.X, Tolerance.Length);
    }

    // The notch is what is left of half a turn; by the law of cosines its mouth is 2 × 40 × sin of half of it.
    [Theory]
    [InlineData(30)]
    [InlineData(90)]
    [InlineData(120)]
    public void The_gauge_s_notch_is_as_far_open_as_panel_and_flange_are_on_the_outside(double bend)
    {
        var gauge = Extension.Make($"bend={bend}").Piece("angle-gauge");
        Approximately.Equal(80 * Math.Sin((180 - bend) / 2 * Math.PI / 180), Check(gauge, "Mouth").Distance, Tolerance.Length);
        var flanks = gauge.Shape.Contours[0].Segments.Where(s => s.IsLine && s.Length > 35 && s.Length < 40).ToList();
        Assert.Equal(2, flanks.Count);
        Approximately.Equal(Math.Abs(Math.Cos((180 - bend) * Math.PI / 180)), Math.Abs(flanks[0].StartDirection.Dot(flanks[1].StartDirection)), 1e-9);
    }

    // A bend of 1.5 in 1.2 ends 2.7 above its outside corner, so 12.7 is the least cut. No gap, for the new bend is as near at A.
    [Theory]
    [InlineData("wall_cut=12", "drop_a=20", "drop_b=20")]
    [InlineData("wall_cut=12.6", "drop_a=0", "drop_b=60")]
    [InlineData("wall_cut=15", "inside_radius=6")]
    [InlineData("method=add", "flange=12")]
    public void A_weld_nearer_than_10_mm_to_a_bend_is_refused(params string[] given) =>
        Assert.Contains("clear of", Assert.Single(Extension.Refuse(given)).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_weld_10_mm_from_both_bends_is_taken() => Extension.Make("process=tig", "shrinkage=0", "wall_cut=12.7", "drop_a=5", "drop_b=5");

    [Theory]
    [InlineData("burns away", "method=add", "drop_a=2")]
    [InlineData("nothing to lengthen", "drop_a=0", "drop_b=0")]
    [InlineData("to a point", "method=add", "length=50", "drop_a=8", "drop_b=60", "ends_long=15")]
    [InlineData("to a point", "method=add", "length=50", "drop_a=60", "drop_b=8", "ends_long=15")]
    [InlineData("The last hole", "holes=5")]
    [InlineData("beside them", "hole_in=17")]
    [InlineData("in it or close beside it", "hole_in=4")]
    public void What_cannot_be_is_refused_in_words(string words, params string[] given) =>
        Assert.Contains(words, Assert.Single(Extension.Refuse(given)).Problem, StringComparison.Ordinal);

    [Theory]
    [InlineData("free", "free", 12.0)]
    [InlineData("flanged", "free", 6.0)]
    [InlineData("flanged", "flanged", 0.0)]
    public void Free_ends_are_left_long_and_an_end_that_meets_a_flange_is_relieved_instead(string endA, string endB, double over)
    {
        var strip = Extension.Make($"end_a={endA}", $"end_b={endB}", "drop_a=10", "drop_b=10").Piece("strip");
        Approximately.Equal(600 + over, strip.Shape.Bounds.Width, Tolerance.Length);
        var reliefs = strip.Shape.Contours.SelectMany(c => c.Segments).Where(s => !s.IsLine).ToList();
        Assert.Equal(over == 12, reliefs.Count == 0);
        Assert.All(reliefs, r => Approximately.Equal(1.5, r.Radius, Tolerance.Length)); // 3 mm across, at least
    }

    [Theory]
    [InlineData("dc01", false)]
    [InlineData("dx51_z275", true)]
    public void Zinc_is_stripped_25_mm_on_either_side_of_galvanised_sheet_alone(string metal, bool zinc)
    {
        var made = Extension.Make($"metal={metal}");
        Assert.Equal(zinc, made.Steps.Any(s => s.Text.Contains("Strip the zinc 25 mm", StringComparison.Ordinal)));
        Assert.Equal(zinc, made.Cautions.Any(c => c.Title == "Zinc fume"));
        Assert.True(made.Piece("strip").Weight > 0);
    }

    private static DistanceCheck Check(Piece piece, string label) =>
        piece.Checks.First(c => c.Label.StartsWith(label, StringComparison.Ordinal));
}
