using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a jig is made from values, for a piece that is made already.</summary>
internal sealed record JigRecipe
{
    // Beside a clamp's foot, clear of the cut, so much plate stays.
    private const double PastTheFoot = 10;
    private const double WidestMargin = 1000;

    public required Place Place { get; init; }
    public required string Name { get; init; }
    public required ImmutableArray<Term> When { get; init; }
    public required string Title { get; init; }
    public required string Work { get; init; }
    public required Chosen<GuideRecipe> Guides { get; init; }
    public required Chosen<PlateStock> Plate { get; init; }

    /// <summary>All that the shop has, to say what would do.</summary>
    public required ImmutableArray<PlateStock> Plates { get; init; }
    public required Chosen<LocationRecipe> LocatedBy { get; init; }
    public required ImmutableArray<Term> Margin { get; init; }
    public required Chosen<string> OneSided { get; init; }

    /// <summary>Makes the plate.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="pieces">The profile's pieces, for the hand that it is drawn for.</param>
    /// <param name="mirrored">Whether the other hand's plate is wanted.</param>
    /// <param name="plate">The plate.</param>
    public bool TryMake(Evaluation from, ImmutableArray<Piece> pieces, bool mirrored, [MaybeNullWhen(false)] out JigPlate plate)
    {
        plate = null;
        if (pieces.FirstOrDefault(p => p.Name == Work) is not { } work) return from.Refuse(Wordings.PieceNotMade(Place, Work));
        if (work.Kind == PieceKind.Paper) return from.Refuse(Wordings.JigForPaper(Place, Work));
        if (!(from.TryPick(Guides, out var guide) & from.TryPick(Plate, out var stock) & from.TryPick(LocatedBy, out var located) & from.TryPick(OneSided, out var sided)))
            return false;
        var margin = 0.0;
        if (!(guide!.TryMake(from, out var edge, out var drills) & (Margin.IsEmpty || from.TryWithin(Margin[0], 0, WidestMargin, out margin)))) return false;
        if (!stock!.Takes(guide.Kind)) return from.Refuse(Wordings.PlateNotFor(Plate.Place, stock, guide.Kind, Plates));
        if (Margin.IsEmpty) margin = edge!.ClampsClear + ClampPlaces.Foot + PastTheFoot;

        var faults = new List<JigFault>();
        if (!located!.TryMake(from, work, faults, out var location))
            return faults.Count > 0 && from.Refuse(Wordings.JigFault(located.Place, faults[0], edge!));
        var design = new JigDesign
        {
            Name = Name,
            Title = Title,
            Work = work,
            Location = location,
            Stock = stock,
            Edge = edge!,
            Drills = drills,
            Margin = margin,
            IsOneSided = sided == "yes",
        };
        if (JigPlate.TryMake(design, faults, out plate) && (!mirrored || JigPlate.TryMake(design.Mirrored(), faults, out plate))) return true;
        foreach (var fault in faults.DistinctBy(f => (f.Kind, Math.Round(f.At.X, 1), Math.Round(f.At.Y, 1)))) from.Refuse(Wordings.JigFault(Place, fault, edge!));
        return false;
    }
}

/// <summary>What runs along a jig's edge, or is drilled by it.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Sizes">What guides and what cuts; none of a scriber or drills.</param>
/// <param name="Holes">The shape of the holes; of drills alone.</param>
internal sealed record GuideRecipe(Place Place, GuideKind Kind, ImmutableArray<Term> Sizes, ImmutableArray<ShapeName> Holes)
{
    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out GuideEdge edge, out Region drills)
    {
        (edge, drills) = (GuideEdge.Scriber, Region.Empty);
        if (Kind == GuideKind.Drill) return from.TryShape(Holes[0], out drills) && (!drills.IsEmpty || from.Refuse(Wordings.ShapeIsEmpty(Holes[0])));
        if (Kind == GuideKind.Scriber) return true;
        if (!(from.TrySize(Sizes[0], out var guide) & from.TrySize(Sizes[1], out var cut))) return false;
        if (cut > guide) return from.Refuse(Wordings.CutWiderThanGuide(Sizes[1].Place, Kind, guide, cut));
        edge = Kind == GuideKind.Bush ? GuideEdge.Bush(guide, cut) : GuideEdge.Shroud(guide, cut);
        return true;
    }
}

/// <summary>What locates a jig.</summary>
/// <param name="Place">Where it is written.</param>
/// <param name="Stops">Where two stops touch the panel's edge; none with a slot.</param>
/// <param name="Pin">The datum of the pin, the round one with a slot.</param>
/// <param name="Slot">The datum of the pin in the slot; empty with stops.</param>
internal sealed record LocationRecipe(Place Place, ImmutableArray<PointTerm> Stops, string Pin, string Slot)
{
    public bool TryMake(Evaluation from, Piece work, List<JigFault> faults, [MaybeNullWhen(false)] out Location location)
    {
        location = null;
        if (!TryDatum(Pin, out var pin)) return false;
        if (Stops.IsEmpty) return TryDatum(Slot, out var slot) && Location.TryPinAndSlot(pin, slot, faults, out location);
        if (!(from.TryPoint(Stops[0], out var a) & from.TryPoint(Stops[1], out var b))) return false;
        return Location.TryStopsAndPin(work.Kind == PieceKind.CutAway ? work.Before : work.Shape, a, b, pin, faults, out location);

        bool TryDatum(string label, [MaybeNullWhen(false)] out Datum datum)
        {
            datum = work.Datums.FirstOrDefault(d => d.Label == label);
            return datum is not null || from.Refuse(Wordings.NoSuchDatum(Place, label, work));
        }
    }
}
