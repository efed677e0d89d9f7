using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class CornerStyleTests
{
    private static readonly Region Square = Draw.Rectangle(0, 0, 40, 40);

    // 1 is flat; √2 and 2 are exactly what the corners of squares and of equilateral triangles need.
    private static readonly Gen<double> Limits = Gen.OneOf(1, Math.Sqrt(2), 2, 4, 20);

    private static readonly Gen<(Region, double)> Offsets = Gen.Select(Testing.Shapes.GridRegion, Testing.Shapes.GridOffset);

    [Fact]
    public void A_square_with_mitred_corners_grows_to_a_square()
    {
        var grown = Square.Offset(5, CornerStyle.Mitred(limit: 2));
        Assert.Equal(4, Assert.Single(grown.Contours).Segments.Length);
        Approximately.Equal(new Box(new(-5, -5), new(45, 45)), grown.Bounds, within: Tolerance.Length);
        Approximately.Equal(50 * 50, grown.Area, within: Tolerance.Area(grown.Length));
    }

    [Fact]
    public void A_square_with_flat_corners_grows_to_an_octagon()
    {
        var grown = Square.Offset(5, CornerStyle.Flat);
        Assert.Equal(8, Assert.Single(grown.Contours).Segments.Length);
        Approximately.Equal(1600 + 4 * 40 * 5 + 4 * 12.5, grown.Area, within: Tolerance.Area(grown.Length));
    }

    // The tip of a square's mitre is √2 distances away. At just that limit it stays, however the square lies.
    [Fact]
    public void A_mitre_is_drawn_up_to_its_limit_and_flat_beyond()
    {
        foreach (var image in Symmetries.Of(Square))
        {
            Assert.Equal(4, Assert.Single(image.Shape.Offset(5, CornerStyle.Mitred(Math.Sqrt(2))).Contours).Segments.Length);
            Assert.Equal(8, Assert.Single(image.Shape.Offset(5, CornerStyle.Mitred(1.414)).Contours).Segments.Length);
        }
    }

    // A regular n-gon about a circle of radius r has the area n r² tan(π / n), and mitred it is about one of r + d. A corner that
    // turns by 2 π / n is cut by a triangle of d² sin(2 π / n) / 2.
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(17)]
    public void A_regular_polygon_stays_one_with_mitred_corners_and_has_twice_as_many_with_flat_ones(int corners)
    {
        const double Radius = 20, Distance = 3;
        var outside = Radius / Math.Cos(Math.PI / corners);
        var polygon = Region.Of(Draw.Polygon([.. Enumerable.Range(0, corners)
            .Select(i => Point.Origin + Vector.Polar(outside, Angle.FullTurn * ((double)i / corners))).Select(p => (p.X, p.Y))]));
        var mitred = polygon.Offset(Distance, CornerStyle.Mitred(2));
        Approximately.Equal(
            corners * (Radius + Distance) * (Radius + Distance) * Math.Tan(Math.PI / corners), mitred.Area, within: Tolerance.Area(mitred.Length));
        Assert.Equal(corners, Assert.Single(mitred.Contours).Segments.Length);

        var flat = polygon.Offset(Distance, CornerStyle.Flat);
        Approximately.Equal(
            polygon.Area + Distance * polygon.Length + corners * Distance * Distance * Math.Sin(2 * Math.PI / corners) / 2,
            flat.Area, within: Tolerance.Area(flat.Length));
        Assert.Equal(2 * corners, Assert.Single(flat.Contours).Segments.Length);
    }

    // A hole's corners part when the plate shrinks: its square hole grows as a square does.
    [Fact]
    public void A_square_hole_grows_to_a_square_or_an_octagon_when_its_plate_shrinks()
    {
        var plate = Draw.Rectangle(-50, -50, 90, 90).Subtract(Square);
        Approximately.Equal(130 * 130 - 50 * 50, plate.Offset(-5, CornerStyle.Mitred(2)).Area, within: Tolerance.Area(800));
        Approximately.Equal(130 * 130 - 1600 - 800 - 50, plate.Offset(-5, CornerStyle.Flat).Area, within: Tolerance.Area(800));
    }

    // Half a disc of radius R on its diameter: where arc and line meet square, the moved ones' tangents meet in a square of d.
    [Fact]
    public void A_corner_between_a_line_and_an_arc_is_mitred_adrawnOuttheir_tangents()
    {
        var half = Region.Of(Draw.Outline((10, 0, 1), (-10, 0, 0)));
        var strips = 20 * 2 + Math.PI / 2 * (12 * 12 - 10 * 10);
        var grown = half.Offset(2, CornerStyle.Mitred(2));
        Approximately.Equal(half.Area + strips + 2 * 4, grown.Area, within: Tolerance.Area(grown.Length));
        Assert.Equal(4, Assert.Single(grown.Contours).Segments.Length);
        var flat = half.Offset(2, CornerStyle.Flat);
        Approximately.Equal(half.Area + strips + 2 * 2, flat.Area, within: Tolerance.Area(flat.Length));
    }

    // The needle's tip turns by π − 2 α with tan α = 1/100, and its mitre is 1 / sin α = √(1 + 100²) distances long.
    [Fact]
    public void A_needle_is_drawn_out_only_as_far_as_the_limit_allows()
    {
        var needle = Region.Of(Draw.Polygon((0, -1), (100, 0), (0, 1)));
        var drawnOut = needle.Offset(0.5, CornerStyle.Mitred(101));
        Approximately.Equal(100 + 0.5 * Math.Sqrt(1 + 100 * 100), drawnOut.Bounds.Max.X, within: Tolerance.Length);
        var cut = needle.Offset(0.5, CornerStyle.Mitred(99));
        Approximately.Equal(100 + 0.5 / Math.Sqrt(1 + 100 * 100), cut.Bounds.Max.X, within: Tolerance.Length);
    }

    // A crescent's tip turns all the way back: cut flat it ends in the line across it.
    [Fact]
    public void A_tip_without_an_angle_is_cut_through_its_point()
    {
        var crescent = Draw.Disc(new(0, 0), 10).Subtract(Draw.Disc(new(5, 0), 5));
        foreach (var corners in (ReadOnlySpan<CornerStyle>)[CornerStyle.Flat, CornerStyle.Mitred(4)])
        {
            var grown = crescent.Offset(2, corners);
            Approximately.Equal(Math.PI * (12 * 12 - 3 * 3), grown.Area, within: Tolerance.Area(grown.Length));
            foreach (var image in Symmetries.Of(crescent))
                Approximately.Equal(grown.Area, image.Shape.Offset(2, corners).Area, within: Tolerance.Area(grown.Length));
        }
    }

    // The same half discs as lips of a plate: 65 × 25 mm less a half circle of 12.5 mm. At each lip the contour turns right back.
    [Fact]
    public void Knife_edged_lips_are_cut_square()
    {
        var notched = Region.Of(Draw.Outline((65, 0, 0), (65, 25, 0), (0, 25, -1), (0, 0, 0)));
        var grown = notched.Offset(5, CornerStyle.Mitred(2));
        var added = (65 + 25 + 65) * 5 + Math.PI / 2 * (12.5 * 12.5 - 7.5 * 7.5) + 2 * 25;
        Approximately.Equal(notched.Area + added, grown.Area, within: Tolerance.Area(grown.Length));
    }

    // From the arc's moved side to the line's: they cross right where the line's ends, past which the arc's strip bulges out.
    [Fact]
    public void A_strip_that_reaches_past_the_next_one_is_not_cut_off_there()
    {
        var shape = Region.Of(Draw.Outline(
            (-15, -15, 0), (5, -15, Math.Sqrt(2) - 1), (10, -10, 0), (15, -10, 0), (10, -5, 0), (-15, -5, 0)));
        foreach (var limit in (ReadOnlySpan<double>)[1, 1.2, 3]) IsAsDefined((shape, 7.5), limit);
    }

    // The side of 4.7 mm is shorter than the 5.8 mm that the end of the moved side before it lies along it.
    [Fact]
    public void A_strip_that_ends_past_a_short_side_is_not_cut_off_there()
    {
        var shape = Region.Of(Draw.Polygon((12, 0), (12, 17.4), (4.8, 14.2), (-1.1, 13.5), (-5.2, 15.7), (-1.2, 11.1), (-1.2, 0)));
        foreach (var limit in (ReadOnlySpan<double>)[1, 1.2, 3]) IsAsDefined((shape, 10), limit);
    }

    [Fact]
    public void Grid_shapes_with_mitred_and_flat_corners_are_their_region_strips_and_corner_pieces() =>
        Gen.Select(Offsets, Limits).Check(150, IsAsDefined);

    [Fact]
    public void Stars_with_needles_and_mitred_or_flat_corners_are_their_region_strips_and_corner_pieces() =>
        Gen.Select(Gen.Select(Testing.Shapes.Star.Select(Region.Of), Gen.OneOf(Gen.Double[0.1, 12], Gen.Double[-12, -0.1])), Limits).Check(80, IsAsDefined);

    // Each takes in the one before; all of them what round corners take in that a mitre does not.
    [Fact]
    public void A_flat_offset_lies_in_a_mitred_and_in_a_round_one_and_grows_with_the_limit() => Offsets.Check(100, (shape, distance) =>
    {
        var wider = new[] { CornerStyle.Flat, CornerStyle.Mitred(1.5), CornerStyle.Mitred(3) }.Select(c => shape.Offset(distance, c)).ToList();
        for (var i = 0; i < 2; i++) IsWithin(wider[i], wider[i + 1]);
        IsWithin(wider[0], shape.Offset(distance));

        void IsWithin(Region less, Region more)
        {
            if (distance < 0) (less, more) = (more, less);
            Law.AreEqual(0, less.Subtract(more).Area, Tolerance.Area(less.Length + more.Length), "What sticks out");
        }
    });

    [Fact]
    public void Moving_turning_mirroring_and_starting_elsewhere_commute_with_mitred_and_flat_offsets() =>
        Gen.Select(Offsets, Limits).Check(30, (offset, limit) =>
        {
            var (shape, distance) = offset;
            var corners = CornerStyle.Mitred(limit);
            var expected = shape.Offset(distance, corners);
            foreach (var image in Symmetries.Of(shape))
            {
                var actual = image.Shape.Offset(distance, corners);
                Law.AreEqual(expected.Area, actual.Area, Tolerance.Area(expected.Length + actual.Length), $"{image.Name}: the area");
            }
        });

    [Fact]
    public void Round_is_the_default_and_a_limit_is_finite_and_at_least_1()
    {
        Assert.Equal(CornerStyle.Round, default);
        Assert.Equal(Square.Offset(5).Area, Square.Offset(5, CornerStyle.Round).Area);
        Assert.Equal(CornerStyle.Flat, CornerStyle.Mitred(1));
        foreach (var limit in (ReadOnlySpan<double>)[0.99, 0, -2, double.NaN, double.PositiveInfinity])
            Assert.Throws<ArgumentOutOfRangeException>(() => CornerStyle.Mitred(limit));
        Assert.Throws<ArgumentOutOfRangeException>(() => Square.Offset(double.NaN, CornerStyle.Flat));
    }

    /// <summary>Tried on both sides of its own boundary, and of where the pieces of the definition end.</summary>
    private static void IsAsDefined((Region Shape, double Distance) offset, double limit)
    {
        var (shape, distance) = offset;
        var answer = shape.Offset(distance, limit == 1 ? CornerStyle.Flat : CornerStyle.Mitred(limit));
        Law.IsWellMade(answer);
        var (actual, asked) = (new ByDefinition(answer), new CornersByDefinition(shape, distance, limit));
        foreach (var (point, along) in Law.BoundarySamples(answer, perSegment: 2))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-1e-5, 1e-5]) Tried(point - along.Left * aside);
        }
        foreach (var (point, along) in Law.BoundarySamples(shape, perSegment: 2))
        {
            foreach (var aside in (ReadOnlySpan<double>)[distance - 0.01, distance + 0.01, distance / 2, -distance])
                Tried(point - along.Left * aside);
        }
        foreach (var segment in shape.Contours.SelectMany(c => c.Segments))
        {
            foreach (var share in (ReadOnlySpan<double>)[0.02, 0.98])
                Tried(segment.At(share) - segment.DirectionAt(share).Left * (0.998 * distance));
            foreach (var share in (ReadOnlySpan<double>)[0.6, 0.99, 1.1, 1.4, 2.5])
                Tried(segment.End - (segment.EndDirection.Left - 0.3 * segment.EndDirection) * (share * distance));
        }

        void Tried(Point p)
        {
            if (asked.IsSure(p, out var holds))
                Law.Holds(actual.Encloses(p) == holds, $"{p} is {(holds ? "left out" : "taken in")} at {distance}, limit {limit}");
        }
    }
}
