using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>Plates 1 mm thick with holes, to say something of.</summary>
internal static class Plates
{
    public const double Just = 1e-5;

    public static Material Mild { get; } = new("mild", "mild steel", MetalFamily.Steel, 7850, 0.5, 0.44, 0.3, false);
    public static Material Stainless { get; } = Mild with { Name = "stainless", Title = "stainless steel", Family = MetalFamily.StainlessSteel };
    public static Material Soft { get; } = Mild with { Name = "soft", Title = "soft aluminium", Family = MetalFamily.Aluminium };

    /// <summary>200 × 100 from the origin.</summary>
    public static Piece With(params Contour[] holes) => Of(Outline.Rectangle(new(Point.Origin, new(200, 100))), holes);

    public static Piece Of(Contour outline, params Contour[] holes) => new()
    {
        Name = "plate",
        Title = "Plate",
        Kind = PieceKind.Blank,
        Shape = Region.Of(outline).Subtract(Region.FromContours(holes)),
        Thickness = 1,
        FaceUp = "outer face",
    };

    public static Contour Round(double x, double y, double diameter) => Outline.Circle(new(x, y), diameter / 2);
}
