using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>What lies in a job's place already.</summary>
internal static class HeldFolder
{
    /// <summary>Whether these files may take the place: it is empty, holds the same job, or another one that may be replaced.</summary>
    public static bool MayBecome(SpotOnDisk spot, ImmutableArray<NamedBytes> files, bool replace, Place place, ICollection<Complaint> complaints)
    {
        if (File.Exists(spot.Path))
        {
            complaints.Add(Wordings.PlaceIsAFile(place, spot.Path));
            return false;
        }
        if (!Directory.Exists(spot.Path)) return true;
        var entries = Entries(spot.Path);
        if (entries.IsEmpty) return true;

        var records = entries.Where(JobFolder.IsRecord).Select(name => (Name: name, Bytes: Read(spot.Path, name))).ToImmutableArray();
        var jobs = records.SelectMany(r => JobIn(r.Name, r.Bytes)).ToImmutableArray();
        if (jobs.IsEmpty)
        {
            complaints.Add(Wordings.FolderIsNotAJob(place, spot.Path, entries));
            return false;
        }
        var ours = jobs.SelectMany(job => job.Files).ToHashSet(StringComparer.Ordinal);
        ImmutableArray<string> strange = [.. entries.Where(name => !ours.Contains(name))];
        if (!strange.IsEmpty)
        {
            complaints.Add(Wordings.FolderHoldsMore(place, spot.Path, strange));
            return false;
        }
        if (replace || IsSame(records, files)) return true;
        complaints.Add(Wordings.FolderHoldsAnotherJob(place, spot.Path, jobs.Select(j => j.Described)));
        return false;
    }

    // Every file in the folder and below it, and every folder with nothing in it, with forward slashes, in order.
    private static ImmutableArray<string> Entries(string folder)
    {
        var everything = new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None, IgnoreInaccessible = false };
        return
        [
            .. new DirectoryInfo(folder).EnumerateFileSystemInfos("*", everything)
                .Where(entry => entry is FileInfo || !Directory.EnumerateFileSystemEntries(entry.FullName).Any())
                .Select(entry => System.IO.Path.GetRelativePath(folder, entry.FullName).Replace(System.IO.Path.DirectorySeparatorChar, '/'))
                .Order(StringComparer.Ordinal),
        ];
    }

    private static byte[] Read(string folder, string name)
    {
        var path = System.IO.Path.Combine(folder, name);
        return new FileInfo(path).Length > JobRecord.LongestText ? [] : File.ReadAllBytes(path);
    }

    private static IEnumerable<(string Described, ImmutableArray<string> Files)> JobIn(string name, byte[] bytes)
    {
        var before = name[..^JobRecord.FileName.Length];
        if (TextFiles.TryDecode(bytes, out var text) && JobRecord.TryRead(new(name, text), [], out var record))
            yield return (record.Described, [.. record.Files.Select(file => before + file)]);
    }

    private static bool IsSame(ImmutableArray<(string Name, byte[] Bytes)> held, ImmutableArray<NamedBytes> files)
    {
        var wanted = files.Where(JobFolder.IsRecord).ToImmutableArray();
        return held.Length == wanted.Length
            && wanted.All(w => held.Any(h => h.Name == w.Name && w.Bytes.AsSpan().SequenceEqual(h.Bytes)));
    }
}
