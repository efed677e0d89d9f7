using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>Tells the author of a profile whether it is sound.</summary>
public static class ProfileCheck
{
    /// <summary>Reads a profile, and makes it for every hand with its defaults and with every word of every choice.</summary>
    public static bool TryCheck(
        TextFile source,
        ShopTables shop,
        ICollection<Complaint> complaints,
        CancellationToken cancellation,
        [MaybeNullWhen(false)] out Profile profile)
    {
        if (!Profile.TryRead(source, shop, complaints, out profile)) return false;
        ImmutableArray<Hand> hands = profile.Hand == Hand.Either ? [Hand.Either] : [Hand.Left, Hand.Right];
        var found = new List<Complaint>();
        foreach (var settings in profile.Rehearsals())
        {
            foreach (var hand in hands)
            {
                cancellation.ThrowIfCancellationRequested();
                profile.TryMake(settings, hand, profile.Hand, found, out _);
            }
        }
        // One fault shows in many rehearsals and is told once.
        foreach (var complaint in found.Distinct()) complaints.Add(complaint);
        return found.Count == 0;
    }
}
