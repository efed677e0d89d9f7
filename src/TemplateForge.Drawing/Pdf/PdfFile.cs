using System.Globalization;
using System.IO;
using System.IO.Compression;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>The objects of a PDF 1.4 and where each begins (ISO 32000-1, 7.5).</summary>
internal sealed class PdfFile
{
    private readonly PdfText text = new(expected: 256 * 1024);
    private readonly List<int> offsets = [];

    public PdfFile() => text.Put("%PDF-1.4\n%"u8).Put([0xE2, 0xE3, 0xCF, 0xD3]).Put("\n"u8); // bytes above 127: it is not plain text

    /// <summary>The number that the next object will have.</summary>
    public int Next => offsets.Count + 1;

    /// <summary>Adds the next object; they are numbered from 1.</summary>
    /// <returns>Its number.</returns>
    public int Add(string dictionary) => Add(new PdfText(dictionary.Length).Put(dictionary));

    /// <inheritdoc cref="Add(string)"/>
    public int Add(PdfText content)
    {
        Begin();
        text.Put(content.Bytes).Put("\nendobj\n"u8);
        return offsets.Count;
    }

    /// <summary>Adds the next object, a stream that is too short to be packed.</summary>
    /// <inheritdoc cref="Add(string)"/>
    public int AddStream(PdfText content) => AddStream("", content.Bytes);

    /// <summary>Adds the next object, a stream that is packed.</summary>
    /// <inheritdoc cref="Add(string)"/>
    public int AddPackedStream(PdfText content)
    {
        using var packed = new MemoryStream();
        using (var packing = new ZLibStream(packed, Packing, leaveOpen: true)) packing.Write(content.Bytes);
        return AddStream("/Filter /FlateDecode ", packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }

    /// <summary>Adds the table of offsets and ends the file. Nothing in it names a day or a machine.</summary>
    /// <param name="root">Number of the catalogue.</param>
    /// <param name="about">Number of what is said about the document.</param>
    public byte[] Ended(int root, int about)
    {
        var table = text.Length;
        text.Put(string.Create(CultureInfo.InvariantCulture, $"xref\n0 {offsets.Count + 1}\n0000000000 65535 f \n"));
        foreach (var offset in offsets) text.Put(string.Create(CultureInfo.InvariantCulture, $"{offset:D10} 00000 n \n"));
        text.Put(string.Create(CultureInfo.InvariantCulture,
            $"trailer\n<</Size {offsets.Count + 1}\n/Root {root} 0 R\n/Info {about} 0 R>>\nstartxref\n{table}\n%%EOF\n"));
        return text.Bytes.ToArray();
    }

    /// <summary>Words as a string object: UTF-16 in hexadecimal, whatever alphabet they are in.</summary>
    public static string Words(string words) => $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(words))}>";

    // The level at which packing takes no longer than drawing.
    private static ZLibCompressionOptions Packing => new() { CompressionLevel = 3 };

    private int AddStream(string how, ReadOnlySpan<byte> content)
    {
        Begin();
        text.Put(string.Create(CultureInfo.InvariantCulture, $"<<{how}/Length {content.Length}>> stream\n"));
        text.Put(content).Put("\nendstream\nendobj\n"u8);
        return offsets.Count;
    }

    private void Begin()
    {
        offsets.Add(text.Length);
        text.Put(string.Create(CultureInfo.InvariantCulture, $"{offsets.Count} 0 obj\n"));
    }
}
