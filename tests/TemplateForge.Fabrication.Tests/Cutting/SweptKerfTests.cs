using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>The slot swept along the paths leaves the part, and never touches it: over random parts with holes, by distances alone.</summary>
public class SweptKerfTests
{
    /// <summary>How near the slot's edge must come to the part's, in mm.</summary>
    private const double Within = 0.01;

    private static readonly Cutter Torch = new("torch", "torch", double.PositiveInfinity, LeastHole: 0) { LeadIn = 4, LeastLead = 0.2, Overcut = 1 };

    [Theory]
    [InlineData(0.2)]
    [InlineData(1.5)]
    [InlineData(6)]
    public void The_slot_leaves_every_plate_on_a_grid_and_never_touches_it(double kerf) =>
        Shapes.GridRegion.Check(10, region => Holds(region, kerf));

    [Theory]
    [InlineData(0.2)]
    [InlineData(1.5)]
    [InlineData(6)]
    public void The_slot_leaves_every_star_with_a_star_in_it_and_never_touches_it(double kerf) =>
        CsCheck.Gen.Select(Shapes.Star, Shapes.Star).Check(6, (outer, inner) => Holds(
            Region.Of(outer).Subtract(Region.Of(inner.Placed(Placement.Scaled(0.4, Point.Origin)))), kerf));

    // A referee that finds nothing wrong with what is wrong would be none.
    [Fact]
    public void The_referee_sees_a_path_on_the_wrong_side_one_too_near_and_one_too_far()
    {
        var part = Pieces.Plate.Shape;
        Assert.True(Swept(0).Entered() > 0.7);
        Assert.True(Swept(0.73).Entered() > Within);
        Assert.InRange(Swept(0.75).Entered(), -Within, Within);
        Assert.Empty(Swept(0.75).NotCut(Within, (_, _) => false));
        Assert.NotEmpty(Swept(0.77).NotCut(Within, (_, _) => false));

        SweptKerf Swept(double offset) => new(part, [.. part.Offset(offset).Contours.Select(c => new Path(c.Segments))], 1.5);
    }

    private static void Holds(Region part, double kerf)
    {
        if (part.IsEmpty) return;
        // Each kerf stands for its machine: a laser, a torch with the part on its right, a router that comes in on lines.
        var tool = Torch with { PartOn = kerf == 1.5 ? Side.Right : Side.Left, Lead = kerf == 6 ? LeadKind.Line : LeadKind.Arc };
        var plan = CutPlan.Of(Pieces.Plate with { Shape = part }, tool, kerf, runOut: 10);
        Assert.True(plan.RapidLength >= plan.RapidBound - 1e-6, $"moves of {plan.RapidLength} below their bound of {plan.RapidBound}");
        if (plan.Cuts.IsEmpty) return;
        var swept = new SweptKerf(plan.Part, [.. plan.Cuts.Select(c => c.Path)], kerf);
        var entered = swept.Entered();
        Assert.True(entered <= Within, $"the slot reaches {entered} mm into the part");
        var uncut = plan.Troubles.Where(t => t.Kind is CutTroubleKind.NoRoomToPierce).Select(t => t.At).ToList();
        foreach (var at in swept.NotCut(Within, (_, contour) => uncut.Exists(u => plan.Part.Contours[contour].Segments.Any(s => s.DistanceTo(u) < kerf / 2 + 1e-3))))
            Assert.Fail($"the slot does not come to {at}");
    }
}
