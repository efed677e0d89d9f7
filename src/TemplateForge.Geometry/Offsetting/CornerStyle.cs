namespace TemplateForge.Geometry;

/// <summary>What an offset puts at a corner where the moved sides part.</summary>
/// <remarks>
/// <code>
///        M              V  the corner            round    the pie V E S about V
///       ╱ ╲             E  where one side ends   mitred   the kite V E M S, unless M is too far from V; then as flat
///   ───E───S            S  where the next begins flat     the triangle V E S
///      │ V  ╲           M  where the tangents of both moved sides meet
/// </code>
/// The default value is <see cref="Round"/>.
/// </remarks>
public readonly record struct CornerStyle
{
    private CornerStyle(double limit) => Limit = limit;

    /// <summary>How far from the corner, in distances, the tip of a mitre may lie; at 1 none may; 0 for round corners.</summary>
    internal double Limit { get; }

    internal bool IsRound => Limit == 0;

    /// <summary>Everything nearer than the distance to the corner.</summary>
    public static CornerStyle Round => default;

    /// <summary>Cut straight from the end of one moved side to the start of the next.</summary>
    public static CornerStyle Flat => new(1);

    /// <summary>Drawn out to a point; where that would lie farther from the corner than the limit allows, flat.</summary>
    /// <param name="limit">
    /// Most that the tip may be away, as a multiple of the distance. A corner that turns by θ needs 1 / cos(θ / 2): √2 for a
    /// square's, 2 for an equilateral triangle's. A tip that is too far by less than <see cref="Tolerance.Merge"/> stays.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is below 1 or not finite.</exception>
    public static CornerStyle Mitred(double limit)
    {
        if (!(limit >= 1 && double.IsFinite(limit)))
            throw new ArgumentOutOfRangeException(nameof(limit), limit, "The limit of a mitre is finite and at least 1.");
        return new(limit);
    }

    public override string ToString() =>
        IsRound ? "round" : Limit == 1 ? "flat" : FormattableString.Invariant($"mitred to {Limit}");
}
