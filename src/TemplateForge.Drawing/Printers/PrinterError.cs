namespace TemplateForge.Drawing;

/// <summary>How a printer distorts a sheet: what is drawn as v comes out as A v.</summary>
/// <remarks>
/// <code>
///     A = | Across  Skew  |     on a sheet that lies upright; symmetric, for a turn of the whole print distorts nothing
///         | Skew    Along |
/// </code>
/// Derived from four lengths of a rectangle that came out as a parallelogram with the sides u and v: AᵀA has u², v² and u·v in
/// it, each by the sides as drawn, and u·v = (rising² − falling²) / 4. Its symmetric root is A.
/// </remarks>
public sealed record PrinterError
{
    /// <summary>More than this is no printer's error: the job was printed fit to page, or on other paper.</summary>
    public const double MostScale = 0.02;

    /// <summary>Nor is more skew than this, in mm for every mm: twice as much out of square.</summary>
    public const double MostSkew = 0.005;

    private PrinterError(double across, double along, double skew) => (Across, Along, Skew) = (across, along, skew);

    public static PrinterError None { get; } = new(1, 1, 0);

    /// <summary>Scale along the shorter side of the sheet.</summary>
    public double Across { get; }

    /// <summary>Scale along its longer side.</summary>
    public double Along { get; }

    /// <summary>How far a point moves to the right for every mm that it lies higher, and upwards for every mm further right.</summary>
    public double Skew { get; }

    /// <summary>How far, in mm, the top of an upright line comes out to the right of square over a length.</summary>
    public double OutOfSquare(double over) => (Skew / Across + Skew / Along) * over;

    public bool IsNone => this == None;

    /// <exception cref="ArgumentException">The lengths are no printer's: see <see cref="CouponLengths.Fault"/>.</exception>
    public static PrinterError Of(CouponLengths coupon)
    {
        if (coupon.Fault != CouponFault.None) throw new ArgumentException($"{coupon} cannot be a printer's: {coupon.Fault}.", nameof(coupon));
        return OfAny(coupon);
    }

    internal static PrinterError OfAny(CouponLengths c)
    {
        var (g11, g22) = (c.Level * c.Level / (c.DrawnLevel * c.DrawnLevel), c.Upright * c.Upright / (c.DrawnUpright * c.DrawnUpright));
        var g12 = (c.Rising * c.Rising - c.Falling * c.Falling) / (4 * c.DrawnLevel * c.DrawnUpright);
        // Root of a symmetric 2 × 2 matrix (Cayley and Hamilton): (G + √det I) / √(trace + 2 √det).
        var root = Math.Sqrt(Math.Max(0, g11 * g22 - g12 * g12));
        var by = Math.Sqrt(g11 + g22 + 2 * root);
        return new((g11 + root) / by, (g22 + root) / by, g12 / by);
    }

    /// <summary>What is printed instead, so that it comes out right; for a page that is read across as well.</summary>
    public PageCorrection Correction(bool across)
    {
        // Turned by a quarter either way, the sides change places and the skew its sign.
        var (x, y, skew) = across ? (Along, Across, -Skew) : (Across, Along, Skew);
        var determinant = x * y - skew * skew;
        return new(y / determinant, -skew / determinant, x / determinant);
    }

    /// <summary>The paper with margins so wide that a corrected page stays on what the printer reaches.</summary>
    public Paper Fitted(Paper paper)
    {
        var by = Correction(across: false);
        var sides = (Math.Max(0, by.X - 1) * paper.Width + Math.Abs(by.Skew) * paper.Height) / 2;
        var ends = (Math.Max(0, by.Y - 1) * paper.Height + Math.Abs(by.Skew) * paper.Width) / 2;
        return paper with { Margins = paper.Margins.Grown(sides, ends) };
    }
}

/// <summary>A symmetric matrix by which a page is drawn, about its middle.</summary>
/// <param name="X">Scale along x.</param>
/// <param name="Skew">What of y goes into x, and of x into y.</param>
/// <param name="Y">Scale along y.</param>
public readonly record struct PageCorrection(double X, double Skew, double Y)
{
    public static PageCorrection None => new(1, 0, 1);
}
