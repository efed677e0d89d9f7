using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>How things are joined, in words.</summary>
internal static partial class Wording
{
    public const string BareToHere = "bare to here on both faces";

    /// <summary>A seam that is welded in short runs.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="isDrawn">Whether the template has an arrow for each run.</param>
    public static string WeldSeamOf(WeldSeam seam, bool isDrawn)
    {
        var runs = seam.Runs.Length == 1
            ? string.Create(CultureInfo.InvariantCulture, $"Run {seam.Runs[0].Number}, {seam.LongestRun:0.#} mm long")
            : string.Create(CultureInfo.InvariantCulture, $"Runs {seam.Runs[0].Number} to {seam.Runs[^1].Number}, each {LengthsOf(seam)} mm long, {Short(Math.Round(seam.Length))} mm in all");
        var laid = isDrawn
            ? "in the order of the ringed numbers, each as its arrow points, back against the way along the seam"
            : "too short to draw; lay each back against the way along the seam";
        var order = seam.Order == WeldOrder.Skip ? "each far from the one before" : "each ends where the one before it was begun";
        return $"{runs}: {laid}; {order}. Let each go cold to the hand before its neighbour.";
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
        [.. piece.ZincStrips.Select(ZincStripOf), .. piece.WeldSeams.Select(s => WeldSeamOf(s, JoiningLines.AreShown(piece, unit: 1)))];
}
