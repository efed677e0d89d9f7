using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>How things are joined, in words.</summary>
internal static partial class Wording
{
    public const string BareToHere = "bare to here on both faces";

    /// <summary>A seam that is welded in short runs.</summary>
    public static string WeldSeamOf(WeldSeam seam)
    {
        var runs = seam.Runs.Length == 1
            ? string.Create(CultureInfo.InvariantCulture, $"Run {seam.Runs[0].Number}, {seam.LongestRun:0.#} mm long")
            : string.Create(CultureInfo.InvariantCulture, $"Runs {seam.Runs[0].Number} to {seam.Runs[^1].Number}, each {LengthsOf(seam)} mm long, {Short(Math.Round(seam.Length))} mm in all");
        var order = seam.Order == WeldOrder.Skip
            ? "in the order of the ringed numbers, each far from the one before; lay each as its arrow points"
            : "in the order of the ringed numbers, each laid as its arrow points, back to where the one before it was begun";
        return $"{runs}: {order}. Let each go cold to the hand before its neighbour.";
    }

    /// <summary>Where zinc comes off.</summary>
    public static string ZincStripOf(ZincStrip strip)
    {
        var where = strip.Limits.IsEmpty ? "that is all of the piece" : "to the dashed line on the face that is up, and just as far on the other";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Zinc and paint off {Short(strip.Width)} mm on either side of the weld, {where}: {strip.Zone.Area / 100:0.#} cm² on each face, and as much to re-coat.");
    }

    private static string LengthsOf(WeldSeam seam)
    {
        var shortest = seam.Runs.Min(r => r.Along.Length);
        return seam.LongestRun - shortest < 0.05
            ? string.Create(CultureInfo.InvariantCulture, $"{seam.LongestRun:0.#}")
            : string.Create(CultureInfo.InvariantCulture, $"{shortest:0.#} to {seam.LongestRun:0.#}");
    }

    /// <summary>Everything that is said of how a piece is joined.</summary>
    public static ImmutableArray<string> JoiningOf(Piece piece) =>
        [.. piece.ZincStrips.Select(ZincStripOf), .. piece.WeldSeams.Select(WeldSeamOf)];
}
