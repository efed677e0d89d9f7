using System.Collections.Immutable;
using System.Runtime.InteropServices;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Profiles;
using TemplateForge.Sheets;
using TemplateForge.Shop;

namespace TemplateForge.Jobs;

/// <summary>A modification for one hand, and every file that a person or a machine needs for it.</summary>
public sealed class Job
{
    /// <summary>Width of the preview picture in pixels.</summary>
    public const int PreviewWidth = 1600;

    /// <summary>Blank strip round a preview, in mm of the drawing.</summary>
    private const double PreviewMargin = 10;

    internal Job(
        JobRequest request,
        Profile profile,
        Modification modification,
        Hand measuredOn,
        ShopTables shop,
        PrintSetup printing,
        string cutter,
        DxfFormat dxf,
        bool onAllCores,
        CancellationToken cancellation)
    {
        (Request, Profile, Modification, MeasuredOn, Printing, Cutter, Dxf) = (request, profile, modification, measuredOn, printing, cutter, dxf);
        // Sheet by sheet; the files come in their order, whichever is done first.
        var others = OtherSheets(shop).Select(sheet => onAllCores ? Task.Run(() => Drawn(sheet), cancellation) : Task.FromResult(Drawn(sheet))).ToList();
        Template = TemplateSheet.Of(modification, printing);
        var template = Drawn(() => [TemplateFile()]);
        ImmutableArray<NamedBytes> files = [.. template, .. others.SelectMany(sheet => sheet.GetAwaiter().GetResult())];
        Files = [.. files, new(JobRecord.FileName, "all that it was made from, to make it again", JobRecord.Written(this, files))];

        ImmutableArray<NamedBytes> Drawn(Func<ImmutableArray<NamedBytes>> sheet)
        {
            cancellation.ThrowIfCancellationRequested();
            return sheet();
        }
    }

    public JobRequest Request { get; }
    public Profile Profile { get; }
    public Modification Modification { get; }
    public Hand MeasuredOn { get; }

    /// <summary>How it is printed.</summary>
    public PrintSetup Printing { get; }

    public Paper Paper => Printing.Paper;

    /// <summary>The paper template, and how each piece lies on its pages.</summary>
    public TemplateSheet Template { get; }

    /// <summary>Name of what cuts the pieces, or <c>none</c>; empty where nobody has said.</summary>
    public string Cutter { get; }

    /// <summary>Release and unit of the cut files.</summary>
    public DxfFormat Dxf { get; }

    public ImmutableArray<NamedBytes> Files { get; }

    /// <summary>Name of the folder for this hand where a set has both.</summary>
    public string Folder => Modification.Hand.Word();

    /// <summary>Name of the file from which a table cuts a piece.</summary>
    public static string CutFileOf(Piece piece) => $"{piece.Name}-cut.dxf";

    /// <summary>The same as a drawing, where a plan says what the machine does.</summary>
    public static string CutPictureOf(Piece piece) => $"{piece.Name}-cut.svg";

    /// <summary>Whether a table can cut the piece; paper is only held against the work.</summary>
    public static bool IsCut(Piece piece) => piece.Kind != PieceKind.Paper;

    private ImmutableArray<Func<ImmutableArray<NamedBytes>>> OtherSheets(ShopTables shop) =>
        [.. Modification.Pieces.Where(IsCut).Select(p => (Func<ImmutableArray<NamedBytes>>)(() => Cut(p))), Pictures, () => [Work(shop)]];

    private NamedBytes TemplateFile() =>
        new("template.pdf", $"paper template, full size, {Pages(Template.Document)} of {Paper.Name}{Printed}", Bytes(PdfWriter.Write(Template.Document)));

    private ImmutableArray<NamedBytes> Cut(Piece piece)
    {
        var what = $"cut for a table, {Size(piece)}{KerfOf(piece.Planned)}{OtherThanUsual}";
        var file = new NamedBytes(CutFileOf(piece), what, Bytes(DxfWriter.Write(CutSheet.Of(Modification, piece, Dxf.Unit.Name), Dxf)));
        return piece.Planned.IsNone
            ? [file]
            : [file, new(CutPictureOf(piece), "the same as SVG, full size", Bytes(SvgWriter.Write(CutSheet.Of(Modification, piece), piece.Title, PreviewMargin)))];
    }

    private ImmutableArray<NamedBytes> Pictures()
    {
        var preview = Preview.Of(Modification);
        return
        [
            new("preview.svg", "picture, any size", Bytes(SvgWriter.Write(preview, Modification.Title, PreviewMargin))),
            new("preview.png", $"picture, {PreviewWidth} pixels wide", Bytes(PngWriter.Write(preview, PreviewWidth, PreviewMargin))),
        ];
    }

    private NamedBytes Work(ShopTables shop)
    {
        var bench = BenchPaper.For(Paper, shop);
        // The same printer prints it, and where that cannot print is its own.
        if (shop.Printers.TryGetValue(Printing.Printer.Name, out var printer)) bench = printer.On(bench);
        var sheet = JobSheet.Of(Modification, bench, withInches: Dxf.Unit == DxfUnit.Inch);
        return new(
            "job-sheet.pdf",
            $"the sheet for the bench: the work in order, distances to check, mark-out tables, {Pages(sheet)} of {bench.Name}",
            Bytes(PdfWriter.Write(sheet)));
    }

    private string OtherThanUsual => Dxf == DxfFormat.Usual ? "" : $", {Dxf.Release} in {(Dxf.Unit == DxfUnit.Inch ? "inches" : "mm")}";

    private string Printed => string.Concat(
        Template.Layings.Where(l => l.InWords.Length > 0).Select(l => Modification.Pieces.Length == 1 ? $", {l.InWords}" : $", {l.Title} {l.InWords}"))
        + (Printing.Printer.IsCorrected ? $", corrected for {Printing.Printer.Name}" : "");

    private static string KerfOf(CutPlan plan) => plan.IsNone ? ""
        : plan.Cutter.Compensates ? $", for the {plan.Cutter.Title}, which allows for its kerf"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $", for the {plan.Cutter.Title}, kerf {plan.Kerf:0.###} mm allowed for");

    private static ImmutableArray<byte> Bytes(byte[] written) => ImmutableCollectionsMarshal.AsImmutableArray(written);

    private static string Pages(Document document) => document.Pages.Length == 1 ? "1 page" : $"{document.Pages.Length} pages";

    private static string Size(Piece piece)
    {
        var cuts = Geometry.Box.Around(CutSheet.Cuts(piece).Select(cut => cut.Bounds));
        return $"{cuts.Width:0.0} × {cuts.Height:0.0} mm";
    }
}
