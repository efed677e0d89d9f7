using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Names of single places: datums, tacks and plug welds, the ends of the base line.</summary>
/// <remarks>A name stands beside its place; where it cannot, or where another place is nearly as near, a leader says which it names.</remarks>
internal sealed partial class PieceDrawing
{
    /// <summary>A name this near to its place, in mm on the paper, needs no leader.</summary>
    private const double Beside = 2.6;

    /// <summary>Another place must be so much further from the name, in mm on the paper.</summary>
    private const double Farther = 3;

    private ImmutableArray<Point>? _places;

    /// <summary>The letter of each datum, and the hole that it is.</summary>
    public void AddDatumLetters(double height, bool withHoles)
    {
        foreach (var datum in _piece.Datums)
        {
            var letter = Block.Line(datum.Label, height * _unit, strong: true);
            var hole = datum.Diameter > 0 ? $"hole {Wording.Short(datum.Diameter)} mm" : "point";
            var block = withHoles ? Block.Stacked(1 * _unit, letter, Block.Line(hole, Small * _unit)) : letter;
            AddNameOf(datum.At, PieceLines.Reach(datum, _unit), datum.Diameter / 2, block, new Vector(1, 1).Unit);
        }
    }

    /// <summary>The number of each tack, as near to it as can be, better outside than inside; none where the tacks lie too close
    /// together on the paper to tell whose number it is.</summary>
    public void AddTackNumbers()
    {
        const double leastApart = 7;
        var apart = _piece.Tacks.SelectMany(t => _piece.Tacks.Where(o => o != t).Select(o => o.At.DistanceTo(t.At)));
        if (apart.Any(distance => distance < leastApart * _unit)) return;
        foreach (var tack in _piece.Tacks)
        {
            var block = Block.Line(HoleNames.Of(_piece, tack), 2.5 * _unit);
            var hole = HoleNames.RadiusOfHoleAt(_piece, tack.At);
            AddNameOf(tack.At, Math.Max(hole, 2 * _unit), hole, block, OutwardsAt(tack.At));
        }
    }

    /// <summary>The letters at the ends of the line from which the bends are measured.</summary>
    /// <param name="line">The line as it lies in this drawing.</param>
    public void AddNamesOf(DrawnBaseLine line)
    {
        foreach (var (name, at, outwards) in line.Ends) AddNameOf(at, 2 * _unit, 0, Block.Line(name, 2.5 * _unit), outwards);
    }

    // Beside its place if that can be; else, or where somebody could take it for another's, on a leader; never left out.
    private void AddNameOf(Point at, double reach, double edge, Block block, Vector outwards)
    {
        var near = at + Towards(outwards, reach + 1 * _unit, block);
        if (TryFind(block.Width, block.Height, near, _area, out var place) && IsClear(place)) Put();
        else if (!AddWithLeader(block, Spots().ToList())) Place(block, near);

        bool IsClear(Box box)
        {
            var own = Distance(box, at);
            return own <= reach + Beside * _unit && Others().All(o => Distance(box, o) >= own + Farther * _unit);
        }

        void Put()
        {
            block.PutOn(Board, place);
            _free.TakeWords(place);
        }

        IEnumerable<Point> Others() => (_places ??= Places()).Where(p => p.DistanceTo(at) > 0.02);

        // The leader ends on the hole's edge, or just short of a point.
        IEnumerable<Spot> Spots() => Ways.SelectMany(turn => ((double[])[4, 8, 14, 22]).Select(away =>
        {
            var way = outwards.Turned(turn);
            return new Spot(at + way * Math.Max(edge, 0.4 * _unit), at + Towards(way, edge + away * _unit, block), outwards, Inwards);
        }));
    }

    // So far that a block whose middle is there stands clear of the reach.
    private static Vector Towards(Vector way, double reach, Block block) =>
        way * (reach + Math.Abs(way.X) * block.Width / 2 + Math.Abs(way.Y) * block.Height / 2);

    private static double Distance(Box box, Point to) => new Point(Math.Clamp(to.X, box.Min.X, box.Max.X), Math.Clamp(to.Y, box.Min.Y, box.Max.Y)).DistanceTo(to);

    private ImmutableArray<Point> Places() =>
    [
        .. _piece.Datums.Select(d => d.At), .. _piece.Tacks.Select(t => t.At), .. HoleNames.RoundHoles(_piece).Select(h => h.Centre),
    ];

    // Square to the edge that is tacked, so that the number of a strip's end does not stand where it is measured.
    private Vector OutwardsAt(Point tack)
    {
        var edge = _piece.Shape.Contours.SelectMany(c => c.Segments).MinBy(s => s.DistanceTo(tack));
        if (edge.DistanceTo(tack) > 0.01) return (tack - _piece.Shape.Bounds.Centre).Unit is { Length: > 0.5 } way ? way : new(0, 1);
        return edge.IsLine ? -edge.StartDirection.Left : (tack - edge.Centre).Unit * Math.Sign(edge.Bulge);
    }
}
