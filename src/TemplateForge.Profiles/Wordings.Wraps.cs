using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in wraps.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownWrap(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "wrap", known);

    public static Complaint UnknownFlat(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "flanged sheet, wrap or transition", known);

    public static Complaint PaperOrSheet(Place place) =>
        place.Complain("What is rolled from sheet is not wrapped in paper.", "Leave paper out, or do not roll it from sheet.");

    public static Complaint PaperGoesRoundTheOutside(Place place) =>
        place.Complain("Paper goes round the outside, so the outside is measured.", "Leave measured out, or give the sheet that it is rolled from.");

    public static Complaint NotAMultipleOfFour(Place place, int divisions) =>
        place.Complain(
            $"{divisions.ToString(System.Globalization.CultureInfo.InvariantCulture)} lines do not fall on every quarter turn.", "Give 4, 8, 12, 16 or another multiple of 4.");

    public static Complaint TubeIsNotHollow(Place place, double wall, double diameter) =>
        place.Complain($"A wall of {Mm(wall)} leaves no bore in a tube of {Mm(diameter)}.", $"Keep it under {Mm(diameter / 2)}.");

    public static Complaint AngleBetweenWanted(Place place, double degrees, double least, double most) =>
        place.Complain($"This comes to {Plain(degrees)}°.", $"Keep it from {Plain(least)}° to {Plain(most)}°.");

    public static Complaint StandsOutPastTheOther(Place place, double diameter, double offset, double other) =>
        place.Complain(
            $"A tube of {Mm(diameter)}, {Mm(Math.Abs(offset))} off the middle, stands out past the side of one of {Mm(other)}.",
            $"The other must be {Mm(diameter + 2 * Math.Abs(offset))} or more; cut the mouth into the larger of the two.");

    public static Complaint LapTooWide(Place place, double lap, double most) =>
        place.Complain($"A lap of {Mm(lap)} is too wide to go under the seam.", $"Keep it to {Mm(most)}.");

    public static Complaint TopAsLargeAsBase(Place place, double top, double large) =>
        place.Complain(
            $"A top of {Mm(top)} is not smaller than a base of {Mm(large)}.",
            $"The larger circle is the base; keep the top to {Mm(large * (1 - ConeWrap.LeastTaper))}, or take round_tube.");

    public static Complaint TopTooFarAside(Place place, double aside, double most) =>
        place.Complain($"The top lies {Mm(Math.Abs(aside))} aside, and the cone would lie down.", $"Keep it to {Mm(most)}, or raise the height.");

    public static Complaint ConeTooFlat(Place place, double height, double least) =>
        place.Complain($"A cone {Mm(height)} high is a disc.", $"Raise the height to {Mm(least)} or more.");

    public static Complaint WrapFault(Place place, WrapFault fault, double shortest) => fault switch
    {
        Fabrication.WrapFault.EndsMeet => place.Complain(
            "The ends of the tube run into each other.", $"Make it longer by more than {Mm(-shortest)}, or its ends less steep."),
        Fabrication.WrapFault.HoleTooLarge => place.Complain(
            "A hole is wider than the bore there, and would run along the wall.", "Make it smaller, or bring it nearer to the middle."),
        Fabrication.WrapFault.FootprintTooLarge => place.Complain(
            "What stands on the tube stands out past its side.", "Make it smaller, or bring it nearer to the middle."),
        Fabrication.WrapFault.HoleInTheEnd => place.Complain("A hole runs out of an end of the tube.", "Move it along, or make the tube longer."),
        Fabrication.WrapFault.HolesMeet => place.Complain("Two holes run into each other.", "Move one, or make them smaller."),
        Fabrication.WrapFault.SheetTooThick => place.Complain(
            "The sheet is too thick to be rolled to the small end of the cone.", "Take thinner sheet, or a larger top."),
        _ => place.Complain("The pattern falls apart or runs over itself.", "Make the holes or the lap smaller."),
    };
}
