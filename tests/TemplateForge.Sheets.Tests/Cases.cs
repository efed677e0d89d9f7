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

    private static Dictionary<string, Modification> Modifications { get; } = new(StringComparer.Ordinal)
    {
        ["notch"] = Samples.Notch,
        ["measured notch"] = Samples.MeasuredNotch,
        ["notch for the other hand"] = Samples.OtherHand(Samples.MeasuredNotch),
        ["butt patch"] = Samples.ButtPatch,
        ["lap patch"] = Samples.LapPatch,
        ["large patch"] = Samples.LargePatch,
        ["bracket"] = Samples.Bracket,
        ["lid"] = Samples.Lid,
    };

    private static Dictionary<string, Paper> Papers { get; } =
        new[] { A4, A3, Letter }.ToDictionary(p => p.Name, StringComparer.Ordinal);

    private static readonly Dictionary<(string, string), (Document Template, Document JobSheet)> Made = [];
    private static readonly Lock Making = new();

    /// <summary>Names of modification and paper for a theory.</summary>
    public static TheoryData<string, string> All => new()
    {
        { "notch", "a4" },
        { "notch", "a3" },
        { "measured notch", "letter" },
        { "notch for the other hand", "a4" },
        { "notch for the other hand", "letter" },
        { "butt patch", "a4" },
        { "lap patch", "letter" },
        { "large patch", "a4" },
        { "bracket", "a4" },
        { "bracket", "letter" },
        { "lid", "a4" },
    };

    public static Modification Of(string modification) => Modifications[modification];

    public static Paper On(string paper) => Papers[paper];

    public static Document Template(string modification, string paper) => Both(modification, paper).Template;

    public static Document Sheet(string modification, string paper) => Both(modification, paper).JobSheet;

    /// <summary>The pages that show a piece at true size, not the covers.</summary>
    public static IEnumerable<Page> Tiles(Document template) =>
        template.Pages.Where(p => Printed.On(p).Any(m => m.Layer == "SCALE-CHECK"));

    // Laid out once for all the tests that look at it.
    private static (Document Template, Document JobSheet) Both(string modification, string paper)
    {
        lock (Making)
        {
            if (!Made.TryGetValue((modification, paper), out var both))
            {
                both = (TemplateSheet.Of(Of(modification), On(paper), Overlap), JobSheet.Of(Of(modification), On(paper)));
                Made.Add((modification, paper), both);
            }
            return both;
        }
    }
}
