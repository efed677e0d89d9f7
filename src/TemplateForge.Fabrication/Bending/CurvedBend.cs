using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A bend along an arc, worked over a former: no brake makes it.</summary>
/// <param name="Number">The place of the bend in the order of bending, from 1.</param>
/// <param name="Middle">The middle of what is bent.</param>
/// <param name="Held">The tangent line on the side that is held.</param>
/// <param name="Turned">The tangent line on the side of the flange.</param>
/// <param name="Bend">How far the sheet is bent, from flat.</param>
/// <param name="Overbend">How far it is bent before it springs back.</param>
/// <param name="Way">Towards the face that is up or away from it.</param>
/// <param name="InsideRadius">In mm.</param>
public sealed record CurvedBend(int Number, Path Middle, Path Held, Path Turned, Angle Bend, Angle Overbend, BendWay Way, double InsideRadius)
    : IBendOnBlank
{
    public (Path Held, Path Turned) TangentLines => (Held, Turned);

    public double Allowance => Math.Abs(Held.Segments[0].Radius - Turned.Segments[0].Radius);

    /// <summary>The same bend on the piece for the other hand.</summary>
    public CurvedBend Mirrored(Placement mirror) =>
        this with { Middle = Middle.Placed(mirror), Held = Held.Placed(mirror), Turned = Turned.Placed(mirror) };
}
