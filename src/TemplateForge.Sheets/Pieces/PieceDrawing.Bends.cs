using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Which bend is which: none is left out, for a bend that nobody sees is not made.</summary>
internal sealed partial class PieceDrawing
{
    /// <summary>What a leader of words may cost beside a ring that says which bend it is already.</summary>
    private const double MostBesideRing = 26;

    /// <summary>What the leader of a bend without a ring may cost before its number alone is tried: some 9 mm long, and across one line.</summary>
    private const double MostForWords = 18;

    // On a picture outside is as good as inside; what is cut out from paper keeps what stands inside.
    private double WrongSide => _unit > 1 ? 2 : 45;

    private static ImmutableArray<double> AboutTheMiddle { get; } = [0.5, 0.45, 0.55, 0.4, 0.6, 0.35, 0.65];
    private static ImmutableArray<double> TowardsTheEnds { get; } = [0.3, 0.7, 0.2, 0.8];

    /// <summary>The numbers in their rings; the lines are broken there already.</summary>
    public void AddRings(ImmutableDictionary<int, Circle> rings)
    {
        foreach (var (number, ring) in rings)
        {
            BendRings.PutOn(Board, number, ring, _unit);
            _free.TakeWords(ring.Bounds);
        }
    }

    /// <summary>How far each bend goes and which way, with a leader to about the middle of its line; a bend with a ring only where there is
    /// plain room, one without at least its number.</summary>
    public void AddNamesOfBends(Func<IBendOnBlank, string> name, ImmutableDictionary<int, Circle> rings)
    {
        // Those that have no number yet choose first.
        foreach (var together in _piece.Bends.OrderBy(b => rings.ContainsKey(b[0].Number)))
        {
            var (bend, line) = (together[0], together[0].Middle.Segments);
            var words = Block.Line(name(bend), Small * _unit);
            if (rings.ContainsKey(bend.Number)) AddWithLeader(words, SpotsBeside(line, AboutTheMiddle[1..], toTheLeft: true, WrongSide), MostBesideRing);
            else if (!IsNamed(words, line, bend)) AddNumber(bend);
        }
    }

    // In words near its middle; where their leader would run far or across others, by its number on a picture, by words from further off on paper.
    private bool IsNamed(Block words, IReadOnlyList<Segment> line, IBendOnBlank bend)
    {
        if (_unit <= 1) return AddWithLeader(words, SpotsBeside(line, AboutTheMiddle, toTheLeft: true, WrongSide)) || AddWithLeader(words, SpotsBeside(line, TowardsTheEnds, toTheLeft: true, WrongSide));
        return AddWithLeader(words, SpotsBeside(line, AboutTheMiddle, toTheLeft: true, WrongSide), MostForWords)
            || AddWithLeader(BendRings.Alone(bend.Number, _unit), SpotsBeside(line, AboutTheMiddle, toTheLeft: true, WrongSide), MostForWords)
            || AddWithLeader(words, SpotsBeside(line, AboutTheMiddle, toTheLeft: true, WrongSide));
    }

    // On a leader wherever it comes from, or on the line itself.
    private void AddNumber(IBendOnBlank bend)
    {
        var (block, middle) = (BendRings.Alone(bend.Number, _unit), bend.Middle.PointAlong(bend.Middle.Length / 2));
        if (AddWithLeader(block, AboutTheMiddle.Concat(TowardsTheEnds).Select(share => bend.Middle.PointAlong(share * bend.Middle.Length)).SelectMany(SpotsAbout))) return;
        var place = new Box(middle, middle).Grown(block.Width / 2);
        block.PutOn(Board, place);
        _free.TakeWords(place);
    }
}
