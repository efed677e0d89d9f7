using System.Buffers;
using System.Runtime.InteropServices;
using SkiaSharp;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>Writes a picture of a drawing.</summary>
public static class PngWriter
{
    // Thin lines on white are long runs of one value: a filter would only break them up, and looking for the best one costs most.
    private static readonly SKPngEncoderOptions LineArt = new(SKPngEncoderFilterFlags.None, zLibLevel: 3);

    /// <param name="drawing">What is shown.</param>
    /// <param name="width">Width in pixels; the height follows from the drawing.</param>
    /// <param name="margin">White border in mm.</param>
    /// <exception cref="ArgumentException">There is nothing to show, or no room for it.</exception>
    public static byte[] Write(LineDrawing drawing, int width, double margin)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        var frame = Frame.Of(drawing, margin);
        var perMm = width / frame.Width;
        var height = Math.Max(1, (int)Math.Ceiling(frame.Height * perMm - 1e-6));

        // Borrowed and given back: a thousand pictures one after the other take the room of one.
        var info = new SKImageInfo(width, height, SKImageInfo.PlatformColorType, SKAlphaType.Opaque);
        var pixels = ArrayPool<byte>.Shared.Rent(info.BytesSize);
        var pinned = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var picture = new SKPixmap(info, pinned.AddrOfPinnedObject(), info.RowBytes);
            using (var surface = SKSurface.Create(picture)!)
            {
                var canvas = surface.Canvas;
                canvas.Clear(SKColors.White);
                canvas.Scale((float)perMm);
                // A line thinner than a pixel fades: on a screen it is drawn as one.
                new Painter(new SkiaCanvas(canvas, frame.Height), leastWidth: 1 / perMm)
                    .Draw(drawing, Placement.Moved(Point.Origin - frame.Min), new(Point.Origin, new(frame.Width, frame.Height)));
            }
            if (!IsGrey(drawing)) return Packed(picture);
            // One value a pixel in place of three is packed in a third of the time.
            for (var i = 0; i < width * height; i++) pixels[i] = pixels[info.BytesPerPixel * i];
            using var grey = new SKPixmap(info.WithColorType(SKColorType.Gray8), pinned.AddrOfPinnedObject(), width);
            return Packed(grey);
        }
        finally
        {
            pinned.Free();
            ArrayPool<byte>.Shared.Return(pixels);
        }
    }

    private static byte[] Packed(SKPixmap picture)
    {
        using var data = picture.Encode(LineArt)!;
        return data.ToArray();
    }

    // Then so are the pixels at the edges of lines, where colours mix.
    private static bool IsGrey(LineDrawing drawing) => drawing.Layers.All(layer =>
        IsGrey(layer.Pen.Colour) && layer.Marks.All(mark => mark is not Fill fill || IsGrey(fill.Colour)));

    private static bool IsGrey(Colour colour) => colour.Red == colour.Green && colour.Green == colour.Blue;
}
