using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A round hole through the wall of a tube, or where another tube stands on it.</summary>
/// <remarks>
/// Cut square to the wall, it must let a round bar of its diameter pass through the whole wall: at each generator φ it reaches as far as the bar does
/// at any depth ρ of the wall.
/// <code>
///     z(ρ, φ) = (ρ cos φ cos ψ ± √(a² − (ρ sin φ − e)²)) / sin ψ       from where the axes meet, up the tube
/// </code>
/// That is the least and the greatest over the wall, as for <see cref="FishMouth"/>; without a wall the curve in which two cylinders meet.
/// </remarks>
/// <param name="Diameter">2 a, of the bar.</param>
/// <param name="Along">How far up from the tube's lower end point its axis meets the tube's, or passes it.</param>
/// <param name="Round">The generator that its axis points to.</param>
/// <param name="Angle">ψ between its axis and the tube's; below 90° it leans to the upper end as it comes out.</param>
/// <param name="Offset">e, how far its axis passes the tube's, towards greater angles.</param>
public sealed record TubeHole(double Diameter, double Along, Angle Round, Angle Angle, double Offset)
{
    /// <summary>Whether it goes through one side of a tube with this inside radius, and not along its wall.</summary>
    public bool FitsInside(double inside) => Diameter / 2 + Math.Abs(Offset) <= inside + Tolerance.Length;

    /// <summary>Its outline on the pattern, about the generator that it points to, counter-clockwise.</summary>
    /// <param name="inside">Inside radius of the wall, or its outside radius where only the outer face counts.</param>
    /// <param name="outside">Outside radius.</param>
    /// <param name="neutral">Radius at which the pattern keeps its length.</param>
    internal Contour Outlined(double inside, double outside, double neutral)
    {
        var a = Diameter / 2;
        // The furthest generators on either side are those that just touch the bar: at the inside of the wall where they lie on different sides.
        var (most, least) = (Offset + a, Offset - a);
        (most, least) = (most / (most > 0 ? inside : outside), least / (least < 0 ? inside : outside));
        var (middle, half) = ((most + least) / 2, (most - least) / 2);
        return SmoothArcs.Around(At, 0, 2 * Math.PI);

        Point At(double t)
        {
            var phi = Math.Asin(Math.Clamp(middle + half * Math.Cos(t), -1, 1));
            // The upper half of the outline as t goes from 0 to π, the lower half on the way back.
            var z = Math.Sin(t) > -1e-12
                ? WallSection.Furthest(a, inside, outside, -Offset, phi, Angle)
                : -WallSection.Furthest(a, inside, outside, -Offset, Math.PI - phi, Angle);
            return new(phi * neutral, Along + z);
        }
    }
}
