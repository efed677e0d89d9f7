using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

/// <summary>Nothing that somebody's hand or disk does to a table ends the program, and every complaint says where.</summary>
public class MutilatedTablesTests
{
    [Fact]
    public void Two_thousand_mutilated_tables_are_refused_with_places_or_read()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 2_000; i++)
        {
            var one = random.Next(Shipped.Files.Length);
            var text = Mutilated(Shipped.Files[one].Text, random);
            var complaints = new List<Complaint>();
            var mutilated = Shipped.Files[one] with { Text = text };
            // In the place of the table that ships, or over it as a shop's own.
            var files = i % 2 == 0 ? Shipped.Files.SetItem(one, mutilated) : Shipped.Files.Add(mutilated with { Name = $"ours/{Shipped.Files[one].Name}" });
            var sound = ShopReader.TryRead(files, complaints, out _);
            Assert.NotEqual(sound, complaints.Count > 0);
            Assert.All(complaints, c => Assert.True(c.Line >= 1 && c.Column >= 1 && c.Problem.Length > 0, $"{c}"));
        }
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
