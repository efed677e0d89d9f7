using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>What must hold of every answer, whatever was asked.</summary>
public static class Law
{
    /// <summary>How far from a boundary, in mm, a point must lie to be asked on which side of it.</summary>
    private const double Doubt = 1e-5;

    /// <summary>Contours turned the right way, that run through no point twice and wind round what is inside just once, and unchanged when put in again.</summary>
    public static void IsWellMade(Region region)
    {
        foreach (var contour in region.Contours) IsWellMade(contour);
        WindsOnce(region);
        var again = Region.FromContours(region.Contours);
        Holds(
            again.Contours.Length == region.Contours.Length || (NearlyMeets(region) && IsUnchanged(again)),
            $"put in again it has contours of {Counts(again)} segments, not of {Counts(region)}");
        HaveSameBoundary(region, again, Tolerance.Length, "put in again it");

        static bool IsUnchanged(Region region) => Region.FromContours(region.Contours).Contours.Length == region.Contours.Length;
    }

    /// <summary>An offset is where the distance says: its own boundary, beside where the source asks for one, and all over the plane.</summary>
    public static void IsOffset(Region offset, Region source, double distance)
    {
        var (answer, asked) = (new ByDefinition(offset), new ByDefinition(source));
        foreach (var (point, _) in BoundarySamples(offset, perSegment: 2).Concat(Vertices(offset)))
        {
            var signed = asked.SignedDistance(point);
            Holds(Math.Abs(signed - distance) <= Tolerance.Length, $"{point} of the boundary lies at {signed}, not at {distance}");
        }
        foreach (var (point, along) in BoundarySamples(source, perSegment: 2))
        {
            foreach (var aside in (ReadOnlySpan<double>)[distance - 0.01, distance + 0.01, 0.5 * distance])
                IsOnItsSide(point - along.Left * aside);
            HasBoundary(point, -along.Left);
        }
        foreach (var (corner, outwards) in Corners(source)) HasBoundary(corner, outwards);
        if (source.IsEmpty) return;
        foreach (var point in Spread(source.Bounds.Grown(Math.Max(0, distance) + 1), count: 24)) IsOnItsSide(point);

        void IsOnItsSide(Point point)
        {
            var signed = asked.SignedDistance(point);
            if (Math.Abs(signed - distance) < Doubt) return;
            Holds(answer.Encloses(point) == signed < distance, $"{point} lies at {signed}, and is on the wrong side of the offset by {distance}");
        }

        // Where the distance is the offset's, and grows straight through it, there the boundary runs.
        void HasBoundary(Point foot, Vector outwards)
        {
            const double room = 4 * Tolerance.Length;
            var point = foot + outwards * distance;
            if (Math.Abs(asked.SignedDistance(point) - distance) > 1e-9) return;
            if (Math.Abs(asked.SignedDistance(point + outwards * room) - distance - room) > 1e-9) return;
            if (Math.Abs(asked.SignedDistance(point - outwards * room) - distance + room) > 1e-9) return;
            var missed = answer.DistanceToBoundary(point);
            Holds(missed <= Tolerance.Length, $"the boundary misses {point}, at {distance} from the source, by {missed}");
        }
    }

    /// <summary>A region is what loose contours enclose under a rule, and its boundary runs along theirs.</summary>
    public static void IsEnclosed(Region region, IReadOnlyCollection<Contour> contours, FillRule rule)
    {
        var (answer, asked) = (new ByDefinition(region), new ByDefinition(contours));
        foreach (var (point, _) in BoundarySamples(region, perSegment: 2).Concat(Vertices(region)))
        {
            var off = asked.DistanceToBoundary(point);
            Holds(off <= Tolerance.Length, $"{point} of the boundary lies {off} off what was put in");
        }
        var beside =
            from sample in BoundarySamples(contours, perSegment: 2)
            from aside in (double[])[-0.01, 0.01]
            select sample.Point + sample.Along.Left * aside;
        foreach (var point in beside.Concat(Spread(Box.Around(contours.Select(c => c.Bounds)), count: 16)))
        {
            if (asked.DistanceToBoundary(point) < Doubt) continue;
            var winding = asked.WindingAround(point);
            Holds(
                answer.Encloses(point) == (rule == FillRule.NonZero ? winding != 0 : winding % 2 != 0),
                $"{point}, wound round {winding} times, is on the wrong side by the rule {rule}");
        }
    }

    /// <summary>Union, intersection, difference and exclusive or are right beside the boundaries of both, and their areas add up.</summary>
    public static void AreCombined(Region a, Region b)
    {
        var (union, intersection) = (a.Union(b), a.Intersect(b));
        var (difference, either) = (a.Subtract(b), a.ExclusiveOr(b));
        var (first, second) = (new ByDefinition(a), new ByDefinition(b));
        var (inUnion, inIntersection) = (new ByDefinition(union), new ByDefinition(intersection));
        var (inDifference, inEither) = (new ByDefinition(difference), new ByDefinition(either));
        foreach (var (point, along) in BoundarySamples(a, perSegment: 1).Concat(BoundarySamples(b, perSegment: 1)))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-0.01, 0.01])
            {
                var beside = point - along.Left * aside;
                if (first.DistanceToBoundary(beside) < Doubt || second.DistanceToBoundary(beside) < Doubt) continue;
                var (inA, inB) = (first.Encloses(beside), second.Encloses(beside));
                Holds(inUnion.Encloses(beside) == (inA || inB), $"{beside} is on the wrong side of the union");
                Holds(inIntersection.Encloses(beside) == (inA && inB), $"{beside} is on the wrong side of the intersection");
                Holds(inDifference.Encloses(beside) == (inA && !inB), $"{beside} is on the wrong side of the difference");
                Holds(inEither.Encloses(beside) == (inA != inB), $"{beside} is on the wrong side of the exclusive or");
            }
        }
        var tolerance = Tolerance.Area(a.Length + b.Length);
        AreEqual(a.Area + b.Area, union.Area + intersection.Area, tolerance, "|A ∪ B| + |A ∩ B|");
        AreEqual(a.Area, difference.Area + intersection.Area, tolerance, "|A − B| + |A ∩ B|");
        AreEqual(union.Area, either.Area + intersection.Area, tolerance, "|A xor B| + |A ∩ B|");
        foreach (var answer in (ReadOnlySpan<Region>)[union, intersection, difference, either]) IsWellMade(answer);
    }

    /// <summary>The union of many holds what lies in any of them.</summary>
    public static void IsUnion(Region union, IReadOnlyCollection<Region> parts)
    {
        var answer = new ByDefinition(union);
        var asked = parts.Select(p => new ByDefinition(p)).ToArray();
        foreach (var (point, along) in parts.SelectMany(p => BoundarySamples(p, perSegment: 1)))
        {
            foreach (var aside in (ReadOnlySpan<double>)[-0.01, 0.01])
            {
                var beside = point - along.Left * aside;
                if (Array.Exists(asked, a => a.DistanceToBoundary(beside) < Doubt)) continue;
                Holds(answer.Encloses(beside) == Array.Exists(asked, a => a.Encloses(beside)), $"{beside} is on the wrong side of the union");
            }
        }
        IsWellMade(union);
    }

    /// <summary>Each boundary lies near the other, but for parts and gaps thinner than four times as much, and what grew out of such.</summary>
    /// <param name="expected">One region.</param>
    /// <param name="actual">The other.</param>
    /// <param name="within">How near, in mm.</param>
    /// <param name="what">Begins the sentence that is thrown.</param>
    /// <param name="source">What both are offsets of; empty if they are not.</param>
    public static void HaveSameBoundary(Region expected, Region actual, double within, string what, Region? source = null)
    {
        LiesOn(actual, expected, $"{what} has a boundary where none is expected, at");
        LiesOn(expected, actual, $"{what} has no boundary near");
        // Sources that are thin somewhere have been looked at point by point.
        if (source is null) AreEqual(expected.Area, actual.Area, 4 * within * (expected.Length + actual.Length), $"{what} has an area that");

        void LiesOn(Region one, Region other, string otherwise)
        {
            var (here, there) = (new ByDefinition(one), new ByDefinition(other));
            foreach (var (point, along) in BoundarySamples(one, 0.02, 0.5, 0.98))
            {
                var off = there.DistanceToBoundary(point);
                if (off <= within || IsThin(here, point, along.Left, 4 * within)) continue;
                if (source is not null && IsThinAtFoot(source, point, 4 * within)) continue;
                Holds(false, $"{otherwise} {point}: {off:E2} mm off");
            }
        }
    }

    /// <summary>Points spread along the boundary, with the direction there.</summary>
    public static IEnumerable<(Point Point, Vector Along)> BoundarySamples(Region region, int perSegment) =>
        BoundarySamples(region.Contours, perSegment);

    public static IEnumerable<(Point Point, Vector Along)> BoundarySamples(IEnumerable<Contour> contours, int perSegment) =>
        from contour in contours
        from segment in contour.Segments
        from i in Enumerable.Range(0, perSegment)
        let share = (i + 0.5) / perSegment
        select (segment.At(share), segment.DirectionAt(share));

    public static void AreEqual(double expected, double actual, double within, string what) =>
        Holds(Math.Abs(actual - expected) <= within, $"{what} is {actual}, not {expected}");

    public static void Holds(bool condition, string otherwise)
    {
        if (!condition) throw new InvalidOperationException(otherwise);
    }

    private static void IsWellMade(Contour contour)
    {
        Holds(contour.Area > 0, "a contour has no area");
        var segments = contour.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            Holds(s.Start.DistanceTo(s.End) >= Tolerance.Merge && Math.Abs(s.Bulge) <= 1, $"{s} is no segment");
            Holds(s.End == segments[(i + 1) % segments.Length].Start, $"{s} ends not where the next begins");
        }
        var across = segments.Select(s => s.Start).OrderBy(p => p.X).ToArray();
        for (var i = 0; i < across.Length; i++)
        {
            for (var j = i + 1; j < across.Length && across[j].X - across[i].X < Tolerance.Merge; j++)
                Holds(across[i].DistanceTo(across[j]) >= Tolerance.Merge, $"a contour runs twice through {across[i]}");
        }
    }

    private static void WindsOnce(Region region)
    {
        var definition = new ByDefinition(region);
        // A boundary may touch itself in a place, and taper towards it, but not all along a segment.
        double[] along = [0.11, 0.31, 0.48, 0.73, 0.94];
        foreach (var segment in region.Contours.SelectMany(c => c.Segments))
            Holds(!Array.TrueForAll(along, share => RunsThereAndBack(segment, share)), $"the boundary runs there and back along {segment}");

        const double aside = 4 * Tolerance.Length;
        foreach (var (point, ahead) in BoundarySamples(region, 0.1, 0.5, 0.9))
        {
            var (beside, besideToo) = (point + ahead.Left * aside, point - ahead.Left * aside);
            // Where the boundary comes back within the tolerance it may be on either side of itself.
            if (definition.DistanceToBoundary(beside) < Tolerance.Length || definition.DistanceToBoundary(besideToo) < Tolerance.Length) continue;
            var (left, right) = (definition.WindingAround(beside), definition.WindingAround(besideToo));
            Holds(left is 0 or 1 && right is 0 or 1, $"beside {point} the boundary winds {left} and {right} times round");
            Holds((left, right) is (1, 0) || IsThin(definition, point, ahead.Left, 4 * aside), $"at {point} the inside does not lie to the left");
        }

        bool RunsThereAndBack(Segment segment, double share)
        {
            var (point, aside) = (segment.At(share), segment.DirectionAt(share).Left * (Tolerance.Merge / 10));
            return !definition.Encloses(point + aside) || definition.Encloses(point - aside);
        }
    }

    /// <summary>Whether a corner comes within four tolerances of a side that does not begin or end there: then what is one contour and what two is open.</summary>
    private static bool NearlyMeets(Region region)
    {
        Segment[] sides = [.. region.Contours.SelectMany(c => c.Segments)];
        return Array.Exists(sides, corner => Array.Exists(sides, side =>
            side.Start != corner.Start && side.End != corner.Start && side.DistanceTo(corner.Start) < 4 * Tolerance.Merge));
    }

    /// <summary>Whether beside a boundary point no disc of a width fits, in the region or beside it.</summary>
    private static bool IsThin(ByDefinition region, Point point, Vector left, double width)
    {
        var (inside, outside) = (point + left * (width / 2), point - left * (width / 2));
        return !region.Encloses(inside) || region.Encloses(outside)
            || region.DistanceToBoundary(inside) < 0.45 * width || region.DistanceToBoundary(outside) < 0.45 * width;
    }

    /// <summary>Whether the inside to the left or the outside to the right of a boundary point ends within a width.</summary>
    private static bool Ends(ByDefinition region, Point point, Vector left, double width)
    {
        foreach (var share in (ReadOnlySpan<double>)[0.25, 0.5, 1])
        {
            if (!region.Encloses(point + left * (share * width)) || region.Encloses(point - left * (share * width))) return true;
        }
        return false;
    }

    /// <summary>Whether a source is thin where the point of an offset of it has its nearest foot, or near there, as a needle is near its tip.</summary>
    private static bool IsThinAtFoot(Region source, Point point, double width)
    {
        var foot = source.NearestBoundaryPoint(point);
        var definition = new ByDefinition(source);
        var inwards = (foot - point).Unit * (definition.Encloses(point) ? -1 : 1);
        foreach (var along in (ReadOnlySpan<double>)[-2.5, 0, 2.5])
        {
            if (Ends(definition, foot + inwards.Left * (along * width), inwards, width)) return true;
        }
        return false;
    }

    private static IEnumerable<(Point Point, Vector Along)> BoundarySamples(Region region, params double[] shares) =>
        from contour in region.Contours
        from segment in contour.Segments
        from share in shares
        select (segment.At(share), segment.DirectionAt(share));

    private static IEnumerable<(Point Point, Vector Along)> Vertices(Region region) =>
        region.Contours.SelectMany(c => c.Segments).Select(s => (s.Start, s.StartDirection));

    /// <summary>The corners, with the direction half-way between the normals before and after.</summary>
    private static IEnumerable<(Point Corner, Vector Outwards)> Corners(Region region) =>
        from contour in region.Contours
        from i in Enumerable.Range(0, contour.Segments.Length)
        let before = contour.Segments[i == 0 ? ^1 : i - 1].EndDirection
        let after = contour.Segments[i].StartDirection
        where (before + after).Length > 0.1
        select (contour.Segments[i].Start, -(before + after).Unit.Left);

    /// <summary>Points all over a box, the same in every run: the two-dimensional golden ratio sequence.</summary>
    private static IEnumerable<Point> Spread(Box box, int count) => Enumerable.Range(1, count).Select(i => new Point(
        box.Min.X + box.Width * (i * 0.7548776662466927 % 1), box.Min.Y + box.Height * (i * 0.5698402909980532 % 1)));

    private static string Counts(Region region) => string.Join(" + ", region.Contours.Select(c => c.Segments.Length));
}
