using static TemplateForge.Drawing.Tests.Dxf.Reading.WrittenDxf;

namespace TemplateForge.Drawing.Tests.Dxf.Reading;

/// <summary>Only what is cut is judged, and an open cut that is meant is let be.</summary>
public class DxfPurposesTests
{
    private static readonly string Edge = Line(-50, 0, 50, 0, "EDGE");
    private static readonly string Bite = Entity("LWPOLYLINE", (8, "CUT"), (90, 4), (70, 0), (10, -10), (20, -5), (10, -10), (20, 20), (10, 10), (20, 20), (10, 10), (20, -5));
    private static readonly DxfPurposes Cut = new(["CUT"], NamedAreCut: true);

    [Fact]
    public void Layers_that_are_not_named_are_not_judged()
    {
        var file = Entity("CIRCLE", (8, "CUT"), (40, 5)) + Line(0, 0, 9, 9, "NOTE") + Line(0, 9, 9, 0, "NOTE") + Entity("SPLINE", (8, "NOTE"), (10, 0), (10, 5));
        Assert.NotEmpty(Kinds(file, DxfPurposes.AllCut));
        Assert.Empty(Kinds(file, Cut));
        Assert.Empty(Kinds(file, new(["NOTE"], NamedAreCut: false)));
    }

    [Fact]
    public void A_cut_that_runs_in_over_an_edge_and_out_again_is_meant()
    {
        Assert.Equal([DxfFindingKind.OpenEnd], Kinds(Bite + Edge, Cut));
        Assert.Empty(Kinds(Bite + Edge, Cut with { Edges = ["EDGE"] }));
    }

    [Fact]
    public void One_that_crosses_the_edge_once_is_not() =>
        Assert.Equal([DxfFindingKind.OpenEnd], Kinds(Line(0, -5, 0, 30, "CUT") + Edge, Cut with { Edges = ["EDGE"] }));

    [Fact]
    public void Where_open_cuts_are_meant_a_gap_is_told_all_the_same() =>
        Assert.Equal(
            [DxfFindingKind.Gap],
            Kinds(Line(0, 0, 50, 0, "CUT") + Line(200, 0, 250, 0, "CUT") + Line(250, 1, 250, 40, "CUT"), Cut with { OpenIsMeant = true }));

    [Fact]
    public void The_course_of_a_torch_is_open_crosses_itself_and_runs_over_its_start()
    {
        // Round a square, 5 mm of overcut, and leads that cross.
        var course = Entity("LWPOLYLINE", (8, "CUT"), (90, 8), (70, 0),
            (10, -10), (20, -5), (10, 0), (20, 0), (10, 40), (20, 0), (10, 40), (20, 40), (10, 0), (20, 40), (10, 0), (20, 0), (10, 5), (20, 0), (10, -10), (20, -3));
        Assert.NotEmpty(Kinds(course, Cut));
        Assert.Empty(Kinds(course, Cut with { AreCourses = true }));
        Assert.Equal([DxfFindingKind.Doubled], Kinds(course + course, Cut with { AreCourses = true }));
        Assert.Equal([DxfFindingKind.Crossing], Kinds(course + Line(20, 20, 60, 20, "CUT"), Cut with { AreCourses = true }));
    }

    [Fact]
    public void Courses_keep_their_order_and_their_ends_on_repair()
    {
        var courses = Entity("LWPOLYLINE", (8, "CUT"), (90, 3), (70, 0), (10, 0), (20, 0), (10, 90), (20, 0), (10, 90), (20, 90)) + Line(90.1, 90, 95, 90, "CUT");
        var marks = DxfRepair.Of(Read(File(courses)), Cut with { AreCourses = true }, 0.2, DxfFormat.Usual).Drawing.Layers.Single().Marks;
        Assert.Equal([180, 4.9], marks.Select(m => Math.Round(((OpenStroke)m).Path.Length, 6)));
    }

    private static IEnumerable<DxfFindingKind> Kinds(string entities, DxfPurposes purposes) =>
        DxfCheck.Of(Read(File(entities)), purposes).Findings.Select(f => f.Kind);
}
