using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

public class CutLinesTests
{
    [Fact]
    public void The_finish_line_of_a_bite_runs_inside_the_panel_only()
    {
        var line = Assert.Single(Pieces.Bitten.FinishLines());
        Assert.Equal(40 + 60 + 40, line.Length, 1e-9);
        Assert.Equal((0.0, 0.0), (line.Start.Y, line.End.Y));
    }

    [Fact]
    public void What_a_cut_away_panel_loses_is_its_waste() => Assert.Equal(60 * 40, Pieces.Bitten.Waste().Area, 1e-9);

    // The finished panel grown by 3 all round: a square bite 54 × 37 whose inner corners stay sharp, since what grows there is concave.
    [Fact]
    public void The_rough_cut_of_a_square_bite_is_the_bite_less_the_allowance_on_each_side()
    {
        var rough = Assert.Single(Pieces.Bitten.RoughLines());
        Assert.Equal(37 + 54 + 37, rough.Length, 1e-6);
        Assert.Equal(new Box(new(73, 0), new(127, 37)), Rounded(rough.Bounds));
    }

    [Fact]
    public void Without_an_allowance_there_is_no_rough_cut() => Assert.Empty((Pieces.Bitten with { RoughAllowance = 0 }).RoughLines());

    [Fact]
    public void An_opening_that_meets_no_edge_has_a_closed_finish_line()
    {
        var piece = Pieces.CutAway(Region.Of(Outline.Circle(new(100, 50), 20)), roughAllowance: 2);
        Assert.True(Assert.Single(piece.FinishLines()).IsClosed());
        Assert.True(Assert.Single(piece.TableCuts(10)).IsClosed());
        Assert.Equal(2 * Math.PI * 18, Assert.Single(piece.RoughLines()).Length, 1e-6);
    }

    [Fact]
    public void Holes_are_cut_before_the_outline()
    {
        var cuts = Pieces.Plate.TableCuts(10);
        Assert.Equal(3, cuts.Length);
        Assert.Equal(2 * (80 + 50), cuts[2].Length, 1e-9);
        Assert.All(cuts, cut => Assert.True(cut.IsClosed()));
    }

    [Fact]
    public void An_open_cut_leaves_the_panel_on_its_tangent_and_keeps_clear_of_what_stays()
    {
        var cut = Assert.Single(Pieces.Bitten.TableCuts(10));
        for (var i = 1; i < cut.Segments.Length; i++)
        {
            var isCornerOfTheBite = cut.Segments[i].Start.Y > 39;
            if (!isCornerOfTheBite) Assert.Equal(0, cut.Segments[i - 1].EndDirection.Cross(cut.Segments[i].StartDirection), 1e-9);
        }
        var runOuts = cut.Segments[..2].Concat(cut.Segments[^2..]);
        Assert.All(runOuts, s => Assert.True(s.At(0.5).Y < 0));
        Assert.True(cut.Start.Y < -10 && cut.End.Y < -10);
    }

    [Fact]
    public void A_run_out_has_a_length() => Assert.Throws<ArgumentOutOfRangeException>(() => Pieces.Bitten.TableCuts(0));

    private static Box Rounded(Box box) =>
        new(new(Math.Round(box.Min.X, 6), Math.Round(box.Min.Y, 6)), new(Math.Round(box.Max.X, 6), Math.Round(box.Max.Y, 6)));
}
