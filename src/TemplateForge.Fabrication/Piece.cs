using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>One thing that is printed or cut, exact and full size, in mm.</summary>
/// <remarks>
/// The coordinates are those of the drawing as one looks at the face that is up. Everything the outputs show of a piece stands
/// here; what the outputs derive from it (finish line, waste, rough cut) are its properties below.
/// </remarks>
public sealed record Piece
{
    /// <summary>Short name in small letters, digits and hyphens: part of file names.</summary>
    public required string Name { get; init; }
    public required string Title { get; init; }
    public required PieceKind Kind { get; init; }

    /// <summary>What is left, or made, when the work is done: the panel less its opening, the blank with its holes.</summary>
    public required Region Shape { get; init; }

    /// <summary>The panel before it is cut; empty for a piece that is made from new sheet or is only paper.</summary>
    public Region Before { get; init; } = Region.Empty;

    /// <summary>The panel's real edges, as far as they are shown; the ends of the shown stretch are not edges.</summary>
    public ImmutableArray<Path> Edges { get; init; } = [];

    public int Quantity { get; init; } = 1;

    /// <summary>Sheet thickness in mm.</summary>
    public required double Thickness { get; init; }

    /// <summary>What it is made of.</summary>
    public Material Material { get; init; } = Material.Unstated;

    /// <summary>Weight of one, as it is when the work is done, in kg; 0 where the material is not stated.</summary>
    public double Weight => Material.WeightOf(Shape.Area, Thickness);

    /// <summary>How far outside the finish line the rough cut runs, in mm; 0 for none.</summary>
    public double RoughAllowance { get; init; }

    public required string FaceUp { get; init; }

    /// <summary>The way to the front of the vehicle in the drawing; none on a piece that fits either way round.</summary>
    public ImmutableArray<Arrow> Arrows { get; init; } = [];

    public ImmutableArray<Datum> Datums { get; init; } = [];
    public ImmutableArray<CentreLine> CentreLines { get; init; } = [];

    /// <summary>Lines to see and not to cut: a lap edge, a zone to strip of zinc.</summary>
    public ImmutableArray<GuideLine> GuideLines { get; init; } = [];

    /// <summary>Lines to scribe: marks that stay, cut nothing and are no bend.</summary>
    public ImmutableArray<Path> ScribeLines { get; init; } = [];

    /// <summary>Of a wrap: straight lines of the tube or cone, to line up by or to roll along.</summary>
    public ImmutableArray<Generator> Generators { get; init; } = [];

    /// <summary>What edges are called, so that no two are taken for each other.</summary>
    public ImmutableArray<EdgeName> EdgeNames { get; init; } = [];

    /// <summary>Lines to pencil: bends, in the order of bending.</summary>
    public ImmutableArray<BendLine> BendLines { get; init; } = [];

    /// <summary>The bent piece seen on its edge; what a mirror image shows from its other end.</summary>
    public ImmutableArray<EdgeView> EdgeViews { get; init; } = [];

    /// <summary>Bends along arcs, to pencil too.</summary>
    public ImmutableArray<CurvedBend> CurvedBends { get; init; } = [];

    /// <summary>All bends, in their order: under each number the stretches that are bent together, the longest first.</summary>
    public ImmutableArray<ImmutableArray<IBendOnBlank>> Bends =>
    [
        .. BendLines.Concat<IBendOnBlank>(CurvedBends).GroupBy(b => b.Number).OrderBy(g => g.Key)
            .Select(g => g.OrderByDescending(b => b.Middle.Length).ToImmutableArray()),
    ];

    public ImmutableArray<Warning> Warnings { get; init; } = [];
    public ImmutableArray<Tack> Tacks { get; init; } = [];

    /// <summary>Seams that are welded in short runs; the numbers of the runs go on from one seam to the next.</summary>
    public ImmutableArray<WeldSeam> WeldSeams { get; init; } = [];

    /// <summary>Where zinc and paint come off on both faces before it is welded; none where nothing is coated.</summary>
    public ImmutableArray<ZincStrip> ZincStrips { get; init; } = [];

    public ImmutableArray<DistanceCheck> Checks { get; init; } = [];

    /// <summary>Distances that the drawings show and nobody has to check.</summary>
    public ImmutableArray<ShownDistance> Dimensions { get; init; } = [];

    /// <summary>Words beside the drawing, each with a leader to its point.</summary>
    public ImmutableArray<Label> Labels { get; init; } = [];
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What it asks of whoever cuts it on a machine.</summary>
    public CuttingWishes Cutting { get; init; } = CuttingWishes.None;

    /// <summary>How a machine cuts it, once somebody has said which; made last, so a mirror image has none.</summary>
    public CutPlan Planned { get; init; } = CutPlan.None;

    /// <summary>What its finish line is called beside the line.</summary>
    public string FinishName { get; init; } = "finish line";

    /// <summary>Lines that are lettered on the piece itself, to stay.</summary>
    public ImmutableArray<string> Lettering { get; init; } = [];

    /// <summary>Arrows that stand on the piece itself.</summary>
    public ImmutableArray<MarkedArrow> MarkedArrows { get; init; } = [];

    /// <summary>The hand that it is for, in words, where that is not the hand of the rest: the other face of a plate that flips.</summary>
    public string ForHand { get; init; } = "";

    /// <summary>What belongs to it beside itself: pins, bushes, clamps.</summary>
    public ImmutableArray<JigPart> Parts { get; init; } = [];

    /// <summary>This piece for the other hand: everything but its words in mirror image, left and right exchanged.</summary>
    public Piece Mirrored()
    {
        var mirror = Placement.Mirrored(Point.Origin, Angle.QuarterTurn);
        return this with
        {
            Shape = Shape.Placed(mirror),
            Before = Before.Placed(mirror),
            Edges = [.. Edges.Select(e => e.Placed(mirror))],
            Arrows = [.. Arrows.Select(a => a with { Direction = mirror.Of(Vector.Polar(1, a.Direction)).Direction })],
            Datums = [.. Datums.Select(d => d with { At = mirror.Of(d.At) })],
            CentreLines = [.. CentreLines.Select(c => c with { From = mirror.Of(c.From), To = mirror.Of(c.To) })],
            GuideLines = [.. GuideLines.Select(g => g with { Along = g.Along.Placed(mirror) })],
            ScribeLines = [.. ScribeLines.Select(l => l.Placed(mirror))],
            Generators = [.. Generators.Select(g => g with { Along = g.Along.Placed(mirror) })],
            EdgeNames = [.. EdgeNames.Select(e => e.Mirrored(mirror))],
            BendLines = [.. BendLines.Select(b => b.Mirrored(mirror))],
            CurvedBends = [.. CurvedBends.Select(b => b.Mirrored(mirror))],
            Warnings = [.. Warnings.Select(w => w with { At = mirror.Of(w.At) })],
            Tacks = [.. Tacks.Select(t => t with { At = mirror.Of(t.At) })],
            WeldSeams = [.. WeldSeams.Select(s => s.Placed(mirror))],
            ZincStrips = [.. ZincStrips.Select(z => z.Placed(mirror))],
            Checks = [.. Checks.Select(c => c with { From = mirror.Of(c.From), To = mirror.Of(c.To) })],
            Dimensions = [.. Dimensions.Select(d => d with { From = mirror.Of(d.From), To = mirror.Of(d.To) })],
            Labels = [.. Labels.Select(l => l with { At = mirror.Of(l.At) })],
            Cutting = Cutting with { TabsAt = [.. Cutting.TabsAt.Select(mirror.Of)] },
            Planned = CutPlan.None,
            MarkedArrows = [.. MarkedArrows.Select(a => a.Mirrored(mirror))],
        };
    }
}

/// <summary>How a piece comes to be.</summary>
public enum PieceKind
{
    /// <summary>A panel that exists has something cut away.</summary>
    CutAway,

    /// <summary>Cut from new sheet.</summary>
    Blank,

    /// <summary>Only paper: something to hold against the work.</summary>
    Paper,
}

/// <summary>A word and where it points in the drawing: FRONT, UP.</summary>
public sealed record Arrow(string Label, Angle Direction);

/// <summary>A hole or point from which everything is measured on the real panel.</summary>
/// <param name="Label">One or two letters: A, B.</param>
/// <param name="At">Its centre.</param>
/// <param name="Diameter">Diameter of the hole in mm, 0 for a mere point.</param>
public sealed record Datum(string Label, Point At, double Diameter);

/// <summary>A straight centre line.</summary>
public sealed record CentreLine(Point From, Point To);

/// <summary>A region's outline that is shown and not cut, and what it means.</summary>
public sealed record GuideLine(string Label, Region Along);

/// <summary>A place to tack, numbered in the order of welding from 1.</summary>
public sealed record Tack(int Number, Point At);

/// <summary>A distance that a person measures by rule before cutting.</summary>
/// <param name="Label">What it is, in a few words.</param>
/// <param name="From">One end in the drawing.</param>
/// <param name="To">The other end.</param>
/// <param name="Along">The direction in which it is measured.</param>
public sealed record DistanceCheck(string Label, Point From, Point To, CheckDirection Along)
{
    /// <summary>The distance, in mm.</summary>
    public double Distance => Along.Of(From, To);
}

/// <summary>A distance that a drawing shows.</summary>
/// <param name="Text">What stands on the dimension line; empty for the distance itself.</param>
/// <param name="From">One end in the drawing.</param>
/// <param name="To">The other end.</param>
/// <param name="Along">The direction in which it is measured.</param>
public sealed record ShownDistance(string Text, Point From, Point To, CheckDirection Along)
{
    /// <summary>The distance, in mm.</summary>
    public double Distance => Along.Of(From, To);
}

/// <summary>Words that belong to a point of the drawing.</summary>
public sealed record Label(string Text, Point At);

/// <summary>How a checked distance is measured: straight from end to end, or only its part across or up the drawing.</summary>
public enum CheckDirection
{
    Straight,
    Across,
    Up,
}

public static class CheckDirections
{
    /// <summary>The distance between two points as it is measured this way, in mm.</summary>
    public static double Of(this CheckDirection direction, Point from, Point to) => direction switch
    {
        CheckDirection.Across => Math.Abs(to.X - from.X),
        CheckDirection.Up => Math.Abs(to.Y - from.Y),
        _ => from.DistanceTo(to),
    };
}
