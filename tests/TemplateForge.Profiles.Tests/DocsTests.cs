using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>Every example in docs/profile-language.md is run; what it says comes out of it does.</summary>
public class DocsTests
{
    public static TheoryData<string, string> Examples()
    {
        var data = new TheoryData<string, string>();
        foreach (var (yaml, answer) in TheLanguagePage.Examples()) data.Add(yaml, answer);
        return data;
    }

    [Fact]
    public void The_page_has_examples() => Assert.True(Examples().Count >= 20);

    [Theory, MemberData(nameof(Examples))]
    public void An_example_gives_what_the_page_says(string yaml, string answer)
    {
        var lines = answer.Trim().Split('\n');
        if (lines[0] == "complains")
        {
            Assert.Equal(lines[1..], Complaints(yaml));
            return;
        }
        if (lines[0] == "warns")
        {
            Assert.Equal(lines[1..], TheLibrary.Read(TheLanguagePage.Whole(yaml, [])).Make().Pieces[0].Warnings.Select(w => $"{w.Rule}: {w.Text}"));
            return;
        }
        var made = TheLibrary.Read(TheLanguagePage.Whole(yaml, lines.Select(l => l.Split(" gives ")[0]))).Make();
        if (answer.Length == 0) return;
        Assert.Equal(lines.Select(l => l.Split(" gives ")[1]), made.Pieces[0].Notes);
    }

    private static IEnumerable<string> Complaints(string yaml)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(TheLanguagePage.Whole(yaml, []), TheLibrary.Shop, complaints, out var profile))
            profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        return complaints.Select(c => c.ToString().Split('\n')[0]);
    }
}
