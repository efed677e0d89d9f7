namespace TemplateForge.Geometry;

/// <summary>A segment seen from the middle of its chord: x runs along the chord, y to the left of it.</summary>
/// <remarks>
/// <code>
///      y                    The whole line or circle on which the segment lies is
///      |                        F(x, y) = g (x² + y² − h²) − 2 k y = 0,   g = 2 b / h,   k = 1 − b²
///  ----+----▶ x             with h half the chord and b the bulge. Nothing in it grows without limit as the arc
///  -h  .  +h                straightens, as centre and radius do; for a line g is 0 and nothing else changes.
///   '. _ .'                 Half the length of F's gradient is m; on the curve it is 1 + b².
/// </code>
/// </remarks>
internal readonly struct ChordFrame
{
    private readonly Point _middle;

    public ChordFrame(Segment segment)
    {
        var chord = segment.End - segment.Start;
        var length = chord.Length;
        _middle = segment.Start.MidpointTo(segment.End);
        Along = chord / length;
        Half = length / 2;
        Bulge = segment.Bulge;
        G = 2 * Bulge / Half;
        K = 1 - Bulge * Bulge;
    }

    public Vector Along { get; }
    public double Half { get; }
    public double Bulge { get; }
    public double G { get; }
    public double K { get; }

    public Vector Into(Point p)
    {
        var from = p - _middle;
        return new(Along.Dot(from), Along.Cross(from));
    }

    public Vector Into(Vector v) => new(Along.Dot(v), Along.Cross(v));

    public Point OutOf(Vector q) => _middle + Along * q.X + Along.Left * q.Y;

    /// <summary>How far a point lies to the right of the whole line or circle, as one travels along it; to the left is negative.</summary>
    public double RightOf(Vector q) => F(q) / (HalfGradient(q).Length + 1 + Bulge * Bulge);

    /// <summary>The nearest point of the whole line or circle.</summary>
    public Vector Foot(Vector q)
    {
        var gradient = HalfGradient(q);
        var m = gradient.Length;
        // In the very centre every point is as near; the middle of the arc is as good as any.
        return m > 0 ? q - gradient * (F(q) / (m + 1 + Bulge * Bulge) / m) : new(0, -Bulge * Half);
    }

    /// <summary>The nearest point of the segment itself, and its share of the length.</summary>
    public (Vector Foot, double Share) NearestTo(Vector q)
    {
        var foot = Foot(q);
        // An arc of at most half a circle lies within its chord's width and on one side of it, and no other part of its
        // circle does. The rounding of the foot must not decide: it is all that the height of a nearly straight arc is.
        var rounding = 1e-13 * Half + 4e-15 * q.Length;
        var beyondChord = Bulge == 0 ? 0 : foot.Y * Math.Sign(Bulge);
        if (Math.Abs(foot.X) <= Half && beyondChord <= rounding) return (foot, ShareAt(foot));
        Vector start = new(-Half, 0), end = new(Half, 0);
        return (q - start).LengthSquared <= (q - end).LengthSquared ? (start, 0) : (end, 1);
    }

    /// <summary>The point of the whole circle that lies furthest in a direction (of length 1). Roughly, where the arc is nearly straight.</summary>
    public Vector FurthestOfCircle(Vector direction) => new Vector(0, K / G) + direction * ((1 + Bulge * Bulge) / Math.Abs(G));

    private double F(Vector q) => G * (q.X * q.X + q.Y * q.Y - Half * Half) - 2 * K * q.Y;

    private Vector HalfGradient(Vector q) => new(G * q.X, G * q.Y - K);

    /// <summary>The share of the length at which a point of the segment lies, by its distance from the nearer end.</summary>
    private double ShareAt(Vector q)
    {
        if (Bulge == 0) return (q.X + Half) / (2 * Half);
        var fromStart = (q - new Vector(-Half, 0)).Length;
        var fromEnd = (q - new Vector(Half, 0)).Length;
        var diameter = Half * (1 + Bulge * Bulge) / Math.Abs(Bulge);
        var sweep = 4 * Math.Atan(Math.Abs(Bulge));
        var share = 2 * Math.Asin(Math.Min(1, Math.Min(fromStart, fromEnd) / diameter)) / sweep;
        return Math.Clamp(fromStart <= fromEnd ? share : 1 - share, 0, 1);
    }
}
