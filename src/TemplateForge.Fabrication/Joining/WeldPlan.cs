using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A seam taken apart into short runs, so that heat and pull never gather in one place.</summary>
/// <remarks>
/// <code>
///      the way along the seam  ───────────────────────▶
///      back-step   ◀─1── ◀─2── ◀─3── ◀─4── ◀─5──         each ends where the one before it began
///      skip        ◀─1── ◀─4── ◀─2── ◀─5── ◀─3──         start, middle, far end, then the end of the first, and on in turn
/// </code>
/// US Navy Steelworker text (read); reasons in TC 9-237, chapter 6, section V (read). Laying the runs of a skipped seam backwards as well,
/// and quartering a round one like a clock: common practice, no source.
/// </remarks>
public static class WeldPlan
{
    /// <summary>The runs of a seam from end to end.</summary>
    /// <param name="seam">The seam.</param>
    /// <param name="longest">No run is longer, in mm, more than 0.</param>
    /// <param name="order">The order in which they are laid.</param>
    /// <param name="tacksApart">The most between the tacks of <see cref="TackPlan"/> along the same seam, in mm, so that runs go from tack to
    /// tack; 0 where there are none to mind.</param>
    public static WeldSeam Along(Path seam, double longest, WeldOrder order, double tacksApart = 0)
    {
        var gaps = tacksApart > 0 ? TackPlan.GapsOfStrip(seam.Length, tacksApart) : 0;
        var ends = Ends(seam.Length, longest, gaps, least: 1);
        return Laid(seam, ends, order, order == WeldOrder.Skip ? Skipped(ends.Length - 1) : InTurn(ends.Length - 1));
    }

    /// <summary>The runs of a seam all round an outline, clockwise from straight above its middle; four at least.</summary>
    /// <inheritdoc cref="Along"/>
    /// <param name="outline">What is welded round.</param>
    /// <param name="longest">No run is longer, in mm, more than 0.</param>
    /// <param name="order">The order in which they are laid.</param>
    /// <param name="tacksApart">The most between the tacks round the same outline, in mm; 0 where there are none to mind.</param>
    public static WeldSeam Round(Contour outline, double longest, WeldOrder order, double tacksApart = 0)
    {
        var gaps = tacksApart > 0 ? TackPlan.GapsRound(outline.Length, tacksApart) : 0;
        var ends = Ends(outline.Length, longest, gaps, least: 4);
        return Laid(SeamPart.OnceRound(outline), ends, order, order == WeldOrder.Skip ? TackPlan.FurthestFirst(ends.Length - 1) : InTurn(ends.Length - 1));
    }

    // Distances at which runs begin and end: as few equal runs as are no longer than the longest; with tacks, each from tack to tack
    // over as many gaps as fit, or several to a gap.
    private static ImmutableArray<double> Ends(double length, double longest, int gaps, int least)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(longest);
        if (gaps == 0) return Evenly(Parts(length, longest, least));
        var gap = length / gaps;
        if (gap > longest + Tolerance.Length) return Evenly(gaps * Parts(gap, longest, 1));
        var runs = Math.Max(Math.Min(least, gaps), Parts(gaps, Math.Floor((longest + Tolerance.Length) / gap), 1));
        return [.. Enumerable.Range(0, runs + 1).Select(i => gap * (i * gaps / runs))];

        ImmutableArray<double> Evenly(int runs) => [.. Enumerable.Range(0, runs + 1).Select(i => length * i / runs)];
    }

    private static int Parts(double whole, double most, int least) => Math.Max(least, (int)Math.Ceiling(whole / most - 1e-9));

    private static WeldSeam Laid(Path seam, ImmutableArray<double> ends, WeldOrder order, IReadOnlyList<int> places) => new(
        order, [.. places.Select((place, i) => new WeldRun(i + 1, seam.Part(ends[place], ends[place + 1]).Reversed()))]);

    private static List<int> InTurn(int count) => [.. Enumerable.Range(0, count)];

    private static List<int> Skipped(int count)
    {
        var middle = (count - 1) / 2;
        var taken = new List<int> { 0 };
        Take(middle);
        Take(count - 1);
        for (var on = 1; taken.Count < count; on++)
        {
            Take(on);
            Take(middle + on);
        }
        return taken;

        void Take(int place)
        {
            if (place < count && !taken.Contains(place)) taken.Add(place);
        }
    }
}
