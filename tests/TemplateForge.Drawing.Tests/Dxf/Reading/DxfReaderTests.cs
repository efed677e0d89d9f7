using System.Text;
using TemplateForge.Geometry;
using static TemplateForge.Drawing.Tests.Dxf.Reading.WrittenDxf;

namespace TemplateForge.Drawing.Tests.Dxf.Reading;

/// <summary>What other programs write comes in as it is. Files that ezdxf writes are read by a referee in CI.</summary>
public class DxfReaderTests
{
    private const double Near = 1e-7;

    [Fact]
    public void An_arc_stays_one_arc_and_runs_counter_clockwise()
    {
        var arc = Assert.Single(Assert.Single(Read(File(Entity("ARC", (10, 5), (20, 7), (40, 10), (50, 0), (51, 90)))).Strokes).Segments);
        Assert.Equal(0, arc.Start.DistanceTo(new(15, 7)), Near);
        Assert.Equal(0, arc.End.DistanceTo(new(5, 17)), Near);
        Assert.Equal(Math.Tan(Math.PI / 8), arc.Bulge, 1e-12);
    }

    [Fact]
    public void Seen_from_below_a_circle_lies_on_the_other_side()
    {
        // The format's rule for the extrusion (0, 0, −1): x is turned round.
        var circle = Read(File(Entity("CIRCLE", (10, -20), (20, 30), (40, 25), (210, 0), (220, 0), (230, -1)))).Strokes[0];
        Assert.Equal(0, Box.Around(circle.Segments.Select(s => s.Bounds)).Centre.DistanceTo(new(20, 30)), Near);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(-0.3)]
    [InlineData(3)]
    public void A_bulge_is_the_tangent_of_a_quarter_of_the_angle(double bulge)
    {
        var stroke = Read(File(Entity("LWPOLYLINE", (90, 2), (70, 0), (10, 0), (20, 0), (42, bulge), (10, 10), (20, 0)))).Strokes[0];
        Assert.Equal(4 * Math.Atan(bulge), stroke.Segments.Sum(s => s.Sweep.Radians), 1e-9);
        Assert.Equal(10, stroke.Start.DistanceTo(stroke.End), Near);
    }

    [Fact]
    public void A_block_in_a_block_is_turned_scaled_and_mirrored_with_it()
    {
        var blocks = Entity("BLOCK", (2, "DISC"), (10, 5), (20, 5)) + Entity("CIRCLE", (8, "0"), (10, 5), (20, 5), (40, 10)) + Pair(0, "ENDBLK")
            + Entity("BLOCK", (2, "PAIR"), (10, 0), (20, 0)) + Entity("INSERT", (8, "0"), (2, "DISC"), (10, 30), (20, 0), (41, -1)) + Pair(0, "ENDBLK");
        var contents = Read(File(Entity("INSERT", (8, "CUT"), (2, "PAIR"), (10, 100), (20, 100), (41, 2), (42, 2), (50, 90)), blocks: blocks));
        var disc = Assert.Single(contents.Strokes);
        var bounds = Box.Around(disc.Segments.Select(s => s.Bounds));
        Assert.Equal("CUT", disc.Layer);
        Assert.Equal(0, bounds.Centre.DistanceTo(new(100, 160)), Near);
        Assert.Equal(40, bounds.Width, Near);
        Assert.All(disc.Segments, s => Assert.False(s.IsLine));
    }

    [Fact]
    public void A_block_that_holds_itself_is_told_and_ends()
    {
        var blocks = Entity("BLOCK", (2, "A")) + Line(0, 0, 1, 1) + Entity("INSERT", (2, "A"), (10, 1)) + Pair(0, "ENDBLK");
        var contents = Read(File(Entity("INSERT", (2, "A")), blocks: blocks));
        Assert.Single(contents.Strokes);
        Assert.Contains(contents.Findings, f => f.Kind == DxfFindingKind.LostBlock);
    }

    [Fact]
    public void A_squeezed_circle_is_an_ellipse()
    {
        var blocks = Entity("BLOCK", (2, "DISC")) + Entity("CIRCLE", (10, 0), (20, 0), (40, 10)) + Pair(0, "ENDBLK");
        var stroke = Assert.Single(Read(File(Entity("INSERT", (2, "DISC"), (41, 3), (42, 0.5)), blocks: blocks)).Strokes);
        Assert.True(stroke.IsClosed);
        Assert.Equal(Math.PI * 30 * 5, new Contour(stroke.Segments).Area, Math.PI * 30 * 5 * 1e-6);
    }

    [Fact]
    public void Nine_weighted_points_are_a_circle()
    {
        // L. Piegl and W. Tiller, The NURBS Book: the full circle as a quadratic with weights 1 and √½ (from memory).
        var (r, w) = (30.0, Math.Sqrt(0.5));
        var pairs = new List<(int, object)> { (70, 4), (71, 2), (72, 12), (73, 9) };
        foreach (var knot in (double[])[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4]) pairs.Add((40, knot));
        foreach (var weight in (double[])[1, w, 1, w, 1, w, 1, w, 1]) pairs.Add((41, weight));
        foreach (var (x, y) in ((double, double)[])[(r, 0), (r, r), (0, r), (-r, r), (-r, 0), (-r, -r), (0, -r), (r, -r), (r, 0)]) pairs.AddRange([(10, x), (20, y)]);
        var stroke = Assert.Single(Read(File(Entity("SPLINE", [.. pairs]))).Strokes);
        Assert.All(stroke.Segments, s => Assert.Equal(r, s.At(0.5).DistanceTo(Point.Origin), 2 * DxfReader.Exact));
        Assert.Equal(Math.PI * r * r, new Contour(stroke.Segments).Area, Math.PI * r * r * 1e-6);
    }

    [Fact]
    public void The_vertices_of_an_old_polyline_follow_it_and_those_of_its_frame_are_left_out()
    {
        var old = Entity("POLYLINE", (66, 1), (70, 1 + 4)) + Entity("VERTEX", (10, 500), (20, 500), (70, 16))
            + Entity("VERTEX", (10, 0), (20, 0), (70, 8)) + Entity("VERTEX", (10, 50), (20, 0), (70, 8)) + Entity("VERTEX", (10, 50), (20, 20), (70, 8)) + Pair(0, "SEQEND");
        var stroke = Assert.Single(Read(File(old)).Strokes);
        Assert.True(stroke.IsClosed);
        Assert.Equal(500, new Contour(stroke.Segments).Area, Near);
    }

    [Theory]
    [InlineData("1", 25.4)]
    [InlineData("2", 304.8)]
    [InlineData("5", 10)]
    [InlineData("6", 1000)]
    public void A_stated_unit_becomes_millimetres(string number, double length)
    {
        var contents = Read(File(Line(0, 0, 1, 0), header: $"9\n$INSUNITS\n70\n{number}\n"));
        Assert.NotEmpty(contents.StatedUnit);
        Assert.Equal(length, contents.Strokes[0].Segments[0].Length, Near);
    }

    [Fact]
    public void A_file_without_a_unit_takes_that_which_somebody_names_and_is_told_of()
    {
        Assert.True(DxfReader.TryRead(File(Line(0, 0, 1, 0), header: ""), new(DxfUnit.Inch, Overrules: false), DxfReader.Exact, out var contents, out _));
        Assert.Equal(25.4, contents.Strokes[0].Segments[0].Length, Near);
        Assert.Contains(contents.Findings, f => f.Kind == DxfFindingKind.NoUnit);
    }

    [Fact]
    public void What_is_no_line_is_left_out_and_told()
    {
        var contents = Read(File(Entity("TEXT", (10, 1), (20, 2), (1, "PART 7")) + Entity("HATCH") + Entity("LINE", (10, "one"), (20, 0), (11, 5), (21, 0)) + Line(1, 1, 1, 1)));
        Assert.Empty(contents.Strokes);
        Assert.Equal(
            [DxfFindingKind.NotCut, DxfFindingKind.NotCut, DxfFindingKind.Unreadable, DxfFindingKind.ZeroLength], contents.Findings.Select(f => f.Kind));
    }

    [Fact]
    public void A_layer_that_is_off_or_frozen_is_told_of_once()
    {
        var tables = Entity("LAYER", (2, "OLD"), (70, 0), (62, -7)) + Entity("LAYER", (2, "COLD"), (70, 1), (62, 7));
        var contents = Read(File(Line(0, 0, 1, 0, "OLD") + Line(0, 1, 1, 1, "OLD") + Line(0, 2, 1, 2, "COLD"), tables: tables));
        Assert.Equal(["OLD", "COLD"], contents.Findings.Where(f => f.Kind == DxfFindingKind.HiddenLayer).Select(f => f.Layer));
    }

    [Fact]
    public void A_frozen_layer_takes_a_block_out_of_sight_and_one_that_is_off_only_what_lies_on_layer_0_in_it()
    {
        var tables = Entity("LAYER", (2, "OFF"), (70, 0), (62, -7)) + Entity("LAYER", (2, "COLD"), (70, 1), (62, 7));
        var blocks = Entity("BLOCK", (2, "A")) + Line(0, 0, 1, 0, "CUT") + Line(0, 1, 1, 1, "0") + Pair(0, "ENDBLK");
        var strokes = Read(File(Entity("INSERT", (8, "OFF"), (2, "A")) + Entity("INSERT", (8, "COLD"), (2, "A")), tables: tables, blocks: blocks)).Strokes;
        Assert.Equal([("CUT", false), ("OFF", true), ("CUT", true), ("COLD", true)], strokes.Select(s => (s.Layer, s.IsHidden)));
    }

    [Fact]
    public void An_entity_that_is_marked_invisible_is_hidden_and_a_block_with_all_that_is_in_it()
    {
        var blocks = Entity("BLOCK", (2, "A")) + Line(0, 0, 1, 0, "CUT") + Pair(0, "ENDBLK");
        Assert.All(Read(File(Entity("CIRCLE", (60, 1), (40, 5)) + Entity("INSERT", (2, "A"), (60, 1)), blocks: blocks)).Strokes, s => Assert.True(s.IsHidden));
    }

    [Fact]
    public void What_is_seen_from_its_back_is_told_of() =>
        Assert.Equal(DxfFindingKind.FromBelow, Assert.Single(Read(File(Entity("CIRCLE", (10, -20), (20, 30), (40, 25), (230, -1), (210, 0), (220, 0)))).Findings).Kind);

    [Fact]
    public void What_lies_too_far_off_is_told_with_where_it_is()
    {
        var found = Assert.Single(Read(File(Line(1e7, 1e7, 1e7 + 100, 1e7))).Findings);
        Assert.Equal((DxfFindingKind.TooFar, new Point(1e7, 1e7)), (found.Kind, found.At));
    }

    // The names and numbers of $INSUNITS are the format's: 5 cm, 6 m; from memory, ezdxf.units agrees.
    [Theory]
    [InlineData(1, false)]
    [InlineData(4, false)]
    [InlineData(2, true)]
    [InlineData(5, true)]
    [InlineData(6, true)]
    public void Neither_mm_nor_inches_is_told_of(int number, bool isTold) =>
        Assert.Equal(isTold, Read(File(Line(0, 0, 1, 0), header: $"9\n$INSUNITS\n70\n{number}\n")).Findings.Any(f => f.Kind == DxfFindingKind.UnusualUnit));

    [Fact]
    public void Who_overrules_the_unit_that_is_stated_is_told_so()
    {
        Assert.True(DxfReader.TryRead(File(Line(0, 0, 1, 0), header: "9\n$INSUNITS\n70\n6\n"), new(DxfUnit.Inch, Overrules: true), DxfReader.Exact, out var contents, out _));
        Assert.Equal(25.4, contents.Strokes[0].Segments[0].Length, Near);
        var told = Assert.Single(contents.Findings);
        Assert.Equal((DxfFindingKind.UnitOverruled, "m", 8), (told.Kind, told.Detail, told.Line));
    }

    [Fact]
    public void What_leans_is_told_of() =>
        Assert.Contains(Read(File(Entity("LINE", (10, 0), (20, 0), (30, 0), (11, 10), (21, 0), (31, 3)))).Findings, f => f.Kind == DxfFindingKind.NotFlat);

    [Theory]
    [InlineData("hello\nworld\n", 1)]
    [InlineData("0\nSECTION\n2\nENTITIES\nzero\nLINE\n", 5)]
    [InlineData("", 1)]
    public void What_is_no_DXF_is_refused_with_the_line(string text, int line)
    {
        Assert.False(DxfReader.TryRead(Encoding.UTF8.GetBytes(text), AskedUnit.None, DxfReader.Exact, out _, out var fault));
        Assert.Equal(line, fault.Line);
        Assert.NotEmpty(fault.Remedy);
    }

    [Fact]
    public void Whatever_is_done_to_a_file_it_is_read_or_refused()
    {
        var sound = Encoding.UTF8.GetString(File(
            Line(0, 0, 10, 0) + Entity("ARC", (10, 5), (20, 7), (40, 10), (50, 0), (51, 90)) + Entity("INSERT", (2, "A"), (10, 1))
            + Entity("LWPOLYLINE", (90, 2), (70, 1), (10, 0), (20, 0), (42, 1), (10, 10), (20, 0)) + Entity("ELLIPSE", (10, 0), (11, 5), (40, 0.5), (41, 0), (42, 3))
            + Entity("SPLINE", (71, 2), (40, 0), (40, 0), (40, 0), (40, 1), (40, 1), (40, 1), (10, 0), (20, 0), (10, 5), (20, 9), (10, 10), (20, 0)),
            blocks: Entity("BLOCK", (2, "A")) + Line(0, 0, 1, 1) + Pair(0, "ENDBLK"))).Split('\n');
        var random = new Random(7);
        for (var i = 0; i < 300; i++)
        {
            var lines = sound.ToList();
            for (var times = random.Next(1, 4); times > 0; times--)
            {
                var at = random.Next(lines.Count);
                if (random.Next(3) == 0) lines.RemoveAt(at);
                else lines[at] = random.Next(4) switch { 0 => "-1", 1 => "1e308", 2 => "NaN", _ => lines[random.Next(lines.Count)] };
            }
            if (!DxfReader.TryRead(Encoding.UTF8.GetBytes(string.Join('\n', lines)), AskedUnit.None, fit: 0.01, out var contents, out var fault))
                Assert.InRange(fault.Line, 1, lines.Count);
            else Assert.NotNull(DxfRepair.Of(contents, DxfPurposes.AllCut, DxfRepair.UsualGap, DxfFormat.Usual));
        }
    }
}
