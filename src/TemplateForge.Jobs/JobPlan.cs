using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Sheets;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>A request that was found to be sound: exact shapes for every hand that is wanted, before anything is drawn.</summary>
public sealed class JobPlan
{
    private readonly JobRequest request;
    private readonly ShopTables shop;
    private readonly Hand measuredOn;
    private readonly PrintSetup printing;
    private readonly string cutter;
    private readonly DxfFormat dxf;

    private JobPlan(
        JobRequest request, ShopTables shop, Profile profile, Hand measuredOn, PrintSetup printing, string cutter, DxfFormat dxf, ImmutableArray<Modification> modifications)
    {
        (this.request, this.shop, this.measuredOn, this.printing, this.cutter, this.dxf) = (request, shop, measuredOn, printing, cutter, dxf);
        (Profile, Modifications) = (profile, modifications);
    }

    public Profile Profile { get; }

    /// <summary>One for each hand that is wanted.</summary>
    public ImmutableArray<Modification> Modifications { get; }

    /// <summary>Reads the tables and the profile and puts the values in.</summary>
    /// <param name="request">All that the job depends on.</param>
    /// <param name="complaints">Where complaints go, all of them at once.</param>
    /// <param name="plan">The shapes.</param>
    public static bool TryMake(JobRequest request, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JobPlan plan)
    {
        plan = null;
        return ShopReader.TryRead(request.ShopFiles, complaints, out var shop) && TryMake(request, shop, complaints, out plan);
    }

    /// <summary>The same where the tables of the request have been read before.</summary>
    public static bool TryMake(JobRequest request, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JobPlan plan)
    {
        plan = null;
        if (Profile.TryRead(request.Profile, shop, complaints, out var profile)) return TryMake(request, shop, profile, complaints, out plan);
        // What is wrong with the request is told as well.
        ChosenPrinting.TryChoose(request, shop, complaints, out _);
        TryChooseDxf(request.Dxf, shop, complaints, out _);
        ChosenCutter.TryChoose(request, shop, complaints, out _);
        return false;
    }

    /// <summary>Puts the values in where the tables and the profile of the request have been read before.</summary>
    internal static bool TryMake(
        JobRequest request, ShopTables shop, Profile profile, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JobPlan plan)
    {
        plan = null;
        var printingIsKnown = ChosenPrinting.TryChoose(request, shop, complaints, out var printing);
        var dxfIsKnown = TryChooseDxf(request.Dxf, shop, complaints, out var dxf);
        var cutterIsKnown = ChosenCutter.TryChoose(request, shop, complaints, out var cutter);
        var handsAreKnown = TryChooseHands(request, profile, complaints, out var hands, out var measuredOn);
        // Tried even where something is wrong already, so that what is wrong with the values is told as well.
        if (!TryMakeModifications(profile, request.Settings, hands, measuredOn, complaints, out var modifications)) return false;
        // Hands that are alike are made once, and one that is not is not made for either.
        if (modifications[0].Hand == Hand.Either) modifications = [modifications[0]];
        else if (HandWords.TryRead(request.Hand.Word, out var asked) && asked == Hand.Either)
        {
            complaints.Add(Wordings.NotAlike(request.Hand, profile.Name));
            return false;
        }
        if (!printingIsKnown || !handsAreKnown || !cutterIsKnown || !dxfIsKnown) return false;
        if (!TryPlanCuts(cutter!, ref modifications, complaints)) return false;
        plan = new(request, shop, profile, measuredOn, printing!, cutter!.Recorded, dxf!, modifications);
        return true;
    }

    /// <summary>Draws every file.</summary>
    /// <param name="onAllCores">Whether sheets are drawn side by side; jobs that are made side by side draw theirs one after the other.</param>
    /// <param name="cancellation">Stops the work between two drawings.</param>
    /// <exception cref="OperationCanceledException">The work was stopped.</exception>
    public JobSet Drawn(bool onAllCores, CancellationToken cancellation) => new(
        [.. Modifications.Select(modification => new Job(request, Profile, modification, measuredOn, shop, printing, cutter, dxf, onAllCores, cancellation))]);

    private static bool TryPlanCuts(ChosenCutter cutter, ref ImmutableArray<Modification> modifications, ICollection<Complaint> complaints)
    {
        var (planned, found) = (ImmutableArray.CreateBuilder<Modification>(), new List<Complaint>());
        foreach (var modification in modifications)
            if (cutter.TryPlan(modification, found, out var made)) planned.Add(made);
        // What nobody has measured for one hand nobody has for the other.
        foreach (var complaint in found.Distinct()) complaints.Add(complaint);
        if (found.Count > 0) return false;
        modifications = planned.ToImmutable();
        return true;
    }

    private static bool TryChooseDxf(Choice choice, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out DxfFormat dxf)
    {
        dxf = shop.UsualDxf;
        if (!choice.IsMade || DxfFormat.TryNamed(choice.Word, out dxf)) return true;
        complaints.Add(Wordings.UnknownDxf(choice, DxfFormat.All.Select(f => f.Name)));
        return false;
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
        if (HandWords.TryRead(choice.Word, out var hand) && hand == Hand.Either && (profile.Hand == Hand.Either || (profile.MayBeAlike && bothIsAnAnswer))) return [profile.Hand];
        if (profile.Hand == Hand.Either)
        {
            complaints.Add(Wordings.ProfileHasNoHand(choice, profile.Name));
            return [];
        }
        if (choice.Is(HandWords.Both) && bothIsAnAnswer) return [Hand.Left, Hand.Right];
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
