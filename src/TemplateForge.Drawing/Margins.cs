namespace TemplateForge.Drawing;

/// <summary>The strips of an upright sheet on which its printer may not print, each 0 mm or more.</summary>
public readonly record struct Margins
{
    /// <exception cref="ArgumentOutOfRangeException">A width is below 0 or no number.</exception>
    public Margins(double left, double right, double top, double bottom)
    {
        foreach (var width in (ReadOnlySpan<double>)[left, right, top, bottom])
            if (!(width >= 0 && double.IsFinite(width))) throw new ArgumentOutOfRangeException(nameof(left), width, "A margin is 0 mm wide or more.");
        (Left, Right, Top, Bottom) = (left, right, top, bottom);
    }

    public double Left { get; }
    public double Right { get; }
    public double Top { get; }
    public double Bottom { get; }

    public double Widest => Math.Max(Math.Max(Left, Right), Math.Max(Top, Bottom));

    public static Margins Alike(double width) => new(width, width, width, width);

    /// <summary>The same on a page that is read across. Drivers turn such a page either way, so the wider of two margins stands on both sides.</summary>
    public Margins Across => new(Math.Max(Top, Bottom), Math.Max(Top, Bottom), Math.Max(Left, Right), Math.Max(Left, Right));

    /// <summary>Wider at the sides, and at the top and bottom.</summary>
    public Margins Grown(double sides, double ends) => new(Left + sides, Right + sides, Top + ends, Bottom + ends);

    // What the compiler would write holds Across, which holds Across, and so on.
    public override string ToString() => FormattableString.Invariant($"left {Left}, right {Right}, top {Top}, bottom {Bottom} mm");
}
