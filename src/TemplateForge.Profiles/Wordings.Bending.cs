using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in sections and flanged sheets.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownBent(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "section, flanged sheet or transition", known);

    public static Complaint UnknownSection(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "section", known);

    public static Complaint KFactorBelongsToItsRule(Place place) =>
        place.Complain("k_factor is given, but flat lengths are reckoned by another rule.", "Leave k_factor out, or write reckoned_by: k_factor.");

    public static Complaint RuleDoesNotCover(Place place, BendRule rule, Angle angle) =>
        place.Complain($"The {rule.Name} says nothing of a bend through {Plain(angle.Degrees)}°.", "Take another rule under reckoned_by.");

    public static Complaint LegTooShort(Place place, int leg, double flat) =>
        place.Complain(
            $"Leg {leg.ToString(System.Globalization.CultureInfo.InvariantCulture)} is {Mm(-flat)} too short for the bends beside it.",
            "Make the leg longer, or the inside radius smaller.");

    public static Complaint NoMouldLine(Place place) =>
        place.Complain("A bend of 180° has no mould line to measure to.", "Measure legs outside or inside.");

    public static Complaint JoggleTooSteep(Place place, double depth, Angle angle, Angle steepest) =>
        place.Complain(
            $"A step of {Mm(depth)} with bends of {Plain(angle.Degrees)}° is deeper than wanted before it is straight again.",
            $"Turn its bends by {Plain(Math.Floor(steepest.Degrees))}° or less, or make the inside radius smaller.");

    public static Complaint BentSheetOfOtherThickness(Place place, double piece, double section) =>
        place.Complain($"The piece is {Mm(piece)} thick, and its section {Mm(section)}.", "Give both the same thickness.");

    public static Complaint BentSheetOfOtherMetal(Place place, Material material, Material bent) =>
        place.Complain($"The piece is {material.Title}, but what it is bent to is {bent.Title}.", "Leave the piece's material out, or give both the same.");

    public static Complaint NoBendOnThePiece(Place place) =>
        place.Complain("None of its bends lies on this piece.", "Cut the blank from what it is bent to, laid flat.");

    public static Complaint NoFlangeLeft(Place place) =>
        place.Complain("With these choices no edge has a flange.", "Leave one flange at least, or cut the piece from the base shape, without bends.");

    public static Complaint NoEdgeLeft(Place place) =>
        place.Complain("No edge is left for this flange.", "Take it out, or give it edges before another has them all.");

    public static Complaint EdgeHasAFlange(Place place) =>
        place.Complain("The edge nearest to this point has a flange already.", "Name each edge once.");

    public static Complaint FlangeFault(Place place, FlangeFault fault)
    {
        var at = $"{Mm(fault.At.X)} along, {Mm(fault.At.Y)} up";
        return fault.Kind switch
        {
            FlangeFaultKind.LegTooShort => place.Complain(
                fault.Leg == 1
                    ? $"At {at} the base is {Mm(-fault.Straight)} too small for the bend of its flange."
                    : FormattableString.Invariant($"At {at} leg {fault.Leg} is {Mm(-fault.Straight)} too short for the bends beside it; leg 1 is the base."),
                "Make it longer, or the inside radius smaller."),
            FlangeFaultKind.ArcTooTight => place.Complain(
                $"At {at} the radius of the edge is too small for the bend or the height of its flange.",
                "Make the radius of the edge larger, the flange lower, or its inside radius smaller."),
            FlangeFaultKind.NoRoomForCuts => place.Complain(
                $"At {at} there is no room for so many relief cuts.", "Lower relief_cuts or leave it out, or make the flange higher."),
            FlangeFaultKind.NothingLeft => place.Complain(
                $"At {at} the corners leave nothing of the flange.", "Make its legs shorter, or the edge longer."),
            FlangeFaultKind.NeighbourDiffers => place.Complain(
                $"At {at} two flanges go on into each other without a corner, but are not bent alike.", "Give both the same folds, or use run_at."),
            FlangeFaultKind.LiesOverTheBase => place.Complain(
                $"At {at} the flange lies over the base when it is laid flat.", "Make it lower, or leave more room."),
            FlangeFaultKind.LiesOverItself => place.Complain(
                $"At {at} the flange runs into itself when it is laid flat.", "Make its legs shorter."),
            _ => place.Complain(
                $"At {at} the flange lies over another when it is laid flat.", "Make one of them lower, or leave more room between them."),
        };
    }
}
