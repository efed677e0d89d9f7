using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>What is cut, what is scribed and what is only pencilled are kept apart.</summary>
public class BendLinesTests
{
    private static Piece Bracket => Samples.Bracket.Pieces[0];

    [Fact]
    public void A_table_that_cuts_layer_CUT_cuts_no_bend_line_and_no_scribe_line()
    {
        var layers = CutSheet.Of(Samples.Bracket, Bracket).Layers.ToDictionary(l => l.Name);
        Assert.Equal(Bracket.Shape.Length, Strokes(layers["CUT"]).Sum(s => s.Length), 6);
        Assert.Equal(100, Strokes(layers["PENCIL-BEND"]).Sum(s => s.Length), 6);
        Assert.Equal(200, Strokes(layers["PENCIL-TANGENT"]).Sum(s => s.Length), 6);
        Assert.Equal(100, Strokes(layers["PENCIL-SIGHT"]).Sum(s => s.Length), 6);
        Assert.Equal(20, Strokes(layers["SCRIBE"]).Sum(s => s.Length), 6);
        Assert.Contains("never scribed", Printed.Words(Printed.On(CutSheet.Of(Samples.Bracket, Bracket))), StringComparison.Ordinal);
    }

    // The lower leg, 60 outside, is flat for 60 − 2 − 1.5 = 56.5; the bend takes 4.178 from there on; the sight line lies one inside
    // radius of 1.5 into it from the held side, which is the lower leg.
    [Fact]
    public void Tangent_and_sight_lines_lie_where_the_section_says()
    {
        var layers = CutSheet.Of(Samples.Bracket, Bracket).Layers.ToDictionary(l => l.Name);
        Assert.Equal([56.5, 60.678], Strokes(layers["PENCIL-TANGENT"]).Select(s => Math.Round(s.Start.Y, 6)).Order());
        Assert.Equal(56.5 + 1.5, Assert.Single(Strokes(layers["PENCIL-SIGHT"])).Start.Y, 6);
    }

    [Fact]
    public void On_the_piece_for_the_other_hand_the_held_side_is_the_same()
    {
        var bend = Assert.Single(Bracket.Mirrored().BendLines);
        Assert.Equal(56.5, bend.TangentLines.Held.Segments[0].Start.Y, 6);
        Assert.Equal(BendWay.Up, bend.Way);
    }

    [Fact]
    public void Template_and_job_sheet_say_each_bend_with_its_angle_its_way_and_where_it_lies()
    {
        var template = Words(TemplateSheet.Of(Samples.Bracket, Cases.A4, 12).Pages);
        Assert.Contains("bend 1: 90° UP, inside radius 1.5", template, StringComparison.Ordinal);
        var sheet = Words(JobSheet.Of(Samples.Bracket, Cases.A4).Pages);
        Assert.Contains("92° for 90°", sheet, StringComparison.Ordinal);
        // Along and offset of either end from P, the left end of the longest straight edge, which lies in the origin.
        Assert.Contains("1 92° for 90° UP 1.5 from 100.0 along, offset 58.6 to 0.0 along, offset 58.6", sheet, StringComparison.Ordinal);
        Assert.Contains("Along from P to Q on the longest straight edge, small crosses on the picture; offset square to that.", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_there_is_room_the_ends_of_a_bend_line_are_columns_of_figures()
    {
        var (columns, rows) = new BendTable(Samples.Bracket.Pieces, 2).Of(90);
        Assert.Equal(["No", "bend to", "radius", "from\nalong", "offset", "to\nalong", "offset"], columns.Select(c => c.Title));
        Assert.Equal(["1", "92° for 90° UP", "1.5", "100.0", "58.6", "0.0", "58.6"], Assert.Single(rows).Select(c => Assert.Single(c.Within(60).Board.Marks.OfType<Lettering>()).Text.Replace('\u00A0', ' ')));
        // A sentence of a bend that is no line goes over all four.
        Assert.All(new BendTable(Samples.Lid.Pieces, 2).Of(90).Rows, r => Assert.Equal(4, r.Length));
    }

    // (100 × 97.178 − π 4²) × 1.5 × 7.85e-6 = 0.1138 kg.
    [Fact]
    public void The_cut_list_says_what_each_piece_is_cut_from_and_weighs()
    {
        var sheet = Words(JobSheet.Of(Samples.Bracket, Cases.A4).Pages);
        Assert.Contains("mild steel DC01, 1.5 mm", sheet, StringComparison.Ordinal);
        Assert.Contains("0.114", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warning_stands_in_the_list_with_its_rule_and_source_and_as_a_sign_at_its_place()
    {
        Assert.Contains("hole near a bend: The hole is 6 mm from the bend, and 8 is the least. (common practice, no source)",
            Words(JobSheet.Of(Samples.Bracket, Cases.A4).Pages), StringComparison.Ordinal);
        var drawn = TemplateSheet.Of(Samples.Bracket, Cases.A4, 12).Pages.SelectMany(Printed.On).ToList();
        Assert.Contains(drawn, p => p.Layer == "WARNING");
    }

    // Two half circles each, on the radii where tangent lines and middles lie: 40 − 3 is where the first bend begins.
    [Fact]
    public void A_bend_along_an_arc_is_pencilled_on_the_same_layers()
    {
        var layers = CutSheet.Of(Samples.Lid, Samples.Lid.Pieces[0]).Layers.ToDictionary(l => l.Name);
        Assert.Equal(4, Strokes(layers["PENCIL-BEND"]).Count());
        Assert.Equal(37, Strokes(layers["PENCIL-TANGENT"]).Min(s => s.Radius), 6);
        Assert.All(Strokes(layers["CUT"]), s => Assert.False(s.IsLine));
    }

    [Fact]
    public void The_bend_table_says_that_what_runs_on_is_worked_over_a_former_and_shows_it_on_its_edge()
    {
        var sheet = Words(JobSheet.Of(Samples.Lid, Cases.A4).Pages);
        // The middle of the inner bend lies outside the 37 where it begins, by half of its allowance of (2 + 0.44) π / 2.
        Assert.Contains("radius 38.9, over a former", sheet, StringComparison.Ordinal);
        Assert.Contains("Seen on the edge, at full size.", sheet, StringComparison.Ordinal);
        Assert.Contains("bends 2, 1", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_that_follow_each_other_are_said_as_a_run() =>
        Assert.Equal("1, 3 to 7, 9 to 10", Wording.Ranges([1, 3, 4, 5, 6, 7, 9, 10]));

    [Fact]
    public void What_is_said_of_two_places_is_said_once_with_both_numbers()
    {
        var sheet = Words(JobSheet.Of(Samples.Lid, Cases.A4).Pages);
        Assert.Contains("1, 3", sheet, StringComparison.Ordinal);
        Assert.Equal(sheet.IndexOf("It shrinks by", StringComparison.Ordinal), sheet.LastIndexOf("It shrinks by", StringComparison.Ordinal));
    }

    [Fact]
    public void The_legend_tells_only_of_lines_that_the_job_has()
    {
        var notch = Words(TemplateSheet.Of(Samples.Notch, Cases.A4, 12).Pages);
        Assert.DoesNotContain("bend line: pencil it", notch, StringComparison.Ordinal);
        Assert.DoesNotContain("plug weld, in the order", notch, StringComparison.Ordinal);
        var bracket = Words(TemplateSheet.Of(Samples.Bracket, Cases.A4, 12).Pages);
        Assert.Contains("bend line: pencil it", bracket, StringComparison.Ordinal);
        Assert.DoesNotContain("rough cut: snips", bracket, StringComparison.Ordinal);
    }

    private static string Words(ImmutableArray<Page> pages) => string.Join(' ', pages.Select(p => Printed.Words(Printed.On(p))));

    private static IEnumerable<Segment> Strokes(Layer layer) => layer.Marks.SelectMany(m => m switch
    {
        OpenStroke open => open.Path.Segments.AsEnumerable(),
        ClosedStroke closed => closed.Contour.Segments,
        _ => [],
    });
}
