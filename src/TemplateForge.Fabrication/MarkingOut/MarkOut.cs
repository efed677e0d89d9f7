using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>All that is needed to mark a piece out on metal with rule, square and trammel, and no printer.</summary>
/// <remarks>
/// Every vertex has a number, which goes on from line to line; a place that two lines share has one. Figures are exact here; who prints
/// them rounds them once, each by itself.
/// </remarks>
/// <param name="Base">From where everything is measured.</param>
/// <param name="Points">The vertices in the order of their numbers, from 1.</param>
/// <param name="Lines">What is cut, bent, scribed or pencilled, in that order.</param>
/// <param name="Arcs">The arcs of these lines in the order of their numbers, from 1.</param>
/// <param name="Holes">Whole circles.</param>
public sealed record MarkOut(
    BaseLine Base, ImmutableArray<MarkedPoint> Points, ImmutableArray<MarkedLine> Lines, ImmutableArray<MarkedArc> Arcs, ImmutableArray<MarkedHole> Holes)
{
    /// <summary>The longest radius in mm that is struck with a trammel; a longer arc is laid by its chord and rise (a shop habit: common
    /// practice, no source).</summary>
    public const double LongestTrammel = 600;

    /// <summary>An arc that rises less than this over its chord, in mm, is marked as a line: half of what a rule shows.</summary>
    public const double LeastRise = 0.05;

    /// <param name="piece">What is marked out, finished outline and all lines on it.</param>
    public static MarkOut Of(Piece piece)
    {
        var made = new MarkOutBuilder(BaseLine.Of(piece));
        // The outer outline first: it is what everything else is found by.
        foreach (var line in piece.FinishLines().Reverse())
        {
            if (line.IsClosed() && new Contour(line.Segments).TryAsCircle(out var centre, out var radius)) made.AddHole(centre, radius, KindOf(line) == MarkedLineKind.Outline);
            else made.AddLine(KindOf(line), "", line);
        }
        foreach (var together in piece.Bends)
        {
            // Stretches that run on into each other are one line; lines that are pressed so far along each are many under one number.
            var lines = MarkOutChains.Of([.. together.Select(b => b.Middle)]);
            for (var i = 0; i < lines.Count; i++)
            {
                var number = FormattableString.Invariant($"{together[0].Number}");
                made.AddLine(MarkedLineKind.Bend, lines.Count > 1 ? FormattableString.Invariant($"{number}.{i + 1}") : number, lines[i]);
            }
        }
        for (var i = 0; i < piece.ScribeLines.Length; i++) made.AddLine(MarkedLineKind.Scribed, FormattableString.Invariant($"{i + 1}"), piece.ScribeLines[i]);
        foreach (var generator in piece.Generators.Where(g => !g.Along.Segments.IsEmpty)) made.AddLine(MarkedLineKind.Generator, generator.Label, generator.Along);
        return made.Made();
    }

    /// <summary>A vertex by its number.</summary>
    public MarkedPoint this[int number] => Points[number - 1];

    // What is kept lies to the left of every finish line.
    private static MarkedLineKind KindOf(Path line) => !line.IsClosed() ? MarkedLineKind.OpenCut
        : new Contour(line.Segments).IsCounterClockwise ? MarkedLineKind.Outline : MarkedLineKind.Opening;
}

/// <summary>A numbered vertex.</summary>
/// <param name="Number">From 1.</param>
/// <param name="At">Where it lies in the drawing.</param>
/// <param name="Place">The same from the base line.</param>
public sealed record MarkedPoint(int Number, Point At, MarkedPlace Place);

/// <summary>A line from vertex to vertex.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Name">Which of its kind it is: a number or what it is called; may be empty.</param>
/// <param name="Stretches">One after the other; a closed line ends where it began.</param>
public sealed record MarkedLine(MarkedLineKind Kind, string Name, ImmutableArray<MarkedStretch> Stretches);

/// <summary>From one vertex to the next.</summary>
/// <param name="From">Number of the vertex where it begins.</param>
/// <param name="To">Number of the one where it ends.</param>
/// <param name="Arc">Number of its arc; 0 for a straight line.</param>
public readonly record struct MarkedStretch(int From, int To, int Arc);

/// <summary>An arc from vertex to vertex.</summary>
/// <param name="Number">From 1.</param>
/// <param name="From">Number of the vertex where it begins.</param>
/// <param name="To">Number of the one where it ends.</param>
/// <param name="Radius">In mm.</param>
/// <param name="Sweep">How far it turns, to the left above zero.</param>
/// <param name="Centre">Its centre in the drawing.</param>
/// <param name="CentrePlace">The same from the base line.</param>
public sealed record MarkedArc(int Number, int From, int To, double Radius, Angle Sweep, Point Centre, MarkedPlace CentrePlace)
{
    /// <summary>Whether it is struck from its centre.</summary>
    public bool IsStruck => Radius <= MarkOut.LongestTrammel;

    /// <summary>Straight from end to end, in mm.</summary>
    public double Chord => 2 * Radius * Math.Sin(Math.Abs(Sweep.Radians) / 2);

    /// <summary>How far its middle lies off the chord, in mm.</summary>
    public double Rise => Radius * (1 - Math.Cos(Sweep.Radians / 2));

    /// <summary>How far it lies off the chord a quarter of the chord from either end, in mm.</summary>
    /// <remarks>From geometry: √(r² − (c/4)²) − (r − h). Of an arc of half a circle or less.</remarks>
    public double RiseAtQuarters => Math.Sqrt(Radius * Radius - Chord * Chord / 16) - (Radius - Rise);
}

/// <summary>A whole circle.</summary>
/// <param name="Number">From 1; 0 for an outline.</param>
/// <param name="Diameter">In mm.</param>
/// <param name="Centre">Its centre in the drawing.</param>
/// <param name="Place">The same from the base line.</param>
/// <param name="IsOutline">Whether it is the piece that is round, and not a hole in it.</param>
public sealed record MarkedHole(int Number, double Diameter, Point Centre, MarkedPlace Place, bool IsOutline)
{
    /// <summary>Whether a point is its centre, to whoever marks out by rule.</summary>
    public bool IsAt(Point point) => Centre.DistanceTo(point) < 0.02;
}

/// <summary>What a marked line is for.</summary>
public enum MarkedLineKind
{
    /// <summary>Cut all round.</summary>
    Outline,

    /// <summary>Cut all round; what lies inside falls away.</summary>
    Opening,

    /// <summary>Cut from end to end: an opening in from an edge.</summary>
    OpenCut,

    /// <summary>The middle of a bend: pencilled.</summary>
    Bend,
    Scribed,

    /// <summary>A straight line of a tube or cone: pencilled.</summary>
    Generator,
}
