using System.Globalization;
using System.Text;

namespace TemplateForge.Geometry.Benchmarks;

/// <summary>Time over size, both in powers of ten, as an SVG: a full line for this library, a dashed one for the other.</summary>
internal static class GrowthPlot
{
    private const double Left = 70, Top = 20, Width = 520, Height = 380;
    private static readonly string[] Colours = ["#1f5fa8", "#5aa0d8", "#b3541e", "#e0a030", "#2f7d4f"];

    public static string Of(IEnumerable<Measured> all)
    {
        var lines = all.Where(m => m.Case.Table == Growth.Table).GroupBy(m => (m.Case.Shape, m.Case.Job)).ToArray();
        var times = lines.SelectMany(g => g).SelectMany(m => (double[])[m.Ours, m.Theirs]).ToArray();
        var (low, high) = (Math.Floor(Math.Log10(times.Min())), Math.Ceiling(Math.Log10(times.Max())));
        double X(double size) => Left + Width * (Math.Log10(size) - 2) / 3;
        double Y(double time) => Top + Height * (high - Math.Log10(time)) / (high - low);

        var svg = new StringBuilder();
        svg.AppendLine("""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 900 450" font-family="sans-serif" font-size="13">""");
        svg.AppendLine("""<rect width="900" height="450" fill="white"/>""");
        for (var power = 2; power <= 5; power++)
            svg.AppendLine(Invariant($"""<path d="M{X(Math.Pow(10, power)):0.#} {Top}V{Top + Height}" stroke="#ddd"/><text x="{X(Math.Pow(10, power)):0.#}" y="{Top + Height + 18}" text-anchor="middle">{Math.Pow(10, power):0}</text>"""));
        for (var power = low; power <= high; power++)
            svg.AppendLine(Invariant($"""<path d="M{Left} {Y(Math.Pow(10, power)):0.#}H{Left + Width}" stroke="#ddd"/><text x="{Left - 8}" y="{Y(Math.Pow(10, power)) + 4:0.#}" text-anchor="end">{Tables.Time(Math.Pow(10, power)).Replace(".00", "", StringComparison.Ordinal).Replace(".0", "", StringComparison.Ordinal)}</text>"""));
        svg.AppendLine(Invariant($"""<text x="{Left + Width / 2}" y="{Top + Height + 40}" text-anchor="middle">segments</text>"""));
        for (var i = 0; i < lines.Length; i++)
        {
            var colour = Colours[i % Colours.Length];
            string Line(Func<Measured, double> time) =>
                "M" + string.Join("L", lines[i].Select(m => Invariant($"{X(m.Case.Size):0.#} {Y(time(m)):0.#}")));
            svg.AppendLine($"""<path d="{Line(m => m.Ours)}" fill="none" stroke="{colour}" stroke-width="2.5"/>""");
            svg.AppendLine($"""<path d="{Line(m => m.Theirs)}" fill="none" stroke="{colour}" stroke-width="1.2" stroke-dasharray="5 4"/>""");
            svg.AppendLine(Invariant($"""<path d="M610 {60 + 24 * i}h26" stroke="{colour}" stroke-width="2.5"/><text x="644" y="{64 + 24 * i}">{lines[i].Key.Job}, {lines[i].Key.Shape}</text>"""));
        }
        svg.AppendLine(Invariant($"""<path d="M610 {72 + 24 * lines.Length}h26" stroke="#555" stroke-dasharray="5 4"/><text x="644" y="{76 + 24 * lines.Length}">the same by NetTopologySuite</text>"""));
        return svg.AppendLine("</svg>").ToString();
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
