using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What is written on wraps of tubes and cones alike.</summary>
internal static class WrapWords
{
    public static string Seam(Angle seam) => FormattableString.Invariant($"seam at {Degrees(seam)}");

    public static string LapLine(Angle seam) => FormattableString.Invariant($"lay the seam edge here, {Degrees(seam)}");

    public static string Degrees(Angle angle) => FormattableString.Invariant($"{Turn(angle):0.##}°");

    public static string Mm(double length) => FormattableString.Invariant($"{length:0.##} mm");

    /// <summary>From 0 up to a full turn, in degrees; what is all but a full turn is none.</summary>
    public static double Turn(Angle angle)
    {
        var degrees = Math.Round(angle.Degrees, 9) % 360;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /// <summary>The generators that are drawn: evenly round from 0°, and those with names, in the order in which they lie from the seam on;
    /// not the seam itself.</summary>
    public static IEnumerable<Angle> Drawn(Angle seam, int divisions, IEnumerable<Angle> named)
    {
        const double least = 0.01; // nearer than that, in degrees, two lines are one
        var all = Enumerable.Range(0, divisions).Select(i => 360.0 * i / divisions).Concat(named.Select(Turn))
            .Select(a => (a - Turn(seam) + 720) % 360).Where(a => a > least && a < 360 - least).Order();
        var last = 0.0;
        foreach (var past in all)
        {
            if (past - last <= least) continue;
            last = past;
            yield return seam + Angle.FromDegrees(past);
        }
    }

    public static bool IsQuarter(Angle angle) => Math.Abs(Turn(angle) / 90 - Math.Round(Turn(angle) / 90)) < 1e-6;

    public static string LiningUp(WrapMaterial material) => material.IsRolled
        ? "Roll it with this face outwards. Pencil the generators: they stay straight, so press or roll along them."
        : "Scribe a straight line along the work where 0° is to be, lay the 0° line on it and keep the edge tight; with the upper end up, angles count to the right.";

    public static ImmutableArray<string> Seams(double lap, WrapMaterial material) => lap > 0
        ? [material.IsRolled ? $"The lap of {Mm(lap)} goes under the seam edge, up to its line." : $"Tape the lap of {Mm(lap)} under the seam edge, which lies on its line."]
        : [material.IsRolled ? "The seam's edges butt." : "The seam's edges meet and do not lap: a gap or an overlap says that the diameter is another one."];
}
