using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Random transitions are laid flat, folded up again in space by code that shares nothing with the unfolding, and measured.</summary>
public class RefoldedTransitionsTests
{
    // What is promised, in mm.
    private const double Promised = 0.01;
    private const int Drawn = 24;

    private static readonly Lazy<ImmutableArray<(int Number, Transition Transition, TransitionPattern Pattern)>> Laid = new(() =>
    [
        .. Enumerable.Range(0, Drawn).AsParallel().AsOrdered().WithDegreeOfParallelism(2).SelectMany(number =>
        {
            var transition = Random(number);
            return TransitionPattern.TryLayFlat(transition, out var pattern, out _) ? [(number, transition, pattern)] : Array.Empty<(int, Transition, TransitionPattern)>();
        }),
    ]);

    [Fact]
    public void Nearly_all_can_be_laid_flat() => Assert.True(Laid.Value.Length >= 0.8 * Drawn, $"{Laid.Value.Length}");

    [Fact]
    public void Every_corner_of_the_folded_sheet_lies_on_its_outline() => Check((number, transition, part, folded) =>
    {
        foreach (var p in folded.Lower) Assert.True(DistanceTo(transition.Lower, p) < Promised, $"{number}: lower by {DistanceTo(transition.Lower, p)}");
        foreach (var p in folded.Upper) Assert.True(DistanceTo(transition.Upper, p) < Promised, $"{number}: upper by {DistanceTo(transition.Upper, p)}");
    });

    [Fact]
    public void The_edges_are_as_long_as_what_they_meet()
    {
        foreach (var (_, transition, pattern) in Laid.Value)
        {
            var rolled = transition.Work == TransitionWork.Rolled;
            var lower = rolled ? transition.Lower.Length : pattern.Parts.Sum(p => Chords(p.Rulings.Select(r => r.Lower)));
            var upper = rolled ? transition.Upper.Length : pattern.Parts.Sum(p => Chords(p.Rulings.Select(r => r.Upper)));
            Approximately.Equal(lower, pattern.Parts.Sum(p => p.LowerEdge.Sum(r => r.Length)), within: 0.02);
            Approximately.Equal(upper, pattern.Parts.Sum(p => p.UpperEdge.Sum(r => r.Length)), within: 0.02);
        }

        static double Chords(IEnumerable<Point> points) => points.Zip(points.Skip(1), (a, b) => a.DistanceTo(b)).Sum();
    }

    [Fact]
    public void Every_flat_corner_lies_on_the_outline_of_its_part()
    {
        foreach (var part in Laid.Value.SelectMany(l => l.Pattern.Parts))
        {
            Law.IsWellMade(part.Shape);
            foreach (var ruling in part.Rulings.Where((_, i) => i % 7 == 0))
            {
                Assert.True(part.LowerEdge.SelectMany(r => r.Segments).Min(s => s.DistanceTo(ruling.Lower)) < 0.004);
                Assert.True(part.UpperEdge.SelectMany(r => r.Segments).Min(s => s.DistanceTo(ruling.Upper)) < 0.004);
            }
        }
    }

    // A plane that rolls round two convex outlines touches each along the sheet and leaves everything on one side: that sheet unrolls.
    [Fact]
    public void Between_convex_outlines_everything_lies_on_the_inner_side_of_every_triangle() => Check((number, transition, part, folded) =>
    {
        if (transition.Work != TransitionWork.Rolled) return;
        for (var i = 0; i + 1 < folded.Lower.Length; i += 5)
        {
            var (a, b) = (folded.Lower[i], folded.Upper[i]);
            var isLower = (folded.Lower[i + 1] - a).Length > 1e-9;
            var c = isLower ? folded.Lower[i + 1] : folded.Upper[i + 1];
            var normal = (c - a).Cross(b - a);
            if (normal.Length < 1e-3) continue;
            normal *= 1 / normal.Length;
            var furthest = folded.Lower.Concat(folded.Upper).Max(p => (p - a).Dot(normal));
            Assert.True(furthest < 0.05, $"{number}: {furthest}");
        }
    });

    private static void Check(Action<int, Transition, TransitionPart, FoldedTransition> law)
    {
        foreach (var (number, transition, pattern) in Laid.Value)
        {
            var start = 0.0;
            foreach (var part in pattern.Parts)
            {
                var from = start;
                law(number, transition, part, FoldedTransition.Of(part, along => InSpace(transition.Lower, Walked(transition, from + along))));
                start += transition.Lower.Length / pattern.Parts.Length;
            }
        }
    }

    // Seams stand at the middle of the first of the longest lines; of a round at its start.
    private static Point Walked(Transition transition, double along)
    {
        var outline = transition.Lower.Outline;
        var lines = outline.Where(s => s.IsLine).ToList();
        if (lines.Count > 0)
        {
            foreach (var segment in outline)
            {
                if (segment.IsLine && segment.Length > lines.Max(l => l.Length) - 1e-6)
                {
                    along += segment.Length / 2;
                    break;
                }
                along += segment.Length;
            }
        }
        return new Contour(outline).PointAlong(along);
    }

    private static Vector3 InSpace(TransitionEnd end, Point p)
    {
        // Turned so that it sinks along x, tilted about y, turned back, moved.
        var (c, s) = (Math.Cos(end.Towards.Radians), Math.Sin(end.Towards.Radians));
        var (x, y) = (c * p.X + s * p.Y, -s * p.X + c * p.Y);
        var (level, z) = (x * Math.Cos(end.Tilt.Radians), -x * Math.Sin(end.Tilt.Radians));
        return new(c * level - s * y + end.Shift.X, s * level + c * y + end.Shift.Y, z + end.Height);
    }

    private static double DistanceTo(TransitionEnd end, Vector3 p)
    {
        var (c, s) = (Math.Cos(end.Towards.Radians), Math.Sin(end.Towards.Radians));
        var (dx, dy, dz) = (p.X - end.Shift.X, p.Y - end.Shift.Y, p.Z - end.Height);
        var (level, y) = (c * dx + s * dy, -s * dx + c * dy);
        var (x, off) = (level * Math.Cos(end.Tilt.Radians) - dz * Math.Sin(end.Tilt.Radians), level * Math.Sin(end.Tilt.Radians) + dz * Math.Cos(end.Tilt.Radians));
        var own = new Point(c * x - s * y, s * x + c * y);
        return Math.Max(Math.Abs(off), end.Outline.Min(segment => segment.DistanceTo(own)));
    }

    private static Transition Random(int number)
    {
        var random = new Random(1000 + number);
        // Chords do not say how far along an arc a corner lies: what is pressed begins with a rectangle here.
        var work = number % 4 == 3 ? TransitionWork.Pressed : TransitionWork.Rolled;
        var lower = (work == TransitionWork.Pressed ? TransitionTests.Rectangle(Between(60, 260), Between(60, 260), 0) : Shape()) with { Tilt = number % 3 == 0 ? Angle.FromDegrees(Between(0, 12)) : Angle.Zero, Towards = Angle.FromDegrees(Between(0, 360)) };
        var upper = Shape() with
        {
            Height = Between(90, 250),
            Shift = new(Between(-60, 60), Between(-60, 60)),
            Tilt = number % 2 == 0 ? Angle.FromDegrees(Between(0, 25)) : Angle.Zero,
            Towards = Angle.FromDegrees(Between(0, 360)),
        };
        return new(lower, upper)
        {
            Work = work,
            Divisions = 3 + number % 6,
            Parts = 1 + number % 2,
        };

        double Between(double from, double to) => from + random.NextDouble() * (to - from);

        TransitionEnd Shape() => random.Next(3) switch
        {
            0 => TransitionTests.Circle(Between(60, 240)),
            1 => TransitionTests.Rectangle(Between(60, 260), Between(60, 260), 0),
            _ => TransitionTests.Rectangle(Between(80, 260), Between(80, 260), Between(5, 39)),
        };
    }
}
