using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests.Svg;

public partial class SvgWriterTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static XElement Written(LineDrawing drawing, double margin = 10) =>
        XDocument.Parse(Encoding.UTF8.GetString(SvgWriter.Write(drawing, "A title", margin))).Root!;

    [Fact]
    public void Width_height_and_view_are_in_millimetres_and_y_runs_down()
    {
        var root = Written(Sketch.Of(new ClosedStroke(Sketch.Rectangle(-20, 30, 100, 80))), margin: 5);
        Assert.Equal("130mm", root.Attribute("width")!.Value);
        Assert.Equal("60mm", root.Attribute("height")!.Value);
        Assert.Equal("-25 -85 130 60", root.Attribute("viewBox")!.Value);
        Assert.Equal("A title", root.Element(Svg + "title")!.Value);
        Assert.Equal("#ffffff", root.Element(Svg + "rect")!.Attribute("fill")!.Value);
        Assert.Equal("M-20 -30L100 -30L100 -80L-20 -80Z", Assert.Single(root.Descendants(Svg + "path")).Attribute("d")!.Value);
    }

    [Fact]
    public void Every_arc_is_an_arc_whose_ends_and_radius_are_the_drawings_own()
    {
        var data = Assert.Single(Written(Sketch.Of(new OpenStroke(Sketch.Notch))).Descendants(Svg + "path")).Attribute("d")!.Value;
        var commands = Command().Matches(data).Select(m => (Letter: m.Groups["letter"].Value, Numbers: Numbers(m.Groups["numbers"].Value))).ToList();
        Assert.Equal("MLALALAL", string.Concat(commands.Select(c => c.Letter)));
        foreach (var (segment, command) in Sketch.Notch.Segments.Zip(commands.Skip(1)))
        {
            Assert.Equal(segment.End.X, command.Numbers[^2], 1e-8);
            Assert.Equal(segment.End.Y, -command.Numbers[^1], 1e-8);
            if (segment.IsLine) continue;
            Assert.Equal(segment.Radius, command.Numbers[0], 1e-7);
            // Counter-clockwise with y upwards is sweep 0 with y downwards (SVG 1.1, 8.3.8).
            Assert.Equal(segment.Bulge > 0 ? 0 : 1, command.Numbers[4]);
        }
    }

    [Fact]
    public void A_circle_is_two_arcs_whose_radius_no_reader_has_to_mend_outwards()
    {
        var data = Assert.Single(Written(Sketch.Of(new ClosedStroke(Sketch.Circle(new(1.0 / 3, 2.0 / 7), 50.0 / 3)))).Descendants(Svg + "path")).Attribute("d")!.Value;
        var arcs = Command().Matches(data).Where(m => m.Groups["letter"].Value == "A").Select(m => Numbers(m.Groups["numbers"].Value)).ToList();
        Assert.Equal(2, arcs.Count);
        var chord = new Point(arcs[0][^2], arcs[0][^1]).DistanceTo(new(arcs[1][^2], arcs[1][^1]));
        Assert.All(arcs, a => Assert.InRange(a[0], chord / 2 - 1e-7, chord / 2));
    }

    [Fact]
    public void Each_layer_is_a_group_with_its_name_pen_and_dashes()
    {
        var groups = Written(Sketch.Everything).Elements(Svg + "g").ToList();
        Assert.Equal(["FINISH", "CENTRE-LINE", "LETTERING"], groups.Select(g => g.Attribute("id")!.Value));
        Assert.Equal(["0.5", "0.25", "0.35"], groups.Select(g => g.Attribute("stroke-width")!.Value));
        Assert.Equal(["#000000", "#0000a0", "#c80000"], groups.Select(g => g.Attribute("stroke")!.Value));
        Assert.Equal("12 2 1 2", groups[1].Attribute("stroke-dasharray")!.Value);
        Assert.Null(groups[0].Attribute("stroke-dasharray"));
    }

    [Fact]
    public void Lettering_says_its_words_to_those_who_do_not_see_it()
    {
        var words = Assert.Single(Written(Sketch.Everything).Descendants(Svg + "g"), g => g.Attribute("aria-label") is not null);
        Assert.Equal("NOTCH <left & right>", words.Attribute("aria-label")!.Value);
        Assert.Equal("NOTCH <left & right>", words.Element(Svg + "title")!.Value);
        Assert.StartsWith("M", words.Element(Svg + "path")!.Attribute("d")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fill_is_one_path_with_its_hole_and_no_line_round_it()
    {
        var path = Assert.Single(Written(Sketch.Of(new Fill(Sketch.Plate, new(220, 210, 200)))).Descendants(Svg + "path"));
        Assert.Equal(("#dcd2c8", "none", "evenodd"), (path.Attribute("fill")!.Value, path.Attribute("stroke")!.Value, path.Attribute("fill-rule")!.Value));
        Assert.Equal(2, path.Attribute("d")!.Value.Count(c => c == 'Z'));
    }

    [Fact]
    public void Two_layers_of_one_name_do_not_share_an_id()
    {
        var layer = new Layer("FINISH", Sketch.Pen, [new ClosedStroke(Sketch.Rectangle(0, 0, 10, 10))]);
        var groups = Written(new([layer, layer])).Elements(Svg + "g").ToList();
        Assert.Single(groups, g => g.Attribute("id") is not null);
        Assert.Equal(2, groups.Count);
    }

    [Fact]
    public void Numbers_are_rounded_to_a_hundred_millionth_and_end_in_no_noughts()
    {
        var data = Assert.Single(Written(Sketch.Of(new OpenStroke(TemplateForge.Geometry.Path.Line(new(-1e-12, 1.0 / 3), new(100.5, 0.1 + 0.2))))).Descendants(Svg + "path"));
        Assert.Equal("M0 -0.33333333L100.5 -0.3", data.Attribute("d")!.Value);
    }

    [Fact]
    public void The_file_is_UTF_8_without_a_mark_and_lines_end_in_a_line_feed()
    {
        var bytes = SvgWriter.Write(Sketch.Everything, "Größe", 10);
        Assert.Equal((byte)'<', bytes[0]);
        Assert.DoesNotContain((byte)'\r', bytes);
        Assert.Contains("Größe", new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes), StringComparison.Ordinal);
        Assert.Equal(bytes, SvgWriter.Write(Sketch.Everything, "Größe", 10));
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    [GeneratedRegex("(?<letter>[MLAZ])(?<numbers>[^MLAZ]*)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Command();
}
