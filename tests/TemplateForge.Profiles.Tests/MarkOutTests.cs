using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>The mark-out tables of everything that ships, marked out again from their rounded figures by rule and compass, as numbers.</summary>
public class MarkOutTests
{
    /// <summary>What rounding to 0.1 mm makes of one figure.</summary>
    private const double Half = 0.05;

    private static readonly Lazy<IReadOnlyList<(string Name, Piece Piece)>> Pieces = new(() =>
    [
        .. from entry in TheLibrary.Library.Entries
           from piece in TheLibrary.Profile(entry.Name).Make().Pieces
           from shown in new[] { (entry.Name + "/" + piece.Name, piece), (entry.Name + "/" + piece.Name + ", other hand", piece.Mirrored()) }
           select shown,
    ]);

    // A circle about A and one about B: x = (a² − b² + L²) / 2L from A, y = ±√(a² − x²); from any book of geometry.
    [Fact]
    public void Two_trammel_arcs_from_rounded_figures_meet_within_a_tenth_of_every_vertex_or_two_where_they_cross_flat()
    {
        var found = 0;
        foreach (var (name, piece) in Pieces.Value)
        {
            var made = MarkOut.Of(piece);
            foreach (var point in made.Points.Where(p => p.Place.IsFoundByTrammel))
            {
                var (a, b, length) = (Rounded(point.Place.FromFirst), Rounded(point.Place.FromSecond), made.Base.First.DistanceTo(made.Base.Second));
                var along = (a * a - b * b + length * length) / (2 * length);
                var offset = Math.Sign(point.Place.Offset) * Math.Sqrt(Math.Max(0, a * a - along * along));
                var within = Half / Math.Sin(point.Place.Crossing.Radians / 2) * 1.02;
                Assert.True(point.Place.Crossing.Degrees < 60 || within <= 0.103);
                Near(name, point, OnTheMetal(made.Base, along, offset), within);
                found++;
            }
        }
        Assert.True(found > 500, $"{found}");
    }

    [Fact]
    public void Along_and_offset_from_rounded_figures_find_every_vertex_within_a_tenth()
    {
        foreach (var (name, piece) in Pieces.Value)
        {
            var made = MarkOut.Of(piece);
            foreach (var point in made.Points)
                Near(name, point, OnTheMetal(made.Base, Rounded(point.Place.Along), Rounded(point.Place.Offset)), within: Half * Math.Sqrt(2) + 1e-9);
        }
    }

    // What the tables leave out (vertices in line, halves of an arc) is on the lines and arcs that they have.
    [Fact]
    public void Every_line_of_a_piece_lies_on_what_is_marked_out_from_rounded_figures()
    {
        foreach (var (name, piece) in Pieces.Value)
        {
            var made = MarkOut.Of(piece);
            var marked = made.Lines.SelectMany(l => l.Stretches).Select(s => Marked(made, s)).ToList();
            var holes = made.Holes.Select(h => (Centre: OnTheMetal(made.Base, Rounded(h.Place.Along), Rounded(h.Place.Offset)), Radius: Rounded(h.Diameter) / 2)).ToList();
            foreach (var segment in piece.FinishLines().SelectMany(l => l.Segments))
            {
                foreach (var place in new[] { segment.Start, segment.At(0.5), segment.At(0.31) })
                {
                    var off = marked.Select(m => m(place)).Concat(holes.Select(h => Math.Abs(place.DistanceTo(h.Centre) - h.Radius))).Min();
                    Assert.True(off < 0.16, $"{name}: {place} lies {off} mm off what is marked out.");
                }
            }
        }
    }

    // r = c² / 8h + h / 2, from geometry; and the arc as chords say where it lies a quarter of the chord in.
    [Fact]
    public void Chord_and_rise_give_back_the_radius_and_the_rise_at_the_quarters()
    {
        foreach (var arc in Pieces.Value.SelectMany(p => MarkOut.Of(p.Piece).Arcs).Where(a => Math.Abs(a.Sweep.Degrees) <= 180))
        {
            var (c, h) = (arc.Chord, arc.Rise);
            Approximately.Equal(arc.Radius, c * c / (8 * h) + h / 2, within: arc.Radius * 1e-6);
            // By the power of the point: (c/4)(3c/4) = y (2r − 2h' + y), where h' = r − (centre's distance from the chord).
            var below = arc.Radius - h;
            var y = arc.RiseAtQuarters;
            Approximately.Equal(c / 4 * (3 * c / 4), y * (y + 2 * below), within: 1e-6 * Math.Max(1, arc.Radius));
        }
        var odd = new MarkedArc(1, 1, 2, 1000, Angle.FromDegrees(60), default, default);
        Approximately.Equal(1000, odd.Chord, within: 1e-9);
        Approximately.Equal(1000 - 500 * Math.Sqrt(3), odd.Rise, within: 1e-9);
    }

    [Fact]
    public void The_other_hand_has_the_same_figures_where_it_is_measured_from_the_same_datums()
    {
        var compared = 0;
        foreach (var (_, piece) in Pieces.Value.Where(p => p.Piece.Datums.Length >= 2))
        {
            var (one, other) = (MarkOut.Of(piece), MarkOut.Of(piece.Mirrored()));
            Assert.Equal(BaseLineKind.Datums, one.Base.Kind);
            Assert.Equal(one.Points.Length, other.Points.Length);
            foreach (var point in one.Points)
            {
                // Of two places that are one mark the other may stand for both.
                Assert.Contains(other.Points, p => new[]
                {
                    p.Place.Along - point.Place.Along, p.Place.Offset - point.Place.Offset,
                    p.Place.FromFirst - point.Place.FromFirst, p.Place.FromSecond - point.Place.FromSecond,
                }.All(off => Math.Abs(off) < 0.051));
                compared++;
            }
        }
        Assert.True(compared > 100);
    }

    // A joggle goes round in four straight and four curved stretches: a line that comes back to where it began.
    [Fact]
    public void Stretches_of_a_bend_that_run_on_into_each_other_are_one_line()
    {
        var piece = TheLibrary.Profile("joggled-patch").Make().Pieces.First(p => p.CurvedBends.Length > 0);
        var bends = MarkOut.Of(piece).Lines.Where(l => l.Kind == MarkedLineKind.Bend).ToList();
        Assert.Equal(piece.Bends.Length, bends.Count);
        Assert.All(bends, b => Assert.Equal((8, b.Stretches[0].From), (b.Stretches.Length, b.Stretches[^1].To)));
    }

    // How far a place lies off a stretch as somebody marks it: a line between two marks, an arc struck from its mark, or bent over chord and rise.
    private static Func<Point, double> Marked(MarkOut made, MarkedStretch stretch)
    {
        Point Mark(int number) => OnTheMetal(made.Base, Rounded(made[number].Place.Along), Rounded(made[number].Place.Offset));
        var (from, to) = (Mark(stretch.From), Mark(stretch.To));
        if (stretch.Arc == 0) return place => from == to ? place.DistanceTo(from) : Segment.Line(from, to).DistanceTo(place);
        var arc = made.Arcs[stretch.Arc - 1];
        if (arc.IsStruck)
        {
            var centre = OnTheMetal(made.Base, Rounded(arc.CentrePlace.Along), Rounded(arc.CentrePlace.Offset));
            return place => Math.Abs(place.DistanceTo(centre) - Rounded(arc.Radius));
        }
        var rise = Segment.Arc(from, to, Math.Sign(arc.Sweep.Radians) * 2 * Rounded(arc.Rise) / Rounded(arc.Chord));
        return place => rise.DistanceTo(place);
    }

    // Figures along and off the line from A to B, back in the drawing: by turning, which nothing in the tables does.
    private static Point OnTheMetal(BaseLine line, double along, double offset)
    {
        var turn = Math.Atan2(line.Second.Y - line.First.Y, line.Second.X - line.First.X);
        var left = line.Side.Cross(line.Second - line.First) < 0 ? 1 : -1;
        return new(
            line.First.X + along * Math.Cos(turn) - left * offset * Math.Sin(turn),
            line.First.Y + along * Math.Sin(turn) + left * offset * Math.Cos(turn));
    }

    private static void Near(string name, MarkedPoint point, Point found, double within) =>
        Assert.True(found.DistanceTo(point.At) <= within, $"{name}: vertex {point.Number} at {point.At} is found at {found}, {found.DistanceTo(point.At)} mm off; {within} would do.");

    private static double Rounded(double length) => Math.Round(length, 1, MidpointRounding.AwayFromZero);
}
