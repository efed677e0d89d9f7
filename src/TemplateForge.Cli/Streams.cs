using System.IO;
using System.Text;

namespace TemplateForge.Cli;

/// <summary>The output and the errors of this process as writers that tell a failure to print from all others.</summary>
internal static class Streams
{
    public static TextWriter Output() => Writer(Console.OpenStandardOutput());

    public static TextWriter Errors() => Writer(Console.OpenStandardError());

    private static StreamWriter Writer(Stream stream)
    {
        var encoding = Console.OutputEncoding;
        // UTF-8 without the mark that some give it: a byte order has no meaning on a screen.
        if (encoding.Preamble.Length > 0) encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new(new Told(stream), encoding) { AutoFlush = true };
    }

    private sealed class Told(Stream inner) : Stream
    {
        public override bool CanRead => false;
        public override bool CanSeek => false;
        public override bool CanWrite => true;
        public override long Length => throw new NotSupportedException();
        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override void Flush() => Try(inner.Flush);

        public override void Write(byte[] buffer, int offset, int count) => Try(() => inner.Write(buffer, offset, count));

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        private static void Try(Action write)
        {
            try
            {
                write();
            }
            catch (IOException trouble)
            {
                throw new NotPrintedException(trouble);
            }
        }
    }
}

/// <summary>What a command has to say could not be written to its output or its errors.</summary>
public sealed class NotPrintedException(IOException trouble) : IOException(trouble.Message, trouble);
