using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One pin or stop.</summary>
/// <param name="Kind">How it holds.</param>
/// <param name="Label">The datum in whose hole it stands, or the number of the stop.</param>
/// <param name="At">The middle of its hole in the plate.</param>
/// <param name="Free">The direction of the slot or of the panel's edge, of length 1; nothing for a round pin.</param>
/// <param name="Diameter">Of its shank, in mm: of the round hole, or the width of the slot.</param>
/// <param name="Nose">Of what stands in the panel's hole, in mm; the shank's of a stop.</param>
/// <param name="Outwards">Of a stop the way out of the panel, of length 1; nothing for a pin.</param>
public sealed record Locator(LocatorKind Kind, string Label, Point At, Vector Free, double Diameter, double Nose, Vector Outwards = default)
{
    /// <summary>How far the middles of a slot's round ends lie apart, in mm: room for holes that are not quite where they should be.</summary>
    public const double SlotLength = 6;

    /// <summary>The hole in the plate.</summary>
    public Contour Hole => Kind == LocatorKind.PinInSlot
        ? Outline.Slot(At - Free * (SlotLength / 2), At + Free * (SlotLength / 2), Diameter)
        : Outline.Circle(At, Diameter / 2);

    /// <summary>The directions in which it holds, each of length 1.</summary>
    public ImmutableArray<Vector> Holds => Kind == LocatorKind.Pin ? [new(1, 0), new(0, 1)] : [Free.Left];

    public Locator Mirrored(Placement mirror) => this with { At = mirror.Of(At), Free = mirror.Of(Free), Outwards = mirror.Of(Outwards) };
}

/// <summary>How a locator holds a plate.</summary>
public enum LocatorKind
{
    /// <summary>A round pin in a round hole: it holds both ways.</summary>
    Pin,

    /// <summary>A round pin in a slot of the plate: it holds square to the slot alone.</summary>
    PinInSlot,

    /// <summary>A pin in a round hole of the plate that stands against the panel's edge: it holds square to the edge alone.</summary>
    Stop,
}
