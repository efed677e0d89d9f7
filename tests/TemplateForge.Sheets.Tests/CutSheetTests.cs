using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

public class CutSheetTests
{
    private static LineDrawing Draw(Modification modification) => CutSheet.Of(modification, modification.Pieces[0]);

    private static List<Mark> Layer(LineDrawing drawing, string name) => [.. drawing.Layers.Where(l => l.Name == name).SelectMany(l => l.Marks)];

    [Fact]
    public void A_notch_is_one_open_cut_that_runs_on_and_off_past_the_panel_edge()
    {
        var cut = Assert.IsType<OpenStroke>(Assert.Single(Layer(Draw(Samples.Notch), "CUT")));
        var before = Samples.Notch.Pieces[0].Before;
        Assert.All((Point[])[cut.Path.Start, cut.Path.End], end => Assert.True(before.DistanceTo(end) >= 5 && !before.Contains(end)));
    }

    [Fact]
    public void A_lap_patch_is_closed_cuts_with_its_plug_holes_first()
    {
        var cuts = Layer(Draw(Samples.LapPatch), "CUT").Select(m => Assert.IsType<ClosedStroke>(m).Contour).ToList();
        Assert.True(cuts.Count > 1);
        Assert.All(cuts.SkipLast(1), hole => Assert.True(hole.Bounds.Width < 7.1));
        Assert.Equal(62, cuts[^1].Bounds.Width, 1e-6);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void No_line_is_drawn_twice(bool notch)
    {
        var strokes = Printed.On(Draw(notch ? Samples.MeasuredNotch : Samples.LapPatch))
            .Where(p => p.Mark is not Lettering)
            .SelectMany(p => p.Segments)
            .ToList();
        for (var i = 0; i < strokes.Count; i++)
        {
            foreach (var other in strokes.Skip(i + 1))
            {
                // Two that share a stretch share three points of it.
                Assert.False(((double[])[0.3, 0.5, 0.7]).All(t => other.DistanceTo(strokes[i].At(t)) < 1e-4), $"{strokes[i]} twice.");
            }
        }
    }

    [Fact]
    public void Datums_are_marks_and_the_rough_cut_stays_off_the_table()
    {
        var drawing = Draw(Samples.Notch);
        Assert.Equal(10, Layer(drawing, "DATUM").Count); // four strokes of a cross and a hole, twice
        Assert.Equal(2, Layer(drawing, "PANEL-EDGE").Count);
        Assert.DoesNotContain(drawing.Layers, l => l.Name is "ROUGH-CUT" or "WASTE");
        Assert.Equal("CUT", drawing.Layers[0].Name);
    }

    [Fact]
    public void Notes_stand_clear_of_the_shape_and_say_what_must_be_known()
    {
        var drawing = Draw(Samples.OtherHand(Samples.Notch));
        var notes = Layer(drawing, "NOTE").Cast<Lettering>().ToList();
        var shapes = drawing.Layers.Where(l => l.Name is not ("NOTE" or "DEMONSTRATION")).SelectMany(l => l.Marks).ToList();
        Assert.All(notes, n => Assert.True(n.Bounds.Max.Y < shapes.Min(s => s.Bounds.Min.Y) - 5));
        var words = Printed.Words(Printed.On(drawing));
        foreach (var part in (string[])
                 [
                     "Panel with its opening", "bulkhead-notch, version 1", "RIGHT HAND: mirror image of the left, NOT MEASURED on this side",
                     "This face up: inner face", "sheet 1.4 mm", "Unit: mm", "Finished line: kerf is not allowed for",
                     "A formed panel does not lie on a table", "Cautions: Brakes", "DEMONSTRATION, DO NOT CUT",
                 ])
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_measured_patch_is_no_demonstration_and_a_demonstration_says_so_across_the_cut()
    {
        Assert.DoesNotContain(Draw(Samples.LapPatch).Layers, l => l.Name == "DEMONSTRATION");
        var words = Assert.IsType<Lettering>(Assert.Single(Layer(Draw(Samples.Notch), "DEMONSTRATION")));
        Assert.True(words.Bounds.Width > 200);
    }

    [Fact]
    public void Every_layer_has_a_name_that_a_DXF_takes() => Assert.NotEmpty(DxfWriter.Write(Draw(Samples.Notch)));
}
