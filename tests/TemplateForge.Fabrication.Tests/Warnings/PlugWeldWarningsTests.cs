using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Holes of plug welds by the rules of <see cref="PlugWeldWarnings"/>, just within and just past each.</summary>
public class PlugWeldWarningsTests
{
    private const double Inch = 25.4;

    private static string[] Rules(double thickness, params PlugWeld[] plugs)
    {
        var holes = plugs.Select(p => Region.Of(p.IsRound ? Outline.Circle(p.From, p.Width / 2) : Outline.Slot(p.From, p.To, p.Width)));
        var piece = new Piece
        {
            Name = "plate",
            Title = "Plate",
            Kind = PieceKind.Blank,
            FaceUp = "outer face",
            Thickness = thickness,
            Shape = Region.Of(Outline.Rectangle(new(new(0, 0), new(300, 100)))).Subtract(holes),
        };
        return [.. PlugWeldWarnings.Of(piece, [.. plugs]).Select(w => w.Rule)];
    }

    private static PlugWeld Hole(double x, double y, double width = 8) => new(new(x, y), new(x, y), width);

    [Fact]
    public void Sound_plugs_have_no_warning() => Assert.Empty(Rules(1, Hole(50, 50), Hole(82, 50), Hole(66, 80)));

    // Collision-repair textbooks (from memory): about 5 mm in thin skins. Structural rule (read): from plate up the depth and 5/16 in.
    [Theory]
    [InlineData(1, 5, true)]
    [InlineData(1, 4.99, false)]
    [InlineData(2.9, 5, true)]
    [InlineData(3, 3 + 5.0 / 16 * Inch, true)]
    [InlineData(3, 3 + 5.0 / 16 * Inch - 0.01, false)]
    public void A_hole_is_large_enough_for_the_weld_to_reach_the_sheet_below(double thickness, double width, bool isSound) =>
        Assert.Equal(isSound ? [] : ["plug hole too small"], Rules(thickness, Hole(100, 50, width)));

    // Structural rule (read): the least plus 1/8 in, or 2.25 times the depth where that is more.
    [Theory]
    [InlineData(3, 3 + 7.0 / 16 * Inch, true)]
    [InlineData(3, 3 + 7.0 / 16 * Inch + 0.01, false)]
    [InlineData(12, 27, true)]
    [InlineData(12, 27.01, false)]
    public void A_hole_is_not_larger_than_can_be_filled(double thickness, double width, bool isSound) =>
        Assert.Equal(isSound ? [] : ["plug hole too large"], Rules(thickness, Hole(100, 50, width)));

    // Not closer than 4 widths across (read for slots).
    [Theory]
    [InlineData(32, true)]
    [InlineData(31.99, false)]
    public void Plugs_and_slots_stand_four_widths_apart(double apart, bool isSound)
    {
        Assert.Equal(isSound ? [] : ["plug welds too near each other"], Rules(1, Hole(50, 50), Hole(50 + apart, 50)));
        var (low, high) = (new PlugWeld(new(50, 30), new(90, 30), 8), new PlugWeld(new(70, 30 + apart), new(110, 30 + apart), 8));
        Assert.Equal(isSound ? [] : ["plug welds too near each other"], Rules(1, low, high));
        Assert.Equal(isSound ? [] : ["plug welds too near each other"], Rules(1, low, Hole(90 + apart, 30)));
    }

    [Theory]
    [InlineData(12, true)]
    [InlineData(11.99, false)]
    public void A_plug_stands_one_and_a_half_of_its_width_from_the_edge(double fromEdge, bool isSound) =>
        Assert.Equal(isSound ? [] : ["plug weld too near the edge"], Rules(1, Hole(100, fromEdge)));

    [Fact]
    public void A_hole_that_is_neither_round_nor_a_slot_is_no_plug_weld()
    {
        Assert.False(PlugWeld.TryOf(Outline.Rectangle(new(new(0, 0), new(10, 10))).Reversed(), out _));
        Assert.False(PlugWeld.TryOf(Outline.RoundedRectangle(new(new(0, 0), new(30, 20)), 8).Reversed(), out _));
        Assert.True(PlugWeld.TryOf(Outline.Slot(new(0, 0), new(20, 5), 8).Reversed(), out var slot));
        Approximately.Equal(8, slot.Width, within: 1e-9);
        Approximately.Equal(new Point(10, 2.5), slot.Middle, within: 1e-9);
    }
}
