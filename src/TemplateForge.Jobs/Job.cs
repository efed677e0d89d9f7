using System.Collections.Immutable;
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
    public const int PreviewWidth = 1800;

    /// <summary>Blank strip round a preview, in mm of the drawing.</summary>
    private const double PreviewMargin = 10;

    internal Job(
        JobRequest request,
        Profile profile,
        Modification modification,
        Hand measuredOn,
        ShopTables shop,
        Paper paper,
        string cutter,
        DxfFormat dxf,
        CancellationToken cancellation)
    {
        (Request, Profile, Modification, MeasuredOn, Paper, Cutter, Dxf) = (request, profile, modification, measuredOn, paper, cutter, dxf);
        var files = ImmutableArray.CreateBuilder<NamedBytes>();
        foreach (var file in Drawn(shop))
        {
            cancellation.ThrowIfCancellationRequested();
            files.Add(file);
        }
        files.Add(new(JobRecord.FileName, "all that it was made from, to make it again", JobRecord.Written(this, files)));
        Files = files.ToImmutable();
    }

    public JobRequest Request { get; }
    public Profile Profile { get; }
    public Modification Modification { get; }
    public Hand MeasuredOn { get; }
    public Paper Paper { get; }

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

    private IEnumerable<NamedBytes> Drawn(ShopTables shop)
    {
        var template = TemplateSheet.Of(Modification, Paper, shop.Overlap);
        yield return new("template.pdf", $"paper template, full size, {Pages(template)} of {Paper.Name}", Bytes(PdfWriter.Write(template)));
        foreach (var piece in Modification.Pieces.Where(IsCut))
        {
            var cut = CutSheet.Of(Modification, piece, Dxf.Unit.Name);
            yield return new(CutFileOf(piece), $"cut for a table, {Size(piece)}{KerfOf(piece.Planned)}{OtherThanUsual}", Bytes(DxfWriter.Write(cut, Dxf)));
            if (!piece.Planned.IsNone)
                yield return new(CutPictureOf(piece), "the same as SVG, full size", Bytes(SvgWriter.Write(CutSheet.Of(Modification, piece), piece.Title, PreviewMargin)));
        }

        var preview = Preview.Of(Modification);
        yield return new("preview.svg", "picture, any size", Bytes(SvgWriter.Write(preview, Modification.Title, PreviewMargin)));
        yield return new("preview.png", $"picture, {PreviewWidth} pixels wide", Bytes(PngWriter.Write(preview, PreviewWidth, PreviewMargin)));
        var bench = BenchPaper.For(Paper, shop);
        var sheet = JobSheet.Of(Modification, bench, withInches: Dxf.Unit == DxfUnit.Inch);
        var work = $"the sheet for the bench: the work in order, distances to check, mark-out tables, {Pages(sheet)} of {bench.Name}";
        yield return new("job-sheet.pdf", work, Bytes(PdfWriter.Write(sheet)));
    }

    private string OtherThanUsual => Dxf == DxfFormat.Usual ? "" : $", {Dxf.Release} in {(Dxf.Unit == DxfUnit.Inch ? "inches" : "mm")}";

    private static string KerfOf(CutPlan plan) => plan.IsNone ? ""
        : plan.Cutter.Compensates ? $", for the {plan.Cutter.Title}, which allows for its kerf"
        : string.Create(System.Globalization.CultureInfo.InvariantCulture, $", for the {plan.Cutter.Title}, kerf {plan.Kerf:0.###} mm allowed for");

    private static ImmutableArray<byte> Bytes(byte[] written) => [.. written];

    private static string Pages(Document document) => document.Pages.Length == 1 ? "1 page" : $"{document.Pages.Length} pages";

    private static string Size(Piece piece)
    {
        var cuts = Geometry.Box.Around(CutSheet.Cuts(piece).Select(cut => cut.Bounds));
        return $"{cuts.Width:0.0} × {cuts.Height:0.0} mm";
    }
}
