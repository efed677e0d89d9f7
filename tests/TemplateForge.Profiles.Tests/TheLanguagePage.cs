using System.Globalization;
using System.IO;
using System.Text;
using System.Text.RegularExpressions;
using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>The examples of docs/profile-language.md, made whole, and the figures that belong to them.</summary>
internal static partial class TheLanguagePage
{
    private const string Header =
        "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: either\nface_up: outer face\n";

    public static string Text { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "profile-language.md"));

    /// <summary>Every example, and the text block right below it.</summary>
    public static List<(string Yaml, string Answer)> Examples()
    {
        var found = new List<(string, string)>();
        foreach (Match block in Blocks().Matches(Text)) found.Add((block.Groups["yaml"].Value + "\n", block.Groups["answer"].Value));
        return found;
    }

    /// <summary>Every figure with the example above it and the shape that it shows; no name for the last.</summary>
    public static List<(string Name, string Yaml, string Shape)> Figures()
    {
        var found = new List<(string, string, string)>();
        var yaml = "";
        foreach (Match part in BlocksAndFigures().Matches(Text))
        {
            if (part.Groups["yaml"].Success) yaml = part.Groups["yaml"].Value + "\n";
            else found.Add((part.Groups["name"].Value, yaml, part.Groups["shape"].Value));
        }
        return found;
    }

    public static bool IsWhole(string yaml) => yaml.StartsWith("profile:", StringComparison.Ordinal);

    // The page leaves the heading and the pieces out, and counts lines from the example's own first one.
    public static TextFile Whole(string yaml, IEnumerable<string> asked, string shape = "", string more = "")
    {
        if (IsWhole(yaml)) return new("my-plate.yaml", yaml);
        var text = new StringBuilder(yaml).Append('\n').Append(Header);
        if (yaml.Contains("\npieces:", StringComparison.Ordinal)) return new("example.yaml", text.ToString());
        var shown = shape.Length > 0 ? shape : ShapesOf(yaml)[0];
        text.Append(CultureInfo.InvariantCulture, $"pieces:\n  shown:\n    title: Shown\n    thickness: 1 mm\n    paper: {shown}\n").Append(more);
        var notes = asked.Where(a => a.Length > 0).ToList();
        if (notes.Count > 0) text.Append("    notes:\n");
        foreach (var note in notes) text.Append(CultureInfo.InvariantCulture, $"      - \"{{{note}}}\"\n");
        return new("example.yaml", text.ToString());
    }

    public static List<string> ShapesOf(string yaml) => NamesIn(yaml, "shapes");

    public static List<string> NamesIn(string yaml, string section)
    {
        var lines = yaml.Split('\n').SkipWhile(l => l != section + ":").Skip(1).TakeWhile(l => l.StartsWith(' '));
        return [.. lines.Where(l => l.StartsWith("  ", StringComparison.Ordinal) && l[2] != ' ').Select(l => l.Trim().Split(':')[0])];
    }

    [GeneratedRegex(@"```yaml\n(?<yaml>.*?)\n```(\n```text\n(?<answer>.*?)\n```)?", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Blocks();

    [GeneratedRegex(@"```yaml\n(?<yaml>.*?)\n```|!\[[^\]]*\]\(figures/(?<name>[^.)]+)\.svg( ""(?<shape>\w+)"")?\)", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex BlocksAndFigures();
}
