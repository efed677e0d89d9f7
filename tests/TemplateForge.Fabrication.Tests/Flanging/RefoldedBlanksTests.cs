using System.Collections.Immutable;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Random flanged sheets are laid flat, folded up again in space by code that shares nothing with the unfolding, and measured.</summary>
public class RefoldedBlanksTests
{
    // What is promised of the finished part, in mm and degrees.
    private const double Promised = 0.01;

    private const int Drawn = 260;

    private static readonly Lazy<ImmutableArray<RefoldedSheet>> Refolded = new(() =>
    [
        .. Enumerable.Range(0, Drawn).AsParallel().AsOrdered().WithDegreeOfParallelism(2).SelectMany(number =>
        {
            var sheet = new RandomSheet(number);
            return FlangedBlank.TryLayFlat(sheet.Sheet, out var blank, out _) ? [new RefoldedSheet(sheet, blank)] : Array.Empty<RefoldedSheet>();
        }),
    ]);

    [Fact]
    public void Two_hundred_and_more_are_folded_and_the_rest_are_refused_with_a_reason()
    {
        Assert.True(Refolded.Value.Length > 220, $"Only {Refolded.Value.Length}.");
        var refused = Enumerable.Range(0, Drawn).Except(Refolded.Value.Select(r => r.Drawn.Number)).Select(n => new RandomSheet(n).Sheet);
        Assert.All(refused, sheet =>
        {
            Assert.False(FlangedBlank.TryLayFlat(sheet, out _, out var faults));
            Assert.NotEmpty(faults);
        });
    }

    [Fact]
    public void Every_blank_is_one_piece_and_well_made() => Check(sheet =>
    {
        Law.IsWellMade(sheet.Blank.Shape);
        Assert.Single(sheet.Blank.Shape.Contours);
    });

    // As the sources say it, not as the program reckons it: docs/sheet-metal.md.
    [Fact]
    public void Every_bend_takes_as_much_of_the_flat_as_its_rule_says() => Check(sheet =>
    {
        foreach (var (wanted, bend) in sheet.Flanges.SelectMany(f => f.Wanted.Zip(f.Bends)))
        {
            var (r, t, a) = (wanted.Bend.InsideRadius, sheet.Sheet.Thickness, wanted.Bend.Angle.Radians);
            var depth = wanted.Bend.Rule is KFactorRule k ? k.KFactor : (r > 5 * t ? 1 : Math.Clamp(0.65 + Math.Log10(r / t) / 2, 0, 1)) / 2;
            Assert.Equal(r, bend.Line.InsideRadius);
            Approximately.Equal(a * (r + depth * t), bend.Line.Allowance, within: 1e-9);
        }
    });

    [Fact]
    public void Every_leg_is_as_long_and_leans_as_far_as_was_wanted() => Check(sheet =>
    {
        foreach (var flange in sheet.Flanges)
        {
            for (var i = 0; i < flange.Bends.Length; i++)
            {
                var (bend, wanted) = (flange.Bends[i], flange.Wanted[i]);
                var outside = wanted.Leg.By == MeasuredBy.Outside;
                Approximately.Equal(wanted.Bend.Angle.Degrees, bend.Degrees, within: Promised);
                Assert.Equal(wanted.Way == BendWay.Up, bend.Rises);
                var end = i + 1 < flange.Bends.Length ? flange.Bends[i + 1].EndOfHeld(outside) : bend.Turned.Corners.Max(c => c.Dot(bend.Going));
                Approximately.Equal(wanted.Leg.Length, end - bend.StartOfTurned(outside), within: Promised);
            }
        }
    });

    [Fact]
    public void Every_flange_stands_on_the_outline_of_its_base() => Check(sheet =>
    {
        foreach (var flange in sheet.Flanges)
        {
            var (bend, on) = (flange.Bends[0], flange.Edge.Start);
            Approximately.Equal(new Vector3(on.X, on.Y, 0).Dot(bend.Leaving), bend.EndOfHeld(sheet.Sheet.Measured == MeasuredBy.Outside), within: Promised);
        }
    });

    // Else metal beside the end of the line hangs on both sides of the bend, and tears.
    [Fact]
    public void Every_bend_line_reaches_across_all_the_metal_that_it_bends() =>
        Check(sheet => Assert.Empty(sheet.Part.Torn));

    [Fact]
    public void Tangent_lines_lie_on_metal_from_relief_to_relief() => Check(sheet =>
    {
        // Where a line runs along the edge of the metal it is on it.
        var shape = sheet.Blank.Shape.Offset(1e-5);
        foreach (var flange in sheet.Flanges)
        {
            foreach (var line in flange.Bends.Select(b => b.Line))
            {
                foreach (var tangent in new[] { line.TangentLines.Held, line.TangentLines.Turned })
                {
                    var metal = tangent.PartsInside(shape).MaxBy(p => p.Length)!;
                    Assert.InRange(tangent.Start.DistanceTo(metal.Start), 0, sheet.MayMiss(flange, line, atStart: true) + Promised);
                    Assert.InRange(tangent.End.DistanceTo(metal.End), 0, sheet.MayMiss(flange, line, atStart: false) + Promised);
                }
            }
        }
    });

    [Fact]
    public void The_inner_edges_of_mitred_flanges_that_are_alike_meet()
    {
        var measured = 0;
        Check(sheet =>
        {
            if (sheet.Sheet.Corners != CornerJoint.Mitred) return;
            foreach (var corner in sheet.OuterCorners)
            {
                var alike = corner.Before.Wanted.Zip(corner.After.Wanted).TakeWhile(w => w.First == w.Second).Count();
                foreach (var (one, other) in corner.Before.Bends.Zip(corner.After.Bends).Take(alike).Where(b => !sheet.IsCutUp(b.First)))
                {
                    Approximately.Equal(sheet.Sheet.Gap, one.Turned.EdgesFrom(other.Turned), within: Promised);
                    measured++;
                }
            }
        });
        Assert.True(measured > 100, $"Only {measured} corners.");
    }

    [Fact]
    public void In_a_closed_corner_one_upright_flange_ends_flush_with_the_other_which_ends_a_gap_inside_of_it()
    {
        var measured = 0;
        Check(sheet =>
        {
            if (sheet.Sheet.Corners != CornerJoint.Closed) return;
            foreach (var corner in sheet.OuterCorners)
            {
                var (first, second) = corner.BeforeWasFirst ? (corner.Before, corner.After) : (corner.After, corner.Before);
                var (laps, lapped) = (first.Bends[0], second.Bends[0]);
                if (laps.Line.Bend != Angle.QuarterTurn || lapped.Line.Bend != Angle.QuarterTurn || sheet.IsCutUp(laps) || sheet.IsCutUp(lapped)) continue;
                Approximately.Equal(0, laps.Turned.Corners.Max(c => lapped.Turned.Beyond(c, !lapped.Rises)), within: Promised);
                Approximately.Equal(sheet.Sheet.Gap, lapped.Turned.Corners.Min(c => laps.Turned.Beyond(c, laps.Rises)), within: Promised);
                measured++;
            }
        });
        Assert.True(measured > 30, $"Only {measured} corners.");
    }

    [Fact]
    public void No_leg_runs_through_another_unless_it_was_warned_of() => Check(sheet =>
    {
        var panels = sheet.Part.Panels;
        for (var i = 0; i < panels.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (sheet.ShareABend(panels[i], panels[j]) || panels[i].DeepIn(panels[j]) is not (> Promised and var deep)) continue;
                Assert.True(sheet.AreOfOneFlange(panels[i], panels[j]) && sheet.IsWarnedOf, $"By {deep} mm.");
            }
        }
    });

    private static void Check(Action<RefoldedSheet> law) => Assert.All(Refolded.Value, law);
}
