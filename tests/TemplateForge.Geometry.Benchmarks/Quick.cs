using System.Diagnostics;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>The comparison for daily work: in this process, short batches of either library by turns, the median of their ratios.</summary>
internal static class Quick
{
    private const int MostRounds = 25;
    private static readonly TimeSpan Batch = TimeSpan.FromMilliseconds(2);

    /// <param name="cases">What is measured, small shapes before large ones.</param>
    /// <param name="each">Time for one case, but for the first calls.</param>
    /// <param name="patience">What a shape may take before larger ones of its job, which take ten times as long, are left out.</param>
    public static IEnumerable<Measured> Measure(IEnumerable<Case> cases, TimeSpan each, TimeSpan patience)
    {
        var tooSlow = new HashSet<(string, string, string)>();
        foreach (var one in cases)
        {
            var row = (one.Table, one.Shape, one.Job);
            if (tooSlow.Contains(row)) continue;
            var measured = Measure(one, each);
            if (measured.Ours + measured.Theirs > patience.TotalNanoseconds) tooSlow.Add(row);
            yield return measured;
        }
    }

    private static Measured Measure(Case one, TimeSpan each)
    {
        var resultBytes = one.ResultBytes();
        var (ourCalls, theirCalls) = (Calls(() => one.Ours()), Calls(() => one.Theirs()));
        var (ourBytes, theirBytes) = (Allocated(() => one.Ours()), Allocated(() => one.Theirs()));
        List<double> ours = [], theirs = [], ratios = [];
        var start = Stopwatch.GetTimestamp();
        do
        {
            var our = Time(() => one.Ours(), ourCalls).TotalNanoseconds / ourCalls / one.Operations;
            var their = Time(() => one.Theirs(), theirCalls).TotalNanoseconds / theirCalls / one.Operations;
            ours.Add(our);
            theirs.Add(their);
            ratios.Add(their / our);
        }
        while (ratios.Count < MostRounds && Stopwatch.GetElapsedTime(start) < each);
        return new(one, Median(ours), Median(theirs), Median(ratios), ourBytes / one.Operations, theirBytes / one.Operations, resultBytes);
    }

    public static double Median(IReadOnlyCollection<double> values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    /// <summary>How many calls fill a batch, once the code has been compiled for speed.</summary>
    private static int Calls(Action call)
    {
        for (var (count, warm) = (1, Stopwatch.GetTimestamp()); ; count *= 2)
        {
            var time = Time(call, count);
            if (time >= Batch && (time >= 5 * Batch || Stopwatch.GetElapsedTime(warm) >= 10 * Batch))
                return Math.Max(1, (int)(count * (Batch / time)));
        }
    }

    private static TimeSpan Time(Action call, int count)
    {
        var start = Stopwatch.GetTimestamp();
        for (var i = 0; i < count; i++) call();
        return Stopwatch.GetElapsedTime(start);
    }

    private static double Allocated(Action call)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        call();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
