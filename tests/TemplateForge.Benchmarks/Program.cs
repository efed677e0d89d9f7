using System.Diagnostics;
using System.IO;
using System.Runtime.InteropServices;
using TemplateForge.Benchmarks;

const string usage = """
    docs NATIVE PLAIN FOLDER [N]   measures the native program and the plain one, in N rounds (15), and writes benchmarks-program.md in the folder; its remarks stay
    show NATIVE PLAIN [N]          the same on the screen
    """;

if (args is not ["docs" or "show", var native, var plain, ..] || (args[0] == "docs" && args.Length < 4))
{
    Console.Error.WriteLine(usage);
    return 1;
}
var start = Stopwatch.GetTimestamp();
var rest = args[(args[0] == "docs" ? 4 : 3)..];
var rounds = rest is [var given] ? int.Parse(given, System.Globalization.CultureInfo.InvariantCulture) : 15;
using var bench = new Workbench(Path.GetFullPath(native), Path.GetFullPath(plain));
var alone = Alone.Measure(bench, rounds);
var many = Many.Measure(bench);
var text = $"""
    # How fast the program is

    Made by this, in {Stopwatch.GetElapsedTime(start).TotalMinutes:0.0} minutes; NATIVE is a native build, PLAIN the plain build's templateforge.dll (see DEVELOPERS.md):

        dotnet run -c Release --project tests/TemplateForge.Benchmarks -- docs NATIVE PLAIN docs {rounds}

    {Cpu()}, {Environment.ProcessorCount} cores; {RuntimeInformation.OSDescription}; {RuntimeInformation.FrameworkDescription}. Times are of the
    wall clock from start to end of a process; programs run by turns, {rounds} rounds, and a ratio is that of the medians. How busy the
    machine was with other work shows in the times, hardly in the ratios.

    {alone}
    {many}
    """;
Console.WriteLine(text);
if (args[0] == "docs")
{
    var page = Path.Combine(args[3], "benchmarks-program.md");
    File.WriteAllText(page, $"{text.TrimEnd()}\n{Remarks(page)}");
}
return 0;

// What a person wrote below the figures stays.
static string Remarks(string page)
{
    const string heading = "\n## Remarks\n";
    var written = File.Exists(page) ? File.ReadAllText(page) : "";
    return written.IndexOf(heading, StringComparison.Ordinal) is >= 0 and var start ? written[start..] : "";
}

static string Cpu() => File.Exists("/proc/cpuinfo")
    ? File.ReadLines("/proc/cpuinfo").FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal))?.Split(':')[^1].Trim() ?? "unknown processor"
    : RuntimeInformation.ProcessArchitecture.ToString();
