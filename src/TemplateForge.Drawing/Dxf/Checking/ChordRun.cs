using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Short lines that turn alike, and once were an arc.</summary>
/// <param name="First">Number of the first line in its chain.</param>
/// <param name="Count">How many they are.</param>
/// <param name="Start">Where they begin.</param>
/// <param name="End">Where they end.</param>
/// <param name="Centre">The middle of the arc.</param>
/// <param name="Radius">Its radius, in mm.</param>
/// <param name="IsLeft">Whether it turns to the left.</param>
/// <param name="Turn">How far it turns, in radians.</param>
internal sealed record ChordRun(int First, int Count, Point Start, Point End, Point Centre, double Radius, bool IsLeft, double Turn)
{
    /// <summary>How far the corners may lie off the arc, in mm.</summary>
    public const double OffArc = 0.01;

    private const int FewestLines = 5;
    private const double LargestTurn = 0.3; // radians at a corner, 17°: a regular polygon of twenty sides and fewer is meant as one,
    private const double LargestTurnOfSmall = 0.53; // 30°, twelve sides, unless it is so small that nobody would have it so:
    private const double SmallBow = 0.2; // mm between a chord and its arc, which is a hole of 11.7 mm in twelve chords, of 20.8 mm in sixteen
    private const double LeastTurn = 0.35;
    private const double LargestRadius = 20_000;
    private const double LargestBow = 1; // mm between a chord and its arc: beyond it is a polygon

    public static ImmutableArray<ChordRun> In(DxfChain chain)
    {
        var found = ImmutableArray.CreateBuilder<ChordRun>();
        for (var first = 0; first + FewestLines <= chain.Segments.Length;)
        {
            if (TryLongest(chain.Segments, first, out var run)) found.Add(run);
            first += run?.Count ?? 1;
        }
        return found.ToImmutable();
    }

    // Twice as long as long as it fits, then halving what is left.
    private static bool TryLongest(ImmutableArray<Segment> segments, int first, [NotNullWhen(true)] out ChordRun? longest)
    {
        longest = null;
        var turning = Turning(segments, first);
        var (fits, tooMany, step) = (0, turning + 1, FewestLines);
        while (step < tooMany)
        {
            if (TryFit(segments, first, step, out var run)) (longest, fits) = (run, step);
            else tooMany = step;
            if (fits == 0) break;
            step = tooMany > turning && 2 * fits <= turning ? 2 * fits : (fits + tooMany) / 2;
            if (step <= fits) break;
        }
        if (longest?.Turn < LeastTurn) longest = null;
        return longest is not null;
    }

    /// <summary>How many lines from there on turn the same way, each a little.</summary>
    private static int Turning(ImmutableArray<Segment> segments, int first)
    {
        if (!segments[first].IsLine) return 0;
        var (count, way) = (1, 0);
        for (var i = first + 1; i < segments.Length && segments[i].IsLine; i++, count++)
        {
            var (before, after) = (segments[i - 1].StartDirection, segments[i].StartDirection);
            var turn = Math.Atan2(before.Cross(after), before.Dot(after));
            if (Math.Abs(turn) > LargestTurnOfSmall || turn == 0 || (way != 0 && Math.Sign(turn) != way)) break;
            way = Math.Sign(turn);
        }
        return count;
    }

    private static bool TryFit(ImmutableArray<Segment> segments, int first, int count, [NotNullWhen(true)] out ChordRun? run)
    {
        run = null;
        var corners = segments.Skip(first).Take(count).Select(s => s.Start).Append(segments[first + count - 1].End).ToArray();
        var (before, after) = (segments[first].StartDirection, segments[first + 1].StartDirection);
        var isLeft = before.Cross(after) > 0;
        if (!TryCircle(corners, out var centre, out var radius) || radius > LargestRadius) return false;
        if (corners.Any(c => Math.Abs(c.DistanceTo(centre) - radius) > OffArc)) return false;
        var turned = 0.0;
        foreach (var segment in segments.Skip(first).Take(count))
        {
            var (from, to) = (segment.Start - centre, segment.End - centre);
            var turn = Math.Atan2(from.Cross(to), from.Dot(to));
            var bow = radius * (1 - Math.Cos(turn / 2));
            if (turn > 0 != isLeft || bow > LargestBow || Math.Abs(turn) > (bow <= SmallBow ? LargestTurnOfSmall : LargestTurn)) return false;
            turned += Math.Abs(turn);
        }
        if (turned > 2 * Math.PI + 1e-6) return false;
        run = new(first, count, corners[0], corners[^1], centre, radius, isLeft, turned);
        return true;
    }

    // The circle that is nearest in the sum of squares of x² + y² + ax + by + c: of points that lie on one it is that one.
    private static bool TryCircle(Point[] points, out Point centre, out double radius)
    {
        var middle = Point.Origin + points.Aggregate(Vector.Zero, (sum, p) => sum + (p - Point.Origin)) / points.Length;
        var (xx, xy, yy, xz, yz, zz) = (0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var p in points)
        {
            var q = p - middle;
            xx += q.X * q.X;
            xy += q.X * q.Y;
            yy += q.Y * q.Y;
            xz += q.X * q.LengthSquared;
            yz += q.Y * q.LengthSquared;
            zz += q.LengthSquared;
        }
        var det = xx * yy - xy * xy;
        centre = middle;
        radius = 0;
        if (Math.Abs(det) < 1e-12 * zz * zz) return false;
        var offset = new Vector((xz * yy - yz * xy) / det / 2, (yz * xx - xz * xy) / det / 2);
        centre = middle + offset;
        radius = Math.Sqrt(offset.LengthSquared + zz / points.Length);
        return double.IsFinite(radius);
    }

    /// <summary>The arc, through the ends of the run: of at most half a circle each, so one to three.</summary>
    public ImmutableArray<Segment> Arcs()
    {
        var (from, to) = (Start - Centre, End - Centre);
        var turn = Math.Atan2(from.Cross(to), from.Dot(to));
        if (IsLeft && turn <= 1e-6) turn += 2 * Math.PI;
        if (!IsLeft && turn >= -1e-6) turn -= 2 * Math.PI;
        var parts = (int)Math.Ceiling(Math.Abs(turn) / (0.9 * Math.PI));
        var points = Enumerable.Range(0, parts + 1).Select(i => i == 0 ? Start : i == parts ? End : Centre + (from.Unit * Radius).Turned(Angle.FromRadians(turn * i / parts))).ToArray();
        return [.. Enumerable.Range(0, parts).Select(i => Segment.Arc(points[i], points[i + 1], Math.Tan(turn / parts / 4)))];
    }
}
