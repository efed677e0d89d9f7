using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Aluminium that is fastened to steel, or steel to aluminium: where they touch and get wet the aluminium is eaten away.</summary>
/// <remarks>Galvanic corrosion; that it wants keeping apart is common practice, no source.</remarks>
public static class DissimilarMetals
{
    /// <summary>One warning, in the middle of the metal, where one is aluminium and the other a steel.</summary>
    public static IEnumerable<Warning> Of(Piece piece, Material against)
    {
        if (!(IsAluminium(piece.Material) && IsSteel(against)) && !(IsSteel(piece.Material) && IsAluminium(against))) yield break;
        var middle = piece.Shape.Centroid();
        yield return new(
            "aluminium against steel",
            $"This is {piece.Material.Title} against {against.Title}: the aluminium corrodes where they touch and get wet. Paint both, keep them apart with sealant, tape or a gasket, and set the fasteners in sealant.",
            piece.Shape.Contains(middle) ? middle : piece.Shape.NearestBoundaryPoint(middle),
            "galvanic corrosion; common practice, no source");
    }

    private static bool IsAluminium(Material material) => material.Family == MetalFamily.Aluminium;

    private static bool IsSteel(Material material) => material.Family is MetalFamily.Steel or MetalFamily.StainlessSteel;
}
