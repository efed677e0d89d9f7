using System.Collections.Immutable;

namespace TemplateForge.Jobs;

/// <summary>A file before anything is saved: its name inside the job's folder, what it is, and its bytes.</summary>
public sealed record NamedBytes
{
    /// <param name="name">Small letters, digits, dots, hyphens and underscores, with at most one folder before a slash.</param>
    /// <param name="what">What it is and how large, in a few words.</param>
    /// <param name="bytes">Its content.</param>
    /// <exception cref="ArgumentException">The name could leave the job's folder, or some system would not take it.</exception>
    public NamedBytes(string name, string what, ImmutableArray<byte> bytes)
    {
        if (!IsSafe(name)) throw new ArgumentException($"'{name}' is not a name that stays inside a job's folder.", nameof(name));
        (Name, What, Bytes) = (name, what, bytes);
    }

    public string Name { get; }
    public string What { get; }
    public ImmutableArray<byte> Bytes { get; }

    /// <summary>The same file in a folder of this name.</summary>
    /// <exception cref="ArgumentException">The file is in a folder already, or the folder's name is not a plain one.</exception>
    public NamedBytes In(string folder) => new($"{folder}/{Name}", What, Bytes);

    /// <summary>Whether a name stays inside the folder that it is put in, on every system.</summary>
    public static bool IsSafe(string name)
    {
        var parts = name.Split('/');
        return parts.Length <= 2 && parts.All(IsSafePart);
    }

    private static bool IsSafePart(string part) =>
        part.Length is > 0 and <= 120
        && part.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' or '.' or '-' or '_')
        && char.IsAsciiLetterOrDigit(part[0])
        && part[^1] != '.'
        && !IsDevice(part.Split('.')[0]);

    // Names that one system keeps for its devices, whatever comes after the dot.
    private static bool IsDevice(string stem) =>
        stem is "con" or "prn" or "aux" or "nul" || (stem.Length == 4 && stem[..3] is "com" or "lpt" && char.IsAsciiDigit(stem[3]));
}
