using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What locates a plate: three holds, one for each way in which a plate can move, never more.</summary>
/// <remarks>
/// Two edge stops hold it square to the edge and against turning; the one pin then stands in a slot that runs square to the edge and holds
/// along it alone. Or a round pin holds both ways, and a second pin, in a slot that points to the first, holds against turning alone.
/// </remarks>
public sealed record Location
{
    private const double LeastApart = 40;

    // Dowel pins as they are sold, ISO 2338 (from memory), as far as the fits go.
    private static readonly ImmutableArray<double> Dowels = [3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30];

    private const double StopDiameter = 8;

    private Location(ImmutableArray<Locator> locators, string distance) => (Locators, Distance) = (locators, distance);

    public ImmutableArray<Locator> Locators { get; }

    /// <summary>The distance by which it is known again, in words.</summary>
    public string Distance { get; }

    /// <summary>A round pin in one datum and a pin in a slot in another.</summary>
    public static bool TryPinAndSlot(Datum pin, Datum slot, ICollection<JigFault> faults, [MaybeNullWhen(false)] out Location location)
    {
        location = null;
        if (!(TryShank(pin, faults, out var shank) & TryShank(slot, faults, out var other))) return false;
        var apart = pin.At.DistanceTo(slot.At);
        if (apart < LeastApart) return Fault(faults, new(JigFaultKind.LocatorsTooNear, slot.At, LeastApart));
        location = new(
            [
                new(LocatorKind.Pin, pin.Label, pin.At, Vector.Zero, shank, pin.Diameter),
                new(LocatorKind.PinInSlot, slot.Label, slot.At, (slot.At - pin.At).Unit, other, slot.Diameter),
            ],
            FormattableString.Invariant($"{pin.Label} to {slot.Label} {apart:0.0} mm"));
        return true;
    }

    /// <summary>Two stops on one straight edge of a panel, and a pin in a datum.</summary>
    /// <param name="panel">The panel before it is cut.</param>
    /// <param name="first">Where one stop touches its edge.</param>
    /// <param name="second">Where the other does.</param>
    /// <param name="pin">The datum.</param>
    /// <param name="faults">What is wrong.</param>
    /// <param name="location">The location.</param>
    public static bool TryStopsAndPin(
        Region panel, Point first, Point second, Datum pin, ICollection<JigFault> faults, [MaybeNullWhen(false)] out Location location)
    {
        location = null;
        if (!TryShank(pin, faults, out var shank)) return false;
        if (first.DistanceTo(second) < LeastApart) return Fault(faults, new(JigFaultKind.LocatorsTooNear, second, LeastApart));
        foreach (var at in (Point[])[first, second])
        {
            if (!panel.Contours.SelectMany(c => c.Segments).Any(s => s.IsLine && s.DistanceTo(at) <= Near && s.DistanceTo(Other(at)) <= Near))
                return Fault(faults, new(JigFaultKind.StopOffEdge, at));
        }
        var along = (second - first).Unit;
        // The panel lies on one side of its edge, the stops stand on the other.
        var outwards = panel.Contains(first.MidpointTo(second) + along.Left) ? -along.Left : along.Left;
        var stop = outwards * (StopDiameter / 2);
        location = new(
            [
                new(LocatorKind.Stop, "1", first + stop, along, StopDiameter, StopDiameter, outwards),
                new(LocatorKind.Stop, "2", second + stop, along, StopDiameter, StopDiameter, outwards),
                new(LocatorKind.PinInSlot, pin.Label, pin.At, outwards, shank, pin.Diameter),
            ],
            FormattableString.Invariant(
                $"{pin.Label} {Math.Abs((pin.At - first).Dot(outwards)):0.0} mm in from the edge, {Math.Abs((pin.At - first).Dot(along)):0.0} mm along it from stop 1"));
        return true;

        Point Other(Point at) => at == first ? second : first;
    }

    public Location Mirrored(Placement mirror) => new([.. Locators.Select(l => l.Mirrored(mirror))], Distance);

    private const double Near = 1e-4;

    // The shank is a dowel of the next size up, its nose turned down to the panel's hole.
    private static bool TryShank(Datum datum, ICollection<JigFault> faults, out double shank)
    {
        shank = Dowels.FirstOrDefault(d => d >= datum.Diameter - Tolerance.Length);
        if (datum.Diameter <= 0) return Fault(faults, new(JigFaultKind.NoHoleForPin, datum.At));
        return shank > 0 || Fault(faults, new(JigFaultKind.HoleTooLarge, datum.At, Dowels[^1]));
    }

    private static bool Fault(ICollection<JigFault> faults, JigFault fault)
    {
        faults.Add(fault);
        return false;
    }
}
