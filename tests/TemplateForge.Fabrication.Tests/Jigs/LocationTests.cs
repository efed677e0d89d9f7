using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Jigs;

public class LocationTests
{
    // A plate moves in three ways: along, up, and turning. What holds it is a row (n, r × n) for each hold; three rows, independent, locate it
    // exactly, and a fourth would over-locate it.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Three_holds_locate_the_plate_never_more(bool stops)
    {
        var work = TrialJigs.Work(TrialJigs.Notch());
        var location = stops ? TrialJigs.StopsAndPin(work) : TrialJigs.PinAndSlot(work);
        var rows = location.Locators.SelectMany(l => l.Holds.Select(n => (n.X, n.Y, Turn: (l.At - Point.Origin).Cross(n)))).ToList();
        Assert.Equal(3, rows.Count);
        var ((a, b, c), (d, e, f), (g, h, i)) = (rows[0], rows[1], rows[2]);
        var determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
        Assert.True(Math.Abs(determinant) > 40);
    }

    [Fact]
    public void The_slot_points_to_the_round_pin()
    {
        var slot = TrialJigs.PinAndSlot(TrialJigs.Work(TrialJigs.Notch())).Locators[1];
        Assert.Equal(LocatorKind.PinInSlot, slot.Kind);
        Approximately.Equal(new Vector(1, 0), slot.Free, within: 1e-12);
    }

    [Fact]
    public void Stops_touch_the_edge_from_outside_and_the_pins_slot_runs_square_to_it()
    {
        var location = TrialJigs.StopsAndPin(TrialJigs.Work(TrialJigs.Notch()));
        Approximately.Equal(new Point(15, -4), location.Locators[0].At, within: 1e-9);
        Approximately.Equal(0, location.Locators[2].Free.Dot(new(1, 0)), within: 1e-12);
        var plate = TrialJigs.Made(TrialJigs.Design(TrialJigs.Notch(), GuideEdge.Bush(17, 6)) with { Location = location });
        Approximately.Equal(-25, plate.Outline.Bounds.Min.Y, within: 1e-6);
    }

    [Fact]
    public void What_stands_too_close_or_off_the_edge_or_in_no_hole_is_refused()
    {
        var (work, faults) = (TrialJigs.Work(TrialJigs.Notch()), new List<JigFault>());
        Assert.False(Location.TryPinAndSlot(work.Datums[0], new("B", new(70, 30), 8), faults, out _));
        Assert.False(Location.TryPinAndSlot(work.Datums[0], new("B", new(360, 30), 0), faults, out _));
        Assert.False(Location.TryPinAndSlot(work.Datums[0], new("B", new(360, 30), 31), faults, out _));
        Assert.False(Location.TryStopsAndPin(work.Before, new(15, 0), new(385, 5), work.Datums[0], faults, out _));
        Assert.False(Location.TryStopsAndPin(work.Before, new(15, 0), new(0, 100), work.Datums[0], faults, out _));
        Assert.Equal(
            [JigFaultKind.LocatorsTooNear, JigFaultKind.NoHoleForPin, JigFaultKind.HoleTooLarge, JigFaultKind.StopOffEdge, JigFaultKind.StopOffEdge],
            faults.Select(f => f.Kind));
    }
}
