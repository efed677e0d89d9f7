using System.Diagnostics;

namespace TemplateForge.Notation.Tests;

/// <summary>Right texts with random damage: no exception, no delay, and every complaint stands inside the text.</summary>
public class MutatedTextTests
{
    private const string Alphabet = "ab1 .:,-+*/^()[]{}<>=\"'&*!|>?%@`#~\\\t\n\r_°²½é\u00A0\uFEFF\uD83D\uDE00\0";

    private static readonly string[] Files =
    [
        "name: notch\nparameters:\n  - name: diameter\n    default: 190 mm\n    range: [20, 320]\n  - {name: tilt, default: 8 deg}\n",
        "rule: >\n  diameter + 2 * clearance\n  < panel_depth\nsay: \"Only {a - b} left: \\u00e9\"\nnote: |\n  one\n\n   two\n",
        "? a\n: b\nc: &d e\nf: *d\ng: !h i\n---\nj: 'k''l'\n...\n%YAML 1.2\n",
    ];

    private static readonly string[] Expressions =
    [
        "if process is mig and diameter/2 > 1 3/8 in then sqrt(clearance^2 + 4 mm²) else hypot(diameter, 18 ga steel)",
        "min(distance(opening, edge), top(opening)) * sin(tilt + 30 deg) - round(2.5 mm, 1/2 in)",
        "not (lapped or 0 < diameter ≤ 190 mm) and outline is not rounded-rectangle",
        "2^-3^2 * -(count - 1e3) / (0.5 + pi) = atan2(1, 2) / 1 rad",
    ];

    private static readonly string[] Values = ["1 3/8 in", "18 ga us-standard", "-1.5e2 mm", "30 deg", "1/2\"", "8°", "12 mm²"];

    [Fact]
    public void Damaged_files_are_answered_with_complaints_inside_them()
    {
        var refused = Answered(Files, 5000, (text, complaints) =>
        {
            var isRead = YamlReader.TryRead("a.yaml", text, complaints, out var root);
            if (isRead)
                Visit(root, text);
            return isRead;
        }, new Place("a.yaml", 1, 1));
        Assert.InRange(refused, 1000, 4999);
    }

    [Fact]
    public void Damaged_expressions_are_answered_with_complaints_inside_them()
    {
        var refused = Answered(Expressions, 5000, (text, complaints) =>
            Expression.TryRead(text, Heard.Start, complaints, out var expression)
            && expression.TryCheck(new Bench(), complaints, out _)
            && expression.TryEvaluate(new Bench(), complaints, out _), Heard.Start);
        Assert.InRange(refused, 1000, 4999);
    }

    [Fact]
    public void Damaged_values_are_answered_with_complaints_inside_them()
    {
        var refused = Answered(Values, 5000, (text, complaints) =>
            QuantityReader.TryRead(text, Unit.Millimetre, Heard.Start, complaints, out _), Heard.Start);
        Assert.InRange(refused, 1000, 4999);
    }

    [Fact]
    public void Damaged_sentences_are_answered_with_complaints_inside_them()
    {
        var refused = Answered(["Only {diameter - top(opening)} of {{it}} is left, {process}", .. Expressions.Select(text => "{" + text + "}")], 5000,
            (text, complaints) => FilledText.TryRead(text, Heard.Start, complaints, out var filled)
                && filled.TryCheck(new Bench(), complaints)
                && filled.TryFill(new Bench(), complaints, out _), Heard.Start);
        Assert.InRange(refused, 1000, 4999);
    }

    private static int Answered(string[] rights, int times, Func<string, ICollection<Complaint>, bool> read, Place start)
    {
        var random = new Random(31);
        var refused = 0;
        for (var i = 0; i < times; i++)
        {
            var text = Damaged(random, rights);
            var complaints = new List<Complaint>();
            var clock = Stopwatch.StartNew();
            var isRead = read(text, complaints);
            Assert.True(clock.ElapsedMilliseconds < 2000, $"{clock.Elapsed} for {text}");
            Assert.Equal(isRead, complaints.Count == 0);
            Heard.IsInside(text, start, complaints);
            refused += isRead ? 0 : 1;
        }
        return refused;
    }

    private static string Damaged(Random random, string[] rights)
    {
        var text = rights[random.Next(rights.Length)];
        for (var i = random.Next(1, 6); i > 0 && text.Length > 0; i--)
        {
            var at = random.Next(text.Length);
            var end = Math.Min(text.Length, at + random.Next(1, 8));
            var other = rights[random.Next(rights.Length)];
            text = random.Next(6) switch
            {
                0 => text.Remove(at, 1),
                1 => text.Insert(at, Alphabet[random.Next(Alphabet.Length)].ToString()),
                2 => text[..at] + Alphabet[random.Next(Alphabet.Length)] + text[(at + 1)..],
                3 => text[..at] + text[end..],
                4 => text.Insert(at, text[at..end]),
                _ => text.Insert(at, other[random.Next(other.Length)..][..1]),
            };
        }
        return text;
    }

    private static void Visit(Node node, string text)
    {
        Heard.IsInside(text, new Place("a.yaml", 1, 1), [node.Place.Complain("Here.", "Nothing.")]);
        switch (node)
        {
            case ScalarNode scalar:
                for (var i = 0; i < scalar.Text.Length; i++)
                    Heard.IsInside(text, new Place("a.yaml", 1, 1), [scalar.Writing.At(i).Complain("Here.", "Nothing.")]);
                break;
            case SequenceNode list:
                foreach (var item in list.Items)
                    Visit(item, text);
                break;
            case MappingNode group:
                foreach (var (key, value) in group.Entries)
                {
                    Visit(key, text);
                    Visit(value, text);
                }
                break;
        }
    }
}
