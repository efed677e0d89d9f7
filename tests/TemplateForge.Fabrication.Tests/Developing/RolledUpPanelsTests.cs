using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Developing;

/// <summary>Random openings on random sections, rolled up again by code that shares nothing with the laying flat.</summary>
public class RolledUpPanelsTests
{
    // What the laying flat promises, 0.005, and as much again for the chords of the rolling up.
    private const double Near = 0.01;

    [Theory]
    [InlineData(PanelFace.Outside, ThroughCut.Square)]
    [InlineData(PanelFace.Inside, ThroughCut.Square)]
    [InlineData(PanelFace.Inside, ThroughCut.Straight)]
    public void Rolled_up_every_point_of_an_outline_lies_on_the_edge_of_the_view(PanelFace laid, ThroughCut cut)
    {
        var random = new Random(20 + (int)laid + 2 * (int)cut);
        for (var i = 0; i < 6; i++)
        {
            var (section, thickness) = (RandomSection(random), 0.6 + 2 * random.NextDouble());
            var rulings = Angle.FromDegrees(random.Next(0, 8) * 45);
            var opening = RandomOpening(random);
            var panel = CurvedPanelTests.Panel(new()
            {
                Section = section,
                Thickness = thickness,
                LiesOn = laid,
                Cut = cut,
                Datum = 10 * random.NextDouble() - 5,
                Rulings = rulings,
                SquareAt = random.Next(2) == 0 ? [] : [20 * random.NextDouble() - 10],
            });
            var flat = CurvedPanelTests.Carried(panel, opening);

            var rolled = new RolledUpPanel(section, thickness);
            var across = Vector.Polar(1, panel.Tilt);
            var datum = rolled.At(rolled.LengthWhere(p => p.X, panel.Measured.Datum, inside: false), inside: false).Outside;
            double Seen(Point p) => (p - datum).Dot(across);
            var isStraight = cut == ThroughCut.Straight;
            // What is seen at the datum line lies on the other face straight behind it, or square behind it.
            var zero = laid == PanelFace.Outside ? rolled.LengthWhere(Seen, 0, inside: false)
                : isStraight ? rolled.LengthWhere(Seen, 0, inside: true)
                : Square(rolled, datum);
            foreach (var contour in flat.Contours)
            {
                foreach (var at in contour.PointsEvery(2.9))
                {
                    var paper = panel.IsMirrored ? new Point(-at.X, at.Y) : at;
                    var (x, along) = ((paper - Point.Origin).Dot(Vector.Polar(1, rulings)), (paper - Point.Origin).Dot(Vector.Polar(1, rulings).Left));
                    var (outside, inside) = rolled.At(zero + along, laid == PanelFace.Inside);
                    var seen = Seen(isStraight && laid == PanelFace.Inside ? inside : outside);
                    var view = Point.Origin + Vector.Polar(x, rulings) + Vector.Polar(seen, rulings + Angle.QuarterTurn);
                    Approximately.Equal(0, opening.BoundaryDistanceTo(view), within: Near);
                }
            }
        }
    }

    // The length along the inside at the point square behind one on the outside, by halving.
    private static double Square(RolledUpPanel rolled, Point outside)
    {
        var (low, high) = (0.0, 2000.0);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (rolled.At(middle, inside: true).Outside.X < outside.X) low = middle; else high = middle;
        }
        return (low + high) / 2;
    }

    // Lines and arcs that go on without a corner, each turning a little, either way; 130 across to both sides of 0.
    private static Path RandomSection(Random random)
    {
        var segments = new List<Segment>();
        var (at, heading) = (new Point(-130, 20 * random.NextDouble()), 0.5 * random.NextDouble() - 0.25);
        while (at.X < 130)
        {
            var (length, turn) = (20 + 60 * random.NextDouble(), random.Next(3) == 0 ? 0 : 0.9 * random.NextDouble() - 0.45);
            if (Math.Abs(heading + turn) > 0.7) turn = -turn;
            if (Math.Abs(heading + turn) > 0.7) turn = 0;
            var end = at + Vector.Polar(length, Angle.FromRadians(heading + turn / 2));
            segments.Add(turn == 0 ? Segment.Line(at, end) : Segment.Arc(at, end, Math.Tan(turn / 4)));
            (at, heading) = (end, heading + turn);
        }
        return new(segments);
    }

    private static Region RandomOpening(Random random)
    {
        var (x, y) = (60 * random.NextDouble() - 30, 20 * random.NextDouble() - 10);
        var plate = Region.Of(Outline.Rectangle(new Box(new(x - 25 - 15 * random.NextDouble(), y - 20 - 10 * random.NextDouble()), new(x + 40, y + 25))));
        var turned = plate.Placed(Placement.Turned(Angle.FromDegrees(360 * random.NextDouble()), new(x, y)));
        var hole = Region.Of(Outline.Circle(new(x, y), 8 + 6 * random.NextDouble()));
        return turned.RoundedCorners(6, _ => random.Next(2) == 0).Region.Subtract(hole);
    }
}
