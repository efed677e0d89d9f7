namespace TemplateForge.Drawing;

/// <summary>What was drawn on a coupon and what was measured on its print, in mm.</summary>
/// <remarks>
/// <code>
///     D ---- C      level   A to B
///     |      |      upright A to D
///     |      |      rising  A to C
///     A ---- B      falling D to B
/// </code>
/// </remarks>
/// <param name="DrawnLevel">A to B as it was drawn, more than 0.</param>
/// <param name="DrawnUpright">A to D as it was drawn, more than 0.</param>
/// <param name="Level">A to B as it was measured.</param>
/// <param name="Upright">A to D as it was measured.</param>
/// <param name="Rising">A to C as it was measured.</param>
/// <param name="Falling">D to B as it was measured.</param>
public sealed record CouponLengths(double DrawnLevel, double DrawnUpright, double Level, double Upright, double Rising, double Falling)
{
    /// <summary>A rule is read to a quarter of a millimetre, and four readings come together.</summary>
    private const double LeastMiss = 0.8;
    private const double MissByLength = 0.0015;

    /// <summary>How long both diagonals were drawn.</summary>
    public double DrawnDiagonal => Math.Sqrt(DrawnLevel * DrawnLevel + DrawnUpright * DrawnUpright);

    /// <summary>How long the diagonals must be in the middle for the sides to have their lengths: their squares together are
    /// twice those of the two sides together, in every parallelogram.</summary>
    public double ExpectedDiagonal => Math.Sqrt(Level * Level + Upright * Upright);

    public double MeanDiagonal => Math.Sqrt((Rising * Rising + Falling * Falling) / 2);

    /// <summary>Why these cannot be right, the plainest reason first.</summary>
    public CouponFault Fault
    {
        get
        {
            if (IsOff(Level / DrawnLevel)) return CouponFault.Level;
            if (IsOff(Upright / DrawnUpright)) return CouponFault.Upright;
            if (!(Math.Abs(MeanDiagonal - ExpectedDiagonal) <= Math.Max(LeastMiss, MissByLength * DrawnDiagonal))) return CouponFault.Diagonals;
            return Math.Abs(PrinterError.OfAny(this).Skew) <= PrinterError.MostSkew ? CouponFault.None : CouponFault.Square;
        }
    }

    private static bool IsOff(double scale) => !(Math.Abs(scale - 1) <= PrinterError.MostScale);
}

/// <summary>Why the lengths of a coupon cannot be right.</summary>
public enum CouponFault
{
    None,

    /// <summary>A to B is off by more than a printer is.</summary>
    Level,

    /// <summary>A to D is off by more than a printer is.</summary>
    Upright,

    /// <summary>The diagonals do not go with the sides.</summary>
    Diagonals,

    /// <summary>The corners are less square than a printer's are.</summary>
    Square,
}
