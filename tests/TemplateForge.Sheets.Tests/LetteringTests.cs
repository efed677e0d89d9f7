using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>A person cuts to these lines: no letter may hide one, nor another letter. The demonstration's letters lie under all.</summary>
public class LetteringTests
{
    /// <summary>Clear distance in mm from the middle of a letter's stroke to a line to work to: half of both pens, and a little.</summary>
    private const double Clear = 0.5;

    private static readonly string[] LinesToWorkTo = ["CUT", "ROUGH-CUT", "PANEL-EDGE", "DATUM", "TACK"];

    public static TheoryData<string, string> All => Cases.All;

    [Theory, MemberData(nameof(All))]
    public void No_letter_of_a_template_lies_on_a_line_to_work_to(string modification, string paper)
    {
        foreach (var page in Cases.Template(modification, paper).Pages) AssertClearOfLines(Printed.On(page));
    }

    [Theory, MemberData(nameof(All))]
    public void No_letters_of_a_template_lie_on_others(string modification, string paper)
    {
        foreach (var page in Cases.Template(modification, paper).Pages) AssertApart(Printed.On(page));
    }

    [Theory, MemberData(nameof(All))]
    public void No_letter_of_a_template_is_cut_off_by_the_edge_of_a_page(string modification, string paper)
    {
        foreach (var printed in Cases.Template(modification, paper).Pages.SelectMany(Printed.On).Where(p => p.Mark is Lettering))
        {
            var seen = printed.Seen.Any();
            Assert.True(!seen || printed.Segments.All(s => Inside(printed.Window, s.Bounds)), $"“{((Lettering)printed.Mark).Text}” is cut off.");
        }
    }

    [Theory, MemberData(nameof(All))]
    public void A_job_sheet_s_letters_stand_apart_and_on_the_page(string modification, string paper)
    {
        var sheet = Cases.On(paper);
        foreach (var page in Cases.Sheet(modification, paper).Pages)
        {
            var printed = Printed.On(page);
            AssertApart(printed);
            AssertClearOfLines(printed);
            var printable = new Box(new(sheet.Margin, sheet.Margin), new(sheet.Width - sheet.Margin, sheet.Height - sheet.Margin));
            Assert.All(printed, p => Assert.All(p.Segments, s => Assert.True(Inside(printable, s.Bounds))));
            // What a person still reads at arm's length; the check numbers and figures are as large as the rest.
            Assert.All(printed.Select(p => p.Mark).OfType<Lettering>(), l => Assert.True(l.Height >= 1.8 - 1e-9, $"“{l.Text}” is {l.Height} mm high."));
        }
    }

    [Theory]
    [InlineData("notch")]
    [InlineData("notch for the other hand")]
    [InlineData("butt patch")]
    [InlineData("lap patch")]
    [InlineData("large patch")]
    public void A_preview_s_letters_stand_apart(string modification)
    {
        var printed = Printed.On(Preview.Of(Cases.Of(modification)));
        AssertApart(printed);
        AssertClearOfLines(printed);
    }

    private static void AssertClearOfLines(IReadOnlyList<Printed> page)
    {
        var lines = page.Where(p => LinesToWorkTo.Contains(p.Layer) && p.Mark is not Lettering)
            .SelectMany(p => p.Seen.SelectMany(s => In(p.Window, s)))
            .ToList();
        foreach (var words in WordsOn(page))
        {
            var near = words.Bounds.Grown(Clear);
            foreach (var line in lines.Where(l => l.Bounds.Touches(near)))
            {
                var least = words.Strokes.Min(s => s.DistanceTo(line));
                Assert.True(least >= Clear, $"“{words.Text}” is {least} mm from a line at {line.Start}.");
            }
        }
    }

    private static void AssertApart(IReadOnlyList<Printed> page)
    {
        var all = WordsOn(page);
        for (var i = 0; i < all.Count; i++)
        {
            var box = all[i].Bounds.Grown(0.4);
            foreach (var other in all.Skip(i + 1).Where(o => o.Bounds.Touches(box)))
            {
                var least = all[i].Strokes.Min(s => other.Strokes.Min(o => o.DistanceTo(s)));
                Assert.True(least > 0.4, $"“{all[i].Text}” and “{other.Text}” are {least} mm apart.");
            }
        }
    }

    private static List<(string Text, Box Bounds, List<Segment> Strokes)> WordsOn(IReadOnlyList<Printed> page) =>
    [
        .. page.Where(p => p.Mark is Lettering { Text.Length: > 0 } && p.Layer != "DEMONSTRATION")
            .Select(p => (((Lettering)p.Mark).Text, p.Window, Strokes: p.Segments.ToList()))
            .Where(w => w.Strokes.Any(s => s.Bounds.Touches(w.Window)))
            .Select(w => (w.Text, Box.Around(w.Strokes.Select(s => s.Bounds)), w.Strokes)),
    ];

    private static IEnumerable<Segment> In(Box window, Segment line) => Inside(window, line.Bounds)
        ? [line]
        : new TemplateForge.Geometry.Path(line).PartsInside(Region.Of(Outline.Rectangle(window))).SelectMany(p => p.Segments);

    private static bool Inside(Box outer, Box inner) => outer.Grown(1e-6).Contains(inner.Min) && outer.Grown(1e-6).Contains(inner.Max);
}
