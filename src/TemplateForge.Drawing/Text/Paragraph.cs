using System.Collections.Immutable;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>Text that is too long for one line.</summary>
public static class Paragraph
{
    /// <summary>A width that is summed up word by word differs by less, in mm, from that of the line: so near to the limit the line is measured.</summary>
    private const double Rounding = 1e-9;

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
        var (lines, line, length) = (new List<string>(), new StringBuilder(), 0.0);
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var wide = Alphabet.Width(word, height);
            var longer = line.Length == 0 ? wide : length + Alphabet.BetweenWords(height) + wide;
            if (longer < width - Rounding || (longer < width + Rounding && Fits(line.Length == 0 ? word : $"{line} {word}")))
            {
                line.Append(line.Length == 0 ? "" : " ").Append(word);
                length = longer;
                continue;
            }
            if (line.Length > 0) lines.Add(line.ToString());
            var left = word;
            while (!Fits(left))
            {
                var taken = left.Length - 1;
                while (taken > 1 && !Fits(left[..taken])) taken--;
                if (taken < 1) break;
                lines.Add(left[..taken]);
                left = left[taken..];
            }
            line.Clear().Append(left);
            length = Alphabet.Width(left, height);
        }
        lines.Add(line.ToString());
        return lines;

        bool Fits(string s) => Alphabet.Width(s, height) <= width;
    }
}
