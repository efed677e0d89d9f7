using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>Galvanic corrosion: common practice, no source.</summary>
public class DissimilarMetalsTests
{
    public static TheoryData<Material, Material, int> Pairs() => new()
    {
        { Plates.Soft, Plates.Mild, 1 },
        { Plates.Mild, Plates.Soft, 1 },
        { Plates.Soft, Plates.Stainless, 1 },
        { Plates.Stainless, Plates.Soft, 1 },
        { Plates.Soft, Plates.Soft, 0 },
        { Plates.Mild, Plates.Stainless, 0 },
        { Plates.Soft, Material.Unstated, 0 },
        { Material.Unstated, Plates.Mild, 0 },
    };

    [Theory, MemberData(nameof(Pairs))]
    public void Aluminium_and_steel_want_keeping_apart(Material own, Material against, int warnings) =>
        Assert.Equal(warnings, DissimilarMetals.Of(Plates.With() with { Material = own }, against).Count());

    [Fact]
    public void The_warning_lies_on_metal()
    {
        var ring = Plates.With(Plates.Round(100, 50, 60)) with { Material = Plates.Soft };
        Assert.True(ring.Shape.Contains(Assert.Single(DissimilarMetals.Of(ring, Plates.Mild)).At));
    }
}
