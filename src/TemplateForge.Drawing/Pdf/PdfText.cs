using System.Buffers;
using System.Buffers.Text;
using System.Text;

namespace TemplateForge.Drawing;

/// <summary>The bytes of a PDF, or of a page's content, as they are written: words and numbers with a space or a line end after each.</summary>
internal sealed class PdfText
{
    /// <summary>Numbers have four decimals at most: in mm half of the last is 0.00005 mm.</summary>
    private const double Steps = 10_000;

    /// <summary>What is larger is written in full; a page is never that large.</summary>
    private const double Most = 1e12;

    private readonly ArrayBufferWriter<byte> bytes;

    /// <param name="expected">How many bytes there will be, more or less.</param>
    public PdfText(int expected) => bytes = new(expected);

    public ReadOnlySpan<byte> Bytes => bytes.WrittenSpan;
    public int Length => bytes.WrittenCount;

    public PdfText Put(ReadOnlySpan<byte> raw)
    {
        bytes.Write(raw);
        return this;
    }

    public PdfText Put(string ascii)
    {
        bytes.Advance(Encoding.ASCII.GetBytes(ascii, bytes.GetSpan(ascii.Length)));
        return this;
    }

    /// <summary>A byte of a string in round brackets.</summary>
    public PdfText PutCharacter(byte code)
    {
        if (code is (byte)'(' or (byte)')' or (byte)'\\') Put("\\"u8);
        return Put([code]);
    }

    public PdfText Put(IEnumerable<double> numbers)
    {
        foreach (var number in numbers) Put(number);
        return this;
    }

    /// <exception cref="ArgumentOutOfRangeException">It is not a number, or larger than any page.</exception>
    public PdfText Put(double number)
    {
        if (!(Math.Abs(number) < Most)) throw new ArgumentOutOfRangeException(nameof(number), number, "No page holds a point so far off.");
        var steps = (long)Math.Round(number * Steps);
        var span = bytes.GetSpan(32);
        var length = 0;
        if (steps < 0)
        {
            span[length++] = (byte)'-';
            steps = -steps;
        }
        var (whole, rest) = Math.DivRem(steps, (long)Steps);
        Utf8Formatter.TryFormat(whole, span[length..], out var digits);
        length += digits;
        if (rest > 0)
        {
            span[length++] = (byte)'.';
            for (var left = (int)rest; left > 0; left = left * 10 % (int)Steps) span[length++] = (byte)('0' + left / ((int)Steps / 10));
        }
        span[length++] = (byte)' ';
        bytes.Advance(length);
        return this;
    }
}
