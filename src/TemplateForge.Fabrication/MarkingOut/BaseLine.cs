using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The line from which a piece is marked out without a printer: from one datum through another, and the side on which the piece lies.</summary>
/// <remarks>
/// <code>
///                  + side            x  a point: so far along, so far off;
///                                 .  |  or so far from A and so far from B, with a trammel or two steel rules
///          from A             .      | offset
///                         .          |
///                A ------------------+-------------- B
///                       along
/// </code>
/// </remarks>
public sealed record BaseLine
{
    /// <summary>A straight edge this long, as a share of the longer side of the rectangle round the piece, is a base line to trust
    /// (a shop habit: common practice, no source).</summary>
    private const double LeastShare = 0.5;

    private BaseLine(string firstName, Point first, string secondName, Point second, BaseLineKind kind, Box piece)
    {
        (FirstName, First, SecondName, Second, Kind) = (firstName, first, secondName, second, kind);
        Along = (second - first).Unit;
        var aside = (piece.Centre - first).Dot(Along.Left);
        // Where the line runs through the middle, up the drawing is plus, and a mirror image keeps that.
        var isLeft = Math.Abs(aside) > Tolerance.Length ? aside > 0 : Along.Left.Y > -Tolerance.Length;
        Side = isLeft ? Along.Left : -Along.Left;
    }

    /// <summary>Letter of the end from which distances along it are measured.</summary>
    public string FirstName { get; }
    public Point First { get; }

    /// <summary>Letter of the other end.</summary>
    public string SecondName { get; }
    public Point Second { get; }
    public BaseLineKind Kind { get; }

    /// <summary>From the first end to the second, of length 1.</summary>
    public Vector Along { get; }

    /// <summary>The way in which offsets are plus, of length 1.</summary>
    public Vector Side { get; }

    /// <summary>Distance between its ends, in mm.</summary>
    public double Length => First.DistanceTo(Second);

    /// <summary>The base line of a piece: its first two datums; where it has no two, its datum edge or its longest straight edge if
    /// that is long enough; else the lower side of the rectangle round it.</summary>
    /// <param name="piece">A piece that is not empty.</param>
    public static BaseLine Of(Piece piece)
    {
        // Of a panel that goes on past what is shown of it only the cut has a place.
        var bounds = piece.Kind == PieceKind.CutAway && piece.Edges.IsEmpty ? Box.Around(piece.FinishLines().Select(l => l.Bounds)) : piece.Shape.Bounds;
        var datums = piece.Datums;
        if (datums.Length >= 2 && datums[0].At.DistanceTo(datums[1].At) > Tolerance.Length)
            return new(datums[0].Label, datums[0].At, datums[1].Label, datums[1].At, BaseLineKind.Datums, bounds);

        var (first, second) = NamesFor(piece);
        var least = LeastShare * Math.Max(bounds.Width, bounds.Height);
        if (Longest(piece.Edges.SelectMany(e => e.Segments)) is { IsLine: true } edge && edge.Length >= least)
            return FromTheLeft(edge, BaseLineKind.PanelEdge);
        var outlines = piece.FinishLines().SelectMany(l => MarkOutRun.Of(l)).Where(r => r.IsLine).Select(r => Segment.Line(r.Start, r.End));
        if (Longest(outlines) is { IsLine: true } longest && longest.Length >= least) return FromTheLeft(longest, BaseLineKind.LongestEdge);
        return FromTheLeft(Segment.Line(bounds.Min, new(bounds.Max.X, bounds.Min.Y)), BaseLineKind.Rectangle);

        BaseLine FromTheLeft(Segment line, BaseLineKind kind)
        {
            var level = Math.Abs(line.End.X - line.Start.X) > Tolerance.Length;
            var (from, to) = (level ? line.Start.X < line.End.X : line.Start.Y < line.End.Y) ? (line.Start, line.End) : (line.End, line.Start);
            return new(first, from, second, to, kind, bounds);
        }
    }

    /// <summary>A point as it is measured from this line.</summary>
    public MarkedPlace Of(Point at) => new(
        (at - First).Dot(Along), (at - First).Dot(Side), at.DistanceTo(First), at.DistanceTo(Second), Crossing(at));

    // How the arcs about the two ends cross at a point: the angle between the lines to them, 90° at most.
    private Angle Crossing(Point at)
    {
        var (toFirst, toSecond) = (First - at, Second - at);
        if (toFirst.Length < Tolerance.Length || toSecond.Length < Tolerance.Length) return Angle.Zero;
        return Angle.FromRadians(Math.Atan2(Math.Abs(toFirst.Cross(toSecond)), Math.Abs(toFirst.Dot(toSecond))));
    }

    // Of those that are as long the lowest, then the one furthest to the left.
    private static Segment Longest(IEnumerable<Segment> lines) => lines.Where(l => l.IsLine)
        .OrderByDescending(l => Math.Round(l.Length, 3)).ThenBy(l => Math.Round(l.At(0.5).Y, 3)).ThenBy(l => l.At(0.5).X).FirstOrDefault();

    // Letters that mean nothing else on the piece.
    private static (string First, string Second) NamesFor(Piece piece)
    {
        var taken = piece.Datums.Select(d => d.Label).Concat(piece.Labels.Select(l => l.Text)).ToHashSet(StringComparer.Ordinal);
        (string, string)[] pairs = [("P", "Q"), ("X", "Y"), ("U", "V"), ("M", "N")];
        return pairs.FirstOrDefault(p => !taken.Contains(p.Item1) && !taken.Contains(p.Item2), ("P1", "P2"));
    }
}

/// <summary>What a base line is on the metal.</summary>
public enum BaseLineKind
{
    /// <summary>From datum to datum.</summary>
    Datums,

    /// <summary>The panel's own edge, where the panel has no two datums.</summary>
    PanelEdge,

    /// <summary>The piece's longest straight edge, which is laid out first.</summary>
    LongestEdge,

    /// <summary>The lower side of the rectangle round the piece: no edge of it is straight for long enough.</summary>
    Rectangle,
}

/// <summary>A point as it is measured from a base line, lengths in mm.</summary>
/// <param name="Along">From the first end towards the second; below zero before the first.</param>
/// <param name="Offset">Square to the line, above zero on its plus side.</param>
/// <param name="FromFirst">Straight from the first end.</param>
/// <param name="FromSecond">Straight from the second end.</param>
/// <param name="Crossing">How the two trammel arcs cross there: 0 where they graze, a right angle at best.</param>
public readonly record struct MarkedPlace(double Along, double Offset, double FromFirst, double FromSecond, Angle Crossing)
{
    /// <summary>Two arcs that cross flatter than this are a check and no way to find a point (common practice, no source).</summary>
    public static Angle LeastCrossing { get; } = Angle.FromDegrees(30);

    /// <summary>Whether the two distances find the point.</summary>
    /// <remarks>Distances that are right to e each put the point right to e / sin(crossing / 2): 0.05 mm each to 0.2 mm at 30°, to
    /// 0.1 mm from 60° on.</remarks>
    public bool IsFoundByTrammel => Crossing >= LeastCrossing;
}
