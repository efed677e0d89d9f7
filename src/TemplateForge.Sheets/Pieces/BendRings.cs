using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The numbers of a piece's bends on a small picture: each in a ring on its line, which is broken there.</summary>
/// <remarks>
/// <code>
///     ------------( 3 )------------     at the middle of the line, or as near to it as the ring stands clear of edges, holes and other
///                                       lines; a bend whose ring stands clear nowhere has none, and is named on a leader
/// </code>
/// </remarks>
internal static class BendRings
{
    /// <summary>Height of the number's capitals and radius of the ring in mm on the paper.</summary>
    public const double Number = 2.1;
    private const double Radius = 1.9;
    private const double RadiusOfTwo = 2.4;

    /// <summary>Clear of the ring in mm on the paper.</summary>
    private const double Clear = 0.7;

    // Shares of the line's length, the middle first and no further than a quarter from it.
    private static ImmutableArray<double> Shares { get; } = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65, 0.3, 0.7, 0.25, 0.75];

    /// <summary>The ring of each bend that has room for one, by the bend's number.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="unit">How many mm of the piece are one mm on the paper.</param>
    public static ImmutableDictionary<int, Circle> Of(Piece piece, double unit)
    {
        var rings = ImmutableDictionary.CreateBuilder<int, Circle>();
        var solid = Solid(piece).ToList();
        foreach (var together in piece.Bends.Where(b => b[0] is not BendLine { IsPressLine: true }))
        {
            var (number, line) = (together[0].Number, together[0].Middle);
            var radius = RadiusOf(number) * unit;
            var others = piece.Bends.Where(b => b[0].Number != number).SelectMany(b => b).SelectMany(Pencilled).ToList();
            foreach (var ring in Shares.Select(share => new Circle(line.PointAlong(share * line.Length), radius)))
            {
                if (line.Length < 4 * radius || solid.Concat(others).Any(s => s.DistanceTo(ring.Centre) < radius + Clear * unit)) continue;
                if (rings.Values.Any(r => r.Centre.DistanceTo(ring.Centre) < r.Radius + radius + Clear * unit)) continue;
                rings.Add(number, ring);
                break;
            }
        }
        return rings.ToImmutable();
    }

    /// <summary>The number in its ring as a block, for a bend that has it on a leader.</summary>
    public static Block Alone(int number, double unit)
    {
        var (board, radius) = (new Board(), RadiusOf(number) * unit);
        PutOn(board, number, new(new(radius, -radius), radius), unit);
        return new(2 * radius, 2 * radius, board);
    }

    /// <summary>Puts a ring with its number on a board.</summary>
    public static void PutOn(Board board, int number, Circle ring, double unit)
    {
        board.Add(LineKinds.Dimension, new ClosedStroke(Outline.Circle(ring.Centre, ring.Radius)));
        board.Text(FormattableString.Invariant($"{number}"), ring.Centre - new Vector(0, Number / 2 * unit), Number * unit, Anchor.BaseMiddle);
    }

    private static double RadiusOf(int number) => number < 10 ? Radius : RadiusOfTwo;

    // What no ring may lie on: what is cut, scribed, drilled.
    private static IEnumerable<Segment> Solid(Piece piece) =>
        piece.Shape.Contours.SelectMany(c => c.Segments).Concat(piece.ScribeLines.SelectMany(s => s.Segments));

    private static IEnumerable<Segment> Pencilled(IBendOnBlank bend) =>
        [.. bend.Middle.Segments, .. bend.TangentLines.Held.Segments, .. bend.TangentLines.Turned.Segments];
}

/// <summary>Where a ring lies, in the piece's coordinates.</summary>
internal readonly record struct Circle(Point Centre, double Radius)
{
    public Box Bounds => new Box(Centre, Centre).Grown(Radius);
}
