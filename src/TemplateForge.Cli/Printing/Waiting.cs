using Spectre.Console;

namespace TemplateForge.Cli.Printing;

/// <summary>Says that the program is at work where a person waits.</summary>
internal static class Waiting
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    /// <summary>Does the work; where it takes more than a second, a screen says what is being done.</summary>
    public static T For<T>(Func<T> work, string doing, Terminal terminal)
    {
        if (!terminal.ErrorsAreScreen) return work();
        var running = Task.Run(work);
        if (!HasEnded(running, Patience))
        {
            var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(terminal.Errors) });
            console.Status().Start(Wordings.Plain(doing).EscapeMarkup(), _ => HasEnded(running, Timeout.InfiniteTimeSpan));
        }
        return running.GetAwaiter().GetResult();
    }

    // Whether it ended well or not is told by its result.
    private static bool HasEnded(Task running, TimeSpan within) => Task.WaitAny([running], within) == 0;
}
