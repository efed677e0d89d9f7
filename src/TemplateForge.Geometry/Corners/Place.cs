namespace TemplateForge.Geometry;

/// <summary>A place on a side: the segment by its index, and the share of its length.</summary>
internal readonly record struct Place(int Segment, double Share)
{
    public static Place StartOf(Segment[] _) => new(0, 0);
    public static Place EndOf(Segment[] side) => new(side.Length - 1, 1);

    public Point On(Segment[] side) => side[Segment].At(Share);

    /// <summary>The place at a distance from the start of a side, if the side reaches that far.</summary>
    public static bool TryAt(Segment[] side, double distance, out Place place)
    {
        place = default;
        if (distance < -Tolerance.Merge) return false;
        for (var i = 0; i < side.Length; i++)
        {
            var length = side[i].Length;
            if (distance <= length + (i == side.Length - 1 ? Tolerance.Merge : 0))
            {
                place = new(i, Snapped(distance / length, side[i]));
                return true;
            }
            distance -= length;
        }
        return false;
    }

    /// <summary>A segment of which next to nothing is left is used up.</summary>
    public static double Snapped(double share, Segment segment)
    {
        var least = 2 * Tolerance.Merge / segment.Length;
        return share < least ? 0 : share > 1 - least ? 1 : share;
    }

    /// <summary>What lies between two places of a side; nothing where they are as good as one.</summary>
    public static IEnumerable<Segment> Between(Segment[] side, Place from, Place to)
    {
        for (var i = from.Segment; i <= to.Segment; i++)
        {
            var (start, end) = (i == from.Segment ? from.Share : 0, i == to.Segment ? to.Share : 1);
            var isWhole = start == 0 && end == 1;
            if (!isWhole && (end - start) * side[i].Length < 2 * Tolerance.Merge) continue; // used up
            yield return side[i].Part(start, end);
        }
    }
}
