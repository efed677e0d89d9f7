using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A step across the sheet, so that a lap finishes flush: two equal bends, one each way.</summary>
/// <remarks>
/// From face to face, with ρ = R + T/2 and a straight s between the bends: depth = 2 ρ (1 − cos A) + s sin A, run = 2 ρ sin A + s cos A.
/// That is geometry; no source for the sizes of joggles was found, so angle and radius are the caller's.
/// </remarks>
public sealed record Joggle
{
    /// <param name="depth">From a face to where it continues, in mm, more than 0; the thickness of what laps.</param>
    /// <param name="bend">Of each of the two bends, at most 90°.</param>
    /// <exception cref="ArgumentOutOfRangeException">The bends alone step further than the depth.</exception>
    public Joggle(double depth, Bend bend)
    {
        if (!(depth > 0)) throw new ArgumentOutOfRangeException(nameof(depth), depth, "A joggle is deeper than 0.");
        if (!(bend.Angle <= Steepest(depth, bend.InsideRadius, bend.Thickness)))
        {
            var most = Steepest(depth, bend.InsideRadius, bend.Thickness).Degrees;
            throw new ArgumentOutOfRangeException(
                nameof(bend), bend.Angle.Degrees, FormattableString.Invariant($"A step of {depth} mm takes bends through {most:0.#}° at most."));
        }
        (Depth, Bend) = (depth, bend);
        var middle = bend.InsideRadius + bend.Thickness / 2;
        Straight = Math.Max(0, (depth - 2 * middle * (1 - bend.Angle.Cos)) / bend.Angle.Sin);
        Run = 2 * middle * bend.Angle.Sin + Straight * bend.Angle.Cos;
    }

    public double Depth { get; }
    public Bend Bend { get; }

    /// <summary>What stays flat between the bends, in mm.</summary>
    public double Straight { get; }

    /// <summary>Length of the step along the sheet, from the first tangent line to the last, in mm.</summary>
    public double Run { get; }

    /// <summary>The most that the bends of so deep a step can turn: with nothing flat between them, and no more than 90°.</summary>
    public static Angle Steepest(double depth, double insideRadius, double thickness) =>
        Angle.FromRadians(Math.Acos(Math.Max(0, 1 - depth / (2 * insideRadius + thickness))));

    /// <summary>The folds of the step, and the leg that follows it.</summary>
    /// <param name="way">Which way the sheet steps.</param>
    /// <param name="next">The leg after the step.</param>
    public ImmutableArray<Fold> Folds(BendWay way, Leg next) =>
    [
        new(Bend, way, new(Straight, MeasuredBy.TangentLine)),
        new(Bend, way == BendWay.Up ? BendWay.Down : BendWay.Up, next),
    ];
}
