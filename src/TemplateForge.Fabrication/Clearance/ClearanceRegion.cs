using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The region of a panel that lies nearer to some components than a clearance, anywhere through the sheet.</summary>
public static class ClearanceRegion
{
    /// <summary>The least clearance that is reckoned, in mm: less is a fit.</summary>
    public const double LeastClearance = 0.5;

    /// <summary>How far the outline may stray, in mm: its distance from the components differs from the clearance by no more.</summary>
    public const double MostError = 0.02;

    // The outline is aimed at with a quarter of what is promised, and looked at when it is done.
    private const double Aim = 0.005;
    private const double Accepted = 0.01;
    private const int MostTries = 4;
    private const double LargestCell = 1, MostCells = 16_384;

    /// <summary>What must be cut away: lines and arcs, in as many parts and with as many holes as there are.</summary>
    /// <param name="components">The components, each in all its positions.</param>
    /// <param name="clearance">The distance to be kept, in mm, <see cref="LeastClearance"/> at least.</param>
    /// <remarks>
    /// f(x, y) is the least distance over the components, their positions and the depths of the sheet; the region is where f is less
    /// than the clearance. By distance, never by scaling an outline. See docs/clearance.md.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A value lies outside the range given beside it.</exception>
    public static Region Of(IEnumerable<Component> components, double clearance)
    {
        if (!(clearance >= LeastClearance && double.IsFinite(clearance)))
            throw new ArgumentOutOfRangeException(nameof(clearance), clearance, $"A clearance is {LeastClearance} mm at least.");
        var field = new ClearanceField(components);
        var bounds = field.Bounds.Grown(clearance);
        if (Math.Max(bounds.Width, bounds.Height) > LargestSize(clearance))
            throw new ArgumentOutOfRangeException(nameof(components), bounds, $"With this clearance components are {LargestSize(clearance)} mm long at most.");
        var cell = CellFor(clearance);
        for (var tries = 0; ; tries++)
        {
            var region = Traced(field, clearance, cell / (1 << tries), Aim / (1 << tries));
            if (tries == MostTries - 1 || Error(region, field, clearance) <= Accepted) return region;
        }
    }

    /// <summary>How long or wide everything may be with its clearance, in mm, as it is seen from above.</summary>
    public static double LargestSize(double clearance) => MostCells * CellFor(clearance);

    // Half the diagonal r of a cell with r² / 2c = 0.01 mm: what is missed for being smaller comes no nearer than that.
    private static double CellFor(double clearance) => Math.Min(Math.Sqrt(0.04 * clearance), LargestCell);

    private static Region Traced(ClearanceField field, double clearance, double cell, double tolerance)
    {
        var cells = new ClearanceCells(field, clearance, cell);
        var boundary = new ClearanceBoundary(cells, cell, tolerance);
        return Region.FromContours(cells.Loops().SelectMany(boundary.Contours));
    }

    /// <summary>By how much the distance of the outline differs from the clearance at three places of every line and arc.</summary>
    private static double Error(Region region, ClearanceField field, double clearance)
    {
        var most = 0.0;
        foreach (var segment in region.Contours.SelectMany(c => c.Segments))
        {
            for (var i = 0; i < 3; i++) most = Math.Max(most, Math.Abs(field.At(segment.At((i + 0.5) / 3)).Distance - clearance));
        }
        return most;
    }
}
