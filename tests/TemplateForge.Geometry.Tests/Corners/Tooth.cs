using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests.Corners;

/// <summary>A side of a corner: a line, or an arc that bends left (above 0) or right, as the boundary runs, on 1 / curvature.</summary>
internal sealed record Side(Point Corner, Vector Away, double Curvature, bool Arrives, double Length)
{
    // Seen from the corner, the side that arrives runs the other way.
    private double Bend => Arrives ? -Curvature : Curvature;
    private Point Centre => Corner + Away.Left / Bend;

    public Segment Segment
    {
        get
        {
            var segment = Bend == 0
                ? Segment.Line(Corner, Corner + Away * Length)
                : Segment.Arc(Corner, At(Length), Math.Tan(Bend * Length / 4));
            return Arrives ? segment.Reversed() : segment;
        }
    }

    /// <summary>The point so far along the side from the corner: turned about the centre, or straight on.</summary>
    public Point At(double distance) => Bend == 0
        ? Corner + Away * distance
        // Centre + (Corner − Centre) turned, with 1 − cos written so that a far centre takes no digits.
        : Corner + (Away * Math.Sin(Bend * distance) + Away.Left * (2 * Math.Pow(Math.Sin(Bend * distance / 2), 2))) / Bend;

    /// <summary>Area between the side and its chord from the corner to a place, positive where the side bends to the left of its run.</summary>
    public double AreaOverChord(double distance) =>
        Curvature == 0 ? 0 : (distance * Math.Abs(Curvature) - Math.Sin(distance * Math.Abs(Curvature))) / (2 * Curvature * Math.Abs(Curvature));

    /// <summary>The line or circle on which centres lie of circles of a radius that touch the side on its left (1) or right (−1).</summary>
    public (bool IsLine, Point Through, double Radius) Centres(double radius, int hand) => Curvature == 0
        ? (true, Corner + Away.Left * (Arrives ? -hand * radius : hand * radius), 0)
        : (false, Centre, Math.Abs(1 / Curvature) - Math.Sign(Curvature) * hand * radius);

    /// <summary>How far from the corner a circle about this centre touches the side, or its whole line or circle; below 0 is behind.</summary>
    public double TouchedAt(Point centre)
    {
        if (Bend == 0) return (centre - Corner).Dot(Away);
        var (from, to) = (Corner - Centre, centre - Centre);
        return Math.Atan2(from.Cross(to), from.Dot(to)) / Bend;
    }
}

/// <summary>A contour with one corner between two chosen sides, closed by two lines from the far ends to a point inside.</summary>
/// <remarks>
/// <code>
///             arriving ╱ '-.               Turned by less than half a circle inside, the corner points out of what the contour
///       Corner        ╱      '- .          bounds; by more, into it.
///             ╲ inside           '  Far
///     leaving  ╲         . - '
///               ╲ . - '
/// </code>
/// </remarks>
internal sealed record Tooth(Side Arriving, Side Leaving, Point Far)
{
    private static readonly double[] Before = [0, 1 / 80.0, -1 / 80.0, 1e-5];
    private static readonly double[] After = [0, 1 / 30.0, -1 / 30.0, -1e-5];
    private static readonly double[] Inside = [30, 60, 90, 150, 179.5, 180.5, 210, 270, 330];

    public Point Corner => Arriving.Corner;

    public Contour Contour => new(
        Arriving.Segment, Leaving.Segment, Segment.Line(Leaving.At(Leaving.Length), Far), Segment.Line(Far, Arriving.At(Arriving.Length)));

    /// <summary>1 for a corner that points out of what the contour bounds, −1 for one that points in.</summary>
    public int Turns => Inner < Angle.HalfTurn ? 1 : -1;

    public Tooth(Angle inside, double before, double after, double length) : this(
        new Side(new(10, 7), Vector.Polar(1, Bisector + inside / 2), before, Arrives: true, length),
        new Side(new(10, 7), Vector.Polar(1, Bisector - inside / 2), after, Arrives: false, length),
        new Point(10, 7) + Vector.Polar(150, Bisector)) => Inner = inside;

    public Angle Inner { get; }

    private static Angle Bisector => Angle.FromDegrees(25);

    /// <summary>All combinations of lines and arcs at all angles, those left out whose sides cross.</summary>
    public static IEnumerable<Tooth> All(double length) =>
        from inside in Inside
        from before in Before
        from after in After
        let tooth = new Tooth(Angle.FromDegrees(inside), before, after, length)
        where tooth.Contour.IsCounterClockwise && Given.Polygons(Given.Region(tooth.Contour)).IsValid
        select tooth;

    /// <summary>The tooth itself and, turning the other way, as a hole in a plate; as drawn, mirrored, turned, far away, begun elsewhere.</summary>
    public IEnumerable<(string Name, Placement By, Region Region)> Images()
    {
        var plate = Given.WithHole(Outline.Rectangle(new Box(Corner, Corner).Grown(400)), Contour);
        foreach (var image in Symmetries.Of(Given.Region(Contour))) yield return ($"{this}, {image.Name}", image.By, image.Shape);
        foreach (var image in Symmetries.Of(plate)) yield return ($"{this}, as a hole, {image.Name}", image.By, image.Shape);
    }

    /// <summary>The fillet that touches the sides soonest: its centre, and how far along the sides it touches them.</summary>
    public (Point Centre, double Before, double After)? Fillet(double radius)
    {
        return Common(Arriving.Centres(radius, Turns), Leaving.Centres(radius, Turns))
            .Select(c => (Centre: c, Before: Arriving.TouchedAt(c), After: Leaving.TouchedAt(c)))
            .Where(f => f.Before > 0 && f.After > 0 && f.Before <= Arriving.Length && f.After <= Leaving.Length)
            .OrderBy(f => f.Before + f.After)
            .Select(f => ((Point, double, double)?)f)
            .FirstOrDefault();
    }

    /// <summary>Area of the triangle from the corner to the places so far along its sides, the sides' bends counted in.</summary>
    /// <remarks>What a chamfer takes away there, or where the corner points in, less than 0, what it adds.</remarks>
    public double TipArea(double before, double after) =>
        (Leaving.At(after) - Corner).Cross(Arriving.At(before) - Corner) / 2 + Arriving.AreaOverChord(before) + Leaving.AreaOverChord(after);

    public override string ToString() =>
        FormattableString.Invariant($"{Inner.Degrees:0.#}° inside between curvatures {Arriving.Curvature:0.#####} and {Leaving.Curvature:0.#####}");

    private IEnumerable<Point> Common((bool IsLine, Point Through, double Radius) a, (bool IsLine, Point Through, double Radius) b)
    {
        if (a.IsLine && b.IsLine)
        {
            // a + s u = b + t v
            var (u, v) = (Arriving.Away, Leaving.Away);
            return [a.Through + u * ((b.Through - a.Through).Cross(v) / u.Cross(v))];
        }
        if (a.IsLine) return OnLine(a.Through, Arriving.Away, b.Through, b.Radius);
        if (b.IsLine) return OnLine(b.Through, Leaving.Away, a.Through, a.Radius);
        // Two circles: d from centre to centre, x along it to the line through both crossings. From the smaller, for the digits.
        if (a.Radius > b.Radius) (a, b) = (b, a);
        var between = b.Through - a.Through;
        var d = between.Length;
        if (d == 0) return [];
        var x = (d * d + (a.Radius - b.Radius) * (a.Radius + b.Radius)) / (2 * d);
        return OnLine(a.Through + between / d * x, between.Left / d, a.Through, a.Radius);
    }

    private static IEnumerable<Point> OnLine(Point on, Vector along, Point centre, double radius)
    {
        var foot = on + along * (centre - on).Dot(along);
        var half = (radius - foot.DistanceTo(centre)) * (radius + foot.DistanceTo(centre));
        return half < 0 || radius <= 0 ? [] : [foot + along * Math.Sqrt(half), foot - along * Math.Sqrt(half)];
    }
}
