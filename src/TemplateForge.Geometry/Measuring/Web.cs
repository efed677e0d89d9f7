using System.Runtime.Intrinsics;

namespace TemplateForge.Geometry;

/// <summary>A place where a region is narrow: two points of its boundary with nothing but material between them.</summary>
public readonly record struct Web(Point From, Point To)
{
    /// <summary>In mm.</summary>
    public double Width => From.DistanceTo(To);
}

/// <summary>Where a region is narrowest.</summary>
public static class NarrowestWeb
{
    /// <summary>The least distance between two places of the boundary that face each other through the material.</summary>
    /// <param name="region">The part.</param>
    /// <param name="web">The two places, either first; where the boundary touches itself, one place twice.</param>
    /// <returns>Whether there is one; an empty region has none.</returns>
    /// <remarks>
    /// <code>
    ///    ──────────┐     ┌──────────       Two places face each other when the straight line between them runs inside
    ///      material│     │                 the region, touching the boundary nowhere else, and is square to the boundary
    ///              └──┬──┘                 at both ends. At a corner every direction is square that lies in the fan
    ///                 │ web                between the normals of its two sides, as if the corner were rounded ever so
    ///    ─────────────┴─────────────       little; so a side and a corner can face each other, and two corners.
    /// </code>
    /// So it is the thickness of a ring, the width of a slot, what is left beside a hole or between two, the waist of a neck, and of a
    /// convex shape the least width between two parallel lines, as a sliding gauge takes it: of a triangle its least height. Two sides that
    /// meet in a corner do not face each other, and where a shape only tapers towards a tip it has no web: what counts there
    /// is its width where the taper begins. Square is what is so within 1e-7 rad. Where a boundary touches itself the web is 0 wide.
    /// Sides that are parallel, or arcs about one centre, face each other all along; the line is then at the middle of what
    /// they have in common or, if something lies there, at another of 15 even places.
    /// </remarks>
    public static bool TryNarrowestWeb(this Region region, out Web web)
    {
        var search = new Search(region);
        if (!search.TryTouch()) search.TryFaces();
        web = search.Narrowest;
        return double.IsFinite(search.Width);
    }

    private enum Finding { NotSquare, Blocked, NotNarrower, Narrower }

    // 1. Touches: two segments that are not neighbours and have a point in common.
    // 2. Pairs of faces no farther from each other than the narrowest web so far, with normals that run against each other.
    // 3. Of each pair the lines that may be square to both: through their centres, or all if the centre is one.
    // 4. Those that are square to both, run inside, and are shorter than what was found before.
    private sealed class Search(Region region)
    {
        /// <summary>A web must be this much narrower, in mm, to be preferred: among equal ones the first found stays.</summary>
        private const double Rounding = 1e-9;

        public Web Narrowest { get; private set; }
        public double Width { get; private set; } = double.PositiveInfinity;

        public bool TryTouch()
        {
            var segments = region.Boundary.Segments;
            var contours = region.Contours.SelectMany((c, i) => Enumerable.Range(0, c.Segments.Length).Select(at => (Contour: i, At: at))).ToArray();
            foreach (var (i, j) in region.Boundary.TouchingPairs().Items)
            {
                var (one, other) = (contours[i], contours[j]);
                var apart = Math.Abs(one.At - other.At);
                if (one.Contour == other.Contour && (apart == 1 || apart == region.Contours[one.Contour].Segments.Length - 1)) continue;
                var (on, onOther) = segments[i].NearestPoints(segments[j]);
                if (on.DistanceTo(onOther) >= Tolerance.Merge) continue;
                (Narrowest, Width) = (new(on, on), 0);
                return true;
            }
            return false;
        }

        public void TryFaces()
        {
            var faces = region.Contours.SelectMany(Face.Of).ToArray();
            var tree = new BoxTree();
            var boxes = tree.Leaves(faces.Length);
            for (var i = 0; i < faces.Length; i++) boxes[i] = faces[i].Bounds;
            tree.Build();
            var near = new Buffer<int>();
            for (var i = 0; i < faces.Length; i++)
            {
                near.Clear();
                tree.Touching(Grown(tree[i], Width), near);
                foreach (var j in near.Items)
                {
                    if (j > i) Between(faces[i], faces[j]);
                }
            }
        }

        private void Between(Face one, Face other)
        {
            // The other's normals turned round, a whole turn on or back if need be.
            var turn = Math.Round((one.From + one.To - other.From - other.To) / (4 * Math.PI) - 0.5);
            for (var i = turn - 1; i <= turn + 1; i++)
            {
                var round = Math.PI * (2 * i + 1);
                var (from, to) = (Math.Max(one.From, other.From + round), Math.Min(one.To, other.To + round));
                if (from - to <= 2 * Face.Square) Between(one, other, Math.Min(from, to), Math.Max(from, to));
            }
        }

        /// <summary>Tries the lines between two faces of which the directions lie in a range.</summary>
        private void Between(Face one, Face other, double from, double to)
        {
            // Both centres lie on the line: of c' − c = (m' − ρ' v') − (m + ρ v), both weights multiplied in, so that none is infinite.
            var across = (other.Middle - one.Middle) * (one.Weight * other.Weight)
                + other.Inwards * (one.Weight * other.Radius) - one.Inwards * (other.Weight * one.Radius);
            if (across.Length > 0)
            {
                for (var i = 0; i < 2; i++)
                {
                    var off = Math.IEEERemainder(across.Direction.Radians + i * Math.PI - (from + to) / 2, 2 * Math.PI);
                    if (Math.Abs(off) <= (to - from) / 2 + 2 * Face.Square) Along(one, other, Math.Clamp((from + to) / 2 + off, from, to));
                }
            }
            if (one.IsFlat && other.IsFlat) Parallel(one, other);
            else if (to - from > 4 * Face.Square) TrySome(share => Along(one, other, from + (to - from) * share));
        }

        private void Parallel(Face one, Face other)
        {
            var (a, b) = (one.ShareOf(other.Along(0)), one.ShareOf(other.Along(1)));
            if (a == b) return;
            TrySome(share =>
            {
                var p = one.Along(a + (b - a) * share);
                return Offer(one, p, other, other.Nearest(p));
            });
        }

        private static void TrySome(Func<double, Finding> at)
        {
            for (var parts = 2; parts <= 16; parts *= 2)
            {
                for (var i = 1; i < parts; i += 2)
                {
                    if (at((double)i / parts) != Finding.Blocked) return;
                }
            }
        }

        /// <summary>The line in a direction, from where the first face is square to it to where the second is.</summary>
        private Finding Along(Face one, Face other, double direction)
        {
            var (p, q) = (one.At(direction), other.At(direction + Math.PI));
            var finding = Offer(one, p, other, q);
            if (finding != Finding.NotSquare) return finding;
            // Where a face is flat the direction does not tell the place, but the point on the rounder one does.
            return Math.Abs(one.Weight) * other.Radius >= Math.Abs(other.Weight) * one.Radius
                ? Offer(one, p, other, other.Nearest(p))
                : Offer(one, one.Nearest(q), other, q);
        }

        private Finding Offer(Face one, Point p, Face other, Point q)
        {
            var length = p.DistanceTo(q);
            if (length < Tolerance.Merge) return Finding.NotSquare;
            var way = (q - p) / length;
            var slack = Face.Square + Rounding / length;
            if (!one.IsSquare(p, way, slack) || !other.IsSquare(q, -way, slack)) return Finding.NotSquare;
            if (length >= Width - Rounding) return Finding.NotNarrower;
            if (!RunsInside(p, q)) return Finding.Blocked;
            (Narrowest, Width) = (new(p, q), length);
            return Finding.Narrower;
        }

        private bool RunsInside(Point p, Point q)
        {
            if (!region.Surrounds(p.MidpointTo(q))) return false;
            var line = Segment.Line(p, q);
            var (points, runs) = (new List<Meeting>(), new List<SharedRun>());
            foreach (var i in region.Boundary.Touching(Bounds.Around(p, q, 0, Tolerance.Merge)).Items)
                Meetings.Find(line, region.Boundary.Segments[i], points, runs);
            return runs.Count == 0 && points.TrueForAll(m => m.At.DistanceTo(p) <= Tolerance.Length || m.At.DistanceTo(q) <= Tolerance.Length);
        }

        private static Bounds Grown(Bounds box, double margin) =>
            new(Vector256.Create(box.MinX - margin, box.MinY - margin, -box.MaxX - margin, -box.MaxY - margin));
    }
}
