using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>What one request makes: one job, or one for each hand.</summary>
public sealed class JobSet
{
    private JobSet(ImmutableArray<Job> jobs) => Jobs = jobs;

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
        set = null;
        if (!ShopReader.TryRead(request.ShopFiles, complaints, out var shop)) return false;
        var paperIsKnown = TryChoosePaper(request.Paper, shop, complaints, out var paper);
        if (!Profile.TryRead(request.Profile, shop, complaints, out var profile)) return false;
        cancellation.ThrowIfCancellationRequested();

        var handsAreKnown = TryChooseHands(request, profile, complaints, out var hands, out var measuredOn);
        // Tried even where something is wrong already, so that what is wrong with the values is told as well.
        if (!TryMakeModifications(profile, request.Settings, hands, measuredOn, complaints, out var modifications)) return false;
        if (!paperIsKnown || !handsAreKnown) return false;

        var jobs = ImmutableArray.CreateBuilder<Job>(modifications.Length);
        foreach (var modification in modifications)
            jobs.Add(new Job(request, profile, modification, measuredOn, shop, paper!, cancellation));
        set = new(jobs.MoveToImmutable());
        return true;
    }

    private static bool TryChoosePaper(Choice choice, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Paper paper)
    {
        paper = choice.IsMade ? shop.Papers.FirstOrDefault(p => p.Name == choice.Word) : shop.UsualPaper;
        if (paper is null) complaints.Add(Wordings.UnknownPaper(choice, shop.Papers.Select(p => p.Name)));
        return paper is not null;
    }

    private static bool TryChooseHands(
        JobRequest request,
        Profile profile,
        ICollection<Complaint> complaints,
        out ImmutableArray<Hand> hands,
        out Hand measuredOn)
    {
        var wanted = HandOf(request.Hand, profile, bothIsAnAnswer: true, complaints);
        var measured = HandOf(request.MeasuredOn, profile, bothIsAnAnswer: false, complaints);
        hands = wanted.IsEmpty ? [profile.Hand] : wanted;
        measuredOn = measured.IsEmpty ? profile.Hand : measured[0];
        return !wanted.IsEmpty && !measured.IsEmpty;
    }

    // The hands that a choice means; none, and a complaint, where it means none.
    private static ImmutableArray<Hand> HandOf(Choice choice, Profile profile, bool bothIsAnAnswer, ICollection<Complaint> complaints)
    {
        if (!choice.IsMade) return [profile.Hand];
        if (HandWords.TryRead(choice.Word, out var hand) && hand == Hand.Either && profile.Hand == Hand.Either) return [Hand.Either];
        if (profile.Hand == Hand.Either)
        {
            complaints.Add(Wordings.ProfileHasNoHand(choice, profile.Name));
            return [];
        }
        if (choice.Word == HandWords.Both && bothIsAnAnswer) return [Hand.Left, Hand.Right];
        if (hand != Hand.Either) return [hand];
        complaints.Add(Wordings.UnknownHand(choice, bothIsAnAnswer ? ["left", "right", HandWords.Both] : ["left", "right"]));
        return [];
    }

    private static bool TryMakeModifications(
        Profile profile,
        ImmutableArray<Setting> settings,
        ImmutableArray<Hand> hands,
        Hand measuredOn,
        ICollection<Complaint> complaints,
        out ImmutableArray<Modification> modifications)
    {
        var made = ImmutableArray.CreateBuilder<Modification>();
        var found = new List<Complaint>();
        foreach (var hand in hands)
            if (profile.TryMake(settings, hand, measuredOn, found, out var modification)) made.Add(modification);
        // What is wrong for one hand is wrong for the other, and is told once.
        foreach (var complaint in found.Distinct()) complaints.Add(complaint);
        modifications = made.ToImmutable();
        return modifications.Length == hands.Length;
    }
}
