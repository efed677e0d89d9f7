using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Jigs;

/// <summary>Panels and jigs to try things on: a panel 400 × 300 with its lower edge at y = 0.</summary>
internal static class TrialJigs
{
    public static PlateStock Aluminium { get; } = new("aluminium-6", "aluminium plate", 6, 2700, false, [GuideKind.Bush, GuideKind.Scriber, GuideKind.Drill], true);

    public static JigLettering Left { get; } = new("trial, version 3", Hand.Left, true);

    public static Region Panel { get; } = Region.Of(Outline.Rectangle(new(new(0, 0), new(400, 300))));

    /// <summary>A notch in from the lower edge, its inside corners and its mouth rounded.</summary>
    public static Region Notch(double inside = 15, double mouth = 10)
    {
        var cut = Panel.Subtract(Region.Of(Outline.Rectangle(new(new(140, -20), new(260, 80)))));
        var finished = cut;
        if (inside > 0) finished = finished.RoundedCorners(inside, c => c.Y > 10 && c.Y < 200).Region;
        if (mouth > 0) finished = finished.RoundedCorners(mouth, c => c.Y < 1 && c.X > 100 && c.X < 300).Region;
        return finished;
    }

    public static Region WithHole(Contour hole) => Panel.Subtract(Region.Of(hole));

    public static Piece Work(Region finished) => new()
    {
        Name = "panel",
        Title = "Panel",
        Kind = PieceKind.CutAway,
        Before = Panel,
        Shape = finished,
        Thickness = 1,
        FaceUp = "outer face",
        Edges = [Path.Line(new(0, 0), new(400, 0))],
        Datums = [new("A", new(40, 30), 8), new("B", new(360, 30), 6.5)],
        Arrows = [new("FRONT", Angle.Zero), new("UP", Angle.QuarterTurn)],
    };

    public static Location PinAndSlot(Piece work)
    {
        Assert.True(Location.TryPinAndSlot(work.Datums[0], work.Datums[1], new List<JigFault>(), out var location));
        return location;
    }

    public static Location StopsAndPin(Piece work)
    {
        Assert.True(Location.TryStopsAndPin(work.Before, new(15, 0), new(385, 0), work.Datums[0], new List<JigFault>(), out var location));
        return location;
    }

    public static JigDesign Design(Region finished, GuideEdge edge) => new()
    {
        Name = "jig",
        Title = "Jig",
        Work = Work(finished),
        Location = PinAndSlot(Work(finished)),
        Stock = Aluminium,
        Edge = edge,
        Margin = 135,
    };

    public static JigPlate Made(JigDesign design)
    {
        var faults = new List<JigFault>();
        Assert.True(JigPlate.TryMake(design, faults, out var plate), string.Join('\n', faults));
        return plate;
    }

    public static ImmutableArray<JigFault> Refused(JigDesign design)
    {
        var faults = new List<JigFault>();
        Assert.False(JigPlate.TryMake(design, faults, out _));
        return [.. faults];
    }
}
