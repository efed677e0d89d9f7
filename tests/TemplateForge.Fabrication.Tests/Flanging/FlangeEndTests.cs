using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Where a flange ends alone, and where hardly any radius leaves room between two. Worked out by hand; common practice, no source.</summary>
public class FlangeEndTests
{
    // R 1.5, T 1, upright: the tangent line lies 2.5 in from the outline. K 0.44.
    private static Fold Up(double insideRadius = 1.5) => new(new(Angle.FromDegrees(90), insideRadius, 1, new KFactorRule(0.44)), BendWay.Up, new(20));

    // Else it would lie against the base along its whole height, and nothing would part them. A relief is 3 wide.
    [Fact]
    public void A_flange_that_ends_at_an_inner_corner_keeps_a_slot_from_the_base()
    {
        var angle = Region.Of(Outline.Polygon(new(0, 0), new(100, 0), new(100, 40), new(50, 40), new(50, 90), new(0, 90)));
        var shape = Lay(angle, MeasuredBy.Outside, Up(), edge: new(75, 40));
        Assert.Equal([50, 47], AtHeight(shape, 50).Select(p => Math.Round(p.Length, 6)));
        Assert.Equal([50, 47], AtHeight(shape, 37.6).Select(p => Math.Round(p.Length, 6)));
        Assert.Equal([100], AtHeight(shape, 37.4).Select(p => Math.Round(p.Length, 6)));
    }

    // The base is wider by 0.5 mm for every mm above its lower edge.
    [Fact]
    public void Beside_a_flange_that_ends_at_a_blunt_corner_the_base_is_cut_away_as_deep_as_the_bend()
    {
        var floor = Region.Of(Outline.Polygon(new(0, 0), new(100, 0), new(130, 60), new(0, 60)));
        var shape = Lay(floor, MeasuredBy.Outside, Up(), edge: new(50, 0));
        Assert.Equal(100, AtHeight(shape, 2.4).Sum(p => p.Length), 1e-9);
        Assert.Equal(101.3, AtHeight(shape, 2.6).Sum(p => p.Length), 1e-9);
    }

    // The tangent lines are the outline itself; the allowance is 0.44 π / 2, and 19 of the leg stay flat.
    [Fact]
    public void A_tray_without_radius_that_is_measured_on_the_inside_is_laid_flat()
    {
        var floor = Region.Of(Outline.Rectangle(new(Point.Origin, new(100, 60))));
        Assert.True(FlangedBlank.TryLayFlat(
            new(floor, 1, MeasuredBy.Inside, new Flange(floor.Contours[0].Segments, [Up(insideRadius: 0)])), out var blank, out _));
        Law.IsWellMade(blank.Shape);
        Assert.Equal(100 + 2 * (19 + 0.44 * Math.PI / 2), blank.Shape.Bounds.Width, 1e-9);
    }

    private static Region Lay(Region outline, MeasuredBy measured, Fold fold, Point edge)
    {
        var side = outline.Contours[0].Segments.MinBy(s => s.DistanceTo(edge));
        Assert.True(FlangedBlank.TryLayFlat(new(outline, 1, measured, new Flange([side], [fold])), out var blank, out _));
        Law.IsWellMade(blank.Shape);
        return blank.Shape;
    }

    private static ImmutableArray<Path> AtHeight(Region shape, double height) => Path.Line(new(-500, height), new(500, height)).PartsInside(shape);
}
