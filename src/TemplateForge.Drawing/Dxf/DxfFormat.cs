using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TemplateForge.Drawing;

/// <summary>Which DXF a controller takes.</summary>
/// <param name="Name">By which a job asks for it.</param>
/// <param name="Release">Release of the format.</param>
/// <param name="Unit">Unit of every length in the file.</param>
public sealed record DxfFormat(string Name, DxfRelease Release, DxfUnit Unit)
{
    public static DxfFormat Usual { get; } = new("r2000", DxfRelease.R2000, DxfUnit.Millimetre);

    public static ImmutableArray<DxfFormat> All { get; } =
    [
        Usual,
        new("r2000-in", DxfRelease.R2000, DxfUnit.Inch),
        new("r12", DxfRelease.R12, DxfUnit.Millimetre),
        new("r12-in", DxfRelease.R12, DxfUnit.Inch),
    ];

    /// <summary>The one of this name; capitals are understood.</summary>
    public static bool TryNamed(string name, [MaybeNullWhen(false)] out DxfFormat format)
    {
        format = All.FirstOrDefault(f => f.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        return format is not null;
    }
}

/// <summary>A release of the DXF format that this project writes.</summary>
public enum DxfRelease
{
    /// <summary>AC1015: polylines with bulges as one entity, the unit in the header. What every controller of this century takes.</summary>
    R2000,

    /// <summary>AC1009, for old controllers: polylines as a run of vertices; it has no place for a unit.</summary>
    R12,
}
