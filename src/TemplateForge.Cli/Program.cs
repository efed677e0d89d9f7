using System.Runtime.InteropServices;
using TemplateForge.Cli.Commands;
using TemplateForge.Cli.Printing;

namespace TemplateForge.Cli;

/// <summary>Starts a command and says how it ended.</summary>
public static class Program
{
    public static int Main(string[] args)
    {
        using var stop = new CancellationTokenSource();
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        return Run(args, Terminal.OfThisProcess(), stop.Token);

        // The first signal lets the work end cleanly; a second one ends it at once.
        void Stop(PosixSignalContext signal)
        {
            signal.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        }
    }

    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="terminal">Where it prints.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(string[] args, Terminal terminal, CancellationToken cancellation)
    {
        try
        {
            return CommandTree.Run(args, terminal, cancellation);
        }
        catch (NotPrintedException trouble)
        {
            return NotPrinted(trouble, terminal);
        }
        catch (OperationCanceledException)
        {
            terminal.Errors.WriteLine("Stopped. Nothing was saved.");
            return ExitCode.Stopped;
        }
        catch (Exception trouble) when (trouble is not OutOfMemoryException)
        {
            var what = Wordings.Plain($"{trouble.GetType().Name}: {trouble.Message}");
            terminal.Errors.WriteLine($"The program failed where it should not have, and nothing was saved: {what}");
            return ExitCode.ProgramFailed;
        }
    }

    private static int NotPrinted(NotPrintedException trouble, Terminal terminal)
    {
        try
        {
            ComplaintPrinter.Print([Wordings.NotPrinted(CommandLine.Start, trouble)], terminal);
        }
        catch (NotPrintedException)
        {
            // There is nowhere to say it; the exit code does.
        }
        return ExitCode.Refused;
    }
}
