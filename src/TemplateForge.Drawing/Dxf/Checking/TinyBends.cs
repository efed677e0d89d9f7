using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Lines and arcs too short for a torch to turn on.</summary>
/// <remarks>One that goes on smoothly from what is before it into what comes after is run through and not told: leaving it out would move
/// nothing by more than its length times the sine of <see cref="Smooth"/>, 0.002 mm.</remarks>
internal static class TinyBends
{
    /// <summary>By how much, in radians, the course may turn in all: 1°.</summary>
    private const double Smooth = Math.PI / 180;

    public static IEnumerable<DxfFinding> In(DxfChain chain)
    {
        for (var i = 0; i < chain.Segments.Length; i++)
        {
            if (chain.Segments[i].Length < DxfCheck.Tiny && !IsSmooth(chain, i))
                yield return new(DxfFindingKind.TinyArc, chain.Layer, chain.Line, chain.Segments[i].Start, chain.Segments[i].Length, chain.Segments[i].IsLine ? "line" : "arc");
        }
    }

    private static bool IsSmooth(DxfChain chain, int at)
    {
        var (segments, count) = (chain.Segments, chain.Segments.Length);
        if (count < 3 || (!chain.IsClosed && (at == 0 || at == count - 1))) return false;
        var (before, tiny, after) = (segments[(at + count - 1) % count], segments[at], segments[(at + 1) % count]);
        return Math.Abs(tiny.Sweep.Radians) + Turn(before.EndDirection, tiny.StartDirection) + Turn(tiny.EndDirection, after.StartDirection) <= Smooth;
    }

    private static double Turn(Vector from, Vector to) => Math.Abs(Math.Atan2(from.Cross(to), from.Dot(to)));
}
