using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets.Tests;

/// <summary>A piece that a machine cuts: the path on the layer that is cut, everything else beside it, and a plan for the eye.</summary>
public class PlanTests
{
    private static readonly Cutter Torch = new("torch", "plasma torch", double.PositiveInfinity, LeastHole: 5) { LeadIn = 4, Feed = new((3, 2500)) };

    private static readonly Modification Planned = Samples.Bracket with { Pieces = [Samples.Bracket.Pieces[0].CutBy(Torch, kerf: 1.2, isGiven: true, CutSheet.RunOut)] };

    private static readonly LineDrawing Drawing = CutSheet.Of(Planned, Planned.Pieces[0]);

    [Fact]
    public void Layer_CUT_has_the_cuts_in_their_order_with_their_leads_and_comes_first()
    {
        Assert.Equal("CUT", Drawing.Layers[0].Name);
        var paths = Drawing.Layers[0].Marks.Select(m => Assert.IsType<OpenStroke>(m).Path).ToList();
        Assert.Equal(Planned.Pieces[0].Planned.Cuts.Select(c => c.Path.Length), paths.Select(p => p.Length));
        Assert.Equal(2, paths.Count);
    }

    [Fact]
    public void The_finished_edge_and_the_pierces_stand_on_layers_of_their_own()
    {
        var layers = Drawing.Layers.ToDictionary(l => l.Name);
        var edge = layers["FINISHED-EDGE"].Marks.Select(m => Assert.IsType<ClosedStroke>(m).Contour).ToList();
        Assert.Equal(Planned.Pieces[0].Shape.Area, edge.Sum(c => c.SignedArea), 1e-6);
        Assert.Equal(2, layers["PIERCE"].Marks.Length);
        Assert.True(layers.ContainsKey("PENCIL-BEND"));
    }

    [Fact]
    public void A_hole_that_is_drilled_has_a_cross_and_is_not_cut()
    {
        var piece = Samples.Bracket.Pieces[0].CutBy(Torch with { LeastHole = 9 }, 1.2, isGiven: false, CutSheet.RunOut);
        var layers = CutSheet.Of(Planned with { Pieces = [piece] }, piece).Layers.ToDictionary(l => l.Name);
        Assert.Equal(3, layers["DRILL"].Marks.Length);
        Assert.Single(layers["CUT"].Marks);
    }

    [Theory]
    [InlineData(false, "kerf 1.2 mm (as given)")]
    [InlineData(true, "the controller of the plasma torch allows for its kerf, to the right of travel")]
    public void The_note_says_kerf_side_and_order(bool compensates, string kerf)
    {
        var piece = Samples.Bracket.Pieces[0].CutBy(Torch with { Compensates = compensates }, 1.2, isGiven: true, CutSheet.RunOut);
        var words = Printed.Words(Printed.On(CutSheet.Of(Planned with { Pieces = [piece] }, piece)));
        Assert.All((string[])[kerf, "2 cuts, 2 pierces", "holes before outlines", "on the left of travel"], w => Assert.Contains(w, words, StringComparison.Ordinal));
    }

    [Fact]
    public void The_job_sheet_has_a_table_and_a_page_with_the_plan()
    {
        var plain = JobSheet.Of(Samples.Bracket, Cases.A4);
        var sheet = JobSheet.Of(Planned, Cases.A4);
        Assert.True(sheet.Pages.Length > plain.Pages.Length);
        var plan = Printed.Words(Printed.On(sheet.Pages[^1]));
        Assert.All((string[])["Plan of cutting", "kerf 1.2 mm", "pierces", "minutes"], w => Assert.Contains(w, plan, StringComparison.Ordinal));
        Assert.True(Planned.Pieces[0].Planned.TryTime(out var minutes));
        Assert.Contains(minutes.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture), plan, StringComparison.Ordinal);
        Assert.DoesNotContain("Plan of cutting", Printed.Words(plain.Pages.SelectMany(Printed.On)), StringComparison.Ordinal);
    }
}
