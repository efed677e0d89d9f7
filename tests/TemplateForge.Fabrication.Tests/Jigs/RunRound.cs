using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Jigs;

/// <summary>A guide run round a plate by points alone: it touches the plate and never lies over it; what its cutter leaves is measured.</summary>
/// <remarks>
/// Knows nothing of offsets. The plate's edge is points 0.2 mm apart. From each the guide's middle is tried a guide radius off, square to the
/// chords on either side and on the ways between; it counts where no point of the plate is nearer to it than that radius.
/// </remarks>
internal sealed class RunRound
{
    private const double Spacing = 0.2;

    private readonly Grid _middles = new(4);

    /// <param name="plate">The plate.</param>
    /// <param name="guide">Diameter of what runs round it.</param>
    /// <param name="within">Where it is run; points of the plate further off are not looked at.</param>
    public RunRound(Region plate, double guide, Box within)
    {
        var radius = guide / 2;
        var points = new List<Point>();
        var tried = new List<Point>();
        foreach (var contour in plate.Contours)
        {
            var own = contour.PointsEvery(Spacing);
            for (var i = 0; i < own.Length; i++)
            {
                if (!within.Contains(own[i])) continue;
                points.Add(own[i]);
                var before = Outwards(own[i] - own[(i + own.Length - 1) % own.Length]);
                var after = Outwards(own[(i + 1) % own.Length] - own[i]);
                // Round a corner the guide's middle swings on its radius, in steps no wider than those along the edge.
                var steps = (int)Math.Ceiling(Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) * radius / Spacing);
                for (var k = 0; k <= steps; k++) tried.Add(own[i] + (before * (steps - k) + after * k + after * (steps == 0 ? 1 : 0)).Unit * radius);
            }
        }
        var near = new Grid(Math.Max(4, radius));
        foreach (var point in points) near.Add(point);
        // Points 0.2 mm apart on an edge that a bush touches: it may seem to sink in by the rise over half of that, 0.1² / 2r.
        foreach (var middle in tried.Where(m => near.Nearest(m, radius) >= radius - 2e-3)) _middles.Add(middle);
    }

    /// <summary>How far the cut edge lies from where it should be, at a point of the finish line: above 0 metal is left, below it is cut away.</summary>
    public double Off(Point finish, double cut) => _middles.Nearest(finish, cut / 2 + 3) - cut / 2;

    private static Vector Outwards(Vector chord) => -chord.Unit.Left;

    private sealed class Grid(double cell)
    {
        private readonly Dictionary<(int, int), List<Point>> _cells = [];

        public void Add(Point point)
        {
            if (!_cells.TryGetValue(Key(point), out var list)) _cells[Key(point)] = list = [];
            list.Add(point);
        }

        /// <summary>Distance to the nearest, or something larger than the reach where none is within it.</summary>
        public double Nearest(Point point, double reach)
        {
            var (least, steps, (x, y)) = (double.PositiveInfinity, (int)Math.Ceiling(reach / cell) + 1, Key(point));
            for (var i = x - steps; i <= x + steps; i++)
            {
                for (var j = y - steps; j <= y + steps; j++)
                {
                    if (_cells.TryGetValue((i, j), out var list)) least = Math.Min(least, list.Min(p => p.DistanceTo(point)));
                }
            }
            return least;
        }

        private (int, int) Key(Point point) => ((int)Math.Floor(point.X / cell), (int)Math.Floor(point.Y / cell));
    }
}
