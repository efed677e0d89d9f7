using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>A group code and its value, as a DXF is made of, and the line on which the value stands.</summary>
internal readonly record struct DxfPair(int Code, string Value, int Line)
{
    /// <summary>The code of a comment.</summary>
    public const int Comment = 999;

    private const string SaveAsText = "Save it again as a DXF in text form, R2000 or later.";
    private static readonly byte[] BinaryMark = [13, 10, 26, 0];

    /// <summary>All pairs of a file, up to its end, its comments among them.</summary>
    public static bool TryReadAll(ReadOnlySpan<byte> file, out ImmutableArray<DxfPair> pairs, out DxfFault fault)
    {
        pairs = [];
        fault = new(1, "", "");
        if (file.Length > 22 && file[18..22].SequenceEqual(BinaryMark))
        {
            fault = new(1, "This is a DXF in binary form.", SaveAsText);
            return false;
        }
        var found = ImmutableArray.CreateBuilder<DxfPair>();
        var lines = Decoded(file).ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i + 1 < lines.Length; i += 2)
        {
            if (!int.TryParse(lines[i].AsSpan().Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var code))
            {
                if (lines[i].AsSpan().Trim().IsEmpty && lines.AsSpan(i).IndexOfAnyExcept("", " ") < 0) break;
                fault = new(i + 1, $"A group code was expected here, a whole number; “{Short(lines[i])}” was found.", found.Count == 0 ? "This is no DXF. " + SaveAsText : "The file is damaged here. " + SaveAsText);
                return false;
            }
            found.Add(new(code, lines[i + 1].Trim(), i + 2));
            if (code == 0 && found[^1].Value == "EOF") break;
        }
        pairs = found.ToImmutable();
        if (!pairs.IsEmpty && pairs.Any(p => p is { Code: 0, Value: "SECTION" })) return true;
        fault = new(1, "The file has no section of a DXF.", SaveAsText);
        return false;
    }

    // Since R2007 files are UTF-8; older ones have a code page, and of those that matters only in names of layers.
    private static string Decoded(ReadOnlySpan<byte> file)
    {
        try
        {
            return new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(file).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(file);
        }
    }

    private static string Short(string text) => text.Length <= 30 ? text.Trim() : text[..30].Trim() + "…";
}
