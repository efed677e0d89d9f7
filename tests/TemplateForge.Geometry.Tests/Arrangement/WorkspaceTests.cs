using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>The room that operations work in is used again; nothing of one answer may show in another.</summary>
public class WorkspaceTests
{
    private static readonly Gen<(Region, double)> Offsets = Gen.Select(Testing.Shapes.GridRegion, Testing.Shapes.GridOffset);

    [Fact]
    public void Many_threads_at_once_find_what_one_finds()
    {
        var jobs = Enumerable.Range(0, 400).Select(i => Offsets.Case(i)).ToArray();
        var alone = Array.ConvertAll(jobs, j => Written(j.Item1.Offset(j.Item2).Union(j.Item1)));
        var together = new string[jobs.Length];
        Parallel.For(0, jobs.Length, new ParallelOptions { MaxDegreeOfParallelism = 8 }, i =>
            together[i] = Written(jobs[i].Item1.Offset(jobs[i].Item2).Union(jobs[i].Item1)));
        Assert.Equal(alone, together);
    }

    [Fact]
    public void After_an_exception_in_the_middle_the_next_answer_is_right()
    {
        var square = Region.Of(Outline.Rectangle(new(Point.Origin, new(10, 10))));
        Assert.Throws<InvalidOperationException>(() => Region.FromContours(Interrupted()));
        Approximately.Equal(100, square.Union(square).Area, within: 1e-9);

        IEnumerable<Contour> Interrupted()
        {
            yield return square.Contours[0];
            throw new InvalidOperationException("no more");
        }
    }

    // One array of 40 bytes a segment, the contour, the array that holds it, the region; and nothing grows from one time to the next.
    [Fact]
    public void An_operation_allocates_its_answer_and_nothing_else()
    {
        var plate = Region.Of(Outline.RoundedRectangle(new(Point.Origin, new(40, 20)), 5));
        var (grown, bytes) = Allocated(() => plate.Offset(3));
        Assert.InRange(bytes, 0, 40 * grown.Contours[0].Segments.Length + 120);
        var (cut, cutBytes) = Allocated(() => plate.Subtract(grown.Offset(-6)));
        var segments = cut.Contours.Sum(c => c.Segments.Length) + 8;
        Assert.InRange(cutBytes, 0, 40 * segments + 100 * (cut.Contours.Length + 1) + 200);
    }

    private static (Region, long) Allocated(Func<Region> operation)
    {
        operation();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var answer = operation();
        return (answer, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static string Written(Region region) => string.Join("\n", region.Contours.SelectMany(c => c.Segments));
}
