using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>A flat blank folded up in space at its bend lines, from what is drawn on it alone; shares nothing with the unfolding.</summary>
/// <remarks>
/// The face that is drawn lies at z = 0 and looks up, the other one a thickness below; the base stays there.
/// <code>
///     base      : bend :   panel            cut at both tangent lines; what lies between is wound round the axis, which lies
///     ----------+------+------------        one inside radius off the face inside the bend, over the tangent line that is held
/// </code>
/// </remarks>
internal sealed class FoldedBlank
{
    // Chords in place of the arcs of reliefs.
    private const double Chords = 0.002;

    /// <param name="flat">In one piece; its holes are left out.</param>
    /// <param name="lines">What is held lies to the left.</param>
    /// <param name="thickness">Of the sheet.</param>
    /// <exception cref="InvalidOperationException">A bend line lies beside the metal, or no panel is held by all.</exception>
    public FoldedBlank(Region flat, IEnumerable<BendLine> lines, double thickness)
    {
        var outer = flat.Contours.Single(c => c.IsCounterClockwise);
        var (pieces, bends) = (new List<FlatPiece> { new(outer.Flattened(Chords)) }, lines.ToList());
        var torn = ImmutableArray.CreateBuilder<(Point, double)>();
        foreach (var line in bends) Divide(pieces, line, torn);
        Torn = torn.ToImmutable();

        var sides = bends.Select(line => (Held: At(pieces, line, Beside), Turned: At(pieces, line, -line.Allowance - Beside))).ToList();
        var root = Enumerable.Range(0, pieces.Count).Single(p => sides.All(s => s.Turned != p));
        var motions = new Motion?[pieces.Count];
        motions[root] = Motion.None;
        while (sides.FindIndex(s => motions[s.Held] is not null && motions[s.Turned] is null) is var next && next >= 0)
            motions[sides[next].Turned] = Turned(motions[sides[next].Held]!, bends[next], thickness);

        Panels = [.. pieces.Select((piece, i) => new FoldedPanel(piece, motions[i] ?? throw new InvalidOperationException("A panel hangs on nothing."), thickness))];
        Base = Panels[root];
        Bends = [.. bends.Select((line, i) => new FoldedBend(line, Panels[sides[i].Held], Panels[sides[i].Turned], thickness))];
    }

    public FoldedPanel Base { get; }
    public ImmutableArray<FoldedPanel> Panels { get; }

    /// <summary>In the order of the lines.</summary>
    public ImmutableArray<FoldedBend> Bends { get; }

    /// <summary>Where metal had to be slit because it runs on beside the end of a bend, and how far, in mm.</summary>
    public ImmutableArray<(Point From, double Length)> Torn { get; }

    // What lies on either side of the bend, without what is bent.
    private static void Divide(List<FlatPiece> pieces, BendLine line, ImmutableArray<(Point, double)>.Builder torn)
    {
        var piece = pieces[At(pieces, line, 0)];
        var (held, rest) = piece.Cut(Path(piece, line, 0, torn));
        pieces.Remove(piece);
        pieces.Add(held);
        pieces.Add(line.Allowance > Beside ? rest.Cut(Path(rest, line, -line.Allowance, torn)).Right : rest);
    }

    // Along a tangent line to the edge of the metal; where there is still metal at the end of the line, from there straight out.
    private static Point[] Path(FlatPiece piece, BendLine line, double left, ImmutableArray<(Point, double)>.Builder torn)
    {
        var (middle, along) = (Middle(line, left), (line.To - line.From).Unit);
        return [.. End(-along).Reverse(), .. End(along)];

        Point[] End(Vector direction)
        {
            var (reach, half) = (piece.Reach(middle, direction), line.Length / 2);
            if (reach <= half + Slack) return [middle + direction * reach];
            var end = middle + direction * half;
            var slit = piece.Reach(end, -along.Left);
            torn.Add((end, slit));
            return [end, end - along.Left * slit];
        }
    }

    private static int At(List<FlatPiece> pieces, BendLine line, double left)
    {
        var found = pieces.FindIndex(p => p.Holds(Middle(line, left)));
        return found >= 0 ? found : throw new InvalidOperationException($"Bend {line.Number} has no metal at {Middle(line, left)}.");
    }

    // So far to the left of the tangent line that is held.
    private static Point Middle(BendLine line, double left) =>
        line.From.MidpointTo(line.To) + (line.To - line.From).Unit.Left * (left + line.Allowance / 2);

    private static Motion Turned(Motion held, BendLine line, double thickness)
    {
        var (on, left) = (Middle(line, 0), (line.To - line.From).Unit.Left);
        var (towards, face) = line.Way == BendWay.Up ? (1, 0.0) : (-1, -thickness);
        var outwards = new Vector3(-left.X, -left.Y, 0);
        var axis = outwards.Cross(Vector3.Up * towards);
        return held.After(outwards * -line.Allowance, new(on.X, on.Y, face + towards * line.InsideRadius), axis, line.Bend.Radians);
    }

    // A line that ends a hair before the metal does has not torn it; across a relief chords make as much of a difference.
    private const double Slack = 0.05;

    private const double Beside = 1e-5;
}
