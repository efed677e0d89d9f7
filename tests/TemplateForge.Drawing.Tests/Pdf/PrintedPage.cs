using TemplateForge.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace TemplateForge.Drawing.Tests.Pdf;

/// <summary>A page as PdfPig reads it: strokes in mm, y upwards.</summary>
internal sealed record PrintedPage(double Width, double Height, IReadOnlyList<PrintedStroke> Strokes)
{
    private const double MmPerPoint = 25.4 / 72;
    private const int SamplesPerCurve = 40;

    public static IReadOnlyList<PrintedPage> Read(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(p => new PrintedPage(
            p.Width * MmPerPoint,
            p.Height * MmPerPoint,
            [.. p.Paths.Where(path => path.IsStroked || path.IsFilled).SelectMany(path => path.Select(s => Stroke(s, path.LineWidth, path.IsFilled)))]))];
    }

    private static PrintedStroke Stroke(PdfSubpath subpath, double width, bool isFilled)
    {
        var (vertices, samples) = (new List<Point>(), new List<Point>());
        foreach (var command in subpath.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    vertices.Add(Mm(move.Location));
                    break;
                case PdfSubpath.Line line:
                    vertices.Add(Mm(line.To));
                    break;
                case PdfSubpath.CubicBezierCurve curve:
                    samples.AddRange(Enumerable.Range(0, SamplesPerCurve + 1).Select(i => On(curve, (double)i / SamplesPerCurve)));
                    vertices.Add(Mm(curve.EndPoint));
                    break;
            }
        }
        return new(vertices, samples, subpath.Commands.Any(c => c is PdfSubpath.Close), width, isFilled);
    }

    private static Point On(PdfSubpath.CubicBezierCurve c, double t)
    {
        var u = 1 - t;
        var (a, b, d, e) = (u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t);
        return Mm(new(
            a * c.StartPoint.X + b * c.FirstControlPoint.X + d * c.SecondControlPoint.X + e * c.EndPoint.X,
            a * c.StartPoint.Y + b * c.FirstControlPoint.Y + d * c.SecondControlPoint.Y + e * c.EndPoint.Y));
    }

    private static Point Mm(PdfPoint p) => new(p.X * MmPerPoint, p.Y * MmPerPoint);
}

/// <summary>One stroke: its corners and the ends of its curves, and points all along its curves.</summary>
internal sealed record PrintedStroke(IReadOnlyList<Point> Vertices, IReadOnlyList<Point> Samples, bool IsClosed, double Width, bool IsFilled);
