using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One of the two outlines that a transition joins: lines and arcs in a plane of their own, that plane's place in space.</summary>
/// <remarks>
/// <code>
///                 , '  the plane, tilted about the outline's own origin:
///           O ,  '     it sinks towards where it leans, and rises on the other side
///       , '   |
///     '       | height            x, y from above; the origin is shifted in them
/// </code>
/// </remarks>
public sealed record TransitionEnd
{
    /// <param name="outline">
    /// Closed and counter-clockwise as seen from above (against <see cref="Normal"/>), or open. It is what the sheet's middle face runs along.
    /// </param>
    /// <exception cref="ArgumentException">There is no segment, or two neighbours do not meet.</exception>
    public TransitionEnd(params IEnumerable<Segment> outline)
    {
        Outline = new Path(outline).Segments;
        IsClosed = Outline[^1].End.DistanceTo(Outline[0].Start) <= Tolerance.Merge;
    }

    public ImmutableArray<Segment> Outline { get; }
    public bool IsClosed { get; }
    public double Length => Outline.Sum(s => s.Length);

    /// <summary>1 where the outline turns to the left all the way, −1 to the right, 0 where it turns both ways or not at all.</summary>
    public int Bulge
    {
        get
        {
            var turns = Outline.Select(s => s.Bulge).Concat(Joints().Select(j => j.Turn)).Where(t => Math.Abs(t) > Smooth).ToList();
            return turns.Count == 0 ? 0 : turns.TrueForAll(t => t > 0) ? 1 : turns.TrueForAll(t => t < 0) ? -1 : 0;
        }
    }

    /// <summary>Distances along the outline at which it has a corner, its free ends not among them.</summary>
    public IEnumerable<double> Corners() => Joints().Where(j => Math.Abs(j.Turn) > Smooth).Select(j => j.At);

    /// <summary>What it is called on the pattern.</summary>
    public string Title { get; init; } = "edge";

    /// <summary>Where the outline's origin lies, in mm above the ground.</summary>
    public double Height { get; init; }

    /// <summary>Where the outline's origin lies as seen from above.</summary>
    public Vector Shift { get; init; }

    /// <summary>How far the plane is out of level.</summary>
    public Angle Tilt { get; init; }

    /// <summary>The direction, seen from above, in which the plane sinks.</summary>
    public Angle Towards { get; init; }

    /// <summary>Square to the plane; upwards where the plane is level.</summary>
    public SpaceVector Normal => new(Tilt.Sin * Towards.Cos, Tilt.Sin * Towards.Sin, Tilt.Cos);

    /// <summary>A direction of the outline's own plane, in space.</summary>
    public SpaceVector InSpace(Vector own)
    {
        var along = Vector.Polar(1, Towards);
        var (down, aside) = (own.Dot(along), along.Cross(own));
        var level = along * (down * Tilt.Cos) + along.Left * aside;
        return new(level.X, level.Y, -down * Tilt.Sin);
    }

    /// <summary>A point of the outline's own plane, in space.</summary>
    public SpacePoint InSpace(Point own) => new SpacePoint(Shift.X, Shift.Y, Height) + InSpace(own - Point.Origin);

    /// <summary>The same end, its outline gone along the other way.</summary>
    public TransitionEnd Reversed() => new(Outline.Reverse().Select(s => s.Reversed()))
    {
        Title = Title,
        Height = Height,
        Shift = Shift,
        Tilt = Tilt,
        Towards = Towards,
    };

    // A turn, in radians, that rounding may have made of none.
    private const double Smooth = 1e-6;

    private IEnumerable<(double At, double Turn)> Joints()
    {
        var at = 0.0;
        for (var i = 0; i < Outline.Length; i++)
        {
            if (i > 0 || IsClosed)
            {
                var (arriving, leaving) = (Outline[(i + Outline.Length - 1) % Outline.Length].EndDirection, Outline[i].StartDirection);
                yield return (at, Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving)));
            }
            at += Outline[i].Length;
        }
    }
}
