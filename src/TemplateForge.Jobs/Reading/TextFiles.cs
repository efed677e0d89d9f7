using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Text;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Reads a text that somebody named on the command line.</summary>
public static class TextFiles
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads a file as UTF-8.</summary>
    /// <param name="path">The file.</param>
    /// <param name="longest">The most bytes that it may have.</param>
    /// <param name="place">Where somebody named the file; complaints that it cannot be read point there.</param>
    /// <param name="complaints">Where they go.</param>
    /// <param name="file">The text, under the name that was given.</param>
    public static bool TryRead(string path, int longest, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out TextFile file)
    {
        file = null;
        if (!TryReadBytes(path, longest, place, complaints, out var bytes)) return false;
        if (!TryDecode(bytes, out var text))
        {
            complaints.Add(Wordings.NotText(place, path));
            return false;
        }
        file = new(path, text);
        return true;
    }

    /// <summary>Reads a file as it is.</summary>
    /// <inheritdoc cref="TryRead"/>
    public static bool TryReadBytes(string path, int longest, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out byte[] bytes)
    {
        bytes = null;
        try
        {
            if (Directory.Exists(path)) return Refuse(Wordings.IsAFolder(place, path));
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
            return TryReadAll(stream, longest, out bytes) || Refuse(Wordings.FileTooLong(place, path, longest));
        }
        catch (Exception trouble) when (trouble is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(Wordings.NoSuchFile(place, path));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return Refuse(Wordings.CannotRead(place, path, trouble));
        }

        bool Refuse(Complaint complaint)
        {
            complaints.Add(complaint);
            return false;
        }
    }

    internal static bool TryDecode(byte[] bytes, [MaybeNullWhen(false)] out string text)
    {
        try
        {
            var mark = bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble) ? Encoding.UTF8.Preamble.Length : 0;
            text = Strict.GetString(bytes, mark, bytes.Length - mark);
            return true;
        }
        catch (DecoderFallbackException)
        {
            text = null;
            return false;
        }
    }

    // By hand and with a limit, because a device or a pipe has no length to ask for.
    private static bool TryReadAll(FileStream stream, int longest, out byte[] bytes)
    {
        using var all = new MemoryStream();
        var part = new byte[64 * 1024];
        int count;
        while ((count = stream.Read(part)) > 0 && all.Length <= longest) all.Write(part, 0, count);
        bytes = all.ToArray();
        return bytes.Length <= longest;
    }
}
