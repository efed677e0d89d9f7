using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in jigs.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownPiece(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "piece", known);

    public static Complaint JigNamedLikeAPiece(Place place, string name) =>
        place.Complain($"A piece is called {name} already.", "Give the jig a name of its own.");

    public static Complaint PieceNotMade(Place place, string name) =>
        place.Complain($"With these choices there is no piece {name} for this jig.", "Give the jig the same `when` as its piece.");

    public static Complaint JigForPaper(Place place, string name) =>
        place.Complain($"{name} is only paper, which no jig guides a tool on.", "Name a piece that is cut.");

    public static Complaint NoSuchDatum(Place place, string label, Piece work) => place.Complain(
        $"{work.Name} has no datum {label}.",
        work.Datums.IsEmpty ? "Give the piece a datum with a hole." : $"Choose of {string.Join(", ", work.Datums.Select(d => d.Label))}.");

    public static Complaint CutWiderThanGuide(Place place, GuideKind kind, double guide, double cut) => kind == GuideKind.Bush
        ? place.Complain($"A cutter of {Mm(cut)} does not pass through a bush of {Mm(guide)}.", "Take a smaller cutter, or a larger bush.")
        : place.Complain($"A kerf of {Mm(cut)} is wider than the shroud of {Mm(guide)}.", "Measure both again.");

    public static Complaint PlateNotFor(Place place, PlateStock plate, GuideKind kind, ImmutableArray<PlateStock> plates)
    {
        var others = plates.Where(p => p.Takes(kind)).Select(p => p.Name).ToList();
        var remedy = others.Count > 0 ? $"Choose of {string.Join(", ", others)}." : "Add one that is to the shop's table jigs.yaml.";
        return plate.Burns && kind == GuideKind.Shroud
            ? place.Complain($"A plate of {plate.Title} burns, and this one would lie under a torch.", remedy)
            : place.Complain($"A plate of {plate.Title} is not one for {NameOf(kind)}.", remedy);
    }

    public static Complaint JigFault(Place place, JigFault fault, GuideEdge edge)
    {
        var at = $"{Mm(fault.At.X)} along, {Mm(fault.At.Y)} up";
        var (guide, cutter) = edge.Kind == GuideKind.Shroud ? ("shroud", "kerf") : ("bush", "cutter");
        return fault.Kind switch
        {
            JigFaultKind.InsideCorner => place.Complain(
                $"The {guide} of {Mm(edge.Guide)} cannot follow the inside corner at {at}: a {cutter} of {Mm(edge.Cut)} leaves metal there.",
                fault.Limit > 0
                    ? $"The largest {cutter} that can is {Mm(fault.Limit)}; or round the corner to {Mm(edge.Cut / 2)} or more."
                    : $"No {cutter} can: round the corner to {Mm(edge.Cut / 2)} or more, or make this a jig for a scriber."),
            JigFaultKind.OutsideCorner => place.Complain(
                $"The {guide} of {Mm(edge.Guide)} rolls round the corner at {at}, and the {cutter} of {Mm(edge.Cut)} cuts metal off it that should stay.",
                $"Take a {guide} of {Mm(edge.Cut + 2 * fault.Limit)} or less with this {cutter}, or round the corner to {Mm(edge.Offset)} or more."),
            JigFaultKind.EndsOnNoEdge => place.Complain(
                $"The finish line ends at {at}, where no edge of the panel is.", "List the panel's real edges under `edges`, this one among them."),
            JigFaultKind.MouthTooNarrow => place.Complain(
                $"The mouth of the opening at {at} is too narrow: the guide edges that run on past the panel meet.", "Open the mouth, or make this a jig for a scriber."),
            JigFaultKind.FallsApart => place.Complain(
                $"Nothing, or more than one part, is left of the plate at {at}.", "Give it more margin, or guide one opening with each jig."),
            JigFaultKind.HoleTooNear => place.Complain(
                $"A pin, stop or bush at {at} has too little plate round it.", "Choose another datum, move the stop, or keep the holes further apart."),
            JigFaultKind.LocatorsTooNear => place.Complain(
                $"What locates the plate stands too close together at {at}.", $"Choose places {Mm(fault.Limit)} or more apart; far apart is best."),
            JigFaultKind.StopOffEdge => place.Complain(
                $"The stop at {at} does not stand with the other on one straight edge of the panel.", "Put both on one straight edge."),
            JigFaultKind.NoHoleForPin => place.Complain(
                $"The datum at {at} is a mere point, and a pin wants a hole.", "Say in `hole` what its diameter is, or choose another datum."),
            JigFaultKind.HoleTooLarge => place.Complain(
                $"The hole at {at} is too large for a pin or a bush.", $"Choose one of {Mm(fault.Limit)} or less."),
            JigFaultKind.NotRound => place.Complain($"The hole at {at} is not round, and no drill makes it.", "Drill round holes that do not run into each other."),
            _ => place.Complain(
                $"There is no room for two clamps on the plate {Mm(fault.Limit)} clear of the cut, over metal that stays.",
                "Raise the jig's margin, or show more of the panel."),
        };
    }

    private static string NameOf(GuideKind kind) => kind switch
    {
        GuideKind.Bush => "a guide bush",
        GuideKind.Shroud => "a torch",
        GuideKind.Drill => "drill bushes",
        _ => "a scriber",
    };
}
