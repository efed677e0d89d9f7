using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Pieces to try things on.</summary>
internal static class Pieces
{
    /// <summary>A panel 200 × 100 with a 60 × 40 bite out of its lower edge.</summary>
    public static Piece Bitten { get; } = CutAway(
        Region.Of(Outline.Rectangle(new(new(70, -10), new(130, 40)))), roughAllowance: 3);

    /// <summary>A plate 80 × 50 with two holes, cut from new sheet.</summary>
    public static Piece Plate { get; } = new()
    {
        Name = "plate",
        Title = "Plate",
        Kind = PieceKind.Blank,
        Shape = Region.Of(Outline.Rectangle(new(new(0, 0), new(80, 50))))
            .Subtract(Region.Of(Outline.Circle(new(20, 25), 5)))
            .Subtract(Region.Of(Outline.Circle(new(60, 25), 5))),
        Thickness = 1,
        FaceUp = "outer face",
        Datums = [new("A", new(20, 25), 10)],
        Arrows = [new("FRONT", Angle.Zero), new("UP", Angle.QuarterTurn)],
        Checks = [new("Across", new(0, 0), new(80, 50), CheckDirection.Across)],
        Tacks = [new(1, new(40, 50))],
        CentreLines = [new(new(0, 25), new(80, 25))],
        GuideLines = [new("zone", Region.Of(Outline.Circle(new(20, 25), 8)))],
    };

    public static Piece CutAway(Region opening, double roughAllowance)
    {
        var panel = Region.Of(Outline.Rectangle(new(new(0, 0), new(200, 100))));
        return new()
        {
            Name = "panel",
            Title = "Panel",
            Kind = PieceKind.CutAway,
            Before = panel,
            Shape = panel.Subtract(opening),
            Thickness = 1,
            RoughAllowance = roughAllowance,
            FaceUp = "outer face",
        };
    }
}
