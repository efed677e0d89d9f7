using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Jigs;

public class DrillJigTests
{
    [Fact]
    public void Every_new_hole_has_a_bush_pressed_into_the_plate()
    {
        var plate = TrialJigs.Made(Design(new(150, 150), new(250, 150), diameter: 6.5));
        Assert.Equal(2, plate.Bushes.Length);
        // DIN 179 (from memory): a bush for 6 to 8 mm is 12 mm outside.
        Assert.All(plate.Bushes, b => Approximately.Equal(12, b.Bush.Outside, within: 0));
        foreach (var bush in plate.Bushes) Approximately.Equal(6, plate.Shape.BoundaryDistanceTo(bush.At), within: 1e-9);
        // ISO 286-2: F7 over 6 to 10 mm is +13 / +28 (from memory), n6 over 10 to 18 mm +12 / +23 (from memory).
        var part = JigParts.Of(plate).Single(p => p.What.StartsWith("drill bush", StringComparison.Ordinal));
        Assert.Equal(2, part.Quantity);
        Assert.Contains("bore 6.5 F7 (6.513 to 6.528)", part.Size, StringComparison.Ordinal);
        Assert.Contains("12 n6 (12.012 to 12.023) pressed into 12 H7 (12.000 to 12.018)", part.Size, StringComparison.Ordinal);
    }

    [Fact]
    public void Bushes_with_a_head_make_two_plates() =>
        Assert.Equal(4, JigPieces.Of(TrialJigs.Made(Design(new(150, 150), new(250, 150), 6.5) with { IsOneSided = true }), TrialJigs.Left).Length);

    [Fact]
    public void Bushes_too_close_holes_too_large_and_holes_not_round_are_refused()
    {
        Assert.Contains(TrialJigs.Refused(Design(new(150, 150), new(164, 150), 6.5)), f => f.Kind == JigFaultKind.HoleTooNear);
        Assert.Contains(TrialJigs.Refused(Design(new(150, 150), new(250, 150), 23)), f => f.Kind == JigFaultKind.HoleTooLarge);
        var slot = Region.Of(Outline.Slot(new(150, 150), new(160, 150), 6));
        Assert.Contains(TrialJigs.Refused(Design(new(150, 150), new(250, 150), 6) with { Drills = slot }), f => f.Kind == JigFaultKind.NotRound);
    }

    private static JigDesign Design(Point first, Point second, double diameter) =>
        TrialJigs.Design(TrialJigs.Panel.Subtract(Region.Of(Outline.Circle(first, diameter / 2))), GuideEdge.Scriber) with
        {
            Drills = Region.Of(Outline.Circle(first, diameter / 2)).Union(Region.Of(Outline.Circle(second, diameter / 2))),
        };
}
