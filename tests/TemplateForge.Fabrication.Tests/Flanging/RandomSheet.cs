using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>A random flanged sheet; a number always gives the same one.</summary>
internal sealed class RandomSheet
{
    private readonly Random _random;

    public RandomSheet(int number)
    {
        (Number, _random) = (number, new Random(number));
        var thickness = Math.Round(Between(0.6, 3), 2);
        var outline = Region.Of(Outlined());
        BendRule rule = Chance(0.5) ? new KFactorRule(Math.Round(Between(0.3, 0.5), 2)) : new Din6935Rule();
        var (way, inside) = (Chance(0.7) ? BendWay.Up : BendWay.Down, Chance(0.2));
        var (first, returned) = (FirstFold(), Chance(0.35) ? ReturnFold() : null);
        var equal = Chance(0.5);
        var edges = outline.Contours[0].Segments.Where(_ => Chance(0.75)).DefaultIfEmpty(outline.Contours[0].Segments[0]).ToList();
        _random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(edges));
        Sheet = new(outline, thickness, inside ? MeasuredBy.Inside : MeasuredBy.Outside, edges.Select(e => new Flange([e], Folds())))
        {
            Corners = (CornerJoint)_random.Next(3),
            Relief = (CornerRelief)_random.Next(3),
            ReliefSize = FlangedSheet.LeastRelief(thickness) * Between(1, 1.5),
            Gap = Chance(0.5) ? 0 : Between(0, 1),
        };

        ImmutableArray<Fold> Folds()
        {
            if (!equal) (first, returned) = (FirstFold(), Chance(0.35) ? ReturnFold() : null);
            return returned is null ? [first] : [first, returned];
        }

        // What leans in is lower, so that it does not meet what leans in from across the base.
        Fold FirstFold()
        {
            var bend = Bent(20, 150);
            return new(bend, way, new(Between(6, bend.Angle.Degrees > 110 ? 25 : 60), inside ? MeasuredBy.Inside : MeasuredBy.Outside));
        }

        Fold ReturnFold() => new(Bent(30, 120), Chance(0.7) ? way : 1 - way, new(Between(6, 20), inside ? MeasuredBy.Inside : MeasuredBy.Outside));

        Bend Bent(double from, double to) =>
            new(Angle.FromDegrees(Chance(0.4) ? 90 : Between(from, to)), Chance(0.15) ? 0 : Math.Round(Between(0, 4), 1), thickness, rule);
    }

    public int Number { get; }
    public FlangedSheet Sheet { get; }

    /// <summary>What is wanted, in numbers.</summary>
    public override string ToString()
    {
        var corners = Sheet.Base.Contours[0].Segments;
        var flanges = Sheet.Flanges.Select(f => FormattableString.Invariant($"edge {corners.IndexOf(f.Edges[0])}: ") + string.Join(", ", f.Folds.Select(
            d => FormattableString.Invariant($"{d.Bend.Angle.Degrees:0.####} deg {d.Way} R {d.Bend.InsideRadius} leg {d.Leg.Length:0.####}"))));
        return FormattableString.Invariant($"T {Sheet.Thickness} {Sheet.Flanges[0].Folds[0].Bend.Rule.Name} measured {Sheet.Measured}, {Sheet.Corners} {Sheet.Relief} relief {Sheet.ReliefSize:0.###} gap {Sheet.Gap:0.####}")
            + FormattableString.Invariant($"\n  base {string.Join(" ", corners.Select(c => FormattableString.Invariant($"({c.Start.X:0.###}, {c.Start.Y:0.###})")))}\n  ")
            + string.Join("\n  ", flanges);
    }

    private bool Chance(double of) => _random.NextDouble() < of;

    private double Between(double least, double most) => least + _random.NextDouble() * (most - least);

    private Contour Outlined()
    {
        var corners = _random.Next(4) switch
        {
            0 => [new(0, 0), new(Between(80, 300), 0)],
            1 => AnL(),
            _ => Convex(),
        };
        if (corners.Length == 2) corners = [.. Outline.Rectangle(new(corners[0], new(corners[1].X, Between(80, 300)))).Segments.Select(s => s.Start)];
        var turned = Placement.Turned(Chance(0.5) ? Angle.Zero : Angle.FromDegrees(Between(0, 360)), Point.Origin);
        return Outline.Polygon(corners).Placed(turned);
    }

    // With its inner corner shifted, so that it is not always a right one.
    private Point[] AnL()
    {
        var (width, height) = (Between(160, 300), Between(160, 300));
        var inner = new Point(width * Between(0.4, 0.6), height * Between(0.4, 0.6));
        return [new(0, 0), new(width, 0), new(width, inner.Y + Between(-10, 10)), inner, new(inner.X + Between(-10, 10), height), new(0, height)];
    }

    // Round a circle, with sides of 45 mm at least and corners of 50° to 150°.
    private Point[] Convex()
    {
        while (true)
        {
            var count = _random.Next(3, 8);
            var turns = Enumerable.Range(0, count).Select(_ => Between(30, 130)).ToArray();
            var whole = turns.Sum();
            for (var i = 0; i < count; i++) turns[i] *= 360 / whole;
            if (turns.Any(t => t is < 30 or > 130)) continue;
            var facing = turns.Select((_, i) => Angle.FromDegrees(turns.Take(i).Sum())).ToArray();
            var reach = turns.Select(_ => Between(60, 130)).ToArray();
            var corners = Enumerable.Range(0, count).Select(i => Meet(facing[i], reach[i], facing[(i + 1) % count], reach[(i + 1) % count])).ToArray();
            var sides = corners.Select((c, i) => (corners[(i + 1) % count] - c, Along: Vector.Polar(1, facing[(i + 1) % count]).Left));
            if (sides.All(s => s.Item1.Dot(s.Along) > 45)) return corners;
        }

        static Point Meet(Angle a, double reachA, Angle b, double reachB)
        {
            var (u, v) = (Vector.Polar(1, a), Vector.Polar(1, b));
            return Point.Origin + new Vector(reachA * v.Y - reachB * u.Y, reachB * u.X - reachA * v.X) / u.Cross(v);
        }
    }
}
