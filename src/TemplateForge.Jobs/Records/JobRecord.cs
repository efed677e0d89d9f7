using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>What <c>job.json</c> says: all that a job was made from, so that it can be made again without the library.</summary>
/// <remarks>
/// It also lists what came out (areas, lengths, holes, checks), so that others can hold the files against it. The results are not
/// read back: whoever makes the job again computes them again. There is no clock, path or machine in it.
/// </remarks>
public sealed record JobRecord
{
    public const string FileName = "job.json";

    /// <summary>The most characters that a record may have; one with the longest profile has far fewer.</summary>
    public const int LongestText = 16_000_000;

    internal const string Format = "templateforge job";
    internal const int Version = 1;

    internal JobRecord(JobRequest request, string profileName, ImmutableArray<string> files) =>
        (Request, ProfileName, Files) = (request, profileName, files);

    public JobRequest Request { get; }

    /// <summary>The profile's name as the record has it.</summary>
    public string ProfileName { get; }

    /// <summary>Names of the files that were made, this one among them.</summary>
    public ImmutableArray<string> Files { get; }

    /// <summary>The job in a few words: its profile and its hand.</summary>
    public string Described => Request.Hand.Word is "left" or "right" ? $"{ProfileName}, {Request.Hand.Word} hand" : ProfileName;

    /// <summary>Reads a record; every complaint about it comes at once, with line and column.</summary>
    public static bool TryRead(TextFile source, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JobRecord record) =>
        RecordReader.TryRead(source, complaints, out record);

    internal static ImmutableArray<byte> Written(Job job, IEnumerable<NamedBytes> files) => RecordWriter.Write(job, files);
}
