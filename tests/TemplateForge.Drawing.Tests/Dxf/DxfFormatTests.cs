using System.Text;
using TemplateForge.Geometry;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests.Dxf;

/// <summary>Release 12 and inches: what the published DXF references say of AC1009, and that one drawing is one drawing in every form.</summary>
public class DxfFormatTests
{
    private static DxfFormat Named(string name) => DxfFormat.All.Single(f => f.Name == name);

    private static LineDrawing Part { get; } = Sketch.Of(
        new ClosedStroke(new(
            Segment.Line(new(0, 0), new(50.8, 0)), Segment.Arc(new(50.8, 0), new(50.8, 25.4), 0.5), Segment.Line(new(50.8, 25.4), new(0, 25.4)), Segment.Line(new(0, 25.4), new(0, 0)))),
        new OpenStroke(new Path(Segment.Arc(new(0, 60), new(12.7, 60), -0.3))),
        new OpenStroke(new Path(Segment.Line(new(0, 70), new(10, 75)), Segment.Arc(new(10, 75), new(20, 70), 0.2))),
        new ClosedStroke(Outline.Circle(new Point(20, 12), 6.35)));

    [Theory, InlineData("r2000", "4", "1"), InlineData("r2000-in", "1", "0")]
    public void The_header_of_R2000_declares_the_unit(string name, string unit, string system)
    {
        var file = DxfFile.Of(Part, Named(name));
        Assert.Equal((unit, system), (file.Header("$INSUNITS"), file.Header("$MEASUREMENT")));
    }

    [Theory, InlineData("r12", "mm"), InlineData("r12-in", "in")]
    public void R12_has_a_header_three_tables_and_its_entities_and_says_its_unit_in_a_comment(string name, string unit)
    {
        var file = DxfFile.Of(Part, Named(name));
        Assert.Equal((999, $"Unit: {unit}"), file.Pairs[0]);
        Assert.Equal(["HEADER", "TABLES", "ENTITIES"], file.Sections);
        Assert.Equal("AC1009", file.Header("$ACADVER"));
        // None of these is known to the release.
        Assert.DoesNotContain(file.Pairs, p => p.Code is 100 or 330 or 5 or 90);
        Assert.DoesNotContain(file.Pairs, p => p.Value is "$INSUNITS" or "LWPOLYLINE");
        var tables = file.Section("TABLES");
        Assert.Equal(["LTYPE", "LAYER", "STYLE"], tables.Where(t => t.Type == "TABLE").Select(t => t[2]));
        Assert.Equal(tables.Count(t => t.Type == "LAYER"), tables.First(t => t.Type == "TABLE" && t[2] == "LAYER").Number(70));
    }

    [Fact]
    public void A_polyline_of_R12_is_a_run_of_vertices_with_bulges_that_an_end_of_sequence_ends()
    {
        var entities = DxfFile.Of(Part, Named("r12")).Section("ENTITIES");
        Assert.Equal(
            ["POLYLINE", "VERTEX", "VERTEX", "VERTEX", "VERTEX", "SEQEND", "ARC", "POLYLINE", "VERTEX", "VERTEX", "VERTEX", "SEQEND", "CIRCLE"],
            entities.Select(e => e.Type));
        Assert.Equal(["1", "0"], entities.Where(e => e.Type == "POLYLINE").Select(e => e[70]));
        Assert.All(entities.Where(e => e.Type == "POLYLINE"), e => Assert.Equal("1", e[66]));
        Assert.Equal(0.5, entities[2].Number(42));
        Assert.False(entities[1].Has(42));
        Assert.All(entities, e => Assert.Equal(entities[0][8], e[8]));
    }

    [Fact]
    public void A_length_in_inches_is_the_length_in_mm_by_25_4()
    {
        var circle = Assert.Single(DxfFile.Of(Part, Named("r2000-in")).Section("ENTITIES"), e => e.Type == "CIRCLE");
        Assert.Equal(0.25, circle.Number(40));
    }

    // 1e-10 in and 1e-8 mm are what is rounded to.
    [Theory, InlineData("r2000"), InlineData("r2000-in"), InlineData("r12"), InlineData("r12-in")]
    public void Every_form_is_read_back_as_the_same_strokes_with_its_unit_stated(string name)
    {
        Assert.True(DxfReader.TryRead(DxfWriter.Write(Part, Named(name)), new(DxfUnit.All[^1], Overrules: false), DxfReader.Exact, out var read, out _));
        Assert.Equal((Named(name).Unit.Name, Named(name).Unit), (read.StatedUnit, read.Unit));
        var length = Part.Layers.SelectMany(l => l.Marks).Sum(m => m is ClosedStroke c ? c.Contour.Length : ((OpenStroke)m).Path.Length);
        Assert.Equal(length, read.Strokes.Sum(s => s.Segments.Sum(x => x.Length)), 1e-6);
        // Two of the strokes are open, as drawn.
        Assert.Equal([DxfFindingKind.OpenEnd, DxfFindingKind.OpenEnd], DxfCheck.Of(read, DxfPurposes.AllCut).Findings.Select(f => f.Kind));
    }

    [Fact]
    public void A_layer_that_R12_has_no_room_for_is_refused()
    {
        var drawing = new LineDrawing([new(new string('A', 32), Sketch.Pen, [])]);
        Assert.NotEmpty(DxfWriter.Write(drawing));
        Assert.Throws<ArgumentException>(() => DxfWriter.Write(drawing, Named("r12")));
    }

    [Fact]
    public void A_form_is_the_same_bytes_every_time() =>
        Assert.All(DxfFormat.All, f => Assert.Equal(Encoding.ASCII.GetString(DxfWriter.Write(Part, f)), Encoding.ASCII.GetString(DxfWriter.Write(Part, f))));
}
