using System.Collections.Immutable;
using System.Diagnostics;
using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>Nothing that somebody's hand or disk does to a profile ends the program, and every complaint says where.</summary>
public class MutilatedProfilesTests
{
    // The examples of the page use every word; each profile that ships is longer than ten of them, and all of them have an eighth of the turns.
    private static readonly ImmutableArray<TextFile> Examples = [.. TheLanguagePage.Examples().Select(e => TheLanguagePage.Whole(e.Yaml, []))];
    private static readonly ImmutableArray<TextFile> Shipped = [.. TheLibrary.Library.Entries.Select(e => e.File)];

    [Fact]
    public void Ten_thousand_mutilated_profiles_are_refused_with_places_or_made()
    {
        var random = new Random(20261125);
        var refused = 0;
        for (var i = 0; i < 10_000; i++)
        {
            var file = i % 8 == 0 ? Shipped[i / 8 % Shipped.Length] : Examples[(i - i / 8) % Examples.Length];
            refused += IsMade(file with { Text = Mutilated(file.Text, random) }) ? 0 : 1;
        }
        Assert.InRange(refused, 5_000, 9_900);
    }

    private static bool IsMade(TextFile file)
    {
        var complaints = new List<Complaint>();
        var clock = Stopwatch.StartNew();
        var sound = Profile.TryRead(file, TheLibrary.Shop, complaints, out var profile)
            && profile.TryMake([], profile.Hand, profile.Hand, complaints, out _);
        Assert.True(clock.Elapsed.TotalSeconds < 5, $"{clock.Elapsed} for\n{file.Text}");
        Assert.NotEqual(sound, complaints.Count > 0);
        var lines = file.Text.Split('\n');
        Assert.All(complaints, c => Assert.True(
            c.File == file.Name && c.Line >= 1 && c.Line <= lines.Length && c.Column >= 1 && c.Column <= lines[c.Line - 1].Length + 1
            && c.Problem.Length > 0 && c.Remedy.Length > 0, $"{c}\n{file.Text}"));
        return sound;
    }

    private static string Mutilated(string text, Random random)
    {
        var lines = text.Split('\n').ToList();
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            var at = random.Next(lines.Count);
            switch (random.Next(6))
            {
                case 0: lines.RemoveAt(at); break;
                case 1: lines.Insert(at, lines[random.Next(lines.Count)]); break;
                case 2 when lines[at].Length > 0: lines[at] = lines[at].Remove(random.Next(lines[at].Length), 1); break;
                case 3: lines[at] = lines[at].Insert(random.Next(lines[at].Length + 1), "{}[]:,*&!-+/^() 0123abc".Substring(random.Next(23), 1)); break;
                case 4: lines[at] = lines[at].Replace("mm", "deg", StringComparison.Ordinal); break;
                default: (lines[at], lines[^1]) = (lines[^1], lines[at]); break;
            }
        }
        return string.Join('\n', lines);
    }
}
