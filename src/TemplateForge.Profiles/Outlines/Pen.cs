using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>Draws line by line and arc by arc, and knows where it is and which way it goes.</summary>
internal sealed class Pen
{
    public Pen(Point start) => (Start, At) = (start, start);

    public Point Start { get; }

    public Point At { get; private set; }

    public List<Segment> Segments { get; } = [];

    /// <summary>The way the last line or arc ended; the zero vector before anything was drawn.</summary>
    public Vector Heading => Segments.Count == 0 ? Vector.Zero : Segments[^1].EndDirection;

    public void LineTo(Point end)
    {
        Segments.Add(Segment.Line(At, end));
        At = end;
    }

    /// <summary>An arc to a point.</summary>
    /// <param name="end">The point, not where the pen is.</param>
    /// <param name="sweep">The angle it turns through, less than a whole turn; to the left above 0.</param>
    public void ArcTo(Point end, double sweep)
    {
        if (Math.Abs(sweep) < 1e-12)
        {
            LineTo(end);
            return;
        }
        if (Math.Abs(sweep) <= Math.PI)
        {
            Segments.Add(Segment.Arc(At, end, Math.Clamp(Math.Tan(sweep / 4), -1, 1)));
        }
        else
        {
            // A segment turns through half a circle at most, so that a wider arc is cut in its middle.
            var centre = At.MidpointTo(end) + (end - At).Left / (2 * Math.Tan(sweep / 2));
            var middle = Placement.Turned(Angle.FromRadians(sweep / 2), centre).Of(At);
            Segments.Add(Segment.Arc(At, middle, Math.Tan(sweep / 8)));
            Segments.Add(Segment.Arc(middle, end, Math.Tan(sweep / 8)));
        }
        At = end;
    }

    /// <summary>A line or arc that begins where the pen is.</summary>
    public void Draw(Segment segment)
    {
        Segments.Add(segment);
        At = segment.End;
    }

    /// <summary>Draws back to the start: with a straight line, unless the pen is there already.</summary>
    public void Close()
    {
        if (At.DistanceTo(Start) > Tolerance.Length) LineTo(Start);
        else if (At != Start && Segments.Count > 0) Segments[^1] = Segment.Arc(Segments[^1].Start, Start, Segments[^1].Bulge);
        At = Start;
    }
}
