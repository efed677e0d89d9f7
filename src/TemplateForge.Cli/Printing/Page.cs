using System.IO;
using System.Text;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace TemplateForge.Cli.Printing;

/// <summary>Prints tables and lines: with frames and colour on a screen, plain where another program reads.</summary>
internal sealed class Page
{
    private readonly StringBuilder written = new();
    private readonly TextWriter output;
    private readonly IAnsiConsole console;
    private readonly bool isScreen;

    public Page(Terminal terminal)
    {
        (output, isScreen) = (terminal.Output, terminal.OutputIsScreen);
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new WritingOnly(new StringWriter(written), isScreen: false, terminal.Width),
            Ansi = terminal.HasColour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = terminal.HasColour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Width = terminal.Width;
        console.Profile.Capabilities.Unicode = true;
    }

    public static Style Loud => new(Color.White, Color.Red, Decoration.Bold);
    public static Style Strong => new(decoration: Decoration.Bold);

    public void Line(string text = "", Style? style = null) => Put(new Text(Wordings.Plain(text) + "\n", style));

    /// <summary>A table; a heading that begins with a space stands over numbers.</summary>
    public void Table(IReadOnlyList<string> headings, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = isScreen ? TableBorder.Rounded : TableBorder.None, UseSafeBorder = true };
        foreach (var heading in headings)
        {
            var column = new TableColumn(new Text(heading.Trim(), Strong));
            column.Padding = new Padding(left: isScreen ? 1 : 0, top: 0, right: isScreen ? 1 : 2, bottom: 0);
            if (heading[0] == ' ') column.Alignment = Justify.Right;
            table.AddColumn(column);
        }
        foreach (var row in rows) table.AddRow(row.Select(cell => new Text(Wordings.Plain(cell))));
        Put(table);
    }

    // Tables fill their last column with spaces, which nobody wants in a file.
    private void Put(IRenderable what)
    {
        written.Clear();
        console.Write(what);
        output.Write(string.Join('\n', written.ToString().Split('\n').Select(line => line.TrimEnd(' '))));
    }
}
