using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A right cone laid flat: arcs about the point that its apex comes to be, exactly.</summary>
/// <remarks>
/// What lies aside of the face by δ, square to it, has circles larger by 2 δ cos α as far apart as before. A cone with a point keeps its angle, and is cut
/// off where it comes to a point.
/// </remarks>
internal sealed class RightCone : IConeDevelopment
{
    private readonly double _sine, _base, _top, _middle;

    public RightCone(ConeWrap cone)
    {
        var (difference, slant) = ((cone.BaseDiameter - cone.TopDiameter) / 2, Math.Sqrt(Square((cone.BaseDiameter - cone.TopDiameter) / 2) + Square(cone.Height)));
        _sine = difference / slant;
        var growth = cone.NeutralAside * cone.Height / slant;
        _base = (cone.BaseDiameter / 2 + growth) / _sine;
        _top = cone.TopDiameter > 0 ? (cone.TopDiameter / 2 + growth) / _sine : 0;
        _middle = cone.Seam.Radians + Math.PI;
        HasTop = _base > Tolerance.Length && (cone.TopDiameter == 0 || _top > Tolerance.Length);
    }

    public bool HasTop { get; }

    public Point Base(double phi) => At(_base, phi);

    public Point Top(double phi) => At(_top, phi);

    public double GrowthAt(double phi) => _base * _sine;

    public ImmutableArray<Segment> BaseArcs(double from, double to) => Arcs(_base, from, to);

    public ImmutableArray<Segment> TopArcs(double from, double to) => _top > 0 ? Arcs(_top, from, to) : [];

    // From the foot of the middle generator, so that nothing is lost where the apex is far off.
    private Point At(double radius, double phi)
    {
        var turn = (phi - _middle) * _sine;
        var half = Math.Sin(turn / 2);
        return new(radius * Math.Sin(turn), _base - radius + 2 * radius * half * half);
    }

    private ImmutableArray<Segment> Arcs(double radius, double from, double to)
    {
        var count = (int)Math.Ceiling((to - from) * _sine / (0.9 * Math.PI));
        double Step(int i) => i == count ? to : from + (to - from) * i / count;
        return [.. Enumerable.Range(0, count).Select(i =>
            Segment.Arc(At(radius, Step(i)), At(radius, Step(i + 1)), Math.Tan((to - from) * _sine / count / 4)))];
    }

    private static double Square(double a) => a * a;
}
