using System.Diagnostics.CodeAnalysis;
using System.IO;
using System.Security.Cryptography;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Where a job's folder is or will be, and the names beside it that are ours.</summary>
/// <remarks>Beside <c>notch</c>: <c>.notch.1f3a9c04.new</c> while it is built, <c>.notch.1f3a9c04.old</c> while it is swapped,
/// <c>.notch.lock</c> while a run has its turn.</remarks>
internal sealed record SpotOnDisk(string Parent, string Name)
{
    public const string New = "new";
    public const string Old = "old";
    private const int Digits = 8;

    public string Path => System.IO.Path.Combine(Parent, Name);
    public string Lock => System.IO.Path.Combine(Parent, $".{Name}.lock");

    public static bool TryFind(string folder, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out SpotOnDisk spot)
    {
        spot = null;
        if (string.IsNullOrWhiteSpace(folder) || folder.Contains('\0'))
        {
            complaints.Add(Wordings.FolderHasNoName(place));
            return false;
        }
        var full = System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(folder));
        // A link to a folder stays a link: what it leads to is swapped.
        if (Directory.Exists(full) && new DirectoryInfo(full).ResolveLinkTarget(returnFinalTarget: true) is { } target)
            full = System.IO.Path.TrimEndingDirectorySeparator(target.FullName);
        var (parent, name) = (System.IO.Path.GetDirectoryName(full), System.IO.Path.GetFileName(full));
        if (string.IsNullOrEmpty(parent) || name.Length == 0)
            complaints.Add(Wordings.FolderHasNoName(place));
        else if (IsInUseAsCurrent(full))
            complaints.Add(Wordings.FolderIsCurrent(place, folder));
        else
            spot = new(parent, name);
        return spot is not null;
    }

    /// <summary>A name of ours beside the place that nobody has yet.</summary>
    public string Beside(string ending) =>
        System.IO.Path.Combine(Parent, $".{Name}.{RandomNumberGenerator.GetHexString(Digits, lowercase: true)}.{ending}");

    /// <summary>The folders beside the place that have such a name.</summary>
    public IEnumerable<string> AllBeside(string ending) =>
        Directory.EnumerateDirectories(Parent, $".{Name}.*.{ending}").Where(path => IsOurs(System.IO.Path.GetFileName(path), ending)).ToList();

    private bool IsOurs(string name, string ending)
    {
        var (before, after) = ($".{Name}.", $".{ending}");
        return name.Length == before.Length + Digits + after.Length
            && name.StartsWith(before, StringComparison.Ordinal)
            && name.EndsWith(after, StringComparison.Ordinal)
            && name.Skip(before.Length).Take(Digits).All(char.IsAsciiHexDigitLower);
    }

    // Swapping the folder that somebody's shell stands in, or one above it, would leave the shell nowhere.
    private static bool IsInUseAsCurrent(string full)
    {
        var current = Directory.GetCurrentDirectory();
        return current == full || current.StartsWith(full + System.IO.Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }
}
