using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Where a patch is tacked and in which order, so that heat never gathers in one place.</summary>
public static class TackPlan
{
    /// <summary>Tacks that quarter a patch like a clock, 12, 6, 3 and 9 first, then halve what lies between.</summary>
    /// <param name="outline">The edge that is tacked.</param>
    /// <param name="pitch">The most between two neighbours along the edge, in mm, more than 0.</param>
    /// <remarks>Common practice, no source: opposite first, each tack as far as can be from those before it.</remarks>
    public static ImmutableArray<Tack> Quartered(Contour outline, double pitch)
    {
        return Numbered(EvenSpacing.FromTheTop(outline, GapsRound(outline.Length, pitch)));
    }

    /// <summary>How many equal gaps, a multiple of four, there are between the tacks round an edge so long.</summary>
    public static int GapsRound(double length, double pitch) => 4 * (int)Math.Ceiling(length / (4 * pitch) - 1e-9);

    /// <summary>How many equal gaps there are between the tacks of a strip so long: an even number, so that a tack stands in the middle.</summary>
    public static int GapsOfStrip(double length, double pitch) => 2 * Math.Max(1, (int)Math.Ceiling(length / (2 * pitch) - 1e-9));

    /// <summary>Tacks of a strip: its ends, its middle, then halving what lies between.</summary>
    /// <param name="places">Where they are, in order from end to end, evenly spaced.</param>
    /// <remarks>Common practice, no source.</remarks>
    public static ImmutableArray<Tack> OfStrip(ImmutableArray<Point> places)
    {
        var taken = new List<int>();
        if (places.Length > 0) taken.Add(0);
        if (places.Length > 1) taken.Add(places.Length - 1);
        while (taken.Count < places.Length)
        {
            // What is widest is halved first; of equal gaps the one furthest from the last tack, so that heat is spread.
            var standing = taken.Order().ToList();
            var (from, to) = standing.Zip(standing.Skip(1)).OrderByDescending(g => g.Second - g.First)
                .ThenByDescending(g => Math.Abs((g.First + g.Second) / 2.0 - taken[^1])).First();
            taken.Add((from + to) / 2);
        }
        return [.. taken.Select((place, i) => new Tack(i + 1, places[place]))];
    }

    /// <summary>A weld at each of the places, in the same kind of order.</summary>
    /// <param name="places">The places in order round the outline, evenly spaced, the first at 12 o'clock.</param>
    public static ImmutableArray<Tack> Numbered(ImmutableArray<Point> places)
    {
        var order = FurthestFirst(places.Length);
        return [.. order.Select((place, i) => new Tack(i + 1, places[place]))];
    }

    /// <summary>A weld at each of the places, wherever they lie: from their middle outwards ring by ring, in each ring the one that is
    /// furthest from the last.</summary>
    /// <remarks>Common practice, no source: from the middle, so that a sheet that swells is driven outwards and is not locked at its rim.</remarks>
    public static ImmutableArray<Tack> FromTheMiddle(ImmutableArray<Point> places)
    {
        if (places.IsEmpty) return [];
        var middle = new Point(places.Average(p => p.X), places.Average(p => p.Y));
        var spacing = places.Length == 1 ? 0 : places.Min(p => places.Where(q => q != p).Min(p.DistanceTo));
        var left = places.OrderBy(p => Rounded(p.DistanceTo(middle))).ToList();
        var order = new List<Point> { left[0] };
        left.RemoveAt(0);
        while (left.Count > 0)
        {
            // What lies less than half a spacing further out than the innermost is one ring.
            var ring = left[0].DistanceTo(middle) + spacing / 2;
            var next = left.TakeWhile(p => p.DistanceTo(middle) <= ring).MaxBy(p => Rounded(p.DistanceTo(order[^1])));
            order.Add(next);
            left.Remove(next);
        }
        return [.. order.Select((place, i) => new Tack(i + 1, place))];

        // Places that are drawn alike are alike, whatever the last figure says.
        static double Rounded(double distance) => Math.Round(distance, 6);
    }

    // Steps round a ring of so many places. Of those that are furthest from all that were taken, the one furthest from the last.
    internal static List<int> FurthestFirst(int count)
    {
        var taken = new List<int>();
        if (count > 0) taken.Add(0);
        while (taken.Count < count)
        {
            taken.Add(Enumerable.Range(0, count)
                .Except(taken)
                .OrderByDescending(place => taken.Min(other => Steps(place, other)))
                .ThenByDescending(place => Steps(place, taken[^1]))
                .ThenBy(place => place)
                .First());
        }
        return taken;

        int Steps(int a, int b) => Math.Min(Math.Abs(a - b), count - Math.Abs(a - b));
    }
}
