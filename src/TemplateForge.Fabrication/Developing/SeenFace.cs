using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The section of one face, seen from a direction: how far along it lies what is seen where.</summary>
/// <remarks>
/// Over the distance d along an arc of curvature κ that begins at the angle θ to the view's across, what is seen grows by
/// <code>
///     d cos(θ + κ d / 2) sin(κ d / 2) / (κ d / 2)
/// </code>
/// which needs no centre, so that nearly straight arcs are ordinary. Undone by the arc sine and a step of Newton's.
/// </remarks>
internal sealed class SeenFace
{
    /// <summary>The turn, in radians, from which a joint of the section is a corner.</summary>
    public const double Corner = 1e-5;

    private const double Back = 1e-9;

    private readonly ImmutableArray<Segment> _segments;
    private readonly Vector _across;
    private readonly double[] _seen;
    private readonly double[] _along;

    private SeenFace(ImmutableArray<Segment> segments, Vector across, double[] seen)
    {
        (_segments, _across, _seen) = (segments, across, seen);
        _along = new double[segments.Length + 1];
        for (var i = 0; i < segments.Length; i++) _along[i + 1] = _along[i] + segments[i].Length;
    }

    public int Count => _segments.Length;

    /// <summary>The least and the most that is seen of it, from the view's origin.</summary>
    public double From => _seen[0];

    public double To => _seen[^1];

    /// <summary>Looks at a section.</summary>
    /// <param name="segments">The section, in the order in which it is seen from left to right.</param>
    /// <param name="across">The direction across the view, of length 1.</param>
    /// <param name="origin">What is seen at 0.</param>
    /// <param name="face">The section as it is seen.</param>
    /// <param name="hidden">Where it runs back, or is seen on its edge.</param>
    public static bool TrySee(ImmutableArray<Segment> segments, Vector across, Point origin, [MaybeNullWhen(false)] out SeenFace face, out Point hidden)
    {
        (face, hidden) = (null, default);
        var seen = new double[segments.Length + 1];
        seen[0] = (segments[0].Start - origin).Dot(across);
        for (var i = 0; i < segments.Length; i++)
        {
            var s = segments[i];
            seen[i + 1] = (s.End - origin).Dot(across);
            // At most half a turn: what goes forwards at both ends and in the middle goes forwards throughout.
            foreach (var share in (ReadOnlySpan<double>)[0, 0.5, 1])
            {
                if (s.DirectionAt(share).Dot(across) >= -Back) continue;
                hidden = s.At(share);
                return false;
            }
            if (seen[i + 1] - seen[i] > Tolerance.Merge) continue;
            hidden = s.At(0.5);
            return false;
        }
        face = new(segments, across, seen);
        return true;
    }

    /// <summary>The place that is seen somewhere from <see cref="From"/> to <see cref="To"/>.</summary>
    public SectionPlace PlaceSeenAt(double seen)
    {
        var i = Index(_seen, seen);
        var (segment, wanted) = (_segments[i], seen - _seen[i]);
        if (segment.IsLine) return new(i, Math.Clamp(wanted / (_seen[i + 1] - _seen[i]), 0, 1));
        var (length, sweep) = (segment.Length, segment.Sweep.Radians);
        var start = Math.Atan2(_across.Cross(segment.StartDirection), _across.Dot(segment.StartDirection));
        var share = Math.Abs(sweep) > 1e-3
            ? (Math.Asin(Math.Clamp(Math.Sin(start) + wanted * sweep / length, -1, 1)) - start) / sweep
            : wanted / (_seen[i + 1] - _seen[i]);
        for (var step = 0; step < 4; step++)
        {
            var slope = length * Math.Cos(start + sweep * share);
            if (slope < 1e-3 * length) break; // seen on its edge: the arc sine is as near as it gets
            var half = sweep * share / 2;
            var off = length * share * Math.Cos(start + half) * (Math.Abs(half) < 1e-6 ? 1 : Math.Sin(half) / half) - wanted;
            share -= off / slope;
            if (Math.Abs(off) < 1e-11) break;
        }
        return new(i, Math.Clamp(share, 0, 1));
    }

    /// <summary>The place so far along the section from its start.</summary>
    public SectionPlace PlaceAlong(double along)
    {
        var i = Index(_along, along);
        return new(i, Math.Clamp((along - _along[i]) / (_along[i + 1] - _along[i]), 0, 1));
    }

    public double AlongAt(SectionPlace place) => _along[place.Index] + (_along[place.Index + 1] - _along[place.Index]) * place.Share;

    public double SeenAt(SectionPlace place)
    {
        var segment = _segments[place.Index];
        return _seen[place.Index] + (segment.At(place.Share) - segment.Start).Dot(_across);
    }

    public Point At(SectionPlace place) => _segments[place.Index].At(place.Share);

    /// <summary>The way the section runs there; at a joint, that of what begins there.</summary>
    public Vector DirectionAt(SectionPlace place) => _segments[place.Index].DirectionAt(place.Share);

    /// <summary>How much of it is seen there: the cosine of its lean, 1 where one looks square at it.</summary>
    public double Facing(SectionPlace place) => DirectionAt(place).Dot(_across);

    public double LengthOf(int index) => _along[index + 1] - _along[index];

    public bool IsStraight(int index) => _segments[index].IsLine;

    /// <summary>How far the section turns in the joint where a line or arc begins.</summary>
    public double TurnBefore(int index)
    {
        var (a, b) = (_segments[index - 1].EndDirection, _segments[index].StartDirection);
        return Math.Atan2(a.Cross(b), a.Dot(b));
    }

    /// <summary>What is seen at the joint where a line or arc begins.</summary>
    public double SeenAtStart(int index) => _seen[index];

    private static int Index(double[] ends, double value)
    {
        var i = Array.BinarySearch(ends, value);
        return Math.Clamp(i < 0 ? ~i - 1 : i, 0, ends.Length - 2);
    }
}

/// <summary>A place on a section: a share, 0 to 1, of one of its lines and arcs.</summary>
internal readonly record struct SectionPlace(int Index, double Share);
