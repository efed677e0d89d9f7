using System.Globalization;
using System.IO;
using System.Text;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Sheets;

namespace TemplateForge.Profiles.Tests;

/// <summary>The figures of docs/profile-language.md and the schema are what the program makes of its own examples and words today.</summary>
/// <remarks>After a change: <c>TEMPLATEFORGE_DOCS=$PWD/docs dotnet run --project tests/TemplateForge.Profiles.Tests</c> writes them anew.</remarks>
public class FiguresTests
{
    private static readonly string? Anew = Environment.GetEnvironmentVariable("TEMPLATEFORGE_DOCS");

    public static TheoryData<string, string, string> Figures()
    {
        var data = new TheoryData<string, string, string>();
        foreach (var (name, yaml, shape) in TheLanguagePage.Figures()) data.Add(name, yaml, shape);
        return data;
    }

    [Theory, MemberData(nameof(Figures))]
    public void A_figure_is_made_from_the_example_above_it(string name, string yaml, string shape) =>
        IsUpToDate($"figures/{name}.svg", SvgWriter.Write(Drawing(name, yaml, shape), name, margin: 2));

    [Fact]
    public void The_schema_is_made_from_the_words_that_the_reader_takes() =>
        IsUpToDate("profile.schema.json", Encoding.UTF8.GetBytes(ProfileSchema.Text));

    [Fact]
    public void Every_word_for_a_shape_has_a_figure()
    {
        var shown = TheLanguagePage.Figures().Select(f => f.Name).ToHashSet(StringComparer.Ordinal);
        Assert.All(SchemaTests.ShapeWords().Except(["outline"]), word => Assert.Contains(word, shown));
    }

    private static void IsUpToDate(string name, byte[] made)
    {
        if (Anew is not null)
        {
            File.WriteAllBytes(Path.Combine(Anew, name), made);
            return;
        }
        var file = Path.Combine(AppContext.BaseDirectory, name);
        Assert.True(File.Exists(file) && File.ReadAllText(file) == Encoding.UTF8.GetString(made), $"docs/{name} is out of date; the class says how to write it anew.");
    }

    private static LineDrawing Drawing(string name, string yaml, string shape)
    {
        if (name == "steps") return Figure.Of(TheLibrary.Read(TheLanguagePage.Whole(yaml, [])).Make().Steps, width: 100);
        if (name == "cutting") return Figure.OfPlan(Planned(TheLibrary.Read(TheLanguagePage.Whole(yaml, [])).Make().Pieces[0]), width: 150, height: 110);
        if (name == "jig") return Figure.Of(TheLibrary.Read(TheLanguagePage.Whole(yaml, [])).Make().Piece("notch-jig"), width: 150, height: 110);
        return name.StartsWith("edge-", StringComparison.Ordinal)
            ? Figure.Of(OnItsEdge(yaml, shape), width: 60, height: 40)
            : Figure.Of(Piece(yaml, shape), width: 150, height: 110);
    }

    private static Piece Planned(Piece piece) => piece.CutBy(TheLibrary.Shop.Cutters["plasma-table"], kerf: 1.5, isGiven: true, runOut: 10);

    // A piece of the example, or one that is cut from the blank with the section's name before it.
    private static EdgeView OnItsEdge(string yaml, string section)
    {
        var text = TheLanguagePage.Whole(yaml, []).Text.Replace("paper: ", "blank: ", StringComparison.Ordinal);
        if (!yaml.Contains("\npieces:", StringComparison.Ordinal))
            text = text[..text.LastIndexOf("    blank: ", StringComparison.Ordinal)] + $"    blank: {section}_blank\n    bends: {section}\n";
        return TheLibrary.Read(new("example.yaml", text)).Make().Pieces[0].EdgeViews[0];
    }

    // The shape that is shown, the others that it is made from as guide lines, the points with their names.
    private static Piece Piece(string yaml, string shape)
    {
        var shapes = TheLanguagePage.ShapesOf(yaml);
        var shown = shape.Length > 0 ? shape : shapes[^1];
        var more = new StringBuilder();
        var own = yaml[yaml.IndexOf($"\n  {shown}:", StringComparison.Ordinal)..].Split("\n  ").Skip(1).TakeWhile((l, i) => i == 0 || l.StartsWith(' ')).ToList();
        var others = shapes.Where(s => s != shown && own.Any(l => System.Text.RegularExpressions.Regex.IsMatch(l, $@"\b{s}\b"))).ToList();
        if (others.Count > 0) more.Append("    guide_lines:\n");
        foreach (var other in others) more.Append(CultureInfo.InvariantCulture, $"      - {{label: {other}, along: {other}}}\n");
        var points = TheLanguagePage.NamesIn(yaml, "points");
        if (points.Count > 0) more.Append("    labels:\n");
        foreach (var point in points) more.Append(CultureInfo.InvariantCulture, $"      - {{say: {point}, at: {point}}}\n");
        return TheLibrary.Read(TheLanguagePage.Whole(yaml, [], shown, more.ToString())).Make().Pieces[0];
    }
}
