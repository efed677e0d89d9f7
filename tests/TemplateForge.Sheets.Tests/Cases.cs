using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets.Tests;

/// <summary>Every sample, on every paper that a shop is likely to have.</summary>
internal static class Cases
{
    public const double Overlap = 12;

    public static Paper A4 { get; } = new("a4", 210, 297, 8);
    public static Paper A3 { get; } = new("a3", 297, 420, 8);
    public static Paper Letter { get; } = new("letter", 215.9, 279.4, 8);
    public static Paper Tabloid { get; } = new("tabloid", 279.4, 431.8, 8);

    private static Dictionary<string, Modification> Modifications { get; } = new(StringComparer.Ordinal)
    {
        ["notch"] = Samples.Notch,
        ["measured notch"] = Samples.MeasuredNotch,
        ["notch for the other hand"] = Samples.OtherHand(Samples.MeasuredNotch),
        ["butt patch"] = Samples.ButtPatch,
        ["lap patch"] = Samples.LapPatch,
    };

    private static Dictionary<string, Paper> Papers { get; } =
        new[] { A4, A3, Letter, Tabloid }.ToDictionary(p => p.Name, StringComparer.Ordinal);

    private static readonly Dictionary<(string, string), Document> Templates = [];
    private static readonly Lock Writing = new();

    /// <summary>Names of modification and paper for a theory.</summary>
    public static TheoryData<string, string> All
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var modification in Modifications.Keys)
            {
                foreach (var paper in Papers.Keys) all.Add(modification, paper);
            }
            return all;
        }
    }

    public static Modification Of(string modification) => Modifications[modification];

    public static Paper On(string paper) => Papers[paper];

    /// <summary>The template, laid out once for all the tests that look at it.</summary>
    public static Document Template(string modification, string paper)
    {
        lock (Writing)
        {
            if (!Templates.TryGetValue((modification, paper), out var document))
                Templates.Add((modification, paper), document = TemplateSheet.Of(Of(modification), On(paper), Overlap));
            return document;
        }
    }

    /// <summary>The pages that show a piece at true size, not the covers.</summary>
    public static IEnumerable<Page> Tiles(Document template) =>
        template.Pages.Where(p => Printed.On(p).Any(m => m.Layer == "SCALE-CHECK"));
}
