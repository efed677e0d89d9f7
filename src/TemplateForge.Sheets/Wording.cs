using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What the outputs say in words, in one place.</summary>
internal static partial class Wording
{
    public const string Demonstration = Modification.DemonstrationWarning;

    /// <summary>Where nothing was given of more values than this they are counted and not named one by one.</summary>
    private const int MostNamed = 6;

    public const string NotToScale = "do not measure on the picture";

    public static string DemonstrationBecause(Modification modification) => modification.Values.Where(v => v.Source == ValueSource.Measured).ToList() is { Count: > MostNamed } all && all.TrueForAll(IsMissing)
        ? string.Create(CultureInfo.InvariantCulture, $"{Demonstration}: none of the {all.Count} measured values was given, each stands at its default.")
        : $"{Demonstration}: not every measured value was given. Those still at their default: "
        + string.Join("; ", modification.Values.Where(IsMissing).Select(v => v.Label)) + ".";

    /// <summary>Which hand it is, and whether anybody has measured it there.</summary>
    public static string HandOf(Modification modification) => modification.Hand switch
    {
        Hand.Either => "EITHER HAND",
        Hand.Left => modification.HandWasMeasured ? "LEFT HAND" : NotMeasured("LEFT HAND", "right"),
        _ => modification.HandWasMeasured ? "RIGHT HAND" : NotMeasured("RIGHT HAND", "left"),
    };

    /// <summary>The hand of one piece, which may be the other's: a plate's other face.</summary>
    public static string HandOf(Modification modification, Piece piece) => piece.ForHand.Length > 0 ? piece.ForHand : HandOf(modification);

    /// <summary>The same for a title line, where room is short.</summary>
    public static string ShortHandOf(Modification modification) => SaysNotMeasured(modification)
        ? BareHandOf(modification) + ", NOT MEASURED on this side"
        : HandOf(modification);

    /// <summary>Which hand it is, without a word of whether anybody measured it.</summary>
    public static string BareHandOf(Modification modification) => HandOf(modification).Split(':')[0];

    /// <summary>What stands below that in small letters where nobody measured it.</summary>
    public static string SmallHandOf(Modification modification) => SaysNotMeasured(modification) ? "mirrored, not measured" : "";

    public static bool SaysNotMeasured(Modification modification) => modification.Hand != Hand.Either && !modification.HandWasMeasured;

    public static string ProfileOf(Modification modification) =>
        string.Create(CultureInfo.InvariantCulture, $"{modification.Profile}, version {modification.Version}");

    public static string FaceUpOf(Piece piece) => $"This face up: {piece.FaceUp}";

    public static string MakingOf(Piece piece) => piece.Kind switch
    {
        PieceKind.CutAway => $"Cut away from the panel, sheet {Thickness(piece)} mm",
        PieceKind.Blank => $"Cut from {SheetOf(piece)} {Thickness(piece)} mm, {Quantity(piece)} off{WeightOf(piece)}",
        _ => "Paper to hold against the work",
    };

    /// <summary>What the sheet that a table cuts is told apart by.</summary>
    public const string NotOnATable =
        "A formed panel does not lie on a table: transfer with the paper template, or cut this only in flat stock.";

    public const string NoKerf = "Finished line: kerf is not allowed for.";

    public const string PencilOnly =
        "Bend, tangent and sight lines are pencilled and never scribed: a scratch is where a bend cracks. "
        + "Where a brake bend has no sight line of its own, the nose bar's edge stands over the bend line, within 0.2 mm.";

    /// <summary>A bend in a few words, as it stands beside its line: which, how far, which way, how round.</summary>
    public static string BendOf(IBendOnBlank bend) => bend is BendLine { IsPressLine: true } ? ShortBendOf(bend) : string.Create(
        CultureInfo.InvariantCulture, $"bend {bend.Number}: {Degrees(bend.Bend)} {WayOf(bend)}, inside radius {Short(bend.InsideRadius)}");

    /// <summary>The same on a small picture, where the table beside it says the rest.</summary>
    public static string ShortBendOf(IBendOnBlank bend)
    {
        // What is pressed so far along one line is a bend to whoever makes it.
        const double mostPressed = 30;
        var word = bend is BendLine { IsPressLine: true } && bend.Bend.Degrees < mostPressed ? "press" : "bend";
        var several = bend is BendLine { Alike: > 1 } one ? string.Create(CultureInfo.InvariantCulture, $"{one.Alike} lines, each ") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{word} {bend.Number}: {several}{Degrees(bend.Bend)} {WayOf(bend)}");
    }

    public static string WayOf(IBendOnBlank bend) => bend.Way == BendWay.Up ? "UP" : "DOWN";

    public static string Degrees(Angle angle) => string.Create(CultureInfo.InvariantCulture, $"{angle.Degrees:0.#}°");

    /// <summary>A weight in kg, to three figures.</summary>
    public static string Weight(double kilograms) => kilograms switch
    {
        >= 100 => kilograms.ToString("0", CultureInfo.InvariantCulture),
        >= 10 => kilograms.ToString("0.0", CultureInfo.InvariantCulture),
        >= 1 => kilograms.ToString("0.00", CultureInfo.InvariantCulture),
        _ => kilograms.ToString("0.000", CultureInfo.InvariantCulture),
    };

    public static string RoughCutOf(Piece piece) => $"rough cut, {Short(piece.RoughAllowance)} mm into the waste";

    /// <summary>A distance to be checked by rule: a tenth of a millimetre is the most that a rule shows.</summary>
    public static string Distance(DistanceCheck check) => check.Distance.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The same on a drawing, with the number that the check has in the lists.</summary>
    public static string NumberedDistance(int number, DistanceCheck check) =>
        string.Create(CultureInfo.InvariantCulture, $"({number}) {check.Distance:0.0}");

    /// <summary>A distance that is only shown.</summary>
    public static string Distance(ShownDistance shown) => shown.Distance.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Numbers in growing order, those that follow each other in a run as one: 1, 3 to 7.</summary>
    public static string Ranges(ImmutableArray<int> numbers)
    {
        var runs = new List<(int First, int Last)>();
        foreach (var number in numbers)
        {
            if (runs.Count > 0 && runs[^1].Last == number - 1) runs[^1] = (runs[^1].First, number);
            else runs.Add((number, number));
        }
        return string.Join(", ", runs.Select(r => r.First == r.Last
            ? r.First.ToString(CultureInfo.InvariantCulture)
            : FormattableString.Invariant($"{r.First} to {r.Last}")));
    }

    public static string ScaleOf(double reduction) => string.Create(CultureInfo.InvariantCulture, $"Scale 1:{reduction:0.##}, {NotToScale}");

    /// <summary>Where a value came from: the fabricator's words, or the default.</summary>
    public static string SourceOf(UsedValue value) => value.GivenAs.Length > 0 ? $"given: {value.GivenAs}" : "DEFAULT";

    public static bool IsMissing(UsedValue value) => value.Source == ValueSource.Measured && value.GivenAs.Length == 0;

    /// <summary>The text with every figure tied to what it belongs to, so that no line breaks between them.</summary>
    public static string WithUnitsKept(string text) => FigureAndUnit().Replace(text, "\u00A0");

    public static string Short(double length) => length.ToString("0.##", CultureInfo.InvariantCulture);

    public static string SheetOf(Piece piece) => piece.Material == Material.Unstated ? "new sheet" : piece.Material.Title;

    private static string WeightOf(Piece piece) => piece.Weight > 0 ? $", {Weight(piece.Weight)} kg each" : "";

    private static string Thickness(Piece piece) => Short(piece.Thickness);

    private static string Quantity(Piece piece) => piece.Quantity.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<=\d) (?=(mm|in|deg|off|page|pages)\b)|(?<=version) (?=\d)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FigureAndUnit();

    private static string NotMeasured(string hand, string other) => $"{hand}: mirror image of the {other}, NOT MEASURED on this side";
}
