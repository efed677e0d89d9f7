using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Order;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.NoEmit;
using Perfolizer.Horology;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>The comparison by BenchmarkDotNet: in rounds, in each of them every case by both libraries, one right after the other.</summary>
public class Comparison
{
    private static Case[] s_cases = [];
    private static int s_rounds;

    [ParamsSource(nameof(Rounds))] public int Round { get; set; }
    [ParamsSource(nameof(Numbers))] public int Number { get; set; }

    public static IEnumerable<int> Rounds => Enumerable.Range(0, s_rounds);
    public static IEnumerable<int> Numbers => Enumerable.Range(0, s_cases.Length);

    [Benchmark] public object TemplateForge() => s_cases[Number].Ours();
    [Benchmark] public object NetTopologySuite() => s_cases[Number].Theirs();

    /// <summary>Medians over all iterations of all rounds, and the ratios of these medians.</summary>
    internal static IEnumerable<Measured> Measure(IEnumerable<Case> cases, int rounds)
    {
        (s_cases, s_rounds) = ([.. cases], rounds);
        WarmUp();
        var job = Job.Default
            .WithToolchain(new InProcessNoEmitToolchain(TimeSpan.FromMinutes(5), logOutput: false))
            .WithStrategy(RunStrategy.Throughput)
            .WithEvaluateOverhead(false)
            .WithUnrollFactor(1)
            .WithWarmupCount(1)
            .WithIterationCount(3)
            .WithIterationTime(TimeInterval.FromMilliseconds(10));
        var config = ManualConfig.CreateEmpty()
            .AddJob(job)
            .AddDiagnoser(MemoryDiagnoser.Default)
            .AddColumnProvider(BenchmarkDotNet.Columns.DefaultColumnProviders.Instance)
            .AddLogger(NullLogger.Instance)
            .WithOrderer(new RoundByRound())
            .WithOptions(ConfigOptions.DisableLogFile)
            .WithArtifactsPath(System.IO.Path.Combine(System.IO.Path.GetTempPath(), "templateforge-benchmarks"));
        var reports = BenchmarkRunner.Run<Comparison>(config).Reports.ToLookup(r => (NumberOf(r.BenchmarkCase), r.BenchmarkCase.Descriptor.WorkloadMethod.Name));
        for (var i = 0; i < s_cases.Length; i++)
        {
            var one = s_cases[i];
            var (ours, ourBytes) = Medians(reports[(i, nameof(TemplateForge))], one.Operations);
            var (theirs, theirBytes) = Medians(reports[(i, nameof(NetTopologySuite))], one.Operations);
            yield return new(one, ours, theirs, theirs / ours, ourBytes, theirBytes, one.ResultBytes());
        }
    }

    /// <summary>Both libraries run every case until the runtime has compiled them for speed: the first rows are not to be timed while it still does.</summary>
    private static void WarmUp()
    {
        foreach (var one in s_cases)
        {
            foreach (var run in (Func<object>[])[one.Ours, one.Theirs])
            {
                var start = Stopwatch.GetTimestamp();
                while (Stopwatch.GetElapsedTime(start) < TimeSpan.FromSeconds(0.2)) run();
            }
        }
    }

    private static (double Time, double Bytes) Medians(IEnumerable<BenchmarkReport> reports, int operations) => (
        Quick.Median([.. reports.SelectMany(r => r.GetResultRuns()).Select(run => run.GetAverageTime().Nanoseconds / operations)]),
        Quick.Median([.. reports.Select(r => (double)(r.GcStats.GetBytesAllocatedPerOperation(r.BenchmarkCase) ?? 0) / operations)]));

    private static int NumberOf(BenchmarkCase one) => (int)one.Parameters[nameof(Number)];

    private sealed class RoundByRound : DefaultOrderer
    {
        public override IEnumerable<BenchmarkCase> GetExecutionOrder(
            System.Collections.Immutable.ImmutableArray<BenchmarkCase> benchmarkCases, IEnumerable<BenchmarkLogicalGroupRule>? order = null) =>
            benchmarkCases.OrderBy(c => (int)c.Parameters[nameof(Round)]).ThenBy(NumberOf).ThenBy(c => c.Descriptor.WorkloadMethod.Name, StringComparer.Ordinal);
    }
}
