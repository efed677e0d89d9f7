using System.IO;
using System.Text;
using Spectre.Console;

namespace TemplateForge.Cli.Printing;

/// <summary>Where tables and colours are written; what kind of place that is has been found out before.</summary>
/// <param name="writer">Where.</param>
/// <param name="isScreen">Whether a person looks at it.</param>
/// <param name="width">Characters on a line.</param>
internal sealed class WritingOnly(TextWriter writer, bool isScreen, int width) : IAnsiConsoleOutput
{
    public TextWriter Writer => writer;
    public bool IsTerminal => isScreen;
    public int Width => width;
    public int Height => 25;

    public void SetEncoding(Encoding encoding)
    {
        // Its writer has one.
    }
}
