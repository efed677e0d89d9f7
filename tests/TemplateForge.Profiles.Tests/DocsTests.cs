using System.IO;
using System.Text;
using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>Every example in docs/profile-language.md is run; what it says comes out of it does.</summary>
public class DocsTests
{
    private const string Header =
        "profile: example\nversion: 1\ntitle: Example\nabout: An example.\nhand: either\nface_up: outer face\n";

    public static TheoryData<string, string> Examples()
    {
        var data = new TheoryData<string, string>();
        var blocks = File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "profile-language.md")).Split("\n```");
        for (var i = 0; i + 1 < blocks.Length; i++)
        {
            if (!blocks[i].StartsWith("yaml\n", StringComparison.Ordinal)) continue;
            var yaml = blocks[i]["yaml\n".Length..];
            // The closing fence of one block and the opening fence of the next stand on neighbouring lines.
            var answer = blocks[i + 1].Trim().Length == 0 && i + 2 < blocks.Length && blocks[i + 2].StartsWith("text\n", StringComparison.Ordinal)
                ? blocks[i + 2]["text\n".Length..]
                : "";
            data.Add(yaml, answer);
        }
        return data;
    }

    [Fact]
    public void The_page_has_examples() => Assert.True(Examples().Count >= 9);

    [Theory, MemberData(nameof(Examples))]
    public void An_example_gives_what_the_page_says(string yaml, string answer)
    {
        if (yaml.StartsWith("profile:", StringComparison.Ordinal))
        {
            TheLibrary.Read(new("my-plate.yaml", yaml)).Make();
            return;
        }
        var lines = answer.Trim().Split('\n');
        if (lines[0] == "complains")
        {
            Assert.Equal(lines[1..], Complaints(yaml));
            return;
        }
        var notes = TheLibrary.Read(Whole(yaml, lines.Select(l => l.Split(" gives ")[0]))).Make().Pieces[0].Notes;
        Assert.Equal(lines.Select(l => l.Split(" gives ")[1]), notes);
    }

    // The page leaves the heading and the pieces out, and counts lines from the example's own first one.
    private static TextFile Whole(string yaml, IEnumerable<string> asked)
    {
        var shape = yaml[yaml.IndexOf("shapes:\n", StringComparison.Ordinal)..].Split('\n')[1].Trim().TrimEnd(':');
        var text = new StringBuilder(yaml).Append('\n').Append(Header)
            .Append("pieces:\n  shown:\n    title: Shown\n    thickness: 1 mm\n    paper: ").Append(shape).Append('\n');
        var notes = asked.Where(a => a.Length > 0).ToList();
        if (notes.Count > 0) text.Append("    notes:\n");
        foreach (var note in notes) text.Append("      - \"{").Append(note).Append("}\"\n");
        return new("example.yaml", text.ToString());
    }

    private static IEnumerable<string> Complaints(string yaml)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(Whole(yaml, []), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        return complaints.Select(c => c.ToString().Split('\n')[0]);
    }
}
