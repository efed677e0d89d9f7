using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in transitions.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownTransition(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "transition", known);

    public static Complaint PartsOrFits(Place place) =>
        place.Complain("parts and fits both say into how many parts it goes.", "Keep one of them.");

    public static Complaint PathCloses(Place place, string name) =>
        place.Complain($"The path {name} ends where it begins.", "Draw a closed outline under shapes.");

    public static Complaint OneEndCloses(Place place, string lower, string upper) =>
        place.Complain($"Of {lower} and {upper} one is a closed shape and the other an open path.", "Make both shapes, or both paths.");

    public static Complaint NoSeamToPlace(Place place) =>
        place.Complain("A sheet between two open paths has no seam to place.", "Leave seam_at out.");

    public static Complaint NoSuchPart(Place place, int number, int parts) =>
        place.Complain(
            string.Create(CultureInfo.InvariantCulture, $"There is no part {number}: the transition is made in {parts}."),
            string.Create(CultureInfo.InvariantCulture, $"Ask for a part from 1 to {parts}."));

    public static Complaint FitsNoSheet(Place place, double length, double width, int parts) =>
        place.Complain(
            string.Create(CultureInfo.InvariantCulture, $"Even in {parts} parts it does not fit sheets of {Mm(length)} by {Mm(width)}."),
            "Take a larger sheet, or make the transition shorter.");

    public static Complaint TransitionFault(Place place, TransitionFault fault) => fault switch
    {
        Fabrication.TransitionFault.OutlinesCross => place.Complain(
            "The two outlines cannot be joined: one does not lie wholly on its own side of the other's plane.",
            "Put more height between them, or tilt them less."),
        Fabrication.TransitionFault.LiesOverItself => place.Complain(
            "A part would lie over itself when it is flat.",
            "Make it in more parts."),
        _ => place.Complain(
            "The two outlines cannot be joined: somewhere the sheet would fold back on itself.",
            "Draw them alike, both the same way round, and put more height between them."),
    };
}
