using System.Collections.Immutable;
using CsCheck;
using TemplateForge.Drawing.Tests.Pdf;
using TemplateForge.Geometry;
using Path = TemplateForge.Geometry.Path;

namespace TemplateForge.Drawing.Tests.Printers;

/// <summary>A printer that lies, written down as a plain matrix: nothing of it is taken from the code that corrects it.</summary>
public class PrinterErrorTests
{
    /// <summary>Any way in which a sheet may come out: two scales, a shear, askew by a turn, and moved.</summary>
    private sealed record Liar(double Across, double Along, double Shear, double Turn, Vector Moved)
    {
        public Point Prints(Point p)
        {
            var (x, y) = (Across * p.X + Shear * p.Y, Along * p.Y);
            return new Point(x * Math.Cos(Turn) - y * Math.Sin(Turn), x * Math.Sin(Turn) + y * Math.Cos(Turn)) + Moved;
        }

        public CouponLengths Measured(double level, double upright)
        {
            Point a = new(20, 30), b = a + new Vector(level, 0), c = b + new Vector(0, upright), d = a + new Vector(0, upright);
            double Apart(Point p, Point q) => Prints(p).DistanceTo(Prints(q));
            return new(level, upright, Apart(a, b), Apart(a, d), Apart(a, c), Apart(d, b));
        }
    }

    private static readonly Gen<Liar> Liars =
        from across in Gen.Double[0.985, 1.015]
        from along in Gen.Double[0.985, 1.015]
        from shear in Gen.Double[-0.008, 0.008]
        from turn in Gen.Double[-0.02, 0.02]
        select new Liar(across, along, shear, turn, new(3, -2));

    private static LineDrawing Grid(double width, double height) => Sketch.Of(
        [.. Enumerable.Range(0, 9).SelectMany(i => Enumerable.Range(0, 9).Select(j => new Point(width * (0.1 + 0.1 * i), height * (0.1 + 0.1 * j))))
            .Select(p => (Mark)new OpenStroke(Path.Line(p, p + new Vector(1, 0))))]);

    [Theory]
    [InlineData(297, 420, 0)]
    [InlineData(420, 297, 1)] // read across, and turned to the left to be printed
    [InlineData(420, 297, -1)] // or to the right
    public void Distances_all_over_an_A3_come_back_within_0_05_mm_whatever_the_printer_does(double width, double height, int quarters) => Liars.Sample(liar =>
    {
        var error = PrinterError.Of(liar.Measured(250, 380));
        var page = new Page(width, height, [new(Grid(width, height), Placement.Unmoved, new(Point.Origin, new(width, height)))])
        {
            Correction = error.Correction(across: width > height),
        };
        var sent = PrintedPage.Read(PdfWriter.Write(new Document("Grid", "", [page])))[0].Strokes.Select(s => s.Vertices[0]).ToList();
        Assert.Equal(81, sent.Count);
        var printed = sent.Select(p => liar.Prints(quarters switch { 1 => new(-p.Y, p.X), -1 => new(p.Y, -p.X), _ => p })).ToList();
        var drawn = Grid(width, height).Layers[0].Marks.Select(m => ((OpenStroke)m).Path.Start).ToList();
        for (var i = 0; i < drawn.Count; i++)
            foreach (var j in (int[])[0, 8, 40, 72, 80])
                Assert.Equal(drawn[i].DistanceTo(drawn[j]), printed[i].DistanceTo(printed[j]), 0.05);
    }, iter: 20, seed: "0000KOIKe1r0");

    [Fact]
    public void Without_a_correction_the_same_printer_is_off_by_millimetres()
    {
        var liar = new Liar(0.995, 1.004, 0.003, 0, Vector.Zero);
        Assert.True(Math.Abs(liar.Prints(Point.Origin).DistanceTo(liar.Prints(new(250, 380))) - Math.Sqrt(250 * 250 + 380 * 380)) > 1);
    }

    // 0.1 mm in 250 and half a millimetre between the diagonals: (R² − F²) / 4 = 454.6 · 0.5 / 2 over 250 · 380, [calc].
    [Fact]
    public void Scales_and_squareness_are_those_that_the_rule_shows()
    {
        var error = PrinterError.Of(new(250, 380, 249.9, 380.38, 455.43, 454.93));
        Assert.Equal(249.9 / 250, error.Across, 2e-6);
        Assert.Equal(380.38 / 380, error.Along, 2e-6);
        Assert.Equal(455.18 * 0.5 / 2 / (250 * 380) * 300, error.OutOfSquare(300), 1e-3);
    }

    [Theory]
    [InlineData(240, 380, 454.9, 454.9, CouponFault.Level)] // fit to page
    [InlineData(250, 390, 454.9, 454.9, CouponFault.Upright)]
    [InlineData(250, 380, 452, 454.9, CouponFault.Diagonals)] // one misread by 3 mm
    [InlineData(250, 380, 460, 449.7, CouponFault.Square)]
    [InlineData(250, 380, double.NaN, 454.9, CouponFault.Diagonals)]
    [InlineData(0, 380, 454.9, 454.9, CouponFault.Level)]
    [InlineData(249.5, 380.5, 454.7, 455.3, CouponFault.None)]
    public void Lengths_that_no_printer_makes_are_told_apart_from_those_that_one_does(double level, double upright, double rising, double falling, CouponFault fault)
    {
        var lengths = new CouponLengths(250, 380, level, upright, rising, falling);
        Assert.Equal(fault, lengths.Fault);
        if (fault != CouponFault.None) Assert.Throws<ArgumentException>(() => PrinterError.Of(lengths));
    }

    [Fact]
    public void A_corrected_page_stays_on_what_the_printer_reaches() => Liars.Sample(liar =>
    {
        var (paper, error) = (new Paper("a3", 297, 420, new Margins(4, 6, 5, 12)), PrinterError.Of(liar.Measured(250, 380)));
        foreach (var across in (bool[])[false, true])
        {
            var margins = across ? error.Fitted(paper).Margins.Across : error.Fitted(paper).Margins;
            var own = across ? paper.Margins.Across : paper.Margins;
            var (width, height) = across ? (420.0, 297.0) : (297.0, 420.0);
            var by = error.Correction(across);
            foreach (var corner in (ImmutableArray<Point>)
                [new(margins.Left, margins.Bottom), new(width - margins.Right, margins.Bottom), new(margins.Left, height - margins.Top), new(width - margins.Right, height - margins.Top)])
            {
                var (x, y) = (corner.X - width / 2, corner.Y - height / 2);
                var sent = new Point(width / 2 + by.X * x + by.Skew * y, height / 2 + by.Skew * x + by.Y * y);
                Assert.True(sent.X > own.Left - 1e-9 && sent.X < width - own.Right + 1e-9 && sent.Y > own.Bottom - 1e-9 && sent.Y < height - own.Top + 1e-9);
            }
        }
    }, iter: 200, seed: "0000KOIKe1r0");
}
