namespace TemplateForge.Geometry;

/// <summary>Discs of one size in which it is known beforehand what is inside, so that no ray need be cast there.</summary>
internal sealed class KnownDiscs
{
    /// <summary>So many are asked, the likely ones first; not to be sure costs less than to ask them all.</summary>
    private const int MostAsked = 40;

    private readonly Buffer<Point> _centres = new();
    private double _radius;

    public int Count => _centres.Count;

    /// <summary>A winding number that is on the same side of the question as all that there are in the discs.</summary>
    public int Winding { get; private set; }

    /// <summary>The number of a disc that lies near what is added next.</summary>
    public int Near { get; set; }

    public void Clear()
    {
        _centres.Clear();
        Near = 0;
    }

    /// <summary>From now on every disc has this radius in mm.</summary>
    public void Of(double radius, int winding) => (_radius, Winding) = (radius, winding);

    public void Add(Point centre) => _centres.Add(centre);

    /// <summary>Whether a disc is found that holds everything about a point as far as this.</summary>
    /// <param name="point">The point.</param>
    /// <param name="around">How far in mm.</param>
    /// <param name="hint">The number of a disc near which one is likely.</param>
    public bool Hold(Point point, double around, int hint)
    {
        // A hundred tolerances inside, so that it does not matter what the tolerance does to the boundary.
        var reach = _radius - around - 100 * Tolerance.Merge;
        if (reach <= 0) return false;
        var centres = _centres.Items;
        var square = reach * reach;
        var step = 1 + centres.Length / MostAsked;
        for (var i = hint % step; i < centres.Length; i += step)
        {
            if ((centres[i] - point).LengthSquared < square) return true;
        }
        if (step == 1) return false;
        for (var i = Math.Max(0, hint - 4); i < Math.Min(centres.Length, hint + 4); i++)
        {
            if ((centres[i] - point).LengthSquared < square) return true;
        }
        return false;
    }
}
