using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>What the job sheet says of marking out.</summary>
internal static partial class Wording
{
    private const double Inch = 25.4;

    /// <summary>Over the values of a job that is mirrored; nothing where it is not.</summary>
    public static string WhoseWords(Modification modification)
    {
        if (!modification.IsMirrored || modification.Hand == Hand.Either) return "";
        var (shown, words) = modification.Hand == Hand.Right ? ("RIGHT", "LEFT") : ("LEFT", "RIGHT");
        return SaysNotMeasured(modification)
            ? $"Values as measured on the {words} hand; left and right in their words are that hand's. The pictures show the {shown} hand."
            : $"Left and right in the words of these values are the {words} hand's, for which the profile is drawn. The pictures show the {shown} hand.";
    }

    /// <summary>Whether somebody gave a length in inches: then the figures to measure stand in inches as well.</summary>
    public static bool IsInInches(Modification modification) => modification.Values.Any(v => InchWords().IsMatch(v.GivenAs));

    /// <summary>A length to a tenth of a millimetre, halves away from zero; never a negative zero.</summary>
    public static string Tenth(double length) =>
        (Math.Round(length, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The same in inches beside it, in brackets as ISO 129 and its like put a second unit (from memory).</summary>
    public static string Inches(double length) =>
        $"[{(Math.Round(length / Inch, 3, MidpointRounding.AwayFromZero) + 0.0).ToString("0.000", CultureInfo.InvariantCulture)}]";

    public const string ScalesDiffer = "see pictures";

    public static string PictureScaleOf(double reduction) => $"{ScaleOf(reduction)}. Dimensions in mm.";

    /// <summary>The scale alone, for a title block.</summary>
    public static string ShortScaleOf(double reduction) => string.Create(CultureInfo.InvariantCulture, $"1:{reduction:0.##}");

    /// <summary>How a piece is marked out without a printer, once for all pieces.</summary>
    public static ImmutableArray<string> MarkingOut(bool inInches) =>
    [
        "Mark the base line and its two ends. Along runs from the first end to the second; an offset is square to the line, plus on the side of the + on the picture.",
        "Mark each numbered place by along and offset, or by two trammel arcs from the ends of the base line: they cross there, on the side that the offset says. "
        + "In brackets where the arcs cross flatter than 30°: a check, and no way to find the place.",
        string.Create(CultureInfo.InvariantCulture, $"Strike the arcs from their centres; one longer than {MarkOut.LongestTrammel:0} mm in radius is laid by its chord and its rise in the middle. ")
        + string.Create(CultureInfo.InvariantCulture, $"An arc that rises less than {MarkOut.LeastRise:0.##} mm is marked as a line."),
        "Every figure is rounded by itself to the nearest 0.1 mm: along and offset put a place within 0.1 mm, two arcs within 0.1 mm where they cross at 60° or more, within 0.2 mm at 30°."
        + (inInches ? " In square brackets the same in inches, to 0.001 in." : ""),
        "Bend lines and generators are pencilled, never scribed. Measure the distances of the first sheet on the work before it is cut.",
    ];

    /// <summary>What the base line of a piece is on the metal.</summary>
    public static string BaseLineOf(BaseLine line)
    {
        var ends = $"{line.FirstName} to {line.SecondName}, {Tenth(line.Length)} mm";
        return line.Kind switch
        {
            BaseLineKind.Datums => $"Base line: datum {line.FirstName} to datum {line.SecondName}, {Tenth(line.Length)} mm.",
            BaseLineKind.PanelEdge => $"No two datums: the base line is the panel edge, {ends}.",
            BaseLineKind.LongestEdge => $"No two datums: the base line is the longest straight edge, {ends}. Lay it out first.",
            _ => $"No two datums, and no straight edge that is long enough: the base line is the lower side of the rectangle round the piece, {ends}.",
        };
    }

    /// <summary>From where the bend lines of a piece are measured, in the words of its base line.</summary>
    public static string BendsFrom(BaseLine line)
    {
        var what = line.Kind switch
        {
            BaseLineKind.Datums => "",
            BaseLineKind.PanelEdge => " on the panel edge, small crosses on the picture",
            BaseLineKind.LongestEdge => " on the longest straight edge, small crosses on the picture",
            _ => " on the lower side of the rectangle round it, small crosses on the picture",
        };
        return $"Along from {line.FirstName} to {line.SecondName}{what}; offset square to that.";
    }

    /// <summary>How far off its bend lines the tangent lines of a piece lie; nothing where none is to be pencilled.</summary>
    public static string TangentsOf(Piece piece)
    {
        var apart = piece.Bends.Select(b => b[0]).Where(b => b is not BendLine { IsPressLine: true })
            .GroupBy(b => Tenth(b.Allowance / 2), StringComparer.Ordinal)
            .Select(g => $"{g.Key} mm at bend {Ranges([.. g.Select(b => b.Number)])}").ToList();
        return apart.Count == 0 ? "" : $"Tangent lines lie on either side of the bend line: {string.Join("; ", apart)}.";
    }

    /// <summary>What a line is, above its rows.</summary>
    public static string NameOf(MarkedLine line) => line.Kind switch
    {
        MarkedLineKind.Outline => "Outline",
        MarkedLineKind.Opening => "Opening",
        MarkedLineKind.OpenCut => "Cut from end to end",
        MarkedLineKind.Bend => $"bend {line.Name}",
        MarkedLineKind.Scribed => $"scribe {line.Name}",
        _ => line.Name.Length > 0 ? line.Name : "generator",
    };

    public const string NumbersLeftOut = "Numbers run on round each line in their order; those that found no room on the picture lie between their neighbours.";

    [GeneratedRegex("""\d\s*(in|inch|inches|ft|foot|feet|["″”'′])(\W|$)""", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex InchWords();
}
