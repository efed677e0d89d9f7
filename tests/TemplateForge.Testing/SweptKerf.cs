using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Holds the slot that a round tool leaves against the part, by chords and distances alone: nothing here knows an offset.</summary>
/// <remarks>Arcs become chords within 0.001 mm. Places of the part's edge are looked at every half millimetre, and at every corner.</remarks>
public sealed class SweptKerf
{
    private const double Sag = 0.001;
    private const double Every = 0.5;
    private const double Larger = 0.005;

    private readonly double _radius;
    private readonly List<Chord> _part;
    private readonly List<Chord> _path;
    private readonly Grid _partGrid;
    private readonly Grid _pathGrid;

    /// <param name="part">What is to be left; its contours run with it on their left.</param>
    /// <param name="cuts">The courses of the tool's middle.</param>
    /// <param name="kerf">Width of the slot in mm, more than 0.</param>
    public SweptKerf(Region part, IReadOnlyList<Path> cuts, double kerf)
    {
        _radius = kerf / 2;
        _part = [.. part.Contours.SelectMany((c, i) => c.Segments.SelectMany(s => Chords(s, i)))];
        _path = [.. cuts.SelectMany((c, i) => c.Segments.SelectMany(s => Chords(s, i)))];
        _partGrid = new(_part, _radius + 0.1);
        _pathGrid = new(_path, _radius + 0.1);
    }

    /// <summary>How far the slot reaches into the part at the most, in mm; below 0 where it keeps off it.</summary>
    public double Entered()
    {
        var worst = double.NegativeInfinity;
        foreach (var chord in _path)
        {
            foreach (var edge in _partGrid.Near(chord)) worst = Math.Max(worst, _radius - chord.DistanceTo(edge, _radius + 0.1));
        }
        // A course that comes nowhere near the part's edge is in the part or out of it as a whole.
        foreach (var cut in _path.GroupBy(c => c.Owner))
        {
            if (IsInPart(cut.First().A)) return double.PositiveInfinity;
        }
        return worst;
    }

    /// <summary>Places of the part's edge that a disc of the tool's size can touch, and to which the slot does not come within a distance.</summary>
    /// <param name="within">In mm.</param>
    /// <param name="exempt">Places that nobody expects it to reach, by the place and the contour that it is on.</param>
    public IEnumerable<Point> NotCut(double within, Func<Point, int, bool> exempt)
    {
        foreach (var edge in _part)
        {
            var count = (int)Math.Ceiling(edge.Length / Every);
            for (var i = 0; i < count; i++)
            {
                var at = edge.At((i + 0.5) / count);
                if (exempt(at, edge.Owner)) continue;
                // A slightly larger disc must fit there, or chords in place of arcs would decide what is reached in a narrow wedge.
                var centre = at + edge.Outwards * (_radius + Larger);
                if (_partGrid.Near(centre).Exists(e => e.DistanceTo(centre) < _radius + Larger - 2 * Sag)) continue;
                if (_pathGrid.Near(at).Exists(p => p.DistanceTo(at) <= _radius + within)) continue;
                // In the tip of a wedge the disc may stand in the part behind the other side.
                if (!IsInPart(centre)) yield return at;
            }
        }
    }

    private bool IsInPart(Point p)
    {
        var inside = false;
        foreach (var (a, b, _) in _part)
        {
            if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)) inside = !inside;
        }
        return inside;
    }

    private static IEnumerable<Chord> Chords(Segment segment, int owner)
    {
        if (segment.IsLine) return [new(segment.Start, segment.End, owner)];
        var most = 2 * Math.Acos(Math.Max(0, 1 - Sag / segment.Radius));
        var count = Math.Max(1, (int)Math.Ceiling(Math.Abs(segment.Sweep.Radians) / most));
        return Enumerable.Range(0, count).Select(i => new Chord(segment.At((double)i / count), segment.At((i + 1.0) / count), owner));
    }

    private readonly record struct Chord(Point A, Point B, int Owner)
    {
        public double Length => A.DistanceTo(B);

        public Vector Outwards => -(B - A).Unit.Left;

        public Point At(double share) => A + (B - A) * share;

        public double DistanceTo(Point p)
        {
            var along = B - A;
            var share = Math.Clamp((p - A).Dot(along) / along.LengthSquared, 0, 1);
            return p.DistanceTo(At(share));
        }

        public double DistanceTo(Chord other, double atMost)
        {
            var (a, b) = (Math.Max(Math.Min(A.X, B.X) - Math.Max(other.A.X, other.B.X), Math.Min(other.A.X, other.B.X) - Math.Max(A.X, B.X)),
                Math.Max(Math.Min(A.Y, B.Y) - Math.Max(other.A.Y, other.B.Y), Math.Min(other.A.Y, other.B.Y) - Math.Max(A.Y, B.Y)));
            // Boxes that are so far apart decide nothing.
            if (Math.Max(a, b) > atMost) return double.PositiveInfinity;
            if (Crosses(other)) return 0;
            return Math.Min(Math.Min(DistanceTo(other.A), DistanceTo(other.B)), Math.Min(other.DistanceTo(A), other.DistanceTo(B)));
        }

        private bool Crosses(Chord other) =>
            (B - A).Cross(other.A - A) * (B - A).Cross(other.B - A) < 0
            && (other.B - other.A).Cross(A - other.A) * (other.B - other.A).Cross(B - other.A) < 0;
    }

    /// <summary>Finds chords that may be no farther than a distance; the list it answers with is good until the next question.</summary>
    private sealed class Grid
    {
        private readonly double _cell;
        private readonly double _reach;
        private readonly List<Chord> _chords;
        private readonly Dictionary<(int, int), List<int>> _cells = [];
        private readonly int[] _asked;
        private readonly List<Chord> _found = [];
        private int _question;

        public Grid(List<Chord> chords, double reach)
        {
            (_chords, _reach, _cell, _asked) = (chords, reach, Math.Max(3, reach), new int[chords.Count]);
            for (var i = 0; i < chords.Count; i++)
            {
                foreach (var part in Parts(chords[i]))
                {
                    foreach (var cell in Cells(part, margin: 0))
                    {
                        if (!_cells.TryGetValue(cell, out var list)) _cells.Add(cell, list = []);
                        if (list.Count == 0 || list[^1] != i) list.Add(i);
                    }
                }
            }
        }

        public List<Chord> Near(Point p) => Near(new Chord(p, p, 0));

        public List<Chord> Near(Chord chord)
        {
            _found.Clear();
            _question++;
            foreach (var part in Parts(chord))
            {
                foreach (var cell in Cells(part, _reach))
                {
                    if (!_cells.TryGetValue(cell, out var list)) continue;
                    foreach (var i in list)
                    {
                        if (_asked[i] == _question) continue;
                        _asked[i] = _question;
                        _found.Add(_chords[i]);
                    }
                }
            }
            return _found;
        }

        // Short parts, so that a long slanting chord does not fill a whole square of cells.
        private IEnumerable<Chord> Parts(Chord chord)
        {
            var steps = Math.Max(1, (int)Math.Ceiling(chord.Length / _cell));
            for (var i = 0; i < steps; i++) yield return new(chord.At((double)i / steps), chord.At((i + 1.0) / steps), chord.Owner);
        }

        private IEnumerable<(int, int)> Cells(Chord part, double margin)
        {
            var (left, right) = (Of(Math.Min(part.A.X, part.B.X) - margin), Of(Math.Max(part.A.X, part.B.X) + margin));
            var (low, high) = (Of(Math.Min(part.A.Y, part.B.Y) - margin), Of(Math.Max(part.A.Y, part.B.Y) + margin));
            for (var x = left; x <= right; x++)
            {
                for (var y = low; y <= high; y++) yield return (x, y);
            }

            int Of(double at) => (int)Math.Floor(at / _cell);
        }
    }
}
