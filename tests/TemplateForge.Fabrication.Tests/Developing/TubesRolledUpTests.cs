using CsCheck;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Patterns of random tubes, rolled up in space by what shares nothing with their unrolling.</summary>
/// <remarks>The arcs stray by 0.001 mm at most from the true curve; twice that is asked for here.</remarks>
public class TubesRolledUpTests
{
    private const double Near = 0.002;

    /// <summary>An end in numbers: kind 0 square, 1 mitre, 2 mouth.</summary>
    private sealed record End(int Kind, double Angle, double Turned, double Other, double Offset)
    {
        // Every other mouth lies on a tube no larger than it must be: equal tubes, or one flush with the side.
        public TubeEnd Of(double outside, out double radius, out double offset)
        {
            radius = outside * (Other < 0.5 ? 1 + Math.Abs(Offset) : 1 + Math.Abs(Offset) + Other);
            offset = outside * Offset;
            return Kind switch
            {
                0 => new SquareCut(),
                1 => new Mitre(Geometry.Angle.FromDegrees(Angle * 0.6), Geometry.Angle.FromDegrees(Turned)),
                _ => new FishMouth(radius, Geometry.Angle.FromDegrees(30 + Angle * 1.2), offset, Geometry.Angle.FromDegrees(Turned)),
            };
        }

        // What the end meets, in space. The upper end looks up, the lower one down.
        public Obstacle InSpaceAt(double outside, double z, double up)
        {
            var throat = InSpace.Round(1, Turned, 0);
            if (Kind == 0) return new CutPlane(new(0, 0, z), new(0, 0, up));
            if (Kind == 1)
            {
                var m = Angle * 0.6 * Math.PI / 180;
                return new CutPlane(new(0, 0, z), throat * Math.Sin(m) + new InSpace(0, 0, up) * Math.Cos(m));
            }
            Of(outside, out var radius, out var offset);
            var psi = (30 + Angle * 1.2) * Math.PI / 180;
            // The other tube's axis leans from this one's, as it comes out of the other tube, to the throat.
            var axis = new InSpace(0, 0, -up) * Math.Cos(psi) + throat * Math.Sin(psi);
            return new Cylinder(new InSpace(0, 0, z) - InSpace.Round(offset, Turned + 90, 0), axis, radius);
        }
    }

    private static readonly Gen<End> Ends = Gen.Select(
        Gen.Int[0, 2], Gen.Double[0, 100], Gen.OneOf(Gen.Const(0.0), Gen.Const(180.0), Gen.Double[-180, 360]), Gen.Double[0, 1],
        Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.6, 0.6]),
        (kind, angle, turned, other, offset) => new End(kind, angle, turned, other, offset));

    private sealed record Case(double Diameter, double Wall, double Paper, double Lap, double Seam, End Lower, End Upper, TubeHole[] Holes);

    private static readonly Gen<TubeHole> Holes = Gen.Select(
        Gen.Double[0.05, 0.45], Gen.Double[-30, 30], Gen.Double[0, 360], Gen.OneOf(Gen.Const(90.0), Gen.Double[40, 140]), Gen.OneOf(Gen.Const(0.0), Gen.Double[-1, 1]),
        (share, along, round, angle, offset) => new TubeHole(share, along, Angle.FromDegrees(round), Angle.FromDegrees(angle), offset));

    private static readonly Gen<Case> Cases = Gen.Select(
        Gen.Double[12, 120], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.01, 0.15]), Gen.OneOf(Gen.Const(0.0), Gen.Double[0.05, 0.5]), Gen.OneOf(Gen.Const(0.0), Gen.Double[5, 20]),
        Gen.OneOf(Gen.Const(180.0), Gen.Double[-180, 360]), Ends, Ends, Holes.Array[0, 1],
        (diameter, wall, paper, lap, seam, lower, upper, holes) => new Case(diameter, wall * diameter, paper, lap, seam, lower, upper, holes));

    [Fact]
    public void Every_generator_touches_what_it_meets_through_the_wall_and_none_runs_into_it() =>
        Cases.Check(300, c =>
        {
            var tube = Tube(c);
            for (var degrees = 0.0; degrees < 360; degrees += 15)
            {
                var (low, high) = (tube.LowerAt(Angle.FromDegrees(degrees)), tube.UpperAt(Angle.FromDegrees(degrees)));
                Approximately.Equal(0, Nearest(c, Below(c), degrees, low), within: 1e-6);
                Approximately.Equal(0, Nearest(c, Above(c), degrees, high), within: 1e-6);
                // Nor does the metal further in.
                Assert.True(Nearest(c, Above(c), degrees, high - 0.5) > 0 && Nearest(c, Below(c), degrees, low + 0.5) > 0);
            }
        });

    [Fact]
    public void The_edge_of_a_pattern_that_is_rolled_up_lies_on_what_the_tube_meets() =>
        Cases.Check(12, c =>
        {
            var tube = Tube(c);
            Assert.True(tube.TryLayFlat(out var pattern, out var fault), fault.ToString());
            Obstacle[] met = [Below(c), Above(c), .. tube.Holes.Select(Bar)];
            var seen = new HashSet<Obstacle>();
            var around = c.Diameter / 2 + c.Paper / 2;
            var right = 2 * Math.PI * around + c.Lap;
            Approximately.Equal(right, pattern.Shape.Bounds.Width, within: 1e-6);
            foreach (var segment in pattern.Shape.Contours.SelectMany(x => x.Segments).Where(s => !IsSide(s, 0) && !IsSide(s, right)))
            {
                foreach (var share in (double[])[0, 0.23, 0.5, 0.81])
                {
                    var p = segment.At(share);
                    var degrees = c.Seam + p.X / around * 180 / Math.PI;
                    var nearest = met.MinBy(o => Math.Abs(Nearest(c, o, degrees, p.Y)))!;
                    Approximately.Equal(0, Nearest(c, nearest, degrees, p.Y), Near);
                    seen.Add(nearest);
                }
            }
            Assert.Equal(met.Length, seen.Count);
        });

    private static double LengthOf(Case c) => 12 * c.Diameter;

    private static Obstacle Below(Case c) => c.Lower.InSpaceAt(c.Diameter / 2, 0, -1);

    private static Obstacle Above(Case c) => c.Upper.InSpaceAt(c.Diameter / 2, LengthOf(c), 1);

    private static TubeWrap Tube(Case c)
    {
        var (outside, inside) = (c.Diameter / 2, c.Diameter / 2 - c.Wall);
        return new(c.Diameter, c.Wall, LengthOf(c), c.Lower.Of(outside, out _, out _), c.Upper.Of(outside, out _, out _), new(false, c.Paper))
        {
            Seam = Angle.FromDegrees(c.Seam),
            Lap = c.Lap,
            // A share of the bore, as far aside as it may lie.
            Holes = [.. c.Holes.Select(h => h with { Diameter = 2 * h.Diameter * inside, Along = LengthOf(c) / 2 + h.Along, Offset = h.Offset * inside * (1 - h.Diameter) })],
        };
    }

    // The least distance over the thickness of the wall, on a line square to the axis: convex for what is met, so by thirds.
    private static double Nearest(Case c, Obstacle obstacle, double degrees, double z)
    {
        var (inside, outside) = (c.Diameter / 2 - c.Wall, c.Diameter / 2);
        var (from, to) = (inside, outside);
        for (var i = 0; i < 28; i++)
        {
            var third = (to - from) / 3;
            if (Clear(from + third) < Clear(to - third)) to -= third; else from += third;
        }
        return Math.Min(Clear((from + to) / 2), Math.Min(Clear(inside), Clear(outside)));

        double Clear(double radius) => obstacle.Clear(InSpace.Round(radius, degrees, z));
    }

    private static bool IsSide(Segment s, double x) => Math.Abs(s.Start.X - x) < 1e-6 && Math.Abs(s.End.X - x) < 1e-6;

    private static Cylinder Bar(TubeHole hole)
    {
        var axis = InSpace.Round(Math.Sin(hole.Angle.Radians), hole.Round.Degrees, Math.Cos(hole.Angle.Radians));
        return new(new InSpace(0, 0, hole.Along) + InSpace.Round(hole.Offset, hole.Round.Degrees + 90, 0), axis, hole.Diameter / 2);
    }

    // Both are promised, whatever else is drawn: by the numbers of a mouth on a tube twice as large, worked out by hand at 0° and 90°.
    [Fact]
    public void Through_its_wall_a_square_mouth_touches_at_the_inside()
    {
        var tube = new TubeWrap(50, 5, 100, new SquareCut(), new FishMouth(50, Angle.FromDegrees(90), 0, Angle.Zero), new(false, 0));
        Approximately.Equal(100 - 50, tube.UpperAt(Angle.Zero), within: 1e-9);
        Approximately.Equal(100 - Math.Sqrt(2500 - 400), tube.UpperAt(Angle.FromDegrees(90)), within: 1e-9);
    }

    [Fact]
    public void Through_its_wall_a_mitre_touches_outside_on_the_short_side_and_inside_on_the_long_one()
    {
        var tube = new TubeWrap(50, 5, 100, new SquareCut(), new Mitre(Angle.FromDegrees(45), Angle.Zero), new(false, 0));
        Approximately.Equal(100 - 25, tube.UpperAt(Angle.Zero), within: 1e-9);
        Approximately.Equal(100 + 20, tube.UpperAt(Angle.HalfTurn), within: 1e-9);
    }

    [Fact]
    public void A_hole_that_runs_over_the_seam_comes_in_at_the_other_edge_and_into_the_lap()
    {
        var tube = new TubeWrap(50, 2, 100, new SquareCut(), new SquareCut(), new(false, 0)) { Seam = Angle.Zero, Lap = 20, Holes = [new(20, 50, Angle.Zero, Angle.FromDegrees(90), 0)] };
        Assert.True(tube.TryLayFlat(out var pattern, out _));
        var whole = new TubeWrap(50, 2, 100, new SquareCut(), new SquareCut(), new(false, 0)) { Holes = tube.Holes };
        Assert.True(whole.TryLayFlat(out var other, out _));
        var hole = whole.Girth * 100 - other.Shape.Area;
        Approximately.Equal((tube.Girth + 20) * 100 - 1.5 * hole, pattern.Shape.Area, within: 1e-3);
    }

    [Theory]
    [InlineData(20, 10, WrapFault.HoleInTheEnd)]
    [InlineData(47, 50, WrapFault.HoleTooLarge)]
    public void A_hole_that_is_none_is_told(double diameter, double along, WrapFault expected)
    {
        var tube = new TubeWrap(50, 2, 100, new SquareCut(), new SquareCut(), new(false, 0)) { Holes = [new(diameter, along - 0.5, Angle.Zero, Angle.FromDegrees(90), 0)] };
        Assert.False(tube.TryLayFlat(out _, out var fault));
        Assert.Equal(expected, fault);
    }

    [Fact]
    public void Ends_that_run_into_each_other_are_told()
    {
        var tube = new TubeWrap(50, 2, 40, new Mitre(Angle.FromDegrees(45), Angle.Zero), new Mitre(Angle.FromDegrees(45), Angle.Zero), new(false, 0));
        Assert.False(tube.TryLayFlat(out _, out var fault));
        Assert.Equal(WrapFault.EndsMeet, fault);
    }
}
