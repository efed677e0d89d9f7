using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A text that knows where each of its characters was written.</summary>
/// <remarks>
/// A value in a file is not always what stands there letter by letter: quotes fall away, folded lines are joined. The text is
/// therefore remembered in stretches, each with the place of its first character; within a stretch places run to the right.
/// </remarks>
public sealed class Writing
{
    private readonly ImmutableArray<(int Offset, Place Place)> stretches;

    /// <summary>A text that stands as it is from <paramref name="start"/> on; its lines begin in column 1.</summary>
    public Writing(string text, Place start)
    {
        ArgumentNullException.ThrowIfNull(text);
        var others = Lines.Starts(text).Skip(1).Select((offset, i) => (offset, new Place(start.File, start.Line + i + 1, 1)));
        (Text, stretches) = (text, [(0, start), .. others]);
    }

    internal Writing(string text, ImmutableArray<(int Offset, Place Place)> stretches) =>
        (Text, this.stretches) = (text, stretches);

    public string Text { get; }

    /// <summary>The place of the character at this offset; of the last character where the offset lies beyond the text.</summary>
    public Place At(int offset)
    {
        offset = Math.Clamp(offset, 0, Math.Max(0, Text.Length - 1));
        var i = stretches.Length - 1;
        while (i > 0 && stretches[i].Offset > offset)
            i--;
        return stretches[i].Place.Right(offset - stretches[i].Offset);
    }

    /// <summary>The characters from one offset to just before another, each still with its place.</summary>
    public Writing Part(int start, int end)
    {
        var inside = stretches.Where(stretch => stretch.Offset > start && stretch.Offset < end)
            .Select(stretch => (stretch.Offset - start, stretch.Place));
        return new(Text[start..end], [(0, At(start)), .. inside]);
    }
}
