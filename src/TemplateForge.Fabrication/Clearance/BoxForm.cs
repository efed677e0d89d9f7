namespace TemplateForge.Fabrication;

/// <summary>A box about its middle, its edges along a, b and c.</summary>
public sealed class BoxForm : ComponentForm
{
    private readonly InSpace _half;

    /// <param name="length">Along a, in mm.</param>
    /// <param name="width">Along b, in mm.</param>
    /// <param name="height">Along c, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not more than 0.</exception>
    public BoxForm(double length, double width, double height)
    {
        foreach (var size in (ReadOnlySpan<double>)[length, width, height])
        {
            if (!(size > 0 && double.IsFinite(size))) throw new ArgumentOutOfRangeException(nameof(length), size, "A box has sizes of more than 0.");
        }
        _half = new(length / 2, width / 2, height / 2);
    }

    internal override (InSpace Low, InSpace High) Bounds => (-_half, _half);

    // Every coordinate that lies past the box lies so far past it; the others are matched on it.
    internal override InSpace Away(InSpace point, out int feature)
    {
        var (a, first) = Past(point.X, _half.X);
        var (b, second) = Past(point.Y, _half.Y);
        var (c, third) = Past(point.Z, _half.Z);
        feature = first + 3 * second + 9 * third;
        return new(a, b, c);
    }

    private static (double By, int Side) Past(double at, double half) =>
        at > half ? (at - half, 2) : at < -half ? (at + half, 1) : (0, 0);
}
