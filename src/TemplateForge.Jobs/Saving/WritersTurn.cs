using System.IO;

namespace TemplateForge.Jobs;

/// <summary>Keeps two runs from writing to one place at once. It ends with the run, however the run ends.</summary>
internal sealed class WritersTurn : IDisposable
{
    private readonly FileStream held;

    private WritersTurn(FileStream held) => this.held = held;

    /// <exception cref="WritersTurnException">Another run has its turn.</exception>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static WritersTurn Take(SpotOnDisk spot)
    {
        try
        {
            return new(new(spot.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0, FileOptions.DeleteOnClose));
        }
        catch (IOException trouble) when (IsTaken(trouble))
        {
            throw new WritersTurnException(trouble);
        }
    }

    public void Dispose() => held.Dispose();

    // Windows' sharing violation; EWOULDBLOCK of Linux and of macOS.
    private static bool IsTaken(IOException trouble) => trouble.HResult is unchecked((int)0x80070020) or 11 or 35;
}

/// <summary>Another run is writing to the same place.</summary>
internal sealed class WritersTurnException(Exception inner) : Exception(inner.Message, inner);
