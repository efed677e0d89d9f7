using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Clipping;

public class ClipTests
{
    private static readonly Region Plate = Given.WithHole(Outline.Rectangle(new(new(0, 0), new(40, 20))), Outline.Circle(new(20, 10), 5));

    [Fact]
    public void A_line_across_a_plate_with_a_hole_is_cut_at_the_edges()
    {
        foreach (var image in Symmetries.Of(Plate))
        {
            var line = Path.Line(new(-10, 13), new(50, 13)).Placed(image.By);
            var inside = line.PartsInside(image.Shape);
            Ends(image.By, inside, (new(0, 13), new(16, 13)), (new(24, 13), new(40, 13))); // 3-4-5 at the hole
            var outside = line.PartsOutside(image.Shape);
            Ends(image.By, outside, (new(-10, 13), new(0, 13)), (new(16, 13), new(24, 13)), (new(40, 13), new(50, 13)));
        }
    }

    [Fact]
    public void A_run_along_an_edge_is_neither_inside_nor_outside()
    {
        foreach (var image in Symmetries.Of(Plate))
        {
            var bent = new Path(Segment.Line(new(-10, 0), new(10, 0)), Segment.Line(new(10, 0), new(10, 20)), Segment.Line(new(10, 20), new(50, 20)))
                .Placed(image.By);
            Ends(image.By, bent.PartsInside(image.Shape), (new(10, 0), new(10, 20)));
            Ends(image.By, bent.PartsOutside(image.Shape), (new(-10, 0), new(0, 0)), (new(40, 20), new(50, 20)));
        }
    }

    [Fact]
    public void Within_a_hundredth_of_a_micrometre_of_the_edge_counts_as_along_it()
    {
        Assert.Empty(Path.Line(new(5, 9e-6), new(15, 9e-6)).PartsInside(Plate));
        Assert.Single(Path.Line(new(5, 1.1e-5), new(15, 1.1e-5)).PartsInside(Plate));
        Assert.Empty(Path.Line(new(5, -9e-6), new(15, -9e-6)).PartsOutside(Plate));
        Assert.Single(Path.Line(new(5, -1.1e-5), new(15, -1.1e-5)).PartsOutside(Plate));
        Assert.Empty(Outline.Circle(new(20, 10), 5).PartsInside(Plate));
        Assert.Empty(Outline.Circle(new(20, 10), 5).PartsOutside(Plate));
        Assert.Empty(Plate.Contours[0].PartsInside(Plate));
    }

    [Fact]
    public void A_touch_does_not_interrupt_a_run()
    {
        foreach (var image in Symmetries.Of(Plate))
        {
            // Touching the hole from above.
            Ends(image.By, Path.Line(new(-10, 15), new(50, 15)).Placed(image.By).PartsInside(image.Shape), (new(0, 15), new(40, 15)));
            // A point of a path on the edge.
            var touching = new Path(Segment.Line(new(2, 10), new(7, 0)), Segment.Line(new(7, 0), new(12, 10))).Placed(image.By);
            Ends(image.By, touching.PartsInside(image.Shape), (new(2, 10), new(12, 10)));
        }
    }

    [Fact]
    public void A_contour_wholly_inside_comes_back_as_one_path_that_ends_where_it_began()
    {
        foreach (var image in Symmetries.Of(Outline.RoundedRectangle(new(new(2, 2), new(12, 12)), 2)))
        {
            var part = Assert.Single(image.Shape.PartsInside(Plate.Placed(image.By)));
            Assert.Equal(image.Shape.Segments, part.Segments);
            Assert.Equal(part.Start, part.End);
            Assert.Empty(image.Shape.PartsOutside(Plate.Placed(image.By)));
        }
    }

    [Fact]
    public void A_run_goes_on_past_the_start_of_its_contour()
    {
        // A circle of 5 about the lower left corner: a quarter is inside, the rest is one run outside, wherever it begins.
        foreach (var image in Symmetries.Of(Outline.Circle(new(0, 0), 5)))
        {
            var plate = Plate.Placed(image.By);
            Approximately.Equal(2.5 * Math.PI, Assert.Single(image.Shape.PartsInside(plate)).Length, within: 1e-9);
            Approximately.Equal(7.5 * Math.PI, Assert.Single(image.Shape.PartsOutside(plate)).Length, within: 1e-9);
        }
    }

    [Fact]
    public void Nothing_is_inside_an_empty_region_and_all_is_outside()
    {
        var line = Path.Line(new(0, 0), new(1, 0));
        Assert.Empty(line.PartsInside(Region.Empty));
        Assert.Equal(line.Segments, Assert.Single(line.PartsOutside(Region.Empty)).Segments);
    }

    [Fact]
    public void Parts_of_any_contour_are_as_long_as_the_referees_and_end_on_the_boundary()
    {
        var random = new Random(9);
        for (var n = 0; n < 60; n++)
        {
            var region = Given.Star(random, new(0, 0), 50);
            var contour = Given.Star(random, new(30 * random.NextDouble(), 30 * random.NextDouble()), 50).Contours[0];
            var (inside, outside) = (contour.PartsInside(region), contour.PartsOutside(region));
            var polygons = Given.Polygons(region);
            // Each end of a part is where two chords cross, at worst at a small angle: 0.01 mm together.
            Approximately.Equal(Given.Line(contour).Intersection(polygons).Length, inside.Sum(p => p.Length), within: 0.02);
            Approximately.Equal(contour.Length, inside.Sum(p => p.Length) + outside.Sum(p => p.Length), within: 1e-5);
            foreach (var part in inside.Concat(outside))
            {
                if (part.Start.DistanceTo(part.End) < 1e-9) continue;
                Approximately.Equal(0, region.BoundaryDistanceTo(part.Start), within: 1e-9);
                Approximately.Equal(0, region.BoundaryDistanceTo(part.End), within: 1e-9);
            }
            Assert.All(inside, p => Assert.All(p.PointsEvery(0.5), q => Assert.True(region.Contains(q))));
            Assert.All(outside, p => Assert.All(p.PointsEvery(0.5), q => Assert.True(region.BoundaryDistanceTo(q) < 1e-6 || !region.Contains(q))));
        }
    }

    [Fact]
    public void Outlines_meet_where_they_cross_touch_and_begin_and_end_to_coincide()
    {
        foreach (var image in Symmetries.Of(Plate))
        {
            Point[] Met(Contour other) => [.. image.Shape.OutlineMeetings(Given.Region(other).Placed(image.By))];
            void Are(Point[] found, params Point[] expected)
            {
                Assert.Equal(expected.Length, found.Length);
                // A touch is told along the edge only to √(2 r δ), 2e-5 where δ = 1.5e-11 as 100 m away.
                foreach (var p in expected) Assert.Contains(found, f => f.DistanceTo(image.By.Of(p)) < 5e-5);
            }
            Are(Met(Outline.Circle(new(0, 0), 5)), new(5, 0), new(0, 5));
            Are(Met(Outline.Circle(new(-5, 10), 5)), new Point(0, 10));
            Are(Met(Outline.Rectangle(new(new(5, -5), new(15, 0)))), new(5, 0), new(15, 0));
            Are(Met(Outline.Circle(new(20, 10), 4)));
            Are(Met(Outline.Rectangle(new(new(-5, -5), new(0, 0)))), new Point(0, 0));
        }
    }

    [Fact]
    public void Hatch_lines_stand_at_multiples_of_the_spacing_from_the_origin()
    {
        var region = Given.WithHole(Outline.Rectangle(new(new(1, 1), new(41, 21))), Outline.Circle(new(20, 10), 5));
        var lines = region.HatchLines(2.5, Angle.Zero);
        // y = 2.5 … 20; the hole of 5 about y = 10 splits 7.5, 10 and 12.5, and only touches 5 and 15.
        Assert.Equal(8 + 3, lines.Length);
        Assert.Equal([2.5, 5, 7.5, 10, 12.5, 15, 17.5, 20], lines.Select(l => Math.Round(l.Start.Y, 9)).Distinct());
        Assert.All(lines, l => Assert.True(l.End.X > l.Start.X));

        var slanted = region.HatchLines(3, Angle.FromDegrees(45));
        foreach (var line in slanted)
        {
            var offset = (line.Start - Point.Origin).Dot(Vector.Polar(1, Angle.FromDegrees(135))) / 3;
            Approximately.Equal(Math.Round(offset), offset, within: 1e-9);
            Approximately.Equal(Vector.Polar(1, Angle.FromDegrees(45)), line.Segments[0].StartDirection, within: 1e-9);
            Assert.True(region.Contains(line.PointAlong(line.Length / 2)));
        }
        // Lines 3 mm apart cover a third of a mm of length for each mm² of area, nearly.
        Approximately.Equal(region.Area / 3, slanted.Sum(l => l.Length), within: region.Area / 3 * 0.03);
        Assert.Empty(Region.Empty.HatchLines(3, Angle.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => region.HatchLines(0, Angle.Zero));
    }

    private static void Ends(Placement by, IReadOnlyList<Path> parts, params (Point Start, Point End)[] expected)
    {
        Assert.Equal(expected.Length, parts.Count);
        for (var i = 0; i < expected.Length; i++)
        {
            Approximately.Equal(by.Of(expected[i].Start), parts[i].Start, within: 1e-9);
            Approximately.Equal(by.Of(expected[i].End), parts[i].End, within: 1e-9);
        }
    }
}
