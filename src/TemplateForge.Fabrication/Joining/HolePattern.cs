using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where plug welds, rivets or screws stand: over a region or along a line, spread evenly and no nearer than their pitch.</summary>
/// <remarks>
/// <code>
///      square                 staggered
///      o     o     o          o     o     o      rows √3/2 of the pitch apart at least, so that
///                                o     o         each is the pitch from all its neighbours
///      o     o     o          o     o     o
/// </code>
/// </remarks>
public static class HolePattern
{
    // Lengths that come to whole pitches do so within rounding.
    private const double Same = 1e-9;

    private static readonly double RowsApart = Math.Sqrt(3) / 2;

    /// <summary>Over a region: rows along the drawing, spread so that the outermost stand at the edge distance where the region is a
    /// rectangle; row by row from the bottom, each from the left.</summary>
    /// <param name="region">What they stand on; holes in it are kept clear of as well.</param>
    /// <param name="pitch">The least from any to any other, in mm, more than 0.</param>
    /// <param name="edgeDistance">The least from a centre to the region's edge, in mm, 0 or more.</param>
    /// <param name="staggered">Whether every second row stands between the places of its neighbours.</param>
    /// <returns>Their centres; none where the region has no room for one.</returns>
    public static ImmutableArray<Point> Over(Region region, double pitch, double edgeDistance, bool staggered)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitch);
        ArgumentOutOfRangeException.ThrowIfNegative(edgeDistance);
        var box = region.Bounds;
        var (width, height) = (box.Width - 2 * edgeDistance, box.Height - 2 * edgeDistance);
        if (region.IsEmpty || width < -Tolerance.Length || height < -Tolerance.Length) return [];
        var rows = Spread(height, staggered ? pitch * RowsApart : pitch);
        var columns = Spread(width, pitch);
        var step = columns.Length > 1 ? columns[1] - columns[0] : 0;
        var origin = new Vector(box.Min.X + edgeDistance, box.Min.Y + edgeDistance);
        var places = ImmutableArray.CreateBuilder<Point>();
        for (var row = 0; row < rows.Length; row++)
        {
            // A lone column has nothing to stand between; there only rows as far apart as the pitch would do.
            var between = staggered && row % 2 == 1 && columns.Length > 1;
            foreach (var x in between ? columns[..^1].Select(c => c + step / 2) : columns)
            {
                var place = new Point(x, rows[row]) + origin;
                if (IsClear(place)) places.Add(place);
            }
        }
        return staggered && columns.Length == 1 ? Over(region, pitch, edgeDistance, staggered: false) : places.ToImmutable();

        bool IsClear(Point place) =>
            region.BoundaryDistanceTo(place) >= edgeDistance - Tolerance.Length && (region.Contains(place) || region.BoundaryDistanceTo(place) <= Tolerance.Length);
    }

    /// <summary>How many there would be at most over a rectangle as large as the region is across and up.</summary>
    public static double MostOver(Region region, double pitch) =>
        region.IsEmpty ? 0 : (region.Bounds.Width / pitch + 1) * (region.Bounds.Height / (RowsApart * pitch) + 1);

    /// <summary>Along a line, from one margin to the other; in its middle where there is room for one only.</summary>
    /// <param name="line">The line.</param>
    /// <param name="pitch">The least from one to the next along it, in mm, more than 0.</param>
    /// <param name="margin">From both ends to the first and the last, in mm; 0 to half its length.</param>
    public static ImmutableArray<Point> Along(Path line, double pitch, double margin)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitch);
        ArgumentOutOfRangeException.ThrowIfNegative(margin);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(margin, line.Length / 2);
        return [.. Spread(line.Length - 2 * margin, pitch).Select(d => line.PointAlong(Math.Clamp(margin + d, 0, line.Length)))];
    }

    // Distances from 0 to the length, evenly and no nearer than the pitch; the middle alone where only one fits.
    private static double[] Spread(double length, double pitch)
    {
        var gaps = (int)Math.Floor(Math.Max(0, length) / pitch + Same);
        return gaps == 0 ? [length / 2] : [.. Enumerable.Range(0, gaps + 1).Select(i => length * i / gaps)];
    }
}
