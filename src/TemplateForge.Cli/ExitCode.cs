namespace TemplateForge.Cli;

/// <summary>How a command ended.</summary>
public static class ExitCode
{
    public const int Done = 0;

    /// <summary>Something that was given is wrong, or the files could not be saved; what, and what would be right, was printed.</summary>
    public const int Refused = 1;

    /// <summary>The command was not understood.</summary>
    public const int NotUnderstood = 2;

    /// <summary>A fault of the program itself; sysexits' EX_SOFTWARE.</summary>
    public const int ProgramFailed = 70;

    /// <summary>Ctrl-C: 128 and the signal's number, as shells count.</summary>
    public const int Stopped = 130;
}
