namespace TemplateForge.Geometry;

/// <summary>A line or an arc of at most half a turn, seen from its middle, so that straight is not a special case.</summary>
/// <remarks>
/// <code>
///      w = -Reach                           w = Reach      u, v: along the tangent at the apex and to its left
///             ' .                       . '                κ: curvature, positive turning left, 0 for a line
///                 ' - . _ apex _ . - '  ──▶ u              |κ w| = |tan(quarter of the sweep)| ≤ 1
/// </code>
/// A place on it is w = tan(θ / 2) / κ, where θ is the turn since the apex: u = 2 w / (1 + κ² w²), v = κ w u. For a line w is
/// half the length. No centre appears, which a flat arc has far away and badly known.
/// </remarks>
internal readonly struct Curve
{
    private Curve(Point apex, Vector along, double curvature, double reach) =>
        (Apex, Along, Curvature, Reach) = (apex, along, curvature, reach);

    public Point Apex { get; }
    public Vector Along { get; }
    public double Curvature { get; }
    public double Reach { get; }

    public bool IsLine => Curvature == 0;

    /// <summary>Centre of the circle; only for arcs that turn noticeably.</summary>
    public Point Centre => Apex + Along.Left / Curvature;

    public static Curve Between(Point start, Point end, double bulge)
    {
        var chord = end - start;
        var length = chord.Length;
        var along = chord / length;
        var reach = length * (1 + bulge * bulge) / 4;
        return new(start.MidpointTo(end) - along.Left * (length / 2 * bulge), along, bulge / reach, reach);
    }

    public Point At(double place)
    {
        var turn = Curvature * place;
        var u = 2 * place / (1 + turn * turn);
        return Apex + Along * u + Along.Left * (turn * u);
    }

    /// <summary>The place whose normal passes through a point; it may lie past the ends, and opposite the apex there is none (NaN).</summary>
    public double PlaceOf(Point p)
    {
        var q = p - Apex;
        var u = Along.Dot(q);
        var towardsCentre = 1 - Curvature * Along.Cross(q);
        return u / (towardsCentre + Math.Sqrt(towardsCentre * towardsCentre + Curvature * Curvature * u * u));
    }

    /// <summary>Turn in radians from the apex to a point on the circle, all round, in (−π, π].</summary>
    public double TurnTo(Point p) => Math.Atan2(Curvature * Along.Dot(p - Apex), 1 - Curvature * Along.Cross(p - Apex));

    public bool Reaches(double place) => Math.Abs(place) <= Reach;

    /// <summary>Distance of a point from the whole line or circle, positive to the right of it.</summary>
    public double RightOf(Point p)
    {
        // F = δ + κ δ² / 2, turned round without subtracting what is nearly equal.
        var f = Power(p);
        return 2 * f / (1 + Math.Sqrt(Math.Max(0, 1 + 2 * Curvature * f)));
    }

    /// <summary>F(p) = κ q² / 2 − v: zero on the curve, near it the distance to the right.</summary>
    public double Power(Point p)
    {
        var q = p - Apex;
        return Curvature / 2 * q.LengthSquared - Along.Cross(q);
    }

    public Vector PowerGradient(Point p) => (p - Apex) * Curvature - Along.Left;

    /// <summary>Bulge of the part between two places: tan((φ₂ − φ₁) / 2), where tan φ = κ w.</summary>
    public double BulgeBetween(double from, double to)
    {
        var rise = Curvature * (to - from);
        var run = 1 + Curvature * from * (Curvature * to);
        return rise / (run + Math.Sqrt(run * run + rise * rise));
    }

    /// <summary>The place where the curve runs upright, a leftmost or rightmost point of the circle; past the ends if there is none.</summary>
    public double UprightPlace =>
        IsLine ? double.PositiveInfinity : Math.CopySign(1, Along.Y) * Along.X / ((1 + Math.Abs(Along.Y)) * Curvature);

    /// <summary>The place where the curve runs level, a highest or lowest point of the circle; past the ends if there is none.</summary>
    public double LevelPlace =>
        IsLine ? double.PositiveInfinity : -Math.CopySign(1, Along.X) * Along.Y / ((1 + Math.Abs(Along.X)) * Curvature);
}
