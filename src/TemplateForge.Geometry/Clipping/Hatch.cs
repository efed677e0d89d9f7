using System.Collections.Immutable;

namespace TemplateForge.Geometry;

/// <summary>Parallel lines that mark an area on a drawing.</summary>
public static class Hatch
{
    /// <summary>
    /// Parallel lines inside the region, from side to side in order. They stand at whole multiples of the spacing from the origin
    /// whatever the region, so that the hatches of neighbouring drawings line up.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is not more than 0.</exception>
    public static ImmutableArray<Path> HatchLines(this Region region, double spacing, Angle direction)
    {
        if (!(spacing > 0)) throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "A spacing is more than 0.");
        if (region.IsEmpty) return [];
        var along = Vector.Polar(1, direction);
        double From(Vector way) => (region.Extreme(way) - Point.Origin).Dot(way);
        var (begin, end) = (-From(-along) - 1, From(along) + 1);
        var (first, last) = (Math.Ceiling(-From(-along.Left) / spacing), Math.Floor(From(along.Left) / spacing));

        var lines = ImmutableArray.CreateBuilder<Path>();
        for (var i = first; i <= last; i++)
        {
            var on = Point.Origin + along.Left * (i * spacing);
            lines.AddRange(Path.Line(on + along * begin, on + along * end).PartsInside(region));
        }
        return lines.ToImmutable();
    }
}
