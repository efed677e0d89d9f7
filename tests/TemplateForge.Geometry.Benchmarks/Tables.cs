using System.Globalization;
using System.Text;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>Measurements as tables, in Markdown that also reads well on a screen.</summary>
internal static class Tables
{
    public static string Of(IReadOnlyCollection<Measured> all)
    {
        var text = new StringBuilder();
        var tables = all.ToLookup(m => m.Case.Table);
        if (tables[PublishedContours.Table].Any()) text.AppendLine(Offsets([.. tables[PublishedContours.Table]]));
        if (tables[ShopShapes.Table].Any()) text.AppendLine(Shapes(tables[ShopShapes.Table]));
        if (tables[Growth.Table].Any()) text.AppendLine(Growing([.. tables[Growth.Table]]));
        text.Append(Allocations(all));
        return text.ToString();
    }

    private static string Offsets(Measured[] all)
    {
        var rows = all.GroupBy(m => m.Case.Shape).Select(group =>
        {
            var (ours, theirs) = (Mean(group, m => m.Ours), Mean(group, m => m.Theirs));
            var ratio = theirs / Mean(group, m => m.Theirs / m.Ratio); // what is measured by turns drifts less than the times
            var marks = PublishedContours.Marks.TryGetValue(group.Key, out var known) ? known : (Floor: double.NaN, Goal: double.NaN);
            var verdict = double.IsNaN(marks.Floor) ? "" : ratio >= marks.Goal ? "past the goal" : ratio >= marks.Floor ? "past the floor" : "below";
            string Part(string job) => group.FirstOrDefault(m => m.Case.Job == job) is { } part ? Times(part.Ratio) : "–";
            return (string[])[group.Key, Time(ours), Time(theirs), Part(PublishedContours.Leaves), Part(PublishedContours.Collapses),
                Times(ratio), Mark(marks.Floor), Mark(marks.Goal), verdict];
        });
        return "## Offsets of published contours\n\n" + Table(
            ["contour", "one offset", "NTS", "leaves something", "collapses", "all", "floor", "goal", ""], rows);
    }

    private static double Mean(IEnumerable<Measured> group, Func<Measured, double> value) =>
        group.Sum(m => value(m) * m.Case.Operations) / group.Sum(m => m.Case.Operations);

    private static string Shapes(IEnumerable<Measured> all) => "## Shapes from the shop\n\n" + Table(
        ["shape", "segments", "job", "time", "NTS", "times as fast"],
        all.Select(m => (string[])[m.Case.Shape, Count(m.Case.Size), m.Case.Job, Time(m.Ours), Time(m.Theirs), Times(m.Ratio)]));

    private static string Growing(Measured[] all)
    {
        var rows = all.GroupBy(m => (m.Case.Shape, m.Case.Job)).SelectMany(group => group.Select(m => (string[])[m.Case.Shape, m.Case.Job,
            Count(m.Case.Size), Time(m.Ours), Time(m.Theirs), Times(m.Ratio), Bytes(m.OurBytes), Bytes(m.OurBytes / m.Case.Size)]));
        var exponents = all.GroupBy(m => (m.Case.Shape, m.Case.Job)).Where(g => g.Count() > 1).Select(g => (string[])[g.Key.Shape, g.Key.Job,
            Fit(g, m => m.Ours), Fit(g, m => m.Theirs), Fit(g, m => m.OurBytes)]);
        return "## Growth\n\n" + Table(["gear", "job", "segments", "time", "NTS", "times as fast", "allocated", "a segment"], rows)
            + "\nThe power of the size that each grows with:\n\n" + Table(["gear", "job", "time", "time of NTS", "allocated"], exponents);
    }

    private static string Fit(IEnumerable<Measured> group, Func<Measured, double> value) =>
        Growth.Exponent([.. group.Select(m => ((double)m.Case.Size, Math.Max(1, value(m))))]).ToString("0.00", CultureInfo.InvariantCulture);

    private static string Allocations(IEnumerable<Measured> all) =>
        "## Bytes allocated by one operation, beside those of its result\n\n" + Table(
            ["shape", "job", "allocated", "result", "besides", "NTS"],
            all.Where(m => m.Case.Size <= 1000).Select(m => (string[])[m.Case.Shape, m.Case.Job, Bytes(m.OurBytes), Bytes(m.ResultBytes),
                Bytes(Math.Max(0, m.OurBytes - m.ResultBytes)), Bytes(m.TheirBytes)]));

    private static string Table(string[] head, IEnumerable<string[]> rows)
    {
        string[][] all = [head, .. rows];
        var widths = head.Select((_, i) => Math.Max(3, all.Max(r => r[i].Length))).ToArray();
        var lines = all.Select(row => "| " + string.Join(" | ", row.Select((cell, i) => i == 0 ? cell.PadRight(widths[i]) : cell.PadLeft(widths[i]))) + " |").ToList();
        lines.Insert(1, "| " + string.Join(" | ", widths.Select((w, i) => i == 0 ? new string('-', w) : new string('-', w - 1) + ":")) + " |");
        return string.Join("\n", lines) + "\n";
    }

    public static string Time(double nanoseconds) => nanoseconds switch
    {
        >= 1e9 => Digits(nanoseconds / 1e9) + " s",
        >= 1e6 => Digits(nanoseconds / 1e6) + " ms",
        >= 1e3 => Digits(nanoseconds / 1e3) + " µs",
        _ => Digits(nanoseconds) + " ns",
    };

    private static string Bytes(double bytes) => bytes switch
    {
        >= 1e6 => Digits(bytes / 1e6) + " MB",
        >= 1e4 => Digits(bytes / 1e3) + " kB",
        _ => bytes.ToString("0", CultureInfo.InvariantCulture) + " B",
    };

    private static string Times(double ratio) => "× " + Digits(ratio);
    private static string Mark(double mark) => double.IsNaN(mark) ? "" : "× " + Digits(mark);
    private static string Count(int size) => size.ToString(CultureInfo.InvariantCulture);
    private static string Digits(double value) =>
        value.ToString(Math.Abs(value) >= 100 ? "0" : Math.Abs(value) >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
