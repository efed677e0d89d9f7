using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>Where the lines of a text begin; a line ends with \n, \r\n or \r, as editors count them.</summary>
internal static class Lines
{
    /// <summary>The offset of the first character of every line, of which there is one at least.</summary>
    public static ImmutableArray<int> Starts(string text)
    {
        var starts = ImmutableArray.CreateBuilder<int>();
        starts.Add(0);
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
                starts.Add(i + 1);
        }
        return starts.ToImmutable();
    }
}
