using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Sheets;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>What cuts the pieces of a job, if somebody has said so.</summary>
internal sealed class ChosenCutter
{
    /// <summary>The word for no cutter: the cut files show finished edges.</summary>
    public const string None = "none";

    private const double GreatestKerf = 20;

    private readonly ImmutableArray<Cutter> cutter;
    private readonly Choice choice;
    private readonly bool kerfIsGiven;

    private ChosenCutter(ImmutableArray<Cutter> cutter, Choice choice, bool kerfIsGiven) =>
        (this.cutter, this.choice, this.kerfIsGiven) = (cutter, choice, kerfIsGiven);

    /// <summary>The cutter's name as it is recorded; empty where there is none and the shop has none that it usually takes.</summary>
    public required string Recorded { get; init; }

    /// <summary>Looks up the cutter and takes the kerf that was given in place of the table's.</summary>
    public static bool TryChoose(JobRequest request, ShopTables shop, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out ChosenCutter chosen)
    {
        chosen = null;
        var (asked, kerf) = (request.Cutter, request.Kerf);
        var name = asked.IsMade ? asked.Among(shop.Cutters.Keys) : shop.UsualCutter;
        if (name.Length == 0 || asked.Is(None))
        {
            if (kerf.IsMade)
            {
                complaints.Add(Wordings.KerfWithoutCutter(kerf, CuttersOf(shop)));
                return false;
            }
            chosen = new([], asked, kerfIsGiven: false) { Recorded = shop.UsualCutter.Length > 0 ? None : "" };
            return true;
        }
        if (!shop.Cutters.TryGetValue(name, out var found))
        {
            complaints.Add(Wordings.UnknownCutter(asked, CuttersOf(shop).Append(None)));
            return false;
        }
        if (kerf.IsMade)
        {
            if (!TryKerf(kerf, complaints, out var width)) return false;
            if (found.Compensates)
            {
                complaints.Add(Wordings.ControllerKnowsTheKerf(kerf, found.Title));
                return false;
            }
            found = found with { Kerf = width, Kerfs = ByThickness.Unstated };
        }
        chosen = new([found], asked, kerf.IsMade) { Recorded = name };
        return true;
    }

    /// <summary>The modification with its pieces planned for the cutter; as it is where there is none.</summary>
    /// <param name="modification">What is cut.</param>
    /// <param name="complaints">Gets a complaint for every thickness in which nobody has measured the kerf.</param>
    /// <param name="planned">The same with plans.</param>
    public bool TryPlan(Modification modification, ICollection<Complaint> complaints, out Modification planned)
    {
        planned = modification;
        if (cutter.IsEmpty) return true;
        var own = cutter[0];
        var cut = modification.Pieces.Where(Job.IsCut).ToList();
        if (cut.Count > 0 && cut.TrueForAll(p => !own.Takes(p.Material)))
        {
            complaints.Add(Wordings.CutsNoneOfIt(choice, own.Title, cut[0].Material.Title));
            return false;
        }
        var unknown = cut.Where(p => own.Takes(p.Material)).Select(p => p.Thickness).Distinct()
            .Where(thickness => !own.Compensates && !own.TryKerf(thickness, out _)).ToList();
        foreach (var thickness in unknown) complaints.Add(Wordings.KerfNotMeasured(choice, own.Title, own.Name, thickness));
        if (unknown.Count > 0) return false;
        planned = modification with
        {
            Pieces = [.. modification.Pieces.Select(p => Job.IsCut(p) ? Planned(p) : p)],
            Cautions = [.. modification.Cautions.Union(own.Cautions)],
        };
        return true;

        Piece Planned(Piece piece) => !own.Takes(piece.Material)
            ? piece with { Notes = piece.Notes.Add(Wordings.ForAnotherMachine(own.Title, piece.Material.Title)) }
            : piece.CutBy(own, own.TryKerf(piece.Thickness, out var kerf) ? kerf : 0, kerfIsGiven, CutSheet.RunOut);
    }

    private static bool TryKerf(Choice kerf, ICollection<Complaint> complaints, out double width)
    {
        width = 0;
        if (!QuantityReader.TryRead(kerf.Word, Unit.Millimetre, kerf.Place, complaints, out var value, "--kerf")) return false;
        width = value.Value;
        if (width is > 0 and <= GreatestKerf) return true;
        complaints.Add(Wordings.KerfOutOfRange(kerf, GreatestKerf));
        return false;
    }

    private static IEnumerable<string> CuttersOf(ShopTables shop) => shop.Cutters.Keys.Order(StringComparer.Ordinal);
}
