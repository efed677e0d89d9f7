using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in seams, plug welds and patterns of holes.</summary>
internal static partial class Wordings
{
    public static Complaint NothingToStrip(Place place) =>
        place.Complain("No part of the sheet lies beside this seam.", "Say under within: which sheet is stripped, or check where the seam goes.");

    public static Complaint PlugHolesAreRound(Place place, string shape, Geometry.Point at) =>
        place.Complain($"{shape} has a part at ({Mm(at.X)}, {Mm(at.Y)}) that is neither a round hole nor a slot with round ends.", "Name a shape of circles or slots.");

    public static Complaint HolesWouldMeet(Place place, double pitch, double diameter) =>
        place.Complain($"Holes of {Mm(diameter)} meet at a pitch of {Mm(pitch)}.", $"Give a pitch of more than {Mm(diameter)}.");

    public static Complaint HolesWouldBreakOut(Place place, double edge, double diameter) =>
        place.Complain($"Holes of {Mm(diameter)} break out of the edge when their middles are {Mm(edge)} from it.", $"Give an edge distance of more than {Mm(diameter / 2)}.");

    public static Complaint NoRoomForHoles(Place place, string shape, double edge) =>
        place.Complain($"No point of {shape} is {Mm(edge)} from its edge and on the pattern.", "Lower edge_distance, or make the shape larger.");

    public static Complaint NoRowBeside(Place place, double inset) =>
        place.Complain($"{Mm(inset)} beside this edge there is no single line for the row.", "Lower the inset, or give the row a path of its own.");

    public static Complaint UnknownShopStep(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "step of the shop", known);
}
