using System.Globalization;
using TemplateForge.Geometry;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests.Dxf;

/// <summary>What the file must hold, from the published DXF reference for release 2000: readers mend most of it in silence.</summary>
public class DxfWriterTests
{
    private static IReadOnlyList<DxfObject> Entities(params Mark[] marks) => DxfFile.Of(Sketch.Of(marks)).Section("ENTITIES");

    [Fact]
    public void The_sections_stand_in_their_order_and_the_file_ends()
    {
        var file = DxfFile.Of(Sketch.Everything);
        Assert.Equal(["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"], file.Sections);
        Assert.Equal((0, "EOF"), file.Pairs[^1]);
        Assert.Single(file.Pairs, p => p == (0, "EOF"));
    }

    [Fact]
    public void The_header_says_release_2000_and_millimetres()
    {
        var file = DxfFile.Of(Sketch.Everything);
        Assert.Equal("AC1015", file.Header("$ACADVER"));
        Assert.Equal("4", file.Header("$INSUNITS"));
        Assert.Equal("1", file.Header("$MEASUREMENT"));
        Assert.Equal("ANSI_1252", file.Header("$DWGCODEPAGE"));
    }

    [Fact]
    public void Every_object_has_a_handle_of_its_own_below_the_next_one_to_be_given_and_an_owner_that_exists()
    {
        var file = DxfFile.Of(Sketch.Everything);
        var objects = new[] { "TABLES", "BLOCKS", "ENTITIES", "OBJECTS" }.SelectMany(file.Section).Where(o => o.Type is not "ENDTAB").ToList();
        var handles = objects.Select(o => o.Handle).ToList();
        Assert.Equal(handles.Count, handles.Distinct().Count());
        var seed = int.Parse(file.Header("$HANDSEED"), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        Assert.All(handles, h => Assert.InRange(h, 1, seed - 1));
        Assert.All(objects, o => Assert.True(o.Owner == 0 || handles.Contains(o.Owner), $"{o.Type} {o.Handle:X} belongs to nothing."));
    }

    [Fact]
    public void Every_table_is_there_and_counts_its_entries()
    {
        var tables = new Dictionary<string, List<DxfObject>>(StringComparer.Ordinal);
        DxfObject? table = null;
        foreach (var o in DxfFile.Of(Sketch.Everything).Section("TABLES"))
        {
            if (o.Type == "TABLE")
            {
                table = o;
                tables.Add(o[2], []);
                Assert.Equal("AcDbSymbolTable", o[100]);
                Assert.Equal(0, o.Owner);
            }
            else if (o.Type == "ENDTAB")
            {
                Assert.Equal(table!.Number(70), tables[table[2]].Count);
                table = null;
            }
            else
            {
                Assert.Equal(table![2], o.Type);
                Assert.Equal(table.Handle, o.Owner);
                Assert.Equal("AcDbSymbolTableRecord", o[100]);
                tables[table[2]].Add(o);
            }
        }
        Assert.Equal(["VPORT", "LTYPE", "LAYER", "STYLE", "VIEW", "UCS", "APPID", "DIMSTYLE", "BLOCK_RECORD"], tables.Keys);
        Assert.Equal(["ByBlock", "ByLayer", "Continuous"], tables["LTYPE"].Select(e => e[2]));
        Assert.Equal(["0", "FINISH", "CENTRE-LINE", "LETTERING"], tables["LAYER"].Select(e => e[2]));
        Assert.Equal(["7", "7", "5", "1"], tables["LAYER"].Select(e => e[62]));
        Assert.All(tables["LAYER"], e => Assert.Equal("Continuous", e[6]));
        Assert.Equal(["*Model_Space", "*Paper_Space"], tables["BLOCK_RECORD"].Select(e => e[2]));
    }

    [Fact]
    public void Both_spaces_have_a_block_and_the_root_dictionary_its_groups()
    {
        var file = DxfFile.Of(Sketch.Everything);
        var records = file.Section("TABLES").Where(o => o.Type == "BLOCK_RECORD").ToDictionary(o => o[2], o => o.Handle, StringComparer.Ordinal);
        var blocks = file.Section("BLOCKS");
        Assert.Equal(["BLOCK", "ENDBLK", "BLOCK", "ENDBLK"], blocks.Select(b => b.Type));
        Assert.All(blocks.Where(b => b.Type == "BLOCK"), b => Assert.Equal(records[b[2]], b.Owner));
        var objects = file.Section("OBJECTS");
        Assert.Equal(["DICTIONARY", "DICTIONARY"], objects.Select(o => o.Type));
        Assert.Equal(("ACAD_GROUP", objects[1].Handle), (objects[0][3], int.Parse(objects[0][350], NumberStyles.HexNumber, CultureInfo.InvariantCulture)));
        Assert.All(file.Section("ENTITIES"), e => Assert.Equal(records["*Model_Space"], e.Owner));
    }

    [Fact]
    public void A_line_is_a_LINE()
    {
        var line = Assert.Single(Entities(new OpenStroke(Path.Line(new(1.5, 2), new(-3, 1.0 / 3)))));
        Assert.Equal("LINE", line.Type);
        Assert.Equal(["AcDbEntity", "AcDbLine"], line.Groups.Where(g => g.Code == 100).Select(g => g.Value));
        Assert.Equal(["1.5", "2", "0", "-3", "0.33333333", "0"], new[] { 10, 20, 30, 11, 21, 31 }.Select(c => line[c]));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void An_arc_of_either_turn_is_an_ARC_between_the_same_ends(int turn)
    {
        var segment = Segment.Arc(new(100, 10), new(110, 0), turn * Math.Tan(Math.PI / 8));
        var arc = Assert.Single(Entities(new OpenStroke(new Path(segment))));
        Assert.Equal("ARC", arc.Type);
        var (centre, radius) = (new Point(arc.Number(10), arc.Number(20)), arc.Number(40));
        Point[] ends = [.. new[] { 50, 51 }.Select(c => centre + Vector.Polar(radius, Angle.FromDegrees(arc.Number(c))))];
        Assert.Equal(10, radius, 1e-8);
        Assert.All([segment.Start, segment.End], end => Assert.Equal(0, ends.Min(e => e.DistanceTo(end)), 2e-8));
        // Counter-clockwise from the first angle to the second, by the reference: a quarter turn here.
        Assert.Equal(90, (arc.Number(51) - arc.Number(50) + 360) % 360, 1e-9);
    }

    [Fact]
    public void A_hundred_metres_away_every_written_digit_still_counts()
    {
        var line = Assert.Single(Entities(new OpenStroke(Path.Line(new(-100000.12345678, 99999.87654321), new(100000, 0.001)))));
        Assert.Equal(["-100000.12345678", "99999.87654321", "100000", "0.001"], new[] { 10, 20, 11, 21 }.Select(c => line[c]));
    }

    [Fact]
    public void An_arc_so_flat_that_an_angle_could_not_place_its_ends_is_a_polyline()
    {
        // Rise 0.001 mm over 1 m: a radius of 125 km.
        var flat = Segment.Arc(new(0, 0), new(1000, 0), 2e-6);
        var polyline = Assert.Single(Entities(new OpenStroke(new Path(flat))));
        Assert.Equal(("LWPOLYLINE", "2", "0.000002"), (polyline.Type, polyline[90], polyline[42]));
    }

    [Fact]
    public void A_fill_is_for_the_eye_and_not_in_the_file() =>
        Assert.Empty(Entities(new Fill(Region.Of(Sketch.Rectangle(0, 0, 10, 10)), new(200, 200, 200))));

    [Fact]
    public void A_circle_is_a_CIRCLE_even_when_it_was_drawn_in_quarters()
    {
        var quarter = Math.Tan(Math.PI / 8);
        Point[] points = [new(7, 3), new(2, 8), new(-3, 3), new(2, -2)];
        var quarters = new Contour(points.Select((p, i) => Segment.Arc(p, points[(i + 1) % 4], quarter)));
        foreach (var entity in Entities(new ClosedStroke(quarters), new ClosedStroke(Sketch.Circle(new(2, 3), 5)), new ClosedStroke(Sketch.Circle(new(2, 3), 5).Reversed())))
        {
            Assert.Equal("CIRCLE", entity.Type);
            Assert.Equal((2, 3, 5), (entity.Number(10), entity.Number(20), entity.Number(40)));
        }
    }

    [Fact]
    public void Two_half_circles_that_bend_the_same_way_only_by_halves_are_no_circle()
    {
        // A lens: both arcs have one radius, their centres differ.
        var lens = new Contour(Segment.Arc(new(0, 0), new(10, 0), 0.5), Segment.Arc(new(10, 0), new(0, 0), 0.5));
        Assert.Equal("LWPOLYLINE", Assert.Single(Entities(new ClosedStroke(lens))).Type);
    }

    [Fact]
    public void A_path_of_lines_and_arcs_is_an_open_polyline_with_true_bulges()
    {
        var polyline = Assert.Single(Entities(new OpenStroke(Sketch.Notch)));
        Assert.Equal(("LWPOLYLINE", "0", "8"), (polyline.Type, polyline[70], polyline[90]));
        Assert.Equal(8, polyline.Numbers(10).Count);
        Assert.Equal(8, polyline.Numbers(20).Count);
        Assert.Equal(["0.414213562373", "-1", "0.414213562373"], polyline.Groups.Where(g => g.Code == 42).Select(g => g.Value));
        // A bulge belongs to the vertex before it.
        var before = polyline.Groups.TakeWhile(g => g.Code != 42).Last(g => g.Code == 10);
        Assert.Equal("-110", before.Value);
    }

    [Fact]
    public void A_contour_is_a_closed_polyline_with_as_many_vertices_as_segments()
    {
        var polyline = Assert.Single(Entities(new ClosedStroke(Sketch.Rectangle(0, 0, 20, 10))));
        Assert.Equal(("LWPOLYLINE", "1", "4"), (polyline.Type, polyline[70], polyline[90]));
        Assert.Equal([0, 20, 20, 0], polyline.Numbers(10));
        Assert.Equal([0, 0, 10, 10], polyline.Numbers(20));
    }

    [Fact]
    public void Everything_drawn_is_there_in_the_order_of_the_drawing_and_lettering_is_strokes()
    {
        var file = DxfFile.Of(Sketch.Everything);
        var entities = file.Section("ENTITIES");
        Assert.Equal(["LWPOLYLINE", "CIRCLE", "LWPOLYLINE", "LINE"], entities.Take(4).Select(e => e.Type));
        Assert.Equal(["FINISH", "FINISH", "FINISH", "CENTRE-LINE"], entities.Take(4).Select(e => e[8]));
        var words = Sketch.Everything.Layers[2].Marks.OfType<Lettering>().Single();
        Assert.Equal(Alphabet.Strokes(words).Length, entities.Skip(4).Count(e => e[8] == "LETTERING"));
        Assert.All(entities, e => Assert.Contains(e.Type, new[] { "LINE", "ARC", "CIRCLE", "LWPOLYLINE" }));
    }

    [Theory]
    [InlineData("finish")]
    [InlineData("FINISH LINE")]
    [InlineData("GRÖSSE")]
    [InlineData("")]
    [InlineData("A\n")]
    public void A_layer_name_that_a_reader_could_trip_over_is_refused(string name) =>
        Assert.Throws<ArgumentException>(() => DxfWriter.Write(new([new(name, Sketch.Pen, [])])));

    [Fact]
    public void Layers_of_one_name_are_one_layer()
    {
        var layer = new Layer("CUT", Sketch.Pen, [new ClosedStroke(Sketch.Rectangle(0, 0, 10, 10))]);
        var file = DxfFile.Of(new([layer, layer]));
        Assert.Single(file.Section("TABLES"), o => o.Type == "LAYER" && o[2] == "CUT");
        Assert.Equal(2, file.Section("ENTITIES").Count);
    }

    [Fact]
    public void An_empty_drawing_is_an_empty_file_with_all_its_structure() =>
        Assert.Empty(DxfFile.Of(new([])).Section("ENTITIES"));

    [Fact]
    public void The_same_drawing_is_the_same_bytes() => Assert.Equal(DxfWriter.Write(Sketch.Everything), DxfWriter.Write(Sketch.Everything));
}
