using System.Collections.Immutable;

namespace TemplateForge.Drawing;

/// <summary>Text that is too long for one line.</summary>
public static class Paragraph
{
    /// <summary>The text in lines that are at most so wide, broken between words; a word too long for a line is broken itself.</summary>
    /// <param name="text">Line feeds in it begin a new line; blanks in a row count as one.</param>
    /// <param name="height">Height of the capitals in mm, more than 0.</param>
    /// <param name="width">Width of the lines in mm, more than 0. A line has at least one character, however wide that is.</param>
    /// <exception cref="ArgumentOutOfRangeException">The height or width is not more than 0.</exception>
    public static ImmutableArray<string> Wrapped(string text, double height, double width)
    {
        if (!(height > 0)) throw new ArgumentOutOfRangeException(nameof(height), height, "Lettering has a height.");
        if (!(width > 0)) throw new ArgumentOutOfRangeException(nameof(width), width, "Lines have a width.");
        return [.. text.ReplaceLineEndings("\n").Split('\n').SelectMany(line => WrappedLine(line, height, width))];
    }

    private static List<string> WrappedLine(string text, double height, double width)
    {
        var (lines, line) = (new List<string>(), "");
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (Fits(longer))
            {
                line = longer;
                continue;
            }
            if (line.Length > 0) lines.Add(line);
            line = word;
            while (!Fits(line))
            {
                var taken = line.Length - 1;
                while (taken > 1 && !Fits(line[..taken])) taken--;
                if (taken < 1) break;
                lines.Add(line[..taken]);
                line = line[taken..];
            }
        }
        lines.Add(line);
        return lines;

        bool Fits(string s) => Alphabet.Width(s, height) <= width;
    }
}
