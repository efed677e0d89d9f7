using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Rivets of one kind that stand one after the other.</summary>
public sealed record RivetRow
{
    /// <param name="centres">The middles of their holes, in any order; one at least.</param>
    /// <param name="diameter">Of the rivets, in mm, more than 0.</param>
    /// <param name="thickestSheet">The thickest of the other sheets that they join, in mm; 0 where nobody has said.</param>
    /// <exception cref="ArgumentException">There is no rivet, or its diameter is not more than 0.</exception>
    public RivetRow(ImmutableArray<Point> centres, double diameter, double thickestSheet = 0)
    {
        if (centres.IsEmpty) throw new ArgumentException("A row has one rivet at least.", nameof(centres));
        if (!(diameter > 0)) throw new ArgumentException(FormattableString.Invariant($"A rivet of {diameter} mm is none."), nameof(diameter));
        (Centres, Diameter, ThickestSheet) = (centres, diameter, thickestSheet);
    }

    public ImmutableArray<Point> Centres { get; }
    public double Diameter { get; }
    public double ThickestSheet { get; }

    /// <summary>From rivet to rivet along the row: each is joined to the row by the shortest line that there is.</summary>
    /// <remarks>Along a straight row or a bow these are the neighbours, round a ring too, but for one gap, the last found.</remarks>
    public ImmutableArray<(Point From, Point To)> Gaps()
    {
        var gaps = ImmutableArray.CreateBuilder<(Point From, Point To)>();
        var left = Centres.Skip(1).Select(c => (From: Centres[0], To: c)).ToList();
        while (left.Count > 0)
        {
            var next = left.MinBy(g => g.From.DistanceTo(g.To));
            gaps.Add(next);
            left.Remove(next);
            for (var i = 0; i < left.Count; i++)
            {
                if (next.To.DistanceTo(left[i].To) < left[i].From.DistanceTo(left[i].To)) left[i] = (next.To, left[i].To);
            }
        }
        return gaps.ToImmutable();
    }
}
