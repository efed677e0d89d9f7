using System.Diagnostics;
using System.IO;
using System.Runtime.InteropServices;
using TemplateForge.Geometry.Benchmarks;

const string usage = """
    quick PATH [WORD]     everything in this process within a minute; only rows whose table, shape or job holds the word
    offsets PATH          the contours in that file, by BenchmarkDotNet
    shapes                shapes from the shop, by BenchmarkDotNet
    growth                gears of 100 to 100 000 segments, in this process; the largest are left out where they take minutes
    docs PATH FOLDER [N]  all of it, in N rounds (3), written to benchmarks.md and benchmarks-growth.svg in the folder
    """;

var start = Stopwatch.GetTimestamp();
switch (args)
{
    case ["quick", var path, .. var words]:
        var wanted = PublishedContours.Read(path).Concat(ShopShapes.Cases()).Concat(Growth.Cases())
            .Where(c => words.All(w => $"{c.Table} {c.Shape} {c.Job}".Contains(w, StringComparison.Ordinal)));
        var patience = TimeSpan.FromSeconds(words.Length == 0 ? 0.1 : 10);
        Console.WriteLine(Tables.Of([.. Quick.Measure(wanted, TimeSpan.FromSeconds(0.2), patience)]));
        break;
    case ["offsets", var path]:
        Console.WriteLine(Tables.Of([.. Comparison.Measure(PublishedContours.Read(path), rounds: 3)]));
        break;
    case ["shapes"]:
        Console.WriteLine(Tables.Of([.. Comparison.Measure(ShopShapes.Cases(), rounds: 3)]));
        break;
    case ["growth"]:
        Console.WriteLine(Tables.Of([.. Gears()]));
        break;
    case ["docs", var path, var folder, .. var more] when more.Length == 0 || more.Length == 1 && int.TryParse(more[0], out _):
        var rounds = more.Length == 0 ? 3 : int.Parse(more[0], System.Globalization.CultureInfo.InvariantCulture);
        Measured[] all = [.. Comparison.Measure(PublishedContours.Read(path).Concat(ShopShapes.Cases()), rounds), .. Gears()];
        File.WriteAllText(System.IO.Path.Combine(folder, "benchmarks-growth.svg"), GrowthPlot.Of(all));
        File.WriteAllText(System.IO.Path.Combine(folder, "benchmarks.md"), $"""
            # How fast the geometry is

            Made by this, in {Stopwatch.GetElapsedTime(start).TotalMinutes:0.0} minutes; PATH is a file of contours that is not part of this repository:

                dotnet run -c Release --project tests/TemplateForge.Geometry.Benchmarks -- docs PATH docs {rounds}

            {Cpu()}, {Environment.ProcessorCount} cores; {RuntimeInformation.OSDescription}; {RuntimeInformation.FrameworkDescription}.

            Beside NetTopologySuite 2.6 (NTS) with its defaults, on the same shapes with arcs flattened to chords that stray by 0.01 mm;
            flattening is not counted. BenchmarkDotNet runs both in one process, by turns, rounds: {rounds}; times are medians over
            all rounds, and "× 3" is their ratio: a third of the time of NTS. Growth is measured by turns too, without BenchmarkDotNet,
            as one offset of a large gear takes NTS minutes; sizes at which it would are left out. Floor and goal are what two libraries of arcs reached in
            the same comparison elsewhere. Repair makes a region of loose contours; the union of gears is that of one with itself turned
            by half a tooth; gears are offset 0.5 mm inwards.

            {Tables.Of(all)}
            ![Time over size](benchmarks-growth.svg)

            """);
        break;
    default:
        Console.Error.WriteLine(usage);
        return 1;
}
Console.WriteLine($"{Stopwatch.GetElapsedTime(start).TotalSeconds:0} s");
return 0;

static IEnumerable<Measured> Gears() => Quick.Measure(Growth.Cases(), TimeSpan.FromSeconds(0.2), patience: TimeSpan.FromSeconds(1.2));

static string Cpu() => File.Exists("/proc/cpuinfo")
    ? File.ReadLines("/proc/cpuinfo").FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[^1].Trim() ?? "unknown processor"
    : RuntimeInformation.ProcessArchitecture.ToString();
