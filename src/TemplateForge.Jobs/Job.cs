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
        var files = Drawn(shop, cancellation);
        Files = [.. files, new(JobRecord.FileName, "all that it was made from, to make it again", JobRecord.Written(this, files))];
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

    // Sheet by sheet on all cores; the files come in their order, whichever is done first.
    private ImmutableArray<NamedBytes> Drawn(ShopTables shop, CancellationToken cancellation)
    {
        ImmutableArray<Func<ImmutableArray<NamedBytes>>> sheets =
            [() => [Template(shop)], .. Modification.Pieces.Where(IsCut).Select(p => (Func<ImmutableArray<NamedBytes>>)(() => Cut(p))), Pictures, () => [Work()]];
        var others = sheets.Skip(1).Select(sheet => Task.Run(() => Drawn(sheet), cancellation)).ToList();
        var first = Drawn(sheets[0]);
        return [.. first, .. others.SelectMany(sheet => sheet.GetAwaiter().GetResult())];

        ImmutableArray<NamedBytes> Drawn(Func<ImmutableArray<NamedBytes>> sheet)
        {
            cancellation.ThrowIfCancellationRequested();
            return sheet();
        }
    }

    private NamedBytes Template(ShopTables shop)
    {
        var template = TemplateSheet.Of(Modification, Paper, shop.Overlap);
        return new("template.pdf", $"paper template, full size, {Pages(template)} of {Paper.Name}", Bytes(PdfWriter.Write(template)));
    }

    private ImmutableArray<NamedBytes> Cut(Piece piece)
    {
        var cut = CutSheet.Of(Modification, piece, Dxf.Unit.Name);
        var file = new NamedBytes(CutFileOf(piece), $"cut for a table, {Size(piece)}{KerfOf(piece.Planned)}{OtherThanUsual}", Bytes(DxfWriter.Write(cut, Dxf)));
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

    private NamedBytes Work()
    {
        var sheet = JobSheet.Of(Modification, Paper);
        return new("job-sheet.pdf", $"the work in order and the distances to check, {Pages(sheet)} of {Paper.Name}", Bytes(PdfWriter.Write(sheet)));
    }

    private string OtherThanUsual => Dxf == DxfFormat.Usual ? "" : $", {Dxf.Release} in {(Dxf.Unit == DxfUnit.Inch ? "inches" : "mm")}";

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
