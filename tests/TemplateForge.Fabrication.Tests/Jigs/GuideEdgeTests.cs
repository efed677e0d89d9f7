using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Fabrication.Tests.Jigs;

/// <summary>A guide is run round every plate by points alone; the cutter leaves the finish line within 0.01 mm.</summary>
public class GuideEdgeTests
{
    private const double Promised = 0.01;

    public static TheoryData<string> Openings => ["notch", "sharp mouth", "ellipse", "slot", "rounded rectangle"];

    [Theory, MemberData(nameof(Openings))]
    public void A_bush_run_round_the_plate_leaves_the_finish_line(string opening)
    {
        LeavesTheFinishLine(Opening(opening), GuideEdge.Bush(bush: 17, cutter: 6));
        LeavesTheFinishLine(Opening(opening), GuideEdge.Bush(bush: 12.7, cutter: 12.7));
    }

    [Theory, MemberData(nameof(Openings))]
    public void A_shroud_run_round_the_plate_leaves_the_finish_line(string opening) =>
        LeavesTheFinishLine(Opening(opening), GuideEdge.Shroud(shroud: 20, kerf: 1.6));

    [Fact]
    public void On_random_openings_the_cutter_leaves_the_finish_line()
    {
        var random = new Random(11);
        for (var i = 0; i < 12; i++)
        {
            var (bush, cutter) = (10 + 12 * random.NextDouble(), 3 + 6 * random.NextDouble());
            var edge = GuideEdge.Bush(bush, cutter);
            // Parts of many corners, each rounded by more than half the cutter and more than the offset.
            var parts = Enumerable.Range(0, 3).Select(_ => Region.Of(Outline.Ellipse(
                new(170 + 60 * random.NextDouble(), 120 + 50 * random.NextDouble()), 25 + 30 * random.NextDouble(), 25 + 20 * random.NextDouble(),
                Angle.FromDegrees(180 * random.NextDouble()), 0.001)));
            var round = Math.Max(cutter / 2, edge.Offset) + 0.5;
            var opening = Combination.Union(parts).Offset(round).Offset(-2 * round).Offset(round);
            if (i % 3 == 0) opening = opening.Union(Region.Of(Outline.Rectangle(new(new(185, -20), new(215, 120)))).Offset(round)).Offset(round).Offset(-2 * round).Offset(round);
            LeavesTheFinishLine(TrialJigs.Panel.Subtract(opening), edge);
        }
    }

    [Fact]
    public void The_edge_for_a_scriber_is_the_finish_line_itself()
    {
        var finished = TrialJigs.Notch(inside: 0);
        var plate = TrialJigs.Made(TrialJigs.Design(finished, GuideEdge.Scriber));
        foreach (var point in TrialJigs.Work(finished).FinishLines().SelectMany(l => l.PointsEvery(1)))
            Approximately.Equal(0, plate.Shape.BoundaryDistanceTo(point), within: Tolerance.Length);
    }

    // The same measure must tell a bush that is 0.05 mm larger than the plate says: it stands 0.025 mm further off.
    [Fact]
    public void A_bush_of_another_size_is_seen_to_miss_the_line()
    {
        var plate = TrialJigs.Made(TrialJigs.Design(Opening("slot"), GuideEdge.Bush(17, 6)));
        var run = new RunRound(plate.Shape, 17.05, plate.Outline.Bounds);
        Approximately.Equal(0.025, run.Off(new(200, 145), 6), within: 0.005);
    }

    [Fact]
    public void The_guide_edge_stands_back_by_half_the_difference_of_bush_and_cutter()
    {
        Approximately.Equal(5.5, GuideEdge.Bush(17, 6).Offset, within: 1e-12);
        Approximately.Equal(22.0 / 2 - 1.5 / 2, GuideEdge.Shroud(22, 1.5).Offset, within: 1e-12); // shroud's radius less half the kerf
        Approximately.Equal(0, GuideEdge.Scriber.Offset, within: 0);
    }

    [Theory]
    [InlineData(5, 6)]
    [InlineData(6, 0)]
    [InlineData(6, -1)]
    [InlineData(double.PositiveInfinity, 3)]
    public void What_cuts_passes_through_what_guides_it(double bush, double cutter) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GuideEdge.Bush(bush, cutter));

    private static Region Opening(string name) => name switch
    {
        "notch" => TrialJigs.Notch(),
        "sharp mouth" => TrialJigs.Notch(mouth: 0),
        "ellipse" => TrialJigs.WithHole(Outline.Ellipse(new(200, 120), 60, 35, Angle.FromDegrees(30), 0.001)),
        "slot" => TrialJigs.WithHole(Outline.Slot(new(160, 120), new(240, 120), 50)),
        _ => TrialJigs.WithHole(Outline.RoundedRectangle(new(new(140, 80), new(260, 160)), 9)),
    };

    private static void LeavesTheFinishLine(Region finished, GuideEdge edge)
    {
        var plate = TrialJigs.Made(TrialJigs.Design(finished, edge));
        var lines = TrialJigs.Work(finished).FinishLines();
        var run = new RunRound(plate.Shape, edge.Guide, Box.Around(lines.Select(l => l.Bounds)).Grown(WasteSide.RunOn));
        foreach (var point in lines.SelectMany(l => l.PointsEvery(0.7)))
            Assert.InRange(run.Off(point, edge.Cut), -Promised, Promised);
    }
}
