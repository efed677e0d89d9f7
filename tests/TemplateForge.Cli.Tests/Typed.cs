using System.IO;

namespace TemplateForge.Cli.Tests;

/// <summary>A command as somebody typed it in an empty folder, and what came of it.</summary>
internal sealed class Typed : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("templateforge-");

    public string Folder => folder.FullName;
    public string Output { get; private set; } = "";
    public string Errors { get; private set; } = "";
    public int Code { get; private set; }

    public IEnumerable<string> Files =>
        Directory.EnumerateFiles(Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None })
            .Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/'))
            .Order(StringComparer.Ordinal);

    public string this[string name] => Path.Combine(Folder, name);

    public static Typed Run(params string[] words)
    {
        var typed = new Typed();
        typed.Again(words);
        return typed;
    }

    public int Again(params string[] words) => Again(words, terminal => terminal);

    public int Again(string[] words, Func<Terminal, Terminal> on, CancellationToken cancellation = default)
    {
        var (output, errors) = (new StringWriter(), new StringWriter());
        var terminal = new Terminal
        {
            Output = output,
            Errors = errors,
            CurrentFolder = Folder,
            Today = new(2026, 11, 28),
            LibraryFolder = Path.Combine(AppContext.BaseDirectory, "profiles"),
        };
        Code = Program.Run(words, on(terminal), cancellation);
        (Output, Errors) = (output.ToString(), errors.ToString());
        return Code;
    }

    public void Dispose() => folder.Delete(recursive: true);
}
