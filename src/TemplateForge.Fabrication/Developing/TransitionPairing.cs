using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>Which points of two edges are joined: of all chains of triangles between them the one that takes the least bending.</summary>
/// <remarks>
/// A hinge of length ℓ that turns by θ between triangles of heights g and h over it costs θ² ℓ / min(g, h), the bending energy of a sheet that
/// curves within the lower one. A chain that zigzags costs without bound as the divisions become finer, so that a surface which unrolls is found wherever there is one: flat
/// sides stay flat, each corner fans to its share of an arc. Between convex outlines that surface bulges everywhere, it is their convex hull,
/// and a hinge that turns the other way is paid for many times over: so it is found however few the divisions are. The least is found by
/// dynamic programming over all pairs of points.
/// </remarks>
internal static class TransitionPairing
{
    private const double AgainstTheBulge = 1e6;

    // So little that it only chooses between chains that bend alike: the shorter joints.
    private const double PerLength = 1e-9;

    /// <summary>Joins two edges from their first points to their last.</summary>
    /// <param name="a">Points of one edge.</param>
    /// <param name="b">Points of the other.</param>
    /// <param name="allowed">For each point of the first edge, which points of the other it may be joined to: from, to.</param>
    /// <param name="bulge">1 where both outlines turn to the left all the way, −1 to the right, 0 where not all the way.</param>
    /// <param name="joints">What is joined, in order.</param>
    /// <returns>What the bending costs; infinite where there is no chain.</returns>
    public static double Join(
        ImmutableArray<SpacePoint> a, ImmutableArray<SpacePoint> b, Func<int, (int From, int To)> allowed, int bulge, out ImmutableArray<(int A, int B)> joints)
    {
        var bands = Enumerable.Range(0, a.Length).Select(allowed).ToArray();
        // Two ways to come to a joint: on along the first edge (0) or along the other (1).
        var costs = Array.ConvertAll(bands, band => new double[2 * Math.Max(0, band.To - band.From + 1)]);
        var before = Array.ConvertAll(bands, band => new byte[2 * Math.Max(0, band.To - band.From + 1)]);
        for (var i = 0; i < a.Length; i++)
        {
            for (var j = bands[i].From; j <= bands[i].To; j++)
            {
                Reach(i, j, 0);
                Reach(i, j, 1);
            }
        }
        joints = [];
        var (atA, atB) = (a.Length - 1, b.Length - 1);
        if (!Inside(atA, atB)) return double.PositiveInfinity;
        var end = costs[atA][Place(atA, atB, 0)] <= costs[atA][Place(atA, atB, 1)] ? 0 : 1;
        var least = costs[atA][Place(atA, atB, end)];
        if (double.IsPositiveInfinity(least)) return least;
        var found = new List<(int A, int B)>();
        for (var came = end; ;)
        {
            found.Add((atA, atB));
            if (atA == 0 && atB == 0) break;
            var from = before[atA][Place(atA, atB, came)];
            if (came == 0) atA--;
            else atB--;
            came = from;
        }
        found.Reverse();
        joints = [.. found];
        return least;

        bool Inside(int i, int j) => i >= 0 && j >= bands[i].From && j <= bands[i].To;
        int Place(int i, int j, int came) => 2 * (j - bands[i].From) + came;

        void Reach(int i, int j, int came)
        {
            ref var cost = ref costs[i][Place(i, j, came)];
            if (i == 0 && j == 0)
            {
                cost = 0;
                return;
            }
            cost = double.PositiveInfinity;
            var (fromA, fromB) = came == 0 ? (i - 1, j) : (i, j - 1);
            if (!Inside(fromA, fromB)) return;
            var next = came == 0 ? a[i] : b[j];
            if (!Hinge.TryOf(a[fromA], b[fromB], next, out var hinge)) return;
            if (fromA == 0 && fromB == 0)
            {
                cost = PerLength;
                return;
            }
            for (byte last = 0; last < 2; last++)
            {
                var soFar = costs[fromA][Place(fromA, fromB, last)];
                if (double.IsPositiveInfinity(soFar)) continue;
                var sum = soFar + hinge.CostFrom(last == 0 ? a[fromA - 1] : b[fromB - 1], bulge);
                if (!(sum < cost)) continue;
                cost = sum;
                before[i][Place(i, j, came)] = last;
            }
        }
    }

    /// <summary>What the joint costs at which a closed chain begins and ends: it is a hinge like any other.</summary>
    public static double CostOfSeam(ImmutableArray<SpacePoint> a, ImmutableArray<SpacePoint> b, ImmutableArray<(int A, int B)> joints, int bulge)
    {
        var next = joints[1].A > 0 ? a[joints[1].A] : b[joints[1].B];
        var last = joints[^2].A < joints[^1].A ? a[joints[^2].A] : b[joints[^2].B];
        return Hinge.TryOf(a[0], b[0], next, out var hinge) ? hinge.CostFrom(last, bulge) : double.PositiveInfinity;
    }

    /// <summary>How far the sheet turns at a joint, in radians: above 0 towards the left of who goes along the edges, upright with the joint.</summary>
    public static double Turn(SpacePoint a, SpacePoint b, SpacePoint before, SpacePoint after)
    {
        var along = (b - a).Unit;
        return Turn(along, (a - before).SquareTo(along), (after - a).SquareTo(along));
    }

    private static double Turn(SpaceVector along, SpaceVector arriving, SpaceVector leaving) =>
        Math.Atan2(along.Dot(arriving.Cross(leaving)), arriving.Dot(leaving));

    private readonly record struct Hinge(SpacePoint On, SpaceVector Along, double Length, SpaceVector Leaving)
    {
        private const double LeastArea = 1e-9;

        /// <summary>A joint and the triangle after it; none where that has no area.</summary>
        public static bool TryOf(SpacePoint a, SpacePoint b, SpacePoint next, out Hinge hinge)
        {
            var joint = b - a;
            var along = joint.Unit;
            hinge = new(a, along, joint.Length, (next - a).SquareTo(along));
            return hinge.Length * hinge.Leaving.Length > LeastArea;
        }

        public double CostFrom(SpacePoint last, int bulge)
        {
            var arriving = (On - last).SquareTo(Along);
            var turn = Turn(Along, arriving, Leaving);
            var bending = turn * turn * Length / Math.Min(arriving.Length, Leaving.Length);
            return (turn * bulge < 0 ? AgainstTheBulge : 1) * bending + PerLength * Length;
        }
    }
}
