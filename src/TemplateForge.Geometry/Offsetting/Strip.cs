namespace TemplateForge.Geometry;

/// <summary>What a segment sweeps when it is moved sideways: the far side runs from where it left to where it arrived.</summary>
/// <param name="StartDirection">Of the segment.</param>
/// <param name="EndDirection">Of the segment.</param>
/// <param name="Left">Its start, moved aside.</param>
/// <param name="Arrived">Its end, moved aside.</param>
/// <param name="Bulge">Of the segment and of the far side alike.</param>
/// <param name="Stops">An arc that would go past its centre stops there: the strip has no far side, only its two spokes.</param>
/// <param name="Centre">Where it stops.</param>
/// <param name="IsTiny">The tolerance may turn a cusp between the segment and its neighbour inside out.</param>
internal record struct Strip(
    Vector StartDirection, Vector EndDirection, Point Left, Point Arrived, double Bulge, bool Stops, Point Centre, bool IsTiny)
{
    /// <summary>In mm. An arc of this length that leaves its neighbour at 0.03 rad gets no farther from it than the tolerance.</summary>
    private const double Tiny = 1e4 * Tolerance.Merge;

    /// <summary>How it goes over into the next strip.</summary>
    public Joint Joint { get; set; }

    /// <summary>Whether its far side ends tangent to what follows.</summary>
    public bool RunsOn { get; set; }

    /// <summary>Where it goes over into the next one, if it is cut short.</summary>
    public Point Cut { get; set; }

    /// <summary>Whether something tangent to the start of the far side surely meets that, not what comes after a far side of no length.</summary>
    public readonly bool CanBeRunInto => !Stops && (
        Bulge == 0 && Joint != Joint.ShortCut
        || ((Joint == Joint.ShortCut ? Cut : Arrived) - Left).LengthSquared > 16 * Tolerance.Merge * Tolerance.Merge);

    public readonly Curve FarSide => Curve.Between(Left, Arrived, Bulge);

    /// <param name="segment">The segment.</param>
    /// <param name="distance">How far it is moved to its right in mm; below 0 to its left.</param>
    public static Strip Of(in Segment segment, double distance)
    {
        var chord = segment.End - segment.Start;
        var length = chord.Length;
        var along = chord / length;
        if (segment.IsLine)
        {
            var aside = along.Left * -distance;
            return new(along, along, segment.Start + aside, segment.End + aside, 0, false, default, length < Tiny);
        }
        // The chord turned by half the sweep either way: tan(sweep / 4) = b, so cos = (1 − b²) / (1 + b²), sin = 2 b / (1 + b²).
        var b = segment.Bulge;
        var square = 1 + b * b;
        var (ahead, across) = (along * ((1 - b * b) / square), along.Left * (2 * b / square));
        var (start, end) = (ahead - across, ahead + across);
        var radius = length * square / (4 * Math.Abs(b)) + Math.Sign(b) * distance;
        var stops = radius <= 0;
        return new(
            start, end, segment.Start - start.Left * distance, segment.End - end.Left * distance, b, stops, stops ? segment.Centre : default,
            length < Tiny);
    }
}

/// <summary>How the far side of one strip goes over into that of the next.</summary>
internal enum Joint
{
    /// <summary>They meet.</summary>
    Meeting,

    /// <summary>They part, and an arc about the corner joins them.</summary>
    Pie,

    /// <summary>They cross, and are joined there.</summary>
    ShortCut,

    /// <summary>By way of the corner.</summary>
    Spokes,
}
