using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What is complained of in components and the room for them.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownComponent(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "component", known);

    public static Complaint HalfProfileBelowAxis(Place place, double least) =>
        place.Complain($"This half-profile reaches {Mm(-least)} across its axis.", "Draw one half only: along the axis, and up the radius, which is 0 or more.");

    public static Complaint ThreeLengthsWanted(Place place) =>
        place.Complain("A box has three sizes.", "Write [length, width, height].");

    public static Complaint ComponentsTooLarge(Place place, double size, double most) =>
        place.Complain($"With their clearance these components are {Mm(size)} across.", $"Keep them to {Mm(Math.Floor(most))} with so small a clearance, or ask for more clearance.");

    public static Complaint ComponentIsNoShape(Place place, string function, string component) =>
        place.Complain($"{function} measures shapes and points, and {component} is a component.", $"Ask it of the shape that is cleared for {component}, or write clearance_of(shape, {component}).");

    public static Complaint ClearanceOfWhat(Place place, string function, IEnumerable<string> of) =>
        place.Complain($"{function}({string.Join(", ", of)}) has no answer.", $"Write {function}(shape, component).");
}
