using System.Collections.Immutable;
using System.Diagnostics;
using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>Nothing that somebody's hand or disk does to a table ends the program, and every complaint says where.</summary>
public class MutilatedTablesTests
{
    // What a shop cannot do without, as short as can be: the time goes into the table that is mutilated.
    private static readonly ImmutableArray<TextFile> Bare =
    [
        new("shop/papers.yaml", "papers:\n  a4: {width: 210 mm, height: 297 mm, margin: 8 mm}\n"),
        new("shop/cautions.yaml", "cautions: {}\n"),
        new("shop/habits.yaml", "shop: Copperbeck Works\npaper: a4\noverlap: 12 mm\n"),
    ];

    [Fact]
    public void Ten_thousand_mutilated_tables_are_refused_with_places_or_read()
    {
        var random = new Random(20261125);
        var refused = 0;
        for (var i = 0; i < 10_000; i++)
        {
            var table = Shipped.Files[i % Shipped.Files.Length];
            var sound = table with { Text = SomeEntries(table.Text, random) };
            var mutilated = table with { Text = Mutilated(sound.Text, random) };
            var others = Bare.RemoveAll(f => f.Name == table.Name);
            // In the place of the table that ships, or over it as a shop's own.
            refused += IsRead(random.Next(4) > 0 ? [.. others, mutilated] : [.. others, sound, mutilated with { Name = $"ours/{table.Name}" }]) ? 0 : 1;
        }
        Assert.InRange(refused, 5_000, 9_000);
    }

    private static bool IsRead(ImmutableArray<TextFile> files)
    {
        var complaints = new List<Complaint>();
        var clock = Stopwatch.StartNew();
        var sound = ShopReader.TryRead(files, complaints, out _);
        Assert.True(clock.ElapsedMilliseconds < 2000, $"{clock.Elapsed} for\n{files[^1].Text}");
        Assert.NotEqual(sound, complaints.Count > 0);
        Assert.All(complaints, c =>
        {
            var lines = files.Single(f => f.Name == c.File).Text.Split('\n');
            Assert.True(c.Line >= 1 && c.Line <= lines.Length && c.Column >= 1 && c.Column <= lines[c.Line - 1].Length + 1, $"{c}\n{files[^1].Text}");
            Assert.True(c.Problem.Length > 0 && c.Remedy.Length > 0, $"{c}");
        });
        return sound;
    }

    // Of a long table some entries only, another few each time: the usual paper must stay, so papers are short enough.
    private static string SomeEntries(string text, Random random)
    {
        var kept = true;
        var share = text.Length < 700 ? 1 : 350.0 / text.Length;
        return string.Join('\n', text.Split('\n').Where(line =>
        {
            if (line.StartsWith('#')) return false;
            if (!line.StartsWith("    ", StringComparison.Ordinal)) kept = !line.StartsWith("  ", StringComparison.Ordinal) || random.NextDouble() < share;
            return kept;
        }));
    }

    private static string Mutilated(string text, Random random)
    {
        var at = random.Next(text.Length);
        return random.Next(4) switch
        {
            0 => text.Remove(at, 1),
            1 => text.Insert(at, "{}[]:,*&!-# 0123abc\n".Substring(random.Next(20), 1)),
            2 => text.Remove(at, Math.Min(random.Next(1, 200), text.Length - at)),
            _ => text.Insert(random.Next(text.Length), text.Substring(at, Math.Min(random.Next(1, 60), text.Length - at))),
        };
    }
}
