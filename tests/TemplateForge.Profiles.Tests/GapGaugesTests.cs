using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class GapGaugesTests
{
    private static readonly Profile Gauges = TheLibrary.Profile("gap-gauges");

    private static double WidthAt(Piece piece, double x) => Path.Line(new(x, -500), new(x, 500)).PartsInside(piece.Shape).Sum(p => p.Length);

    // 4 mm wanted, half a millimetre either way.
    [Fact]
    public void One_tip_goes_in_and_the_other_must_not()
    {
        var gauge = Gauges.Make().Piece("go-no-go");
        Approximately.Equal(3.5, WidthAt(gauge, gauge.Shape.Bounds.Max.X - 5), within: 1e-9);
        Approximately.Equal(4.5, WidthAt(gauge, gauge.Shape.Bounds.Min.X + 5), within: 1e-9);
    }

    [Fact]
    public void Steps_are_as_wide_as_they_say()
    {
        var gauge = Gauges.Make().Piece("stepped");
        double[] widths = [5, 4.5, 4, 3.5, 3];
        for (var i = 0; i < 5; i++) Approximately.Equal(widths[i], WidthAt(gauge, 11 * i + 5.5), within: 1e-9);
        Assert.Equal(["3 mm", "3.5 mm", "4 mm", "4.5 mm", "5 mm"], gauge.Labels.Select(l => l.Text));
    }

    // 1 in 10: where a mark stands, the blade is as wide as it reads. From 2 at the tip to 8, a mark for each tenth.
    [Fact]
    public void At_each_mark_of_the_taper_gauge_it_is_as_wide_as_the_mark_reads()
    {
        var gauge = Gauges.Make().Piece("taper");
        var marks = gauge.ScribeLines.Select(l => Math.Round(l.Start.X, 6)).Distinct().Order().ToList();
        Assert.Equal(61, marks.Count);
        foreach (var at in marks.Where(x => x is > 0 and < 60)) Approximately.Equal(2 + (60 - at) / 10, WidthAt(gauge, at), within: 1e-6);
        Assert.All(gauge.ScribeLines, l => Assert.True(gauge.Shape.Bounds.Contains(l.End) && l.End.Y > l.Start.Y));
        foreach (var label in gauge.Labels)
            Assert.Equal($"{2 + (60 - label.At.X) / 10} mm", label.Text);
    }

    [Fact]
    public void The_flush_gauge_steps_by_what_is_allowed()
    {
        var gauge = Gauges.Make("flush=0.7").Piece("flush");
        Approximately.Equal(0.7, WidthAt(gauge, 30) - WidthAt(gauge, -20), within: 1e-9);
    }

    [Theory]
    [InlineData("step=1", "smallest=8")]
    [InlineData("wanted=2", "give=1.5")]
    [InlineData("ring_hole=10", "handle=18")]
    public void What_would_bend_or_not_fit_the_handle_is_refused(params string[] given) => Gauges.Refuse(given);
}
