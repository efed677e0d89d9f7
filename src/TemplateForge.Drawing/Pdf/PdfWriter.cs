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

        var letters = new PdfLetters();
        var contents = document.Pages.Select(page => Content(page, letters)).ToList();
        var file = new PdfFile();
        var resources = file.Add($"<</Font <<{letters.AddTo(file)}>>>>");
        // A page and what stands on it, one after the other, and then the tree of pages, which each of them names.
        var (first, tree) = (file.Next, file.Next + 2 * contents.Count);
        foreach (var (page, content) in document.Pages.Zip(contents))
        {
            file.Add(string.Create(CultureInfo.InvariantCulture,
                $"<</Type /Page /Parent {tree} 0 R /Resources {resources} 0 R /MediaBox [0 0 {page.Width * PointsPerMm:F8} {page.Height * PointsPerMm:F8}] /Contents {file.Next + 1} 0 R>>"));
            file.AddPackedStream(content);
        }
        var kids = string.Join(' ', contents.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"{first + 2 * i} 0 R")));
        file.Add(string.Create(CultureInfo.InvariantCulture, $"<</Type /Pages /Count {contents.Count} /Kids [{kids}]>>"));
        var root = file.Add(string.Create(CultureInfo.InvariantCulture, $"<</Type /Catalog /Pages {tree} 0 R>>"));
        var program = PdfFile.Words("TemplateForge");
        var about = file.Add($"<</Title {PdfFile.Words(document.Title)}\n/Subject {PdfFile.Words(document.Subject)}\n/Creator {program}\n/Producer {program}>>");
        return file.Ended(root, about);
    }

    private static PdfText Content(Page page, PdfLetters letters)
    {
        var canvas = new PdfCanvas(letters);
        if (page.Correction != PageCorrection.None) canvas.Correct(page.Correction, new(page.Width / 2, page.Height / 2));
        var painter = new Painter(canvas, leastWidth: 0);
        foreach (var view in page.Views) painter.Draw(view.Drawing, view.Placement, view.Window);
        return canvas.Content;
    }
}
