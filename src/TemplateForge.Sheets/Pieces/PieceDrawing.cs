using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>A piece as it is drawn for a person: its lines, and words where nothing else is.</summary>
internal sealed partial class PieceDrawing
{
    private const double Smallest = 0.3; // of its own size; a title is shrunk no further
    private const double Small = 2.2;

    private readonly Piece _piece;
    private readonly double _unit;
    private readonly FreePlace _free;
    private readonly Box _area;

    /// <param name="piece">What is drawn.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="unit">How many mm of the piece are one mm on the paper.</param>
    /// <param name="area">Where words may stand, in the piece's coordinates.</param>
    public PieceDrawing(Piece piece, Board lines, double unit, Box area)
    {
        (_piece, _unit, _area) = (piece, unit, area);
        _free = new(area, unit);
        Board.Add(lines, Placement.Unmoved);
        foreach (var kind in LineKinds.InOrder)
            _free.Take(Board.On(kind), (kind == LineKinds.Waste ? 0.8 : 1.3) * unit);
    }

    public Board Board { get; } = new();

    /// <summary>Nothing may be written here.</summary>
    public void KeepFree(IEnumerable<Mark> marks) => _free.Take(marks, _unit);

    /// <summary>Nothing may be written outside these boxes, nor across the edge of one.</summary>
    public void KeepWithin(IReadOnlyCollection<Box> windows)
    {
        _free.TakeOutside(windows);
        foreach (var window in windows) _free.Take(Outline.Rectangle(window).Segments, 0.2 * _unit);
    }

    /// <summary>The distances of the piece as it is.</summary>
    public void AddDimensions(int firstNumber) => AddDimensions(firstNumber, Angle.Zero, _piece);

    /// <summary>The distances of a piece that was turned for the drawing.</summary>
    public void AddDimensions(int firstNumber, Angle turn, Piece asItWas) =>
        Dimensions.PutOn(Board, _free, _piece, firstNumber, _unit, turn, asItWas);

    /// <summary>What nothing may be written on.</summary>
    public FreePlace Free => _free;

    /// <summary>The first of these blocks for which there is room, beside one of the points and with a leader to it.</summary>
    public bool TryAddBeside(IEnumerable<Block> blocks, IReadOnlyCollection<Point> targets, Vector aside) => blocks.Any(block =>
        AddWithLeader(block, targets.SelectMany(t => ((double[])[9, -9, 20, -20]).Select(away => new Spot(t, t + aside * (away * _unit), aside, 0)))));

    /// <summary>Words in the middle of a run of points, on nothing; whether there was room.</summary>
    public bool TryWrite(string text, Point middle, Vector along)
    {
        var reads = along.X > 1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y > 0) ? along : -along;
        var (height, width) = (Small * _unit, Alphabet.Width(text, Small * _unit));
        var steps = (int)Math.Ceiling(width / height);
        var letters = Enumerable.Range(0, steps + 1).Select(i => middle + reads * (width * ((double)i / steps - 0.5)))
            .Select(p => new Box(p, p).Grown(height * 0.7)).ToList();
        if (!letters.All(_free.IsFree)) return false;
        Board.Add(LineKinds.Note, new Lettering(text, middle - reads.Left * (height / 2), height, reads.Direction, Anchor.BaseMiddle));
        foreach (var box in letters) _free.TakeWords(box);
        return true;
    }

    /// <summary>The number of each run of weld, beside its arrow; none where the arrows are not drawn.</summary>
    public void AddRunNumbers()
    {
        if (!JoiningLines.AreShown(_piece, _unit)) return;
        foreach (var run in _piece.WeldSeams.SelectMany(s => s.Runs)) Place(JoiningLines.Number(run, _unit), JoiningLines.PlaceOfNumber(_piece, run, _unit));
    }

    /// <summary>The profile's own words, each beside the drawing with a leader to its point.</summary>
    public void AddLabels()
    {
        foreach (var label in _piece.Labels)
        {
            AddWithLeader(Block.Line(label.Text, Small * _unit), SpotsAbout(label.At));
        }
    }

    private IEnumerable<Spot> SpotsAbout(Point at)
    {
        var outwards = (at - _piece.Shape.Bounds.Centre).Unit is { Length: > 0.5 } way ? way : new(0, 1);
        return Ways.SelectMany(turn => ((double[])[9, 16, 28]).Select(away =>
            new Spot(at, at + outwards.Turned(turn) * (away * _unit), outwards, Inwards)));
    }

    // Round the point, outwards first.
    private static ImmutableArray<Angle> Ways { get; } = [.. ((double[])[0, 40, -40, 80, -80, 120, -120, 180]).Select(Angle.FromDegrees)];

    private const double Inwards = 6;

    /// <summary>What each line is, with a leader to it.</summary>
    public void AddNamesOfLines()
    {
        var finish = _piece.FinishLines();
        if (finish.Length > 0) AddName(_piece.Kind == PieceKind.Paper && _piece.Lettering.IsEmpty ? "outline" : _piece.FinishName, finish[^1].Segments, toTheLeft: true);
        if (_piece.RoughLines() is [var rough, ..]) AddName(Wording.RoughCutOf(_piece), rough.Segments, toTheLeft: false);
        foreach (var edge in _piece.Edges) AddName("panel edge", edge.Segments, toTheLeft: false);
        if (PieceLines.CentreLines(_piece) is [var centre, ..]) AddName("centre line", centre.Segments, toTheLeft: true);
    }

    /// <summary>What edges and generators are called: along the lines and inside of the outline, so that it stays on the piece when that is
    /// cut out; with a leader where there is no room.</summary>
    public void AddNamesOfWraps()
    {
        foreach (var generator in _piece.Generators.Where(g => g.Label.Length > 0))
        {
            var (line, way) = (generator.Along.Segments[0], generator.Along.Segments[0].StartDirection);
            if (!((double[])[0.5, 0.38, 0.62, 0.25, 0.75]).Any(share => TryWriteAlong(generator.Label, line.At(share), way)))
                AddName(generator.Label, generator.Along.Segments, toTheLeft: true);
        }
        foreach (var edge in _piece.EdgeNames)
        {
            if (IsWritten(edge)) continue;
            // On a narrow piece at least which edge it is.
            IsWritten(edge with { Label = edge.Label.Split(':')[0] });
            AddName(edge.Label, edge.Along.Segments, toTheLeft: true);
        }
    }

    private bool IsWritten(EdgeName edge) => PlacesFor(edge).Any(place => TryWriteAlong(edge.Label, place.Middle, place.Way));

    // Along a straight edge itself that no generator meets; else along the ends of the generators that meet it, the middle one first.
    private IEnumerable<(Point Middle, Vector Way)> PlacesFor(EdgeName edge)
    {
        var inwards = Alphabet.Width(edge.Label, Small * _unit) / 2 + 4.5 * _unit;
        var met = _piece.Generators.Select(g => g.Along).SelectMany(g => new[] { (End: g.Start, Way: g.Segments[0].StartDirection), (End: g.End, Way: -g.Segments[0].StartDirection) })
            .Where(g => edge.Along.Segments.Any(s => s.DistanceTo(g.End) < 0.01)).ToList();
        if (met.Count == 0)
        {
            var side = edge.Along.Segments[0];
            return ((double[])[0.5, 0.35, 0.65]).Select(share => (side.At(share), side.StartDirection));
        }
        return met.OrderBy(g => Math.Abs(met.IndexOf(g) - met.Count / 2)).Select(g => (g.End + g.Way * inwards, g.Way));
    }

    // Beside a line, on the side where there is room: read from below or from the right.
    private bool TryWriteAlong(string text, Point middleOnLine, Vector along)
    {
        // So far is the middle of the letters from the line; further where it slants, for room is looked for in upright boxes.
        var aside = 3.6 + 1.2 * Math.Abs(2 * along.X * along.Y);
        var reads = along.X > 1e-9 || (Math.Abs(along.X) <= 1e-9 && along.Y > 0) ? along : -along;
        var (height, width) = (Small * _unit, Alphabet.Width(text, Small * _unit));
        var steps = (int)Math.Ceiling(width / height);
        foreach (var side in (double[])[1, -1])
        {
            var middle = middleOnLine + along.Left * (side * aside * _unit);
            var letters = Enumerable.Range(0, steps + 1).Select(i => middle + reads * (width * ((double)i / steps - 0.5)))
                .Select(p => new Box(p, p).Grown(height / 2)).ToList();
            if (!letters.All(box => _free.IsFree(box) && _piece.Shape.Contains(box.Centre))) continue;
            Board.Add(LineKinds.Note, new Lettering(text, middle - reads.Left * (height / 2), height, reads.Direction, Anchor.BaseMiddle));
            foreach (var box in letters) _free.TakeWords(box);
            return true;
        }
        return false;
    }

    /// <summary>A numbered sign at the place of each warning, with a leader to it.</summary>
    public void AddWarnings(int firstNumber)
    {
        for (var i = 0; i < _piece.Warnings.Length; i++)
        {
            var at = _piece.Warnings[i].At;
            var sign = WarningSign.Numbered(firstNumber + i, 5 * _unit);
            AddWithLeader(sign, SpotsAbout(at));
        }
    }

    public void AddNamesOfGuides()
    {
        foreach (var guide in _piece.GuideLines)
        {
            if (guide.Along.IsEmpty) continue;
            AddName(guide.Label, guide.Along.Contours[^1].Segments, toTheLeft: false);
        }
        foreach (var strip in _piece.ZincStrips.Where(z => !z.Limits.IsEmpty))
            AddName(Wording.BareToHere, strip.Limits.MaxBy(l => l.Length)!.Segments, toTheLeft: false);
    }

    /// <summary>A short name beside a point, with a thin line to it where it stands further off.</summary>
    /// <param name="block">The name.</param>
    /// <param name="at">What it names.</param>
    /// <param name="outwards">The way in which it stands best, of length 1.</param>
    /// <param name="reach">How far off it may stand, in mm on the paper.</param>
    /// <returns>Whether there was room within that reach.</returns>
    public bool TryName(Block block, Point at, Vector outwards, double reach)
    {
        const double close = 1.6;
        var around = new Box(at, at).Grown(reach * _unit + block.Width + block.Height);
        foreach (var away in (ImmutableArray<double>)[close, 4, 7])
        {
            foreach (var turn in Ways)
            {
                var near = at + outwards.Turned(turn) * (0.5 * block.Width + away * _unit);
                if (!TryFind(block.Width, block.Height, near, around, out var place) || place.Centre.DistanceTo(at) > reach * _unit) continue;
                var foot = new Point(Math.Clamp(at.X, place.Min.X, place.Max.X), Math.Clamp(at.Y, place.Min.Y, place.Max.Y));
                if (foot.DistanceTo(at) > 2 * close * _unit)
                {
                    if (Leader(place, at) is not { } leader || _free.RunsThroughWords(leader, 0.3 * _unit)) continue;
                    Board.Add(LineKinds.Dimension, new OpenStroke(new Path(leader)));
                    _free.Take([leader], 0.4 * _unit);
                }
                block.PutOn(Board, place);
                _free.TakeWords(place);
                return true;
            }
        }
        return false;
    }

    /// <summary>The word in the part that falls away.</summary>
    public void AddWaste()
    {
        var waste = _piece.Kind == PieceKind.CutAway ? _piece.Waste() : Region.Empty;
        if (waste.IsEmpty) return;
        // Never on metal that stays.
        var largest = waste.Parts().MaxBy(p => p.Area)!.Bounds;
        Place(Block.Line("WASTE", 5 * _unit, strong: true), largest.Centre, largest);
    }

    public void AddArrows()
    {
        if (_piece.Arrows.IsEmpty) return;
        const double smaller = 0.75;
        var block = ArrowBlock.Of(_piece.Arrows, _unit * smaller);
        var bounds = Box.Around(Board.Marks.Select(m => m.Bounds));
        var near = new Point(bounds.Min.X, bounds.Max.Y);
        // Among what is drawn if there is room, for a picture is the larger the less stands round it.
        if (!TryPlace(block, 1, near, bounds)) Place(block, near);
    }

    /// <summary>Puts a block where nothing is, as near to a point as can be; smaller where there is no room for it, and not at all
    /// where it would be too small to read. What it says stands on the cover and in the page's foot too.</summary>
    public void Place(Block block, Point near) => Place(block, near, _area);

    public void Place(Block block, Point near, Box within)
    {
        var size = 1.0;
        while (size > Smallest && !TryPlace(block, size, near, within)) size *= 0.9;
    }

    /// <summary>The same anywhere on the drawing.</summary>
    public bool TryPlaceOne(IEnumerable<Block> blocks, Point near, double least) => TryPlaceOne(blocks, near, _area, least);

    /// <summary>The first of these blocks that finds a place without its smallest letters becoming too small to read.</summary>
    /// <param name="blocks">What says most first.</param>
    /// <param name="near">Where it stands best.</param>
    /// <param name="within">Where it may stand.</param>
    /// <param name="least">How small the last of them may become, of its own size; the others as small as that too.</param>
    public bool TryPlaceOne(IEnumerable<Block> blocks, Point near, Box within, double least)
    {
        foreach (var block in blocks)
        {
            for (var size = 1.0; size >= least; size -= 0.06)
                if (TryPlace(block, size, near, within)) return true;
        }
        return false;
    }

    private bool TryPlace(Block block, double size, Point near, Box within)
    {
        if (!TryFind(block.Width * size, block.Height * size, near, within, out var place)) return false;
        Board.Add(block.Board, Placement.Scaled(size, Point.Origin).Then(Placement.Moved(new(place.Min.X, place.Max.Y))));
        _free.TakeWords(place);
        return true;
    }

    private bool TryFind(double width, double height, Point near, Box within, out Box place)
    {
        var clear = 1.2 * _unit;
        var found = _free.TryFind(width + 2 * clear, height + 2 * clear, near, within, out place);
        if (found) place = place.Grown(-clear);
        return found;
    }

    // A name stands near its line and a leader runs from it to the line, best from one side.
    private void AddName(string text, IReadOnlyList<Segment> line, bool toTheLeft) => AddWithLeader(
        Block.Line(text, Small * _unit), SpotsBeside(line, [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0.03, 0.97], toTheLeft));

    private IEnumerable<Spot> SpotsBeside(IReadOnlyList<Segment> line, IEnumerable<double> shares, bool toTheLeft, double wrongSide = 45)
    {
        return shares.SelectMany(share =>
        {
            var (target, way) = Along(line, share);
            var wanted = way.Left * (toTheLeft ? _unit : -_unit);
            // Close by on either side, or past a hatch on the wanted one.
            return ((double[])[9, 22, -9]).Select(aside => new Spot(target, target + wanted * aside, wanted, wrongSide));
        });
    }

    // Words near one of the spots, the one that costs least, and a leader to its target; none where there is no room at all for less than the most.
    private bool AddWithLeader(Block block, IEnumerable<Spot> spots, double most = double.PositiveInfinity)
    {
        var (least, best) = (most, (Place: default(Box), Leader: default(Segment)));
        foreach (var spot in spots.Where(s => _area.Contains(s.Target)))
        {
            if (!TryFind(block.Width, block.Height, spot.Near, _area, out var place)) continue;
            if (Leader(place, spot.Target) is not { } leader || _free.RunsThroughWords(leader, _unit)) continue;
            var cost = leader.Length / _unit + 2 * Crossed(leader) + ((place.Centre - spot.Target).Dot(spot.Wanted) > 0 ? 0 : spot.WrongSide);
            if (cost < least - 1e-9) (least, best) = (cost, (place, leader));
        }
        if (best.Leader == default) return false;
        block.PutOn(Board, best.Place);
        Board.Add(LineKinds.Dimension, new OpenStroke(new Path(best.Leader)), Tip(best.Leader));
        _free.Take([best.Leader], 1.2 * _unit);
        _free.TakeWords(best.Place);
        return true;
    }

    /// <summary>Where words might stand.</summary>
    /// <param name="Target">Where their leader ends.</param>
    /// <param name="Near">Where they would stand best.</param>
    /// <param name="Wanted">The side of the target on which they should stand.</param>
    /// <param name="WrongSide">What it costs when they stand on the other.</param>
    private readonly record struct Spot(Point Target, Point Near, Vector Wanted, double WrongSide);

    // How many mm on paper of a leader run over what is drawn, its last stretch to the line itself apart.
    private int Crossed(Segment leader)
    {
        var steps = (int)Math.Ceiling(leader.Length / _unit) - 3;
        return Enumerable.Range(0, Math.Max(0, steps)).Count(i =>
        {
            var point = leader.At(i * _unit / leader.Length);
            return !_free.IsFree(new(point, point));
        });
    }

    // From the middle of the side of the place that faces the target.
    private Segment? Leader(Box place, Point target)
    {
        var clear = 0.8 * _unit;
        Point[] starts =
        [
            new(place.Min.X - clear, place.Centre.Y), new(place.Max.X + clear, place.Centre.Y),
            new(place.Centre.X, place.Max.Y + clear), new(place.Centre.X, place.Min.Y - clear),
        ];
        var start = starts.MinBy(s => s.DistanceTo(target));
        return start.DistanceTo(target) > Tolerance.Length ? Segment.Line(start, target) : null;
    }

    private OpenStroke Tip(Segment leader)
    {
        var back = -leader.EndDirection * (2 * _unit);
        var half = Angle.FromDegrees(12);
        return new(new Path(
            Segment.Line(leader.End + back.Turned(half), leader.End),
            Segment.Line(leader.End, leader.End + back.Turned(-half))));
    }

    private static (Point Point, Vector Way) Along(IReadOnlyList<Segment> line, double share)
    {
        var left = line.Sum(s => s.Length) * share;
        foreach (var segment in line)
        {
            if (left <= segment.Length) return (segment.At(left / segment.Length), segment.DirectionAt(left / segment.Length));
            left -= segment.Length;
        }
        return (line[^1].End, line[^1].EndDirection);
    }
}
