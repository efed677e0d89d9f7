using System.Buffers;
using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Sheets;

namespace TemplateForge.Jobs;

/// <summary>Writes what a job was made from and what came out; lengths rounded to 1e-8 mm, bulges to 1e-12.</summary>
internal static class RecordWriter
{
    private static readonly JsonWriterOptions Layout = new()
    {
        Indented = true,
        NewLine = "\n",
        // The record is a file of its own and never part of a web page, so µ, × and é may stand as they are.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    public static ImmutableArray<byte> Write(Job job, IEnumerable<NamedBytes> files)
    {
        var text = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(text, Layout))
            JsonSerializer.Serialize(writer, Document(job, files), RecordText.Default.RecordDocument);
        text.Write("\n"u8);
        return [.. text.WrittenSpan];
    }

    /// <summary>The last part of a file's name: where the library or a file lies is nobody's business.</summary>
    internal static string PlainName(string name) => name[(name.LastIndexOfAny(['/', '\\']) + 1)..];

    private static RecordDocument Document(Job job, IEnumerable<NamedBytes> files)
    {
        var (request, modification) = (job.Request, job.Modification);
        return new(
            JobRecord.Format,
            JobRecord.Version,
            new(job.Profile.Name, job.Profile.Version, PlainName(request.Profile.Name), request.Profile.Text),
            [.. request.ShopFiles.Select(f => new RecordedFile(PlainName(f.Name), f.Text))],
            modification.Hand.Word(),
            job.MeasuredOn.Word(),
            job.Paper.Name,
            job.Cutter.Length > 0 ? job.Cutter : null,
            request.Kerf.IsMade ? request.Kerf.Word : null,
            job.Dxf == DxfFormat.Usual && !request.Dxf.IsMade ? null : job.Dxf.Name,
            [.. request.Settings.Select(s => new RecordedSetting(s.Name, s.Text))],
            modification.IsDemonstration,
            modification.IsDemonstration ? Modification.DemonstrationWarning : "",
            [.. modification.Values.Select(v => new RecordedValue(v.Name, v.Label, v.Text, Word(v.Source), v.GivenAs))],
            [.. modification.Pieces.Select(Recorded)],
            [.. files.Select(f => f.Name), JobRecord.FileName]);
    }

    private static string Word(ValueSource source) => source == ValueSource.Measured ? "measured" : "shop";

    private static RecordedPiece Recorded(Piece piece)
    {
        var finish = piece.FinishLines();
        return new(
            piece.Name,
            piece.Title,
            piece.Kind switch { PieceKind.CutAway => "cut away", PieceKind.Blank => "blank", _ => "paper" },
            piece.Quantity,
            Rounded(piece.Thickness),
            Rounded(piece.Shape.Area),
            Rounded(piece.Shape.Length),
            Recorded(piece.Shape.Bounds),
            Rounded(finish.Sum(line => line.Length)),
            [.. finish.Select(Recorded)],
            [.. piece.Shape.Contours.Where(c => !c.IsCounterClockwise).Select(Hole)],
            Job.IsCut(piece) ? Cut(piece) : null,
            piece.Planned.IsNone ? null : RecordedPlan.Of(piece.Planned),
            [.. piece.Datums.Select(d => new RecordedDatum(d.Label, Recorded(d.At), Rounded(d.Diameter)))],
            [.. piece.Checks.Select(Recorded)],
            piece.Material == Material.Unstated ? null : new(piece.Material.Name, Rounded(piece.Weight)),
            piece.BendLines.IsEmpty ? null : [.. piece.BendLines.Select(Recorded)],
            piece.CurvedBends.IsEmpty ? null : [.. piece.CurvedBends.Select(Recorded)],
            piece.Warnings.IsEmpty ? null : [.. piece.Warnings.Select(w => new RecordedWarning(w.Rule, w.Text, Recorded(w.At), w.Source))]);
    }

    private static RecordedBend Recorded(BendLine bend) => new(
        Recorded(bend.From),
        Recorded(bend.To),
        Rounded(bend.Bend.Degrees),
        Rounded(bend.Overbend.Degrees),
        bend.Way == BendWay.Up ? "up" : "down",
        Rounded(bend.InsideRadius),
        Rounded(bend.Allowance));

    private static RecordedCurvedBend Recorded(CurvedBend bend) => new(
        Recorded(bend.Middle),
        Rounded(bend.Bend.Degrees),
        Rounded(bend.Overbend.Degrees),
        bend.Way == BendWay.Up ? "up" : "down",
        Rounded(bend.InsideRadius));

    private static RecordedCut Cut(Piece piece)
    {
        var cuts = CutSheet.Cuts(piece);
        return new(
            Job.CutFileOf(piece),
            Rounded(cuts.Sum(cut => cut.Length)),
            Recorded(Box.Around(cuts.Select(cut => cut.Bounds))),
            Open: cuts.Count(cut => !IsClosed(cut)),
            Closed: cuts.Count(IsClosed));

        // The course of a torch has a beginning and an end, wherever they are.
        bool IsClosed(Geometry.Path cut) => piece.Planned.IsNone && cut.IsClosed();
    }

    private static RecordedLine Recorded(Geometry.Path line)
    {
        var starts = line.Segments.Select(s => new Numbers(Rounded(s.Start.X), Rounded(s.Start.Y), Rounded(s.Bulge, digits: 12)));
        var closed = line.IsClosed();
        return new(closed, closed ? [.. starts] : [.. starts, new Numbers(Rounded(line.End.X), Rounded(line.End.Y), 0)]);
    }

    private static RecordedHole Hole(Contour hole) =>
        IsRound(hole)
            ? new(Recorded(hole.Segments[0].Centre), Rounded(2 * hole.Segments[0].Radius), Rounded(hole.Area), Rounded(hole.Length))
            : new(Recorded(hole.Bounds.Centre), null, Rounded(hole.Area), Rounded(hole.Length));

    private static bool IsRound(Contour contour)
    {
        if (contour.Segments.Any(s => s.IsLine)) return false;
        var first = contour.Segments[0];
        return contour.Segments.All(s =>
            s.Centre.DistanceTo(first.Centre) <= Tolerance.Length
            && Math.Abs(s.Radius - first.Radius) <= Tolerance.Length);
    }

    private static RecordedCheck Recorded(DistanceCheck check) => new(
        check.Label,
        Rounded(check.Distance),
        check.Along switch { CheckDirection.Across => "across", CheckDirection.Up => "up", _ => "straight" },
        Recorded(check.From),
        Recorded(check.To));

    private static RecordedBox Recorded(Box box) => new(Recorded(box.Min), Recorded(box.Max));

    private static Numbers Recorded(Point point) => new(Rounded(point.X), Rounded(point.Y));

    // Adding nothing turns a negative zero into zero, so that a mirror image does not write -0.
    private static double Rounded(double number, int digits = 8) => Math.Round(number, digits) + 0.0;
}
