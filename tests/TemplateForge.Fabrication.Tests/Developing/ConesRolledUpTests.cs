using CsCheck;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Patterns of random cones, rolled up in space, or compared with what is measured there, by what shares nothing with their unrolling.</summary>
/// <remarks>The arcs stray by 0.001 mm at most from the true curve; twice that is asked for here.</remarks>
public class ConesRolledUpTests
{
    private const double Near = 0.002;

    private static readonly Gen<(double Base, double Top, double Height, double Aside, double Seam)> Cones = Gen.Select(
        Gen.Double[30, 200], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 0.95]), Gen.Double[0.3, 2], Gen.Double[-0.8, 0.8], Gen.OneOf(Gen.Const(0.0), Gen.Double[-180, 360]),
        (diameter, top, height, aside, seam) => (diameter, diameter * top, diameter * height, diameter * aside, seam));

    // The pattern's apex is where its generators meet. From there a point lies as far off as in space, and the angle round it is that
    // between the generators in space, added up.
    [Fact]
    public void The_edges_of_an_oblique_cone_rolled_up_lie_on_its_two_circles() =>
        Cones.Check(8, c =>
        {
            var pattern = Flat(new(c.Base, c.Top, c.Height, c.Aside, new(false, 0)) { Seam = Angle.FromDegrees(c.Seam), Divisions = 4 });
            var apex = new InSpace(c.Aside, 0, c.Height) * (c.Base / (c.Base - c.Top));
            var seam = pattern.EdgeNames[^1].Along;
            var other = pattern.Generators.MaxBy(g => Math.Abs((g.Along.End - g.Along.Start).Unit.Cross((seam.Start - seam.End).Unit)))!.Along;
            var flat = Meet(seam, other);
            // Over the whole turn, in steps so small that the angle between two generators is that on the surface within 1e-8.
            const int steps = 7200;
            var ways = Enumerable.Range(0, steps + 1).Select(i => (InSpace.Round(c.Base / 2, c.Seam + 360.0 * i / steps, 0) - apex).Unit).ToArray();
            var angles = new double[steps + 1];
            for (var i = 0; i < steps; i++) angles[i + 1] = angles[i] + 2 * Math.Asin((ways[i + 1] - ways[i]).Length / 2);
            foreach (var segment in pattern.Shape.Contours.Single().Segments)
            {
                foreach (var share in (double[])[0, 0.3, 0.5, 0.8])
                {
                    var from = segment.At(share) - flat;
                    if (from.Length < 0.01) continue;
                    var turned = Math.Atan2((seam.End - flat).Unit.Cross(from.Unit), (seam.End - flat).Unit.Dot(from.Unit));
                    if (turned < -1e-3) turned += 2 * Math.PI;
                    // The generator in space that makes this angle with the seam, and the place on it.
                    var i = Math.Clamp(Array.BinarySearch(angles, turned) is var found && found < 0 ? ~found - 1 : found, 0, steps - 1);
                    var part = (turned - angles[i]) / (angles[i + 1] - angles[i]);
                    var place = apex + (ways[i] + (ways[i + 1] - ways[i]) * part).Unit * from.Length;
                    var onBase = Math.Max(Math.Abs(place.Z), Math.Abs(Math.Sqrt(place.X * place.X + place.Y * place.Y) - c.Base / 2));
                    var onTop = Math.Max(Math.Abs(place.Z - c.Height), Math.Abs(Math.Sqrt((place.X - c.Aside) * (place.X - c.Aside) + place.Y * place.Y) - c.Top / 2));
                    var onSeam = Math.Min(Math.Abs(turned), Math.Abs(turned - angles[^1])) * from.Length;
                    // A cut that meets the base at a slant is nearer to it along the surface than in height.
                    Approximately.Equal(0, Math.Min(onSeam, Math.Min(onBase, onTop)), Near);
                }
            }
            Approximately.Equal(angles[^1], Between(pattern, flat), within: 1e-5);
        });

    // The middle of the sheet lies half its thickness inside of the cone, square to it. Its places in space come from the cross product of
    // chords of the cone; small quadrangles of it must be as long along all sides and across as they are on the pattern.
    [Fact]
    public void A_sheet_s_middle_is_as_long_everywhere_on_the_pattern_as_in_space() =>
        Cones.Where(c => c.Top > 0.3 * c.Base).Check(8, c =>
        {
            const double sheet = 2;
            var aside = c.Aside * 0.6;
            var cone = new ConeWrap(c.Base, c.Top, c.Height, aside, new(IsRolled: true, sheet)) { Seam = Angle.FromDegrees(c.Seam), Divisions = 720 };
            var pattern = Flat(cone);
            var lines = pattern.Generators;
            for (var i = 0; i + 1 < lines.Length; i += 7)
            {
                var ((p, q), (r, s)) = (InMiddle(c.Base, c.Top, c.Height, aside, lines[i].At.Degrees, sheet), InMiddle(c.Base, c.Top, c.Height, aside, lines[i + 1].At.Degrees, sheet));
                Approximately.Equal((q - p).Length, lines[i].Along.Length, within: 1e-6);
                Approximately.Equal((r - p).Length, lines[i].Along.Start.DistanceTo(lines[i + 1].Along.Start), within: 1e-4);
                Approximately.Equal((s - q).Length, lines[i].Along.End.DistanceTo(lines[i + 1].Along.End), within: 1e-4);
                Approximately.Equal((s - p).Length, lines[i].Along.Start.DistanceTo(lines[i + 1].Along.End), within: 1e-4);
                Approximately.Equal((r - q).Length, lines[i].Along.End.DistanceTo(lines[i + 1].Along.Start), within: 1e-4);
                Approximately.Equal(0, pattern.Shape.Contours.Single().Segments.Min(x => x.DistanceTo(lines[i].Along.Start)), Near);
                Approximately.Equal(0, pattern.Shape.Contours.Single().Segments.Min(x => x.DistanceTo(lines[i].Along.End)), Near);
            }
            // The true girth, by chords with their error taken out (Richardson).
            double Girth(int n) => Enumerable.Range(0, n).Sum(i => (InMiddle(c.Base, c.Top, c.Height, aside, 360.0 * (i + 1) / n, sheet).Base
                - InMiddle(c.Base, c.Top, c.Height, aside, 360.0 * i / n, sheet).Base).Length);
            Approximately.Equal((4 * Girth(720) - Girth(360)) / 3, pattern.NeutralDiameter * Math.PI, within: 0.01);
        });

    // A right cone is reckoned by another way than an oblique one: the least bit aside they must agree.
    [Theory]
    [InlineData(100, 60, 80, 0, 0)]
    [InlineData(100, 60, 80, 2, 0)]
    [InlineData(100, 0, 80, 0, 15)]
    [InlineData(100, 98, 300, 1.5, 15)]
    [InlineData(400, 100, 20, 1, 10)]
    public void A_right_cone_and_one_that_is_hardly_oblique_have_one_pattern(double diameter, double top, double height, double sheet, double lap)
    {
        var material = new WrapMaterial(sheet > 0, sheet);
        var right = Flat(new(diameter, top, height, 0, material) { Seam = Angle.FromDegrees(20), Lap = lap });
        var oblique = Flat(new(diameter, top, height, 1e-7, material) { Seam = Angle.FromDegrees(20), Lap = lap });
        Approximately.Equal(right.Shape.Area, oblique.Shape.Area, within: 0.002 * right.Shape.Length);
        Assert.All(oblique.Shape.Contours.Single().Segments, s => Assert.True(right.Shape.Contours.Single().Segments.Min(o => o.DistanceTo(s.At(0.5))) < Near));
        Assert.All(right.Generators.Zip(oblique.Generators), g => Approximately.Equal(g.First.Along.End, g.Second.Along.End, within: 1e-5));
    }

    // Rolled to its outside, a sheet of 2 has its middle 1 mm inside, square to the cone: by hand for half an angle of 30°.
    [Fact]
    public void The_middle_of_a_right_cone_s_sheet_is_narrower_by_its_thickness_times_the_cosine()
    {
        var pattern = Flat(new(100, 40, 30 * Math.Sqrt(3), 0, new(IsRolled: true, 2)));
        Approximately.Equal(100 - 2 * Math.Cos(Math.PI / 6), pattern.NeutralDiameter, within: 1e-9);
        Approximately.Equal(60, pattern.Generators[0].Along.Length, within: 1e-9);
    }

    [Fact]
    public void A_sheet_that_is_too_thick_for_the_small_end_is_told()
    {
        foreach (var aside in (double[])[0, 5])
        {
            Assert.False(new ConeWrap(100, 2, 80, aside, new(IsRolled: true, 4)).TryLayFlat(out _, out var fault));
            Assert.Equal(WrapFault.SheetTooThick, fault);
        }
    }

    // 2π sin α = 356.9° for the cone and a lap of 20 mm on a girth of 94 more: past a full turn.
    [Fact]
    public void A_lap_that_would_lie_over_the_other_end_of_a_flat_cone_is_told()
    {
        Assert.True(new ConeWrap(30, 0, 2, 0, new(IsRolled: false, 0)).TryLayFlat(out _, out _));
        Assert.False(new ConeWrap(30, 0, 2, 0, new(IsRolled: false, 0)) { Lap = 20 }.TryLayFlat(out _, out var fault));
        Assert.Equal(WrapFault.FallsApart, fault);
    }

    private static WrapPattern Flat(ConeWrap cone)
    {
        Assert.True(cone.TryLayFlat(out var pattern, out var fault), fault.ToString());
        return pattern;
    }

    // Where a generator's foot and head lie in the middle of a sheet: half its thickness in from the outside, square to it.
    private static (InSpace Base, InSpace Top) InMiddle(double diameter, double top, double height, double aside, double degrees, double sheet)
    {
        InSpace Below(double at) => InSpace.Round(diameter / 2, at, 0);
        var above = new InSpace(aside, 0, height) + InSpace.Round(top / 2, degrees, 0);
        var outwards = (Below(degrees + 1e-4) - Below(degrees - 1e-4)).Cross(above - Below(degrees)).Unit;
        return (Below(degrees) - outwards * (sheet / 2), above - outwards * (sheet / 2));
    }

    private static Point Meet(Path a, Path b)
    {
        var (p, v, q, w) = (a.Start, a.End - a.Start, b.Start, b.End - b.Start);
        return p + v * ((q - p).Cross(w) / v.Cross(w));
    }

    // From the seam edge to the other, as the generators go round.
    private static double Between(WrapPattern pattern, Point apex)
    {
        Point[] feet = [pattern.EdgeNames[^1].Along.End, .. pattern.Generators.Select(g => g.Along.Start), pattern.EdgeNames[0].Along.End];
        return feet.Zip(feet.Skip(1)).Sum(f => Math.Atan2((f.First - apex).Cross(f.Second - apex), (f.First - apex).Dot(f.Second - apex)));
    }
}
