using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>Twice the thickness of metal at least: common practice, no source.</summary>
public class WebWarningsTests
{
    [Fact]
    public void Two_holes_leave_twice_the_thickness_between_them()
    {
        var warning = Assert.Single(WebWarnings.Of(Plates.With(Plates.Round(50, 50, 10), Plates.Round(62 - Plates.Just, 50, 10))));
        Assert.Equal("web too narrow", warning.Rule);
        Approximately.Equal(new Point(56, 50), warning.At, within: 1e-4);
        Assert.Empty(WebWarnings.Of(Plates.With(Plates.Round(50, 50, 10), Plates.Round(62 + Plates.Just, 50, 10))));
    }

    [Theory]
    [InlineData(7 - 1e-5, 1)]
    [InlineData(7 + 1e-5, 0)]
    public void So_do_a_hole_and_the_edge(double y, int warnings) =>
        Assert.Equal(warnings, WebWarnings.Of(Plates.With(Plates.Round(50, y, 10))).Length);

    // Three slots a millimetre apart, the first a millimetre from the edge all along: three narrow places.
    [Fact]
    public void A_web_as_long_as_a_slot_is_one_narrow_place() =>
        Assert.Equal(3, WebWarnings.Of(Plates.With([.. Enumerable.Range(0, 3).Select(i => Outline.Slot(new(20, 4 + 7 * i), new(150, 4 + 7 * i), 6))])).Length);

    // The hole is 1 from the edge of its own plate, 1.5 from a strip beside that; of a row of three, the outer two are 1.8 apart.
    [Fact]
    public void Only_metal_is_a_web()
    {
        var strip = Region.Of(Outline.Rectangle(new(new(200.5, 0), new(220, 100))));
        var plate = Plates.With(Plates.Round(194, 50, 10));
        Assert.Single(WebWarnings.Of(plate with { Shape = plate.Shape.Union(strip) }));
        Assert.Equal(2, WebWarnings.Of(Plates.With(Plates.Round(50, 50, 10), Plates.Round(55.9, 50, 0.4), Plates.Round(61.8, 50, 10))).Length);
    }

    // The panel goes on to the right of what is drawn of it.
    [Fact]
    public void Where_only_the_drawing_ends_there_is_no_edge()
    {
        var panel = Pieces.CutAway(Region.Of(Plates.Round(199 - 5, 50, 10)), roughAllowance: 0);
        Assert.Single(WebWarnings.Of(panel));
        Assert.Empty(WebWarnings.Of(panel with { Edges = [Path.Line(new(0, 0), new(200, 0))] }));
        Assert.Single(WebWarnings.Of(panel with { Edges = [Path.Line(new(200, 0), new(200, 100))] }));
    }

    [Fact]
    public void Of_paper_nothing_is_said()
    {
        var plate = Plates.With(Plates.Round(50, 5.5, 10));
        Assert.Single(BlankWarnings.Of(plate, [], Material.Unstated));
        Assert.Empty(BlankWarnings.Of(plate with { Kind = PieceKind.Paper }, [], Material.Unstated));
    }
}
