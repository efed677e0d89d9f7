using System.IO;
using SkiaSharp;

namespace TemplateForge.Drawing;

/// <summary>Writes a document as a PDF at true scale, the same bytes every time.</summary>
/// <remarks>Pages are true to 0.001 mm, points and arcs to 0.0005 mm on paper up to 2 m (single-precision numbers).</remarks>
public static class PdfWriter
{
    private const double PointsPerMm = 72 / 25.4;

    /// <summary>With 72 dots an inch Skia rounds a page to whole points; at 2540 to a hundredth of a millimetre.</summary>
    private const float DotsPerInch = 2540;

    /// <exception cref="ArgumentException">There is no page, a page has no size, or a view is a mirror image.</exception>
    public static byte[] Write(Document document)
    {
        if (document.Pages.IsEmpty) throw new ArgumentException("A document has at least one page.", nameof(document));
        foreach (var page in document.Pages)
        {
            if (!(page.Width > 0 && page.Height > 0 && double.IsFinite(page.Width + page.Height)))
                throw new ArgumentException($"A page of {page.Width} × {page.Height} mm has no size.", nameof(document));
        }

        // No date: neither a clock nor a machine stands in the file.
        var about = new SKDocumentPdfMetadata(DotsPerInch)
        {
            Title = document.Title,
            Subject = document.Subject,
            Creator = "TemplateForge",
            Producer = "TemplateForge",
        };
        using var stream = new MemoryStream();
        using (var pdf = SKDocument.CreatePdf(stream, about))
        {
            foreach (var page in document.Pages) Write(page, pdf);
            pdf.Close();
        }
        return stream.ToArray();
    }

    private static void Write(Page page, SKDocument pdf)
    {
        using var canvas = pdf.BeginPage((float)(page.Width * PointsPerMm), (float)(page.Height * PointsPerMm));
        canvas.Scale((float)PointsPerMm);
        if (page.Correction != PageCorrection.None) canvas.Concat(Matrix(page));
        var painter = new Painter(canvas, page.Height, leastWidth: 0);
        foreach (var view in page.Views) painter.Draw(view.Drawing, view.Placement, view.Window);
        pdf.EndPage();
    }

    // About the middle of the page, whose y runs downwards here.
    private static SKMatrix Matrix(Page page)
    {
        var (by, x, y) = (page.Correction, page.Width / 2, page.Height / 2);
        return new(
            (float)by.X, (float)-by.Skew, (float)(x - by.X * x + by.Skew * y),
            (float)-by.Skew, (float)by.Y, (float)(y - by.Y * y + by.Skew * x),
            0, 0, 1);
    }
}
