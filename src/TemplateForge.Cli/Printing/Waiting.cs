using Spectre.Console;

namespace TemplateForge.Cli.Printing;

/// <summary>Says that the program is at work where a person waits.</summary>
internal static class Waiting
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Refreshed = TimeSpan.FromSeconds(0.2);

    /// <summary>Does the work; where it takes more than a second, a screen says what is being done.</summary>
    public static T For<T>(Func<T> work, string doing, Terminal terminal) => For(work, () => doing, terminal);

    /// <summary>The same where what is being done changes as it goes on.</summary>
    public static T For<T>(Func<T> work, Func<string> doing, Terminal terminal)
    {
        if (!terminal.ErrorsAreScreen) return work();
        var running = Task.Run(work);
        if (!HasEnded(running, Patience))
        {
            var console = AnsiConsole.Create(new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.Yes,
                Out = new WritingOnly(terminal.Errors, isScreen: true, terminal.Width),
            });
            console.Status().Start(Words(), status =>
            {
                while (!HasEnded(running, Refreshed)) status.Status(Words());
            });
        }
        return running.GetAwaiter().GetResult();

        string Words() => Wordings.Plain(doing()).EscapeMarkup();
    }

    // Whether it ended well or not is told by its result.
    private static bool HasEnded(Task running, TimeSpan within) => Task.WaitAny([running], within) == 0;
}
