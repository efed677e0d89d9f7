using System.Globalization;
using System.IO;
using System.Text;

namespace TemplateForge.Benchmarks;

/// <summary>Many jobs from a table, on all cores.</summary>
internal static class Many
{
    private const string Profile = "booster-clearance-notch";

    public static string Measure(Workbench bench)
    {
        var text = new StringBuilder($"## Many jobs from a table\n\n`make {Profile} --from FILE`, native, a row with a diameter, a tilt and a place each; every job is saved whole.\n\n");
        text.AppendLine("| jobs | s | jobs a second | ms a job | most memory, MB |").AppendLine("| ---: | ---: | ---: | ---: | ---: |");
        foreach (var count in (int[])[1, 100, 1000])
        {
            var (took, peak) = Workbench.Run([.. bench.Native, "make", Profile, "--from", Table(bench, count), "--out", bench.At($"jobs-{count}")]);
            text.AppendLine(CultureInfo.InvariantCulture,
                $"| {count} | {took.TotalSeconds:0.00} | {count / took.TotalSeconds:0.0} | {took.TotalMilliseconds / count:0.0} | {peak / 1e6:0} |");
            Directory.Delete(bench.At($"jobs-{count}"), recursive: true);
        }
        return text.ToString();
    }

    private static string Table(Workbench bench, int count)
    {
        var rows = Enumerable.Range(0, count).Select(i => string.Create(CultureInfo.InvariantCulture, $"{180 + i % 40 * 0.5:0.0},{5 + i % 7},{38 + i % 11 * 0.5:0.0}\n"));
        var path = bench.At($"values-{count}.csv");
        File.WriteAllText(path, "diameter,tilt,axis_in\n" + string.Concat(rows));
        return path;
    }
}
