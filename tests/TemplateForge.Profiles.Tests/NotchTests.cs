using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles.Tests;

public class NotchTests
{
    private static readonly Profile Notch = TheLibrary.Profile("booster-clearance-notch");

    [Fact]
    public void At_its_defaults_it_is_a_demonstration() => Assert.True(Notch.Make().IsDemonstration);

    [Fact]
    public void With_every_measured_value_given_it_is_a_template()
    {
        var measured = Notch.Parameters.Where(p => p.Source == ValueSource.Measured && p.InsteadOf.Length == 0 && p.When.Length == 0);
        Assert.False(Notch.Make([.. measured.Select(p => $"{p.Name}={p.Default}")]).IsDemonstration);
    }

    [Fact]
    public void With_one_measured_value_left_it_is_still_a_demonstration()
    {
        var measured = Notch.Parameters.Where(p => p.Source == ValueSource.Measured && p.InsteadOf.Length == 0 && p.When.Length == 0).Skip(1);
        Assert.True(Notch.Make([.. measured.Select(p => $"{p.Name}={p.Default}")]).IsDemonstration);
    }

    [Fact]
    public void A_girth_gives_the_diameter()
    {
        var value = Notch.Make("girth=600").Values.Single(v => v.Name == "diameter");
        Assert.Equal("190.986 mm (girth 600 mm)", value.Text); // 600 / π
    }

    [Fact]
    public void A_girth_and_a_diameter_together_are_refused() =>
        Assert.Equal("girth gives diameter, which is given already.", Assert.Single(Notch.Refuse("diameter=190", "girth=600")).Problem);

    [Fact]
    public void Inches_and_fractions_are_understood() =>
        Assert.Equal("190.5 mm", Notch.Make("diameter=7 1/2 in").Values.Single(v => v.Name == "diameter").Text);

    [Fact]
    public void Less_than_15_mm_of_panel_behind_the_opening_is_refused()
    {
        Notch.Make("tilt=0", "panel_depth=162");    // 40 + 95 + 12 = 147 deep leaves 15
        var complaint = Assert.Single(Notch.Refuse("tilt=0", "panel_depth=161.5"));
        Assert.StartsWith("Only 14.5 mm of panel would be left behind the opening", complaint.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_datum_hole_within_15_mm_of_the_opening_is_refused()
    {
        // The mouth begins axis_along − 107 − 10 along the edge; datum A is 5 in from it and 8 across: √(18² + 5²) − 4 = 14.7.
        Notch.Make("tilt=0", "axis_along=135.5", "datum_a_in=5");
        Assert.Contains(Notch.Refuse("tilt=0", "axis_along=135", "datum_a_in=5"), c => c.Problem.Contains("datum hole A", StringComparison.Ordinal));
    }

    [Fact]
    public void A_component_that_never_reaches_the_panel_is_refused() =>
        Assert.Contains("nothing to cut", Assert.Single(Notch.Refuse("axis_in=-100", "diameter=20")).Problem, StringComparison.Ordinal);

    [Fact]
    public void The_finish_line_is_one_open_run_from_edge_to_edge()
    {
        var line = Assert.Single(Notch.Make().Piece("panel").FinishLines());
        Assert.Equal(0, line.Start.Y, Tolerance.Length);
        Assert.Equal(0, line.End.Y, Tolerance.Length);
        Assert.False(line.IsClosed());
    }

    [Fact]
    public void The_finish_line_has_no_kink_but_stays_tangent_from_mouth_to_mouth()
    {
        var line = Assert.Single(Notch.Make("tilt=30", "tilt_direction=40").Piece("panel").FinishLines());
        for (var i = 1; i < line.Segments.Length; i++)
            Assert.Equal(0, line.Segments[i - 1].EndDirection.Cross(line.Segments[i].StartDirection), 1e-4);
    }

    [Fact]
    public void The_table_cut_runs_on_and_off_past_the_panel_edge_without_touching_what_stays()
    {
        var panel = Notch.Make().Piece("panel");
        var finish = Assert.Single(panel.FinishLines());
        var cut = Assert.Single(panel.TableCuts(10));
        Assert.True(cut.Start.Y < -9 && cut.End.Y < -9);
        Assert.Equal(finish.Segments, cut.Segments[2..^2]);
        foreach (var point in cut.PointsEvery(0.5)) Assert.True(panel.Shape.DistanceTo(point) >= 0 && !Inside(panel.Shape, point));
    }

    // Well inside, not on the edge.
    private static bool Inside(Region region, Point point) => region.Contains(point) && region.BoundaryDistanceTo(point) > 1e-4;

    [Fact]
    public void The_rough_cut_runs_on_the_waste_side_at_its_allowance()
    {
        var panel = Notch.Make("rough_allowance=4").Piece("panel");
        var rough = Assert.Single(panel.RoughLines());
        foreach (var point in rough.PointsEvery(1))
        {
            Assert.Equal(4, panel.Shape.DistanceTo(point), 1e-5);
            Assert.True(panel.Waste().Contains(point));
        }
    }

    [Fact]
    public void The_other_hand_is_the_mirror_image_and_says_that_it_was_not_measured()
    {
        var complaints = new List<Notation.Complaint>();
        var left = Notch.Make();
        Assert.True(Notch.TryMake([], Hand.Right, Hand.Left, complaints, out var right));
        Assert.True(left.HandWasMeasured);
        Assert.False(right.HandWasMeasured);
        var (a, b) = (left.Piece("panel"), right.Piece("panel"));
        Assert.Equal(a.Shape.Area, b.Shape.Area, 1e-6);
        Assert.Equal(-a.Datums[1].At.X, b.Datums[1].At.X, 1e-9);
        Assert.Equal(180, Math.Abs(b.Arrows.Single(x => x.Label == "FRONT").Direction.Degrees), 1e-9);
        Assert.Equal(90, b.Arrows.Single(x => x.Label == "UP").Direction.Degrees, 1e-9);
        Assert.Equal(a.Checks.Select(c => Math.Round(c.Distance, 6)), b.Checks.Select(c => Math.Round(c.Distance, 6)));
    }

    [Fact]
    public void Values_measured_on_the_other_hand_count_as_measured_there()
    {
        Assert.True(Notch.TryMake([], Hand.Right, Hand.Right, new List<Notation.Complaint>(), out var right));
        Assert.True(right.HandWasMeasured);
    }

    public static TheoryData<string> BothEnds()
    {
        var data = new TheoryData<string>();
        foreach (var parameter in Notch.Parameters.Where(p => p.Range.Contains(" to ", StringComparison.Ordinal)))
        {
            data.Add($"{parameter.Name}={parameter.Range.Split(" to ")[0]}");
            data.Add($"{parameter.Name}={parameter.Range.Split(" to ")[1]}");
        }
        return data;
    }

    // What does not fit is refused by a rule or a shape with a sentence; everything else is clean geometry.
    [Theory, MemberData(nameof(BothEnds))]
    public void At_either_end_of_every_range_it_is_made_or_refused_in_words(string given)
    {
        var complaints = new List<Notation.Complaint>();
        if (Notch.TryMake(TheLibrary.Settings(given), Hand.Left, Hand.Left, complaints, out var made))
            Assert.NotEmpty(made.Piece("panel").FinishLines());
        else
            Assert.All(complaints, c => Assert.True(c.Problem.Length > 20 && c.Remedy.Length > 10));
    }
}
