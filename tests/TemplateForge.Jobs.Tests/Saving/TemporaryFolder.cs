using System.IO;

namespace TemplateForge.Jobs.Tests.Saving;

/// <summary>A folder on the disk for one test.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("templateforge-").FullName;

    public string this[params string[] parts] => System.IO.Path.Combine([Path, .. parts]);

    /// <summary>Everything in it, with forward slashes, in order.</summary>
    public IEnumerable<string> Everything =>
        Directory.EnumerateFileSystemEntries(Path, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .Select(entry => System.IO.Path.GetRelativePath(Path, entry).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
