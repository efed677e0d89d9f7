using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TemplateForge.Notation;

/// <summary>The text of a file, and where each of its characters stands.</summary>
internal sealed class SourceText
{
    private readonly string file;
    private readonly ImmutableArray<int> lineStarts;

    public SourceText(string file, string text)
    {
        (this.file, Text) = (file, text);
        lineStarts = Lines.Starts(text);
    }

    public string Text { get; }

    /// <summary>The place of the character at this index; of the last character where the index lies beyond the text.</summary>
    public Place At(int index)
    {
        index = Math.Clamp(index, 0, Math.Max(0, Text.Length - 1));
        if (index > 0 && Text[index] == '\n' && Text[index - 1] == '\r')
            index--; // one line end, which an editor shows as one
        var line = LineOf(index);
        return new(file, line + 1, index - lineStarts[line] + 1);
    }

    /// <summary>Index of the first character of the line, counted from 0, that a character stands in.</summary>
    public int LineStart(int index) => lineStarts[LineOf(index)];

    /// <summary>Whether a tab stands before what begins here, and nothing else but spaces.</summary>
    public bool IsIndentedByTab(ParsingEvent? start)
    {
        var index = Math.Min((int)(start?.Start.Index ?? 0), Text.Length);
        var indent = Text.AsSpan(LineStart(index)..index);
        return indent.Contains('\t') && indent.IndexOfAnyExcept(' ', '\t') < 0;
    }

    /// <summary>The value of a scalar, with the places of its characters found again in the file.</summary>
    /// <remarks>
    /// Every character but white space stands in the file in the same order, with quotes, backslashes, line ends and indents
    /// between. So each is looked for from the one before it on; white space lies in what is passed over.
    /// </remarks>
    public Writing WritingOf(Scalar scalar)
    {
        var end = Math.Min((int)scalar.End.Index, Text.Length);
        var raw = FirstCharacter(scalar, Math.Min((int)scalar.Start.Index, end), end);
        var first = raw;
        var expected = raw;
        var value = scalar.Value;
        var stretches = ImmutableArray.CreateBuilder<(int, Place)>();
        stretches.Add((0, At(raw)));
        for (var i = 0; i < value.Length; i++, expected++)
        {
            var found = char.IsWhiteSpace(value[i])
                ? (raw < end && char.IsWhiteSpace(Text[raw]) ? raw : -1)
                : (raw < end ? Text.IndexOf(value[i], raw, end - raw) : -1);
            var isWritten = found >= 0;
            if (!isWritten)
                found = Math.Max(first, raw - 1); // YAML made it: of an escape such as \x41, of an indented line end
            if (found != expected || (found > 0 && Text[found - 1] is '\n' or '\r'))
                stretches.Add((i, At(found)));
            expected = found;
            if (isWritten)
                raw = found + (value[i] == '\'' && scalar.Style == ScalarStyle.SingleQuoted ? 2 : 1); // ' is written twice
        }
        return new Writing(value, stretches.ToImmutable());
    }

    private int FirstCharacter(Scalar scalar, int start, int end)
    {
        if (scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted)
            return Math.Min(start + 1, end);
        if (scalar.Style is not (ScalarStyle.Literal or ScalarStyle.Folded))
            return start;
        var content = Text.IndexOf('\n', start, end - start);
        while (content >= 0 && content < end && char.IsWhiteSpace(Text[content]))
            content++;
        return content < 0 || content >= end ? start : content;
    }

    private int LineOf(int index)
    {
        var found = lineStarts.BinarySearch(index);
        return found >= 0 ? found : ~found - 1;
    }
}
