using System.IO;

namespace TemplateForge.Cli;

/// <summary>Where a command prints, and where it stands.</summary>
public sealed record Terminal
{
    /// <summary>Wide enough that no table wraps: a file or another program has no edge.</summary>
    private const int NoEdge = 4000;

    // The kind of the terminal, and what terminfo calls one that knows no codes at all.
    private const string Kind = "TERM";
    private const string Dumb = "dumb";

    public required TextWriter Output { get; init; }
    public required TextWriter Errors { get; init; }

    /// <summary>The folder that relative names begin in.</summary>
    public required string CurrentFolder { get; init; }

    /// <summary>The folder with the profiles and the shop's tables.</summary>
    public required string LibraryFolder { get; init; }

    /// <summary>Today, where the command stands.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Whether a person looks at the output; otherwise it goes to a file or another program.</summary>
    public bool OutputIsScreen { get; init; }

    /// <summary>Whether a person looks at the errors, on a screen where a line can be written over.</summary>
    public bool ErrorsAreScreen { get; init; }
    public bool HasColour { get; init; }

    /// <summary>Characters on a line of the output.</summary>
    public int Width { get; init; } = NoEdge;

    public static Terminal OfThisProcess()
    {
        var isDumb = Environment.GetEnvironmentVariable(Kind) == Dumb;
        // At the first question .NET's console sends a terminal what readies it for keys, ESC [ ? 1 h ESC =, which nobody presses here;
        // to one that knows no codes it sends none.
        Environment.SetEnvironmentVariable(Kind, Dumb);
        var outputIsScreen = !Console.IsOutputRedirected;
        return new()
        {
            Output = Streams.Output(),
            Errors = Streams.Errors(),
            CurrentFolder = Directory.GetCurrentDirectory(),
            Today = DateOnly.FromDateTime(DateTime.Now),
            LibraryFolder = System.IO.Path.Combine(AppContext.BaseDirectory, "profiles"),
            OutputIsScreen = outputIsScreen,
            ErrorsAreScreen = !Console.IsErrorRedirected && !isDumb,
            // https://no-color.org: set and not empty means none.
            HasColour = outputIsScreen && !isDumb && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")),
            Width = outputIsScreen ? ScreenWidth() : NoEdge,
        };
    }

    /// <summary>A name that was given, as a whole path.</summary>
    public string PathOf(string given) => given.Length == 0 ? given : System.IO.Path.Combine(CurrentFolder, given);

    private static int ScreenWidth()
    {
        const int least = 60;
        try
        {
            return Math.Max(least, Console.WindowWidth - 1);
        }
        catch (IOException)
        {
            return NoEdge;
        }
    }
}
