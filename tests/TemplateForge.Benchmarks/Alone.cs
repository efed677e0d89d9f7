using System.Globalization;
using System.Text;

namespace TemplateForge.Benchmarks;

/// <summary>One job from start to end, beside a program that does nothing.</summary>
internal static class Alone
{
    private const string Profile = "booster-clearance-notch";

    public static string Measure(Workbench bench, int rounds)
    {
        var named = new (string Name, string[] Words)[]
        {
            ("an empty program, native", bench.EmptyNative),
            ($"make {Profile}, native", [.. bench.Native, "make", Profile, "--out", bench.At("alone"), "--replace"]),
            ($"show {Profile}, native", [.. bench.Native, "show", Profile]),
            ("an empty program, plain build", bench.EmptyPlain),
            ($"make {Profile}, plain build", [.. bench.Plain, "make", Profile, "--out", bench.At("alone"), "--replace"]),
            ($"show {Profile}, plain build", [.. bench.Plain, "show", Profile]),
        };
        var times = named.Select(_ => new List<double>()).ToArray();
        // The first round warms the disk's cache and is not counted.
        for (var round = 0; round <= rounds; round++)
        {
            foreach (var (program, i) in named.Select((p, i) => (p, i)))
            {
                var took = Workbench.Run(program.Words).Took.TotalMilliseconds;
                if (round > 0) times[i].Add(took);
            }
        }

        var text = new StringBuilder("## One job\n\nEvery file of the job: template, cut file, job sheet, pictures (1600 pixels wide) and record.\n\n");
        text.AppendLine("| | least ms | median ms | times an empty program |").AppendLine("| --- | ---: | ---: | ---: |");
        for (var i = 0; i < named.Length; i++)
        {
            var ratio = i % 3 == 0 ? "" : Number(Median(times[i]) / Median(times[i - i % 3]), "0.0");
            text.AppendLine(CultureInfo.InvariantCulture, $"| {named[i].Name} | {Number(times[i].Min(), "0.0")} | {Number(Median(times[i]), "0.0")} | {ratio} |");
        }
        return text.ToString();
    }

    private static double Median(List<double> times)
    {
        var sorted = times.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    private static string Number(double number, string format) => number.ToString(format, CultureInfo.InvariantCulture);
}
