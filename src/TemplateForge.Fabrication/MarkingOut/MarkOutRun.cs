using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A stretch that is drawn in one go, with one setting of the trammel: a line, or an arc that may be several segments long.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Centre">Of an arc.</param>
/// <param name="Radius">Of an arc, in mm; infinite for a line.</param>
/// <param name="Sweep">How far an arc turns, to the left above zero; zero for a line.</param>
internal readonly record struct MarkOutRun(Point Start, Point End, Point Centre, double Radius, Angle Sweep)
{
    /// <summary>Deviations of this much, in mm, are none to whoever marks out by rule.</summary>
    private const double Same = 0.005;

    /// <summary>An arc turns less than all round, so that it has two ends.</summary>
    private static readonly Angle MostTurn = Angle.FromDegrees(350);

    public bool IsLine => double.IsPositiveInfinity(Radius);

    /// <summary>The stretches of a path, each as long as it can be; a closed path is begun where two of them meet.</summary>
    public static List<MarkOutRun> Of(Path path)
    {
        var (runs, passed) = (new List<MarkOutRun>(), new List<Point>());
        foreach (var segment in path.IsClosed() ? FromACorner(path) : path.Segments)
        {
            if (runs.Count > 0 && runs[^1].TryJoin(segment, passed, out var joined))
            {
                runs[^1] = joined;
                passed.Add(segment.Start);
                continue;
            }
            runs.Add(Of(segment));
            passed.Clear();
        }
        return runs;
    }

    private static MarkOutRun Of(Segment segment) => segment.IsLine
        ? new(segment.Start, segment.End, default, double.PositiveInfinity, Angle.Zero)
        : new(segment.Start, segment.End, segment.Centre, segment.Radius, segment.Sweep);

    private static IEnumerable<Segment> FromACorner(Path path)
    {
        var segments = path.Segments;
        var first = Enumerable.Range(0, segments.Length)
            .FirstOrDefault(i => !Of(segments[(i + segments.Length - 1) % segments.Length]).TryJoin(segments[i], [], out _));
        return segments.Skip(first).Concat(segments.Take(first));
    }

    // In line with all that was passed, or of one circle with a trammel's radius.
    private bool TryJoin(Segment next, List<Point> passed, out MarkOutRun joined)
    {
        joined = this;
        if (IsLine != next.IsLine) return false;
        if (IsLine)
        {
            var (start, along) = (Start, (next.End - Start).Unit);
            if ((next.Start - start).Dot(along) < 0 || (next.End - next.Start).Dot(along) < 0) return false;
            if (passed.Append(next.Start).Any(p => Math.Abs(along.Cross(p - start)) > Same)) return false;
            joined = this with { End = next.End };
            return true;
        }
        var sweep = Sweep + next.Sweep;
        if (Radius > MarkOut.LongestTrammel || Centre.DistanceTo(next.Centre) > Same || Math.Abs(Radius - next.Radius) > Same) return false;
        if (Math.Sign(Sweep.Radians) != Math.Sign(next.Sweep.Radians) || Math.Abs(sweep.Degrees) > MostTurn.Degrees) return false;
        joined = this with { End = next.End, Sweep = sweep };
        return true;
    }
}
