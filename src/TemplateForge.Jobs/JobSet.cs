using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs;

/// <summary>What one request makes: one job, or one for each hand.</summary>
public sealed class JobSet
{
    internal JobSet(ImmutableArray<Job> jobs) => Jobs = jobs;

    /// <summary>At least one; all from one profile.</summary>
    public ImmutableArray<Job> Jobs { get; }

    public Profile Profile => Jobs[0].Profile;

    /// <summary>Every file; where there are two hands, in a folder for each.</summary>
    public ImmutableArray<NamedBytes> Files =>
        Jobs.Length == 1 ? Jobs[0].Files : [.. Jobs.SelectMany(job => job.Files.Select(file => file.In(job.Folder)))];

    /// <summary>Whether its record is this one, letter for letter: what a job that is made again should be.</summary>
    public bool HasRecord(TextFile record) =>
        Jobs.Length == 1 && Jobs[0].Files.Single(JobFolder.IsRecord).Bytes.AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(record.Text));

    /// <summary>Reads the tables and the profile, puts the values in and draws everything.</summary>
    /// <param name="request">All that the job depends on.</param>
    /// <param name="complaints">Where complaints go, all of them at once.</param>
    /// <param name="cancellation">Stops the work between two drawings.</param>
    /// <param name="set">What was made.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public static bool TryMake(
        JobRequest request,
        ICollection<Complaint> complaints,
        CancellationToken cancellation,
        [MaybeNullWhen(false)] out JobSet set)
    {
        set = JobPlan.TryMake(request, complaints, out var plan) ? plan.Drawn(onAllCores: true, cancellation) : null;
        return set is not null;
    }
}
