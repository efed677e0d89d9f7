using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Measuring;

public class CutterReachTests
{
    private static Region Polygon(params Point[] corners) => Given.Region(Outline.Polygon(corners));

    // The cutter counts as 1e-6 mm smaller, so what it leaves in a square corner, (1 − π/4) r², is less by 2 (1 − π/4) r × 1e-6; and
    // what is promised of areas beside it is 1e-6 mm times the boundary.
    [Fact]
    public void A_square_pocket_keeps_what_four_quarter_discs_leave_in_its_corners()
    {
        foreach (var image in Symmetries.Of(Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 30))))))
        {
            var reach = image.Shape.ClearedBy(6);
            Approximately.Equal(1200 - (4 - Math.PI) * 36, reach.Made.Area, within: Tolerance.Area(140));
            Approximately.Equal((4 - Math.PI) * 36, reach.LeftOver.Area, within: Tolerance.Area(140));
            Assert.Equal(4, reach.LeftOver.Parts().Length);
            Assert.True(image.Shape.CutOutBy(6).LeftOver.IsEmpty, image.Name);
        }
    }

    // Five corners of the L are outer ones, one is an inner one: the pocket keeps five tips, the part one, (1 − π/4) r² each.
    [Fact]
    public void An_L_keeps_five_tips_as_a_pocket_and_one_as_a_part()
    {
        var tip = (1 - Math.PI / 4) * 25;
        foreach (var image in Symmetries.Of(Polygon(new(0, 0), new(40, 0), new(40, 15), new(15, 15), new(15, 40), new(0, 40))))
        {
            Approximately.Equal(5 * tip, image.Shape.ClearedBy(5).LeftOver.Area, within: Tolerance.Area(160));
            Approximately.Equal(tip, image.Shape.CutOutBy(5).LeftOver.Area, within: Tolerance.Area(160));
            Approximately.Equal(975 + tip, image.Shape.CutOutBy(5).Made.Area, within: Tolerance.Area(160));
        }
    }

    [Fact]
    public void A_neck_narrower_than_the_cutter_takes_a_pocket_in_two_and_one_as_wide_lets_it_through()
    {
        Region Dumbbell(double neck) => Given.Region(Outline.Rectangle(new(new(0, 0), new(30, 30))))
            .Union(Given.Region(Outline.Rectangle(new(new(60, 0), new(90, 30)))))
            .Union(Given.Region(Outline.Rectangle(new(new(20, 15 - neck / 2), new(70, 15 + neck / 2)))));
        foreach (var (_, by) in Symmetries.Placements)
        {
            Assert.Equal(2, Dumbbell(9.99).Placed(by).ClearedBy(5).Made.Parts().Length);
            Assert.Single(Dumbbell(10).Placed(by).ClearedBy(5).Made.Parts());
            Assert.True(Dumbbell(10).Placed(by).ClearedBy(16).Made.IsEmpty);
        }
    }

    [Fact]
    public void A_hole_is_cut_out_by_a_cutter_that_fits_and_stays_closed_to_a_larger_one()
    {
        var washer = Given.WithHole(Outline.Circle(new(0, 0), 20), Outline.Circle(new(0, 0), 5));
        foreach (var (_, by) in Symmetries.Placements)
        {
            Assert.Equal(2, washer.Placed(by).CutOutBy(5).Made.Contours.Length);
            Assert.True(washer.Placed(by).CutOutBy(5).LeftOver.IsEmpty);
            Approximately.Equal(25 * Math.PI, washer.Placed(by).CutOutBy(5.01).LeftOver.Area, within: Tolerance.Area(160));
        }
    }

    [Fact]
    public void A_cutter_has_a_radius_and_nothing_is_made_of_nothing()
    {
        var plate = Given.Region(Outline.Rectangle(new(new(0, 0), new(40, 30))));
        foreach (var radius in new[] { 0, -1, 1e-6, double.NaN, double.PositiveInfinity })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => plate.ClearedBy(radius));
            Assert.Throws<ArgumentOutOfRangeException>(() => plate.CutOutBy(radius));
        }
        Assert.True(Region.Empty.ClearedBy(1).Made.IsEmpty && Region.Empty.CutOutBy(1).LeftOver.IsEmpty);
    }

    // By definition: a point is cleared when some disc of the radius about a centre no farther off than that lies in the pocket. Depth
    // changes no faster than the centre moves, so of centres on a grid of 24 directions and 6 distances, of which none is farther than
    // 0.16 r from any place, the deepest tells to 0.16 r.
    [Fact]
    public void Points_are_cleared_that_some_disc_covers_which_lies_in_the_pocket() =>
        Gen.Select(Testing.Shapes.GridRegion, Gen.Int[1, 9], Gen.Int).Check(60, drawn =>
        {
            var (region, half, seed) = drawn;
            if (region.IsEmpty) return;
            var (radius, random) = (half * 0.83, new Random(seed));
            foreach (var by in (ReadOnlySpan<Placement>)[Placement.Unmoved, Placement.Moved(new(100_000, -100_000))])
            {
                var pocket = region.Placed(by);
                var reach = pocket.ClearedBy(radius);
                Approximately.Equal(pocket.Area, reach.Made.Area + reach.LeftOver.Area, within: Tolerance.Area(3 * pocket.Length));
                for (var i = 0; i < 25; i++)
                {
                    var p = pocket.Bounds.Min + new Vector(pocket.Bounds.Width * random.NextDouble(), pocket.Bounds.Height * random.NextDouble());
                    if (!pocket.Contains(p)) continue;
                    var deepest = Depths(pocket, p, radius).Max();
                    if (deepest > radius + 2e-6) Assert.True(reach.Made.Contains(p), $"{p} radius {radius}");
                    if (deepest < 0.84 * radius) Assert.False(reach.Made.Contains(p), $"{p} radius {radius}");
                    if (reach.LeftOver.BoundaryDistanceTo(p) > 2e-6) Assert.NotEqual(reach.Made.Contains(p), reach.LeftOver.Contains(p));
                }
            }
        });

    // Running round a part is clearing what lies round it.
    [Fact]
    public void What_is_cut_round_a_part_is_what_is_cleared_of_a_sheet_less_the_part() =>
        Gen.Select(Testing.Shapes.GridRegion, Gen.Int[1, 9]).Check(60, (part, half) =>
        {
            if (part.IsEmpty) return;
            var radius = half * 0.83;
            var sheet = Given.Region(Outline.Rectangle(part.Bounds.Grown(3 * radius)));
            var waste = sheet.Subtract(part).ClearedBy(radius).LeftOver;
            // The sheet's own corners keep their tips, which lie apart.
            var tips = (4 - Math.PI) * radius * radius;
            Approximately.Equal(part.CutOutBy(radius).LeftOver.Area + tips, waste.Area, within: Tolerance.Area(3 * (sheet.Length + part.Length)));
        });

    private static IEnumerable<double> Depths(Region pocket, Point p, double radius)
    {
        for (var ring = 0; ring <= 6; ring++)
        {
            for (var i = 0; i < (ring == 0 ? 1 : 24); i++)
            {
                var centre = p + Vector.Polar(radius * ring / 6, Angle.FullTurn * i / 24);
                yield return pocket.BoundaryDistanceTo(centre) * (pocket.Contains(centre) ? 1 : -1);
            }
        }
    }
}
