using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Developing;

/// <summary>A flat pattern rolled up again: the section walked in many short chords, each with the face across the sheet from it.</summary>
/// <remarks>Shares nothing with what lays the panel flat but the points of the section's own lines and arcs.</remarks>
internal sealed class RolledUpPanel
{
    private const int Chords = 800;

    private readonly List<Point> _near = [];
    private readonly List<Point> _far = [];
    private readonly List<double> _nearLength = [0];
    private readonly List<double> _farLength = [0];

    /// <param name="section">Of the outside, drawn across.</param>
    /// <param name="thickness">The inside lies so far to the right of it.</param>
    public RolledUpPanel(Path section, double thickness)
    {
        foreach (var s in section.Segments)
        {
            for (var i = _near.Count == 0 ? 0 : 1; i <= Chords; i++) _near.Add(s.At((double)i / Chords));
        }
        for (var i = 0; i < _near.Count; i++)
        {
            var way = (_near[Math.Min(i + 1, _near.Count - 1)] - _near[Math.Max(i - 1, 0)]).Unit;
            _far.Add(_near[i] - way.Left * thickness);
        }
        for (var i = 1; i < _near.Count; i++)
        {
            _nearLength.Add(_nearLength[^1] + _near[i].DistanceTo(_near[i - 1]));
            _farLength.Add(_farLength[^1] + _far[i].DistanceTo(_far[i - 1]));
        }
    }

    /// <summary>The length along a face at which it lies so far across, or, with another measure, is seen somewhere.</summary>
    public double LengthWhere(Func<Point, double> seen, double wanted, bool inside)
    {
        var (points, lengths) = inside ? (_far, _farLength) : (_near, _nearLength);
        for (var i = 1; i < points.Count; i++)
        {
            var (a, b) = (seen(points[i - 1]), seen(points[i]));
            if (a <= wanted && b >= wanted) return lengths[i - 1] + (lengths[i] - lengths[i - 1]) * (wanted - a) / (b - a);
        }
        throw new ArgumentOutOfRangeException(nameof(wanted), wanted, "The section does not reach that far.");
    }

    /// <summary>The points on both faces, across the sheet from each other, so far along the face that the pattern lies on.</summary>
    public (Point Outside, Point Inside) At(double along, bool inside)
    {
        var lengths = inside ? _farLength : _nearLength;
        var i = Math.Clamp(lengths.BinarySearch(along) is var found && found < 0 ? ~found : found, 1, lengths.Count - 1);
        var share = (along - lengths[i - 1]) / (lengths[i] - lengths[i - 1]);
        return (_near[i - 1] + (_near[i] - _near[i - 1]) * share, _far[i - 1] + (_far[i] - _far[i - 1]) * share);
    }
}
