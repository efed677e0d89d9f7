using SkiaSharp;

namespace TemplateForge.Drawing.Tests.Png;

public class PngWriterTests
{
    [Theory]
    [InlineData(1600)]
    [InlineData(1999)]
    [InlineData(37)]
    public void A_picture_has_the_width_that_was_asked_for_and_the_height_that_the_drawing_gives(int width)
    {
        using var picture = SKBitmap.Decode(PngWriter.Write(Sketch.Of(new ClosedStroke(Sketch.Rectangle(0, 0, 180, 80))), width, margin: 10));
        Assert.Equal(width, picture.Width);
        Assert.Equal(width / 2.0, picture.Height, 0.5);
    }

    [Fact]
    public void Lines_are_black_where_they_are_drawn_and_white_elsewhere()
    {
        // 200 × 100 mm in 1000 × 500 pixels: five to a millimetre, the first row at the top.
        using var picture = SKBitmap.Decode(PngWriter.Write(Sketch.Of(new ClosedStroke(Sketch.Polygon(new(0, 0), new(180, 0), new(0, 80)))), 1000, margin: 10));
        Assert.Equal(SKColors.White, picture.GetPixel(2, 2));
        Assert.Equal(SKColors.Black, picture.GetPixel(500, 450));
        Assert.Equal(SKColors.Black, picture.GetPixel(50, 250));
        Assert.Equal(SKColors.White, picture.GetPixel(950, 60));
    }

    [Fact]
    public void A_fill_shows_its_colour_and_its_hole_the_paper()
    {
        using var picture = SKBitmap.Decode(PngWriter.Write(Sketch.Of(new Fill(Sketch.Plate, new(220, 210, 200))), 600, margin: 0));
        Assert.Equal(new SKColor(220, 210, 200), picture.GetPixel(100, 300));
        Assert.Equal(SKColors.White, picture.GetPixel(300, 300));
    }

    [Fact]
    public void A_hairline_on_a_wide_drawing_is_still_seen()
    {
        var drawing = Sketch.With(Pen.Solid(0.1, Colour.Black), new ClosedStroke(Sketch.Rectangle(0, 0, 4000, 2000)));
        using var picture = SKBitmap.Decode(PngWriter.Write(drawing, 400, margin: 100));
        Assert.Contains(Enumerable.Range(0, picture.Height), y => picture.GetPixel(200, y).Red < 160);
    }

    [Fact]
    public void The_same_drawing_is_the_same_bytes() =>
        Assert.Equal(PngWriter.Write(Sketch.Everything, 800, 10), PngWriter.Write(Sketch.Everything, 800, 10));

    [Fact]
    public void An_empty_drawing_or_no_room_for_it_is_refused()
    {
        Assert.Throws<ArgumentException>(() => PngWriter.Write(new([]), 100, 10));
        Assert.ThrowsAny<ArgumentException>(() => PngWriter.Write(Sketch.Everything, 0, 10));
        Assert.ThrowsAny<ArgumentException>(() => PngWriter.Write(Sketch.Everything, 100, -1));
        Assert.ThrowsAny<ArgumentException>(() => PngWriter.Write(Sketch.Of(new OpenStroke(TemplateForge.Geometry.Path.Line(new(0, 0), new(5, 0)))), 100, 0));
    }
}
