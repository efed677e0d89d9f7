using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A straight bend as it stands on a flat blank: the middle of what is bent, and the tangent lines on either side of it.</summary>
/// <remarks>A bend line is pencilled on the metal and never scribed: a scratch is where the bend would crack.</remarks>
/// <param name="Number">The place of the bend in the order of bending, from 1.</param>
/// <param name="From">One end of the middle line.</param>
/// <param name="To">The other end.</param>
/// <param name="Bend">How far the sheet is bent, from flat; between 0 and 180°.</param>
/// <param name="Overbend">How far it is bent before it springs back, from flat; as far as <paramref name="Bend"/> where nothing is known.</param>
/// <param name="Way">Towards the face that is up or away from it.</param>
/// <param name="InsideRadius">In mm.</param>
/// <param name="Allowance">Width of what is bent, on the flat, in mm: the tangent lines lie half of it on either side.</param>
public sealed record BendLine(
    int Number, Point From, Point To, Angle Bend, Angle Overbend, BendWay Way, double InsideRadius, double Allowance);

/// <summary>Which way a flange turns, as one looks at the face that is up.</summary>
public enum BendWay
{
    /// <summary>Towards whoever looks.</summary>
    Up,

    /// <summary>Away.</summary>
    Down,
}
