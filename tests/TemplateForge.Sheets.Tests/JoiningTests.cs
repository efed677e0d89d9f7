using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>Runs of weld and stripped zinc: drawn beside the seam, told in words, never cut.</summary>
public class JoiningTests
{
    private static readonly Contour Edge = Outline.Circle(Point.Origin, 60);

    private static Modification Made { get; } = Joined(Samples.LapPatch);

    private static Modification Joined(Modification sample) => sample with
    {
        Pieces =
        [
            sample.Pieces[0] with
            {
                Shape = Region.Of(Edge),
                Tacks = TackPlan.Quartered(Edge, 50),
                GuideLines = [],
                CentreLines = [],
                Checks = [],
                WeldSeams = [WeldPlan.Round(Edge, 25, WeldOrder.Skip, 50)],
                ZincStrips = [ZincStrip.Round(Edge, 25, Region.Of(Edge))],
            },
        ],
    };

    // 377 mm round with tacks 50 apart at most is eight gaps of 47, each in two runs of 23.6.
    [Fact]
    public void Every_run_has_its_arrow_on_the_metal_clear_of_the_seam_and_its_number_in_a_ring()
    {
        var piece = TemplateSheet.Of(Made, Cases.A4, 12).Pages[^1].Views
            .SelectMany(v => v.Drawing.Layers).Where(l => l.Name == "WELD-RUN").SelectMany(l => l.Marks).ToList();
        Assert.Equal(16, piece.OfType<ClosedStroke>().Count());
        Assert.Equal(3 * 16, piece.OfType<OpenStroke>().Count());
        Assert.All(piece.OfType<OpenStroke>().SelectMany(s => s.Path.Segments), s => Assert.True(Region.Of(Edge).BoundaryDistanceTo(s.At(0.5)) > 1.5));
    }

    [Fact]
    public void The_sheets_say_the_order_the_lengths_and_what_is_bared()
    {
        var words = string.Join(' ', JobSheet.Of(Made, Cases.A4).Pages.Select(p => Printed.Words(Printed.On(p))));
        Assert.Contains("Runs 1 to 16, each 23.6 mm long, 377 mm in all", words, StringComparison.Ordinal);
        // π (60² − 35²) is 74.6 cm².
        Assert.Contains("74.6 cm² on each face", words, StringComparison.Ordinal);
        Assert.Contains("on the other", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_line_to_which_it_is_bared_is_drawn_and_named_and_its_edge_is_not_drawn_twice()
    {
        var template = TemplateSheet.Of(Made, Cases.A4, 12);
        Assert.Contains("bare to here on both faces", string.Join(' ', template.Pages.Select(p => Printed.Words(Printed.On(p)))), StringComparison.Ordinal);
        var guides = CutSheet.Of(Made, Made.Pieces[0]).Layers.Single(l => l.Name == "GUIDE").Marks;
        Assert.Equal(2 * Math.PI * 35, guides.OfType<ClosedStroke>().Sum(g => g.Contour.Length), 1e-6);
        Assert.Empty(guides.OfType<OpenStroke>());
    }

    [Fact]
    public void A_table_gets_no_runs_of_weld() =>
        Assert.DoesNotContain(CutSheet.Of(Made, Made.Pieces[0]).Layers, l => l.Name == "WELD-RUN");

    [Fact]
    public void Runs_too_short_to_tell_apart_on_the_paper_are_told_in_words_alone()
    {
        var piece = Made.Pieces[0] with { WeldSeams = [WeldPlan.Round(Edge, 8, WeldOrder.BackStep)] };
        var pages = TemplateSheet.Of(Made with { Pieces = [piece] }, Cases.A4, 12).Pages;
        Assert.DoesNotContain(pages.SelectMany(p => p.Views).SelectMany(v => v.Drawing.Layers), l => l.Name == "WELD-RUN");
        Assert.Contains("Runs 1 to 48", string.Join(' ', pages.Select(p => Printed.Words(Printed.On(p)))), StringComparison.Ordinal);
    }
}
