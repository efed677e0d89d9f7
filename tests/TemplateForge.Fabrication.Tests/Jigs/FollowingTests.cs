using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Jigs;

public class FollowingTests
{
    [Fact]
    public void An_inside_corner_too_tight_for_the_bush_is_named_with_the_largest_cutter_that_can()
    {
        var hole = TrialJigs.WithHole(Outline.RoundedRectangle(new(new(140, 80), new(260, 160)), 4));
        var faults = TrialJigs.Refused(TrialJigs.Design(hole, GuideEdge.Bush(20, 10)));
        Assert.Equal(4, faults.Length);
        Assert.All(faults, f => Assert.Equal(JigFaultKind.InsideCorner, f.Kind));
        // Twice the corner's radius, to a hundredth; the corner lies within its radius of where two sides would meet.
        Assert.All(faults, f => Approximately.Equal(8, f.Limit, within: 0.02));
        foreach (var corner in (Point[])[new(140, 80), new(260, 80), new(260, 160), new(140, 160)])
            Assert.Contains(faults, f => f.At.DistanceTo(corner) < 4);
        TrialJigs.Made(TrialJigs.Design(hole, GuideEdge.Bush(14, 8)));
    }

    [Fact]
    public void Into_a_sharp_corner_goes_no_cutter()
    {
        var faults = TrialJigs.Refused(TrialJigs.Design(TrialJigs.Notch(inside: 0), GuideEdge.Bush(17, 6)));
        Assert.Equal(2, faults.Length);
        Assert.All(faults, f => Approximately.Equal(0, f.Limit, within: 0.01));
        Approximately.Equal(new(140, 80), faults.MinBy(f => f.At.X).At, within: 0.01);
        Approximately.Equal(new(260, 80), faults.MaxBy(f => f.At.X).At, within: 0.01);
        TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(inside: 0), GuideEdge.Scriber));
    }

    [Fact]
    public void A_slot_too_narrow_for_the_cutter_is_refused()
    {
        var slot = TrialJigs.WithHole(Outline.Slot(new(160, 120), new(240, 120), 9));
        Assert.All(TrialJigs.Refused(TrialJigs.Design(slot, GuideEdge.Bush(17, 10))), f => Approximately.Equal(9, f.Limit, within: 0.02));
        TrialJigs.Made(TrialJigs.Design(slot, GuideEdge.Bush(17, 9)));
    }

    // A mouth of radius 10 bears an offset of 10: a bush no more than 20 larger than its cutter.
    [Fact]
    public void An_outside_corner_that_the_guide_would_cut_off_is_refused()
    {
        var faults = TrialJigs.Refused(TrialJigs.Design(TrialJigs.Notch(mouth: 10), GuideEdge.Bush(30, 6)));
        Assert.All(faults, f => Assert.Equal(JigFaultKind.OutsideCorner, f.Kind));
        Assert.Equal(2, faults.Length);
        Assert.All(faults, f => Approximately.Equal(10, f.Limit, within: 0.02));
        TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(mouth: 10), GuideEdge.Bush(25.9, 6)));
    }

    [Fact]
    public void A_bearing_as_large_as_its_cutter_leaves_outside_corners_sharp()
    {
        var step = Region.Of(Outline.Polygon(new(140, 80), new(260, 80), new(260, 160), new(200, 160), new(200, 120), new(140, 120)));
        var finished = TrialJigs.Panel.Subtract(step.RoundedCorners(6, c => c != new Point(200, 120)).Region);
        Assert.Contains(TrialJigs.Refused(TrialJigs.Design(finished, GuideEdge.Bush(10, 8))), f => f.Kind == JigFaultKind.OutsideCorner && f.At.DistanceTo(new(200, 120)) < 1.5);
        TrialJigs.Made(TrialJigs.Design(finished, GuideEdge.Bush(8, 8)));
    }
}
