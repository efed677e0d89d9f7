using System.Globalization;

namespace TemplateForge.Drawing;

/// <summary>Writes a document as a PDF at true scale, the same bytes every time.</summary>
/// <remarks>Pages and points are true to 0.0001 mm, arcs to another 0.0001 mm, on paper of any size.</remarks>
public static class PdfWriter
{
    private const double PointsPerMm = 72 / 25.4;

    /// <exception cref="ArgumentException">There is no page, a page has no size, or a view is a mirror image.</exception>
    public static byte[] Write(Document document)
    {
        if (document.Pages.IsEmpty) throw new ArgumentException("A document has at least one page.", nameof(document));
        foreach (var page in document.Pages)
        {
            if (!(page.Width > 0 && page.Height > 0 && double.IsFinite(page.Width + page.Height)))
                throw new ArgumentException($"A page of {page.Width} × {page.Height} mm has no size.", nameof(document));
        }

        // Object 1 is the catalogue, 2 the tree of pages, 3 what it is about; then two for each page.
        const int first = 4;
        var file = new PdfFile();
        file.Add("<</Type /Catalog /Pages 2 0 R>>");
        var kids = string.Join(' ', document.Pages.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"{first + 2 * i} 0 R")));
        file.Add(string.Create(CultureInfo.InvariantCulture, $"<</Type /Pages /Count {document.Pages.Length} /Kids [{kids}]>>"));
        var program = PdfFile.Words("TemplateForge");
        file.Add($"<</Title {PdfFile.Words(document.Title)}\n/Subject {PdfFile.Words(document.Subject)}\n/Creator {program}\n/Producer {program}>>");
        foreach (var (page, i) in document.Pages.Select((page, i) => (page, i)))
        {
            file.Add(string.Create(CultureInfo.InvariantCulture,
                $"<</Type /Page /Parent 2 0 R /Resources <<>> /MediaBox [0 0 {page.Width * PointsPerMm:F8} {page.Height * PointsPerMm:F8}] /Contents {first + 2 * i + 1} 0 R>>"));
            file.AddStream(Content(page).Content);
        }
        return file.Ended(root: 1, about: 3);
    }

    private static PdfCanvas Content(Page page)
    {
        var canvas = new PdfCanvas();
        if (page.Correction != PageCorrection.None) canvas.Correct(page.Correction, new(page.Width / 2, page.Height / 2));
        var painter = new Painter(canvas, leastWidth: 0);
        foreach (var view in page.Views) painter.Draw(view.Drawing, view.Placement, view.Window);
        return canvas;
    }
}
