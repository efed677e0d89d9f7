using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in curved panels.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownCurvedPanel(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "curved panel", known);

    public static Complaint TooFineToFollow(Place place, double within) =>
        place.Complain($"This curve turns too often to be followed within {Mm(within)} by arcs.", "Check its points, or raise within.");

    public static Complaint TooManyPanelSteps(Place place, double step, double count, int most) =>
        place.Complain($"Steps of {Mm(step)} make {Plain(Math.Ceiling(count))} of them along this panel.", $"Take longer ones, so that there are {most} at most.");

    public static Complaint CurvedPanelFault(Place place, CurvedPanelFault fault) => fault.Kind switch
    {
        CurvedPanelFaultKind.RunsBack => place.Complain(
            $"The section stands straight up or runs back at {Mm(fault.Across)} across, so that a place on the straight edge meets it twice.",
            "End the section before that, or turn the straight edge before it is measured."),
        CurvedPanelFaultKind.Hides => place.Complain(
            $"As it is looked at, the panel hides a part of itself at {Mm(fault.Across)} across.", "Tilt the view less, or end the section before that."),
        CurvedPanelFaultKind.PastTheEnd => place.Complain(
            $"{Mm(fault.Across)} across lies past the end of the section.", $"The nearest that it reaches is {Mm(fault.Limit)}: measure more of it, or move the place."),
        CurvedPanelFaultKind.SquareInACorner => place.Complain(
            $"At {Mm(fault.Across)} across the section has a corner, and no view is square to it there.", "Look square at a place beside the corner, or give tilted."),
        CurvedPanelFaultKind.SharpCorner => place.Complain(
            $"At {Mm(fault.Across)} across the section has a sharp corner, so that nobody knows the other face of the sheet.", "Draw the bend as an arc, or measure and lay the pattern on one face."),
        _ => place.Complain(
            $"At {Mm(fault.Across)} across the section turns about a radius that the sheet, {Mm(fault.Limit)} thick, uses up on its other face.", "Measure the radius again, or on the other face."),
    };

    public static Complaint NotCarried(Place place, string what, CurvedPanelFault fault) => fault.Kind == CurvedPanelFaultKind.TooFine
        ? place.Complain($"{what} turns too often on this panel to be followed by arcs.", "Make it or the section simpler.")
        : fault.Kind == CurvedPanelFaultKind.TooSteep
        ? place.Complain(
            $"Where {what} is seen {Mm(fault.Across)} from the datum line, the panel leans {Plain(fault.Limit)}° from the view: a pencil's width there is many on the panel.",
            $"Look square at the panel nearer to it (square_at), so that it leans {Plain(CurvedPanel.Steepest.Degrees)}° at most.")
        : place.Complain(
            $"Where {what} is seen {Mm(fault.Across)} from the datum line, the section has ended: it is seen as far as {Mm(fault.Limit)}.", "Measure more of the section, or move or lower what is carried.");
}
