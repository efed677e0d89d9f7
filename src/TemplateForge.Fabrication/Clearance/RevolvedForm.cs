using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A body of revolution: a half-profile turned once round the axis.</summary>
/// <remarks>
/// <code>
///    radius (y)   ._______.
///                 |        `-._       x is c, the distance along the axis from the reference point
///      ───────────'────────────'───▶  axis
/// </code>
/// The distance of a point in space is that of (c, √(a² + b²)) to the half-profile, in one half plane through the axis: the
/// nearest point of a ring lies in the half plane of the point.
/// </remarks>
public sealed class RevolvedForm : ComponentForm
{
    private readonly ImmutableArray<ProfileSide> _sides;

    /// <param name="halfProfile">What the half plane cuts out of the body: x along the axis, y the radius, nowhere below 0.</param>
    /// <exception cref="ArgumentException">The half-profile is empty, or reaches across the axis.</exception>
    public RevolvedForm(Region halfProfile)
    {
        if (halfProfile.IsEmpty || halfProfile.Bounds.Min.Y < -Tolerance.Length)
            throw new ArgumentException("A half-profile lies on one side of its axis.", nameof(halfProfile));
        HalfProfile = halfProfile;
        _sides = [.. halfProfile.Contours.SelectMany(SidesOf)];
    }

    public Region HalfProfile { get; }

    internal override (InSpace Low, InSpace High) Bounds
    {
        get
        {
            var (bounds, most) = (HalfProfile.Bounds, HalfProfile.Bounds.Max.Y);
            return (new(-most, -most, bounds.Min.X), new(most, most, bounds.Max.X));
        }
    }

    internal override InSpace Away(InSpace point, out int feature)
    {
        var radius = Math.Sqrt(point.X * point.X + point.Y * point.Y);
        var at = new Point(point.Z, radius);
        var (least, away, nearest, place) = (double.PositiveInfinity, Vector.Zero, 0, OnSide.Within);
        for (var i = 0; i < _sides.Length; i++)
        {
            var from = _sides[i].Away(at, out var where);
            var squared = from.LengthSquared;
            if (squared >= least) continue;
            (least, away, nearest, place) = (squared, from, i, where);
        }
        feature = 3 * nearest + (int)place;
        if (_sides[nearest].IsInside(at, away, place)) return InSpace.Zero;
        return radius > 0 ? new(away.Y * point.X / radius, away.Y * point.Y / radius, away.X) : new(away.Y, 0, away.X);
    }

    // What lies on the axis bounds nothing once it is turned round it; where a side ends there, its mirror image goes on.
    private static IEnumerable<ProfileSide> SidesOf(Contour contour)
    {
        var segments = contour.Segments;
        for (var i = 0; i < segments.Length; i++)
        {
            if (IsOnAxis(segments[i])) continue;
            var (before, after) = (segments[(i + segments.Length - 1) % segments.Length], segments[(i + 1) % segments.Length]);
            yield return new ProfileSide(
                segments[i],
                IsOnAxis(before) ? Across(segments[i].StartDirection) : before.EndDirection,
                IsOnAxis(after) ? Across(segments[i].EndDirection) : after.StartDirection);
        }
    }

    private static bool IsOnAxis(Segment s) => s.IsLine && Math.Abs(s.Start.Y) <= Tolerance.Length && Math.Abs(s.End.Y) <= Tolerance.Length;

    private static Vector Across(Vector direction) => new(-direction.X, direction.Y);
}
