using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A curve through places whose directions are known: between two of them a cubic.</summary>
/// <remarks>Of a circle that turns by θ between neighbours h apart it strays by some h θ³ / 1000.</remarks>
internal sealed class PlacesCourse
{
    private readonly BoundaryPlace[] _places;
    private readonly double[] _lengths, _speeds;

    public PlacesCourse(IReadOnlyList<BoundaryPlace> places)
    {
        _places = [.. places];
        (_lengths, _speeds) = (new double[_places.Length], new double[_places.Length]);
        for (var i = 1; i < _places.Length; i++)
        {
            var chord = _places[i].At.DistanceTo(_places[i - 1].At);
            // As fast at the ends as the cubic that touches a circle in its middle too.
            var cos = Math.Cos(_places[i - 1].TurnTo(_places[i]) / 4);
            (_lengths[i], _speeds[i]) = (_lengths[i - 1] + chord, chord / (cos * cos));
        }
    }

    public double Length => _lengths[^1];

    public Point At(double t)
    {
        var (i, u) = Find(t);
        var (from, to) = (_places[i - 1], _places[i]);
        return from.At + (to.At - from.At) * (u * u * (3 - 2 * u))
            + from.Along * (_speeds[i] * u * (1 - u) * (1 - u)) - to.Along * (_speeds[i] * u * u * (1 - u));
    }

    public Vector Derivative(double t)
    {
        var (i, u) = Find(t);
        var (from, to) = (_places[i - 1], _places[i]);
        return ((to.At - from.At) * (6 * u * (1 - u)) + from.Along * (_speeds[i] * (1 - u) * (1 - 3 * u)) + to.Along * (_speeds[i] * u * (3 * u - 2)))
            / (_lengths[i] - _lengths[i - 1]);
    }

    private (int Upper, double Share) Find(double t)
    {
        var i = Array.BinarySearch(_lengths, t);
        i = Math.Clamp(i < 0 ? ~i : i, 1, _lengths.Length - 1);
        return (i, (t - _lengths[i - 1]) / (_lengths[i] - _lengths[i - 1]));
    }
}
