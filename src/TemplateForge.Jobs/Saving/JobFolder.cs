using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Saves a job's files as a folder of their own: all of them or none.</summary>
/// <remarks>
/// <code>
/// 1. Turn:   one run at a time writes to one place; what a run that was killed left there is cleared or put back.
/// 2. Look:   nothing there, or a job of ours that may be replaced; anything else is refused and stays as it is.
/// 3. Build:  every file goes into a folder beside the place, and on to the disk.
/// 4. Swap:   the old folder moves aside, the new one into its place; then the old one goes.
/// </code>
/// Whatever happens before the swap, the place is as it was; whatever happens in it, the next run puts right.
/// </remarks>
public static class JobFolder
{
    /// <summary>Saves the files in a folder.</summary>
    /// <param name="folder">The folder, which need not be there yet, nor those that it lies in.</param>
    /// <param name="files">What it is to hold, a job record among them.</param>
    /// <param name="replace">Whether another job in its place may go.</param>
    /// <param name="place">Where somebody said which folder; complaints point there.</param>
    /// <param name="complaints">Where the reason goes if nothing is saved.</param>
    /// <param name="cancellation">Stops before the swap; the place is then as it was.</param>
    /// <exception cref="ArgumentException">There is no job record among the files, or two have one name.</exception>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static bool TrySave(
        string folder,
        ImmutableArray<NamedBytes> files,
        bool replace,
        Place place,
        ICollection<Complaint> complaints,
        CancellationToken cancellation)
    {
        if (!files.Any(IsRecord)) throw new ArgumentException("A job's folder holds its record.", nameof(files));
        if (files.DistinctBy(f => f.Name, StringComparer.Ordinal).Count() != files.Length)
            throw new ArgumentException("Two files have one name.", nameof(files));

        var madeParents = new List<string>();
        var isSaved = false;
        try
        {
            if (!SpotOnDisk.TryFind(folder, place, complaints, out var spot)) return false;
            MakeFolders(spot.Parent, madeParents);
            using var turn = WritersTurn.Take(spot);
            Leftovers.PutRight(spot);
            if (!HeldFolder.MayBecome(spot, files, replace, place, complaints)) return false;
            BuildAndSwap(spot, files, cancellation);
            isSaved = true;
        }
        catch (WritersTurnException)
        {
            complaints.Add(Wordings.AnotherRunIsWriting(place, folder));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            complaints.Add(Wordings.CannotSave(place, folder, trouble));
        }
        finally
        {
            if (!isSaved) RemoveEmpty(madeParents);
        }
        return isSaved;
    }

    internal static bool IsRecord(NamedBytes file) => IsRecord(file.Name);

    internal static bool IsRecord(string name) => name == JobRecord.FileName || name.EndsWith($"/{JobRecord.FileName}", StringComparison.Ordinal);

    private static void BuildAndSwap(SpotOnDisk spot, ImmutableArray<NamedBytes> files, CancellationToken cancellation)
    {
        var fresh = spot.Beside(SpotOnDisk.New);
        try
        {
            Build(fresh, files, cancellation);
            Swap(spot, fresh);
        }
        catch
        {
            TryRemove(fresh);
            throw;
        }
    }

    private static void Build(string fresh, ImmutableArray<NamedBytes> files, CancellationToken cancellation)
    {
        Directory.CreateDirectory(fresh);
        foreach (var file in files)
        {
            cancellation.ThrowIfCancellationRequested();
            var path = System.IO.Path.Combine([fresh, .. file.Name.Split('/')]);
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
            using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
            stream.Write(file.Bytes.AsSpan());
            // On to the disk, so that a power cut after the swap does not leave names without content.
            stream.Flush(flushToDisk: true);
        }
        cancellation.ThrowIfCancellationRequested();
    }

    private static void Swap(SpotOnDisk spot, string fresh)
    {
        if (!Directory.Exists(spot.Path))
        {
            Directory.Move(fresh, spot.Path);
            return;
        }
        var aside = spot.Beside(SpotOnDisk.Old);
        Directory.Move(spot.Path, aside);
        try
        {
            Directory.Move(fresh, spot.Path);
        }
        catch
        {
            Directory.Move(aside, spot.Path);
            throw;
        }
        // The job is saved; an old folder that will not go is cleared by the next run.
        TryRemove(aside);
    }

    private static void TryRemove(string folder)
    {
        try
        {
            if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // It is one of ours by its name, and the next run to this place clears it.
        }
    }

    private static void MakeFolders(string folder, List<string> made)
    {
        if (Directory.Exists(folder)) return;
        if (System.IO.Path.GetDirectoryName(folder) is { Length: > 0 } parent) MakeFolders(parent, made);
        Directory.CreateDirectory(folder);
        made.Add(folder);
    }

    private static void RemoveEmpty(List<string> made)
    {
        try
        {
            foreach (var folder in Enumerable.Reverse(made)) Directory.Delete(folder);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // Somebody else uses it by now.
        }
    }
}
