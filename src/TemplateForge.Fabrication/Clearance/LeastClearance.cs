using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How near some metal comes to components, and where: the question of <see cref="ClearanceRegion"/> the other way round.</summary>
/// <param name="Distance">The least distance, in mm, anywhere through the sheet and in all positions; 0 where they meet. Never more than
/// 0.01 mm too large.</param>
/// <param name="At">Where on the face that is up.</param>
public sealed record LeastClearance(double Distance, Point At)
{
    // 1. The outline: steps of a line or an arc, between whose ends nothing is nearer than their distances and the length of the step
    //    allow, halved until that betters the least by less than is promised; then the valley is sought in thirds.
    // 2. The inside: in a cell of half diagonal r, at whose middle the distance is d, no valley lies deeper than √(d² − r²). A
    //    valley no further than 2 r from the outline betters the outline, at d there, by no more than to √(d² − 4 r²).
    private const double Promised = 0.01;

    /// <summary>The least distance of what stays of a panel.</summary>
    /// <param name="metal">What is there of the panel.</param>
    /// <param name="components">The components.</param>
    /// <exception cref="ArgumentException">There is no metal.</exception>
    public static LeastClearance OfMetal(Region metal, IEnumerable<Component> components)
    {
        if (metal.IsEmpty) throw new ArgumentException("What is nowhere comes near nothing.", nameof(metal));
        var search = new Search(new(components));
        foreach (var segment in metal.Contours.SelectMany(c => c.Segments)) search.Along(segment);
        search.Within(metal);
        return search.Least;
    }

    /// <summary>The least distance of a panel that is everywhere but in an opening.</summary>
    /// <param name="opening">The opening; where it is empty, the panel is everywhere.</param>
    /// <param name="components">The components.</param>
    public static LeastClearance OfOpening(Region opening, IReadOnlyCollection<Component> components)
    {
        // Further out than a box round both, the nearest place of the box is nearer.
        var bounds = new ClearanceField(components).Bounds;
        var all = Region.Of(Outline.Rectangle((opening.IsEmpty ? bounds : bounds.Joined(opening.Bounds)).Grown(10)));
        return OfMetal(all.Subtract(opening), components);
    }

    private sealed class Search(ClearanceField field)
    {
        public LeastClearance Least { get; private set; } = new(double.PositiveInfinity, Point.Origin);

        public void Along(Segment segment) => Along(segment, 0, Take(segment.Start), 1, Take(segment.End));

        public void Within(Region metal)
        {
            var bounds = metal.Bounds;
            var half = Math.Max(bounds.Width, bounds.Height) / 2;
            Within(metal, bounds.Centre, half);
        }

        private double Take(Point at)
        {
            var distance = field.At(at).Distance;
            if (distance < Least.Distance) Least = new(distance, at);
            return distance;
        }

        private void Along(Segment segment, double from, double atFrom, double to, double atTo)
        {
            var half = segment.Length * (to - from) / 2;
            var least = Math.Min(atFrom, atTo);
            // Along an arc the way bends as well, by 1 / radius.
            var squared = half * half * (segment.IsLine ? 1 : 1 + least / segment.Radius);
            if (Math.Sqrt(Math.Max(0, least * least - squared)) >= Least.Distance || Least.Distance == 0) return;
            if (squared <= Promised * Math.Max(least, Promised))
            {
                if (least == Least.Distance) Valley(segment, Math.Max(0, 2 * from - to), Math.Min(1, 2 * to - from));
                return;
            }
            var middle = (from + to) / 2;
            var atMiddle = Take(segment.At(middle));
            // The nearer half first.
            if (atFrom <= atTo)
            {
                Along(segment, from, atFrom, middle, atMiddle);
                Along(segment, middle, atMiddle, to, atTo);
            }
            else
            {
                Along(segment, middle, atMiddle, to, atTo);
                Along(segment, from, atFrom, middle, atMiddle);
            }
        }

        private void Valley(Segment segment, double from, double to)
        {
            for (var round = 0; round < 40 && (to - from) * segment.Length > 1e-5; round++)
            {
                var third = (to - from) / 3;
                if (Take(segment.At(from + third)) < Take(segment.At(to - third))) to -= third; else from += third;
            }
        }

        private void Within(Region metal, Point middle, double half)
        {
            if (Least.Distance == 0) return;
            var reach = half * Math.Sqrt(2);
            var wanted = Math.Pow(Math.Max(0, Least.Distance - Promised), 2);
            var distance = field.At(middle, below: 0, above: Math.Sqrt(wanted + reach * reach) + Promised).Distance;
            if (distance * distance - reach * reach >= wanted || reach < Promised / 10) return;
            var outside = metal.DistanceTo(middle);
            if (outside > reach) return;
            if (outside == 0 && distance < Least.Distance) Take(middle);
            if (outside > 0 && Least.Distance * Least.Distance - 4 * reach * reach >= wanted) return;
            var part = half / 2;
            foreach (var (x, y) in (ReadOnlySpan<(double, double)>)[(-part, -part), (part, -part), (-part, part), (part, part)])
                Within(metal, middle + new Vector(x, y), part);
        }
    }
}
