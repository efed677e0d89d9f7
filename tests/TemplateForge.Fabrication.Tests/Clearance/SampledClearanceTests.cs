using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Clearance regions against distances in space that are worked out point by point, by <see cref="BruteDistance"/>.</summary>
public class SampledClearanceTests
{
    private const double Allowed = ClearanceRegion.MostError;

    // 60 components, 170 places of each outline and more, 11 depths at each: over a hundred thousand distances.
    [Fact]
    public void Every_place_of_the_outline_keeps_the_clearance_through_the_sheet_and_none_more()
    {
        var sampled = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var random = RandomComponent.Of(seed, moves: false);
            var region = ClearanceRegion.Of([random.Component], random.Clearance);
            Law.IsWellMade(region);
            foreach (var contour in region.Contours)
            {
                for (var i = 0; i < 170; i++)
                {
                    var at = contour.PointAlong(contour.Length * (i + 0.37) / 170);
                    var least = Enumerable.Range(0, 11).Min(k => random.Brute.At(at.X, at.Y, -random.Component.Sheet * k / 10, 0, 0));
                    sampled += 11;
                    Assert.True(Math.Abs(least - random.Clearance) <= Allowed, $"seed {seed}: {least} mm at {at}, but {random.Clearance} mm is wanted.");
                }
            }
        }
        Assert.True(sampled >= 100_000, $"only {sampled}");
    }

    // The positions 0.8 mm apart at the most, with clearances from 10 mm: so far apart they miss 0.4² / 2c or 0.008 mm.
    [Fact]
    public void In_all_its_positions_a_component_keeps_clear_and_no_more_is_cut_than_needed()
    {
        for (var seed = 0; seed < 9; seed++)
        {
            var random = RandomComponent.Of(seed, moves: true);
            var region = ClearanceRegion.Of([random.Component], random.Clearance);
            Law.IsWellMade(region);
            foreach (var contour in region.Contours)
            {
                for (var i = 0; i < 8; i++)
                {
                    var at = contour.PointAlong(contour.Length * (i + 0.37) / 8);
                    var least = Least(random, at, 0.8);
                    Assert.True(Math.Abs(least - random.Clearance) <= Allowed, $"seed {seed}: {least} mm at {at}, but {random.Clearance} mm is wanted.");
                }
            }
        }
    }

    // Places drawn at random, so that no part is missing and no hole too many.
    [Fact]
    public void What_is_nearer_than_the_clearance_is_inside_and_nothing_else()
    {
        var (inside, outside) = (0, 0);
        for (var seed = 0; seed < 40; seed++)
        {
            var random = RandomComponent.Of(seed, moves: false);
            var region = ClearanceRegion.Of([random.Component], random.Clearance);
            var (bounds, dice) = (random.Component.Bounds.Grown(random.Clearance * 1.2), new Random(seed));
            for (var i = 0; i < 100; i++)
            {
                Point at = new(bounds.Min.X + bounds.Width * dice.NextDouble(), bounds.Min.Y + bounds.Height * dice.NextDouble());
                var least = Enumerable.Range(0, 11).Min(k => random.Brute.At(at.X, at.Y, -random.Component.Sheet * k / 10, 0, 0));
                if (Math.Abs(least - random.Clearance) <= Allowed) continue;
                Assert.True(region.Contains(at) == least < random.Clearance, $"seed {seed}: {least} mm at {at}, clearance {random.Clearance}");
                if (least < random.Clearance) inside++; else outside++;
            }
        }
        Assert.True(inside > 500 && outside > 500);
    }

    // The search of the least clearance against that of every place of a grid on the metal, a millimetre apart and along its outline.
    [Fact]
    public void The_least_clearance_of_a_panel_is_the_least_over_all_its_places()
    {
        for (var seed = 0; seed < 15; seed++)
        {
            var random = RandomComponent.Of(seed, moves: false);
            var dice = new Random(seed);
            Point middle = random.Component.Stand.At + new Vector(dice.Next(-40, 40), dice.Next(-40, 40));
            var metal = Region.Of(Outline.Rectangle(random.Component.Bounds.Grown(40)))
                .Subtract(Region.Of(Outline.Ellipse(middle, dice.Next(40, 140), dice.Next(40, 140), Angle.FromDegrees(dice.Next(180)))));
            if (metal.IsEmpty) continue;
            var least = LeastClearance.OfMetal(metal, [random.Component]);
            Assert.True(metal.Contains(least.At) || metal.BoundaryDistanceTo(least.At) < 1e-6);
            double At(Point p) => Enumerable.Range(0, 11).Min(k => random.Brute.At(p.X, p.Y, -random.Component.Sheet * k / 10, 0, 0));
            Approximately.Equal(least.Distance, At(least.At), within: 0.01);
            var sampled = metal.Contours.SelectMany(c => Enumerable.Range(0, 200).Select(i => c.PointAlong(c.Length * i / 200)))
                .Concat(Enumerable.Range(0, 400).Select(i => new Point(
                    metal.Bounds.Min.X + metal.Bounds.Width * (i % 20) / 19, metal.Bounds.Min.Y + metal.Bounds.Height * (i / 20) / 19)).Where(metal.Contains)).Min(At);
            Assert.True(sampled >= least.Distance - 0.01, $"seed {seed}: {sampled} is less than {least.Distance}");
        }
    }

    private static double Least(RandomComponent random, Point at, double apart)
    {
        var component = random.Component;
        var rock = component.Rocks.Select(r => r.By.Radians).FirstOrDefault();
        var travel = component.Travels.Select(t => t.By).FirstOrDefault();
        var (rocks, ways, depths) = (rock > 0 ? (int)Math.Ceiling(2 * rock * 220 / apart) : 0, (int)Math.Ceiling(travel / apart), (int)Math.Ceiling(component.Sheet / apart));
        var least = double.PositiveInfinity;
        for (var i = 0; i <= rocks; i++)
        {
            for (var j = 0; j <= ways; j++)
            {
                for (var k = 0; k <= depths; k++)
                {
                    var z = depths == 0 ? 0 : -component.Sheet * k / depths;
                    least = Math.Min(least, random.Brute.At(at.X, at.Y, z, rocks == 0 ? 0 : rock * (2.0 * i / rocks - 1), ways == 0 ? 0 : travel * j / ways));
                }
            }
        }
        return least;
    }
}
