using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>How a machine cuts one piece: what is cut in which order, what is drilled, and what comes of it.</summary>
/// <remarks>
/// <code>
///      part │ ½ kerf │ waste       1. The part is grown by half the kerf: its boundary is where the middle of the torch runs.
///           │◀──────▶│             2. On every path places are found where the torch may be lit in the waste and come in.
///           │        │◝ lead-in    3. Tabs interrupt a path; on each side of one the torch is lit anew.
///           │        │  ◌ pierce   4. All is put in order.
/// </code>
/// The slot is what a disc of half the kerf passes over. It comes no nearer to the part than 0.0001 mm beyond its edge. Lengths in mm.
/// </remarks>
public sealed record CutPlan
{
    private CutPlan() { }

    /// <summary>Nobody has said what cuts the piece: its cut file shows the finished edge.</summary>
    public static CutPlan None { get; } = new()
    {
        Cutter = new("", "", double.PositiveInfinity, 0),
        Kerf = 0,
        Part = Region.Empty,
        Cuts = [],
        Drilled = [],
        Troubles = [],
        RapidBound = 0,
        Thickness = 0,
    };

    public bool IsNone => Cutter.Name.Length == 0;

    public required Cutter Cutter { get; init; }

    /// <summary>Width of the slot that was reckoned with; 0 where the controller allows for it.</summary>
    public required double Kerf { get; init; }

    /// <summary>Whether the kerf was given for this job, and does not come from the shop's table.</summary>
    public bool KerfIsGiven { get; init; }

    /// <summary>The part as it is cut: inside corners with stop holes are round, drilled holes are not in it.</summary>
    public required Region Part { get; init; }

    /// <summary>In the order of cutting.</summary>
    public required ImmutableArray<PlannedCut> Cuts { get; init; }

    public required ImmutableArray<DrillMark> Drilled { get; init; }
    public required ImmutableArray<CutTrouble> Troubles { get; init; }

    /// <summary>What the moves from cut to cut cannot be shorter than, see <see cref="RapidLength"/>.</summary>
    public required double RapidBound { get; init; }

    /// <summary>Thickness of the sheet.</summary>
    public required double Thickness { get; init; }

    /// <summary>Of all cuts, leads and run-outs included.</summary>
    public double CutLength => Cuts.Sum(c => c.Length);

    public int Pierces => Cuts.Count(c => c.Pierces);

    /// <summary>Of the moves from the end of a cut to the beginning of the next; that to the first cut does not count.</summary>
    public double RapidLength => Rapids.Sum(r => r.Length);

    /// <summary>The moves between cuts; none where one begins where the last has ended.</summary>
    public ImmutableArray<Path> Rapids =>
    [
        .. Cuts.Zip(Cuts.Skip(1)).Where(pair => pair.First.Path.End.DistanceTo(pair.Second.Pierce) > Tolerance.Length)
            .Select(pair => Path.Line(pair.First.Path.End, pair.Second.Pierce)),
    ];

    /// <summary>How long the cutting takes, in minutes: lengths by their feeds, and the pierces.</summary>
    /// <returns>Whether the shop has said how fast it cuts; a pierce or a rapid move of which it has not said so counts as nothing.</returns>
    public bool TryTime(out double minutes)
    {
        minutes = 0;
        if (!Cutter.Feed.TryFind(Thickness, out var feed)) return false;
        Cutter.PierceTime.TryFind(Thickness, out var seconds);
        minutes = CutLength / feed + Pierces * seconds / 60 + (Cutter.RapidFeed > 0 ? RapidLength / Cutter.RapidFeed : 0);
        return true;
    }

    /// <summary>Plans the cutting of a piece.</summary>
    /// <param name="piece">Any but paper.</param>
    /// <param name="cutter">What cuts it.</param>
    /// <param name="kerf">Width of its slot in mm, 0 or more; where the controller allows for it, it only keeps leads so far away.</param>
    /// <param name="runOut">How far an open cut begins and ends past the panel's edge, in mm, more than 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The kerf or the run-out is none.</exception>
    public static CutPlan Of(Piece piece, Cutter cutter, double kerf, double runOut)
    {
        if (!(kerf >= 0 && double.IsFinite(kerf))) throw new ArgumentOutOfRangeException(nameof(kerf), kerf, "A kerf is 0 or more.");
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(runOut);
        var width = cutter.Compensates ? 0 : kerf;
        var paths = TorchPaths.Of(piece, width, cutter.LeastHoleIn(piece.Thickness), runOut);
        var troubles = paths.Troubles.ToBuilder();
        var drilled = paths.Drilled.ToBuilder();
        // A controller moves the lead aside as well, so its pierce stands that much nearer to what lies across from it.
        var own = cutter.Compensates ? cutter with { LeastLead = cutter.LeastLead + kerf } : cutter;
        var starts = new CutStarts(own, width, paths.Part, troubles);
        var part = paths.Part;
        var tabs = Tabs(piece, paths, cutter.Tab + width);
        var nodes = ImmutableArray.CreateBuilder<CutNode>();
        foreach (var path in paths.Closed)
        {
            if (starts.TryClosed(path, tabs(path.Segments, path.IsCounterClockwise), out var node)) nodes.Add(node);
            else if (TryHoleRound(path, width / 2, out var hole))
            {
                drilled.Add(hole);
                part = part.Union(Region.Of(Outline.Circle(hole.Centre, hole.Diameter / 2)));
            }
            else troubles.Add(new(CutTroubleKind.NoRoomToPierce, path.Segments[0].Start, path.Length));
        }
        var clear = new KeptClear(paths.Part, width / 2);
        foreach (var path in paths.Open)
        {
            nodes.Add(starts.Open(path, tabs(path.Segments, true)));
            foreach (var (end, parts) in ((Point, IEnumerable<Segment>)[])[(path.Start, path.Segments.Take(2)), (path.End, path.Segments.TakeLast(2))])
            {
                if (width > 0 && !clear.Of(parts)) troubles.Add(new(CutTroubleKind.RunOutTouches, end, runOut));
            }
        }
        var made = nodes.ToImmutable();
        return new()
        {
            Cutter = cutter,
            Kerf = width,
            Part = part,
            Cuts = CutOrder.Of(made, piece.Shape.Bounds.Min, cutter.Spread),
            Drilled = drilled.ToImmutable(),
            Troubles = troubles.ToImmutable(),
            RapidBound = CutOrder.LowerBound(made),
            Thickness = piece.Thickness,
        };
    }

    // A torch that finds no room in a round hole leaves it to a drill.
    private static bool TryHoleRound(Contour path, double radius, out DrillMark hole)
    {
        hole = null!;
        if (path.IsCounterClockwise || !path.TryAsCircle(out var centre, out var inner)) return false;
        hole = new(centre, 2 * (inner + radius), DrillReason.NoRoom);
        return true;
    }

    // Tabs of a path: the wanted number on an outline or an open cut, and those asked for at places to which no other path is nearer.
    private static Func<ImmutableArray<Segment>, bool, ImmutableArray<double>> Tabs(Piece piece, TorchPaths paths, double width)
    {
        var all = paths.Closed.Select(c => c.Segments).Concat(paths.Open.Select(p => p.Segments)).ToList();
        var at = all.Count == 0
            ? []
            : piece.Cutting.TabsAt.Select(p => (Point: p, Path: all.MinBy(path => path.Min(s => s.DistanceTo(p))))).ToList();
        return (path, isOutline) =>
        [
            .. isOutline ? TabPlaces.Spread(path, piece.Cutting.Tabs, width) : [],
            .. at.Where(a => a.Path == path).Select(a => TabPlaces.NearestTo(path, a.Point, width)),
        ];
    }
}
