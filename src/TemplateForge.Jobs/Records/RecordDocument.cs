using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace TemplateForge.Jobs;

/// <summary>A job record as it stands in the file, in the order of the file.</summary>
/// <param name="Format">Whose file it is.</param>
/// <param name="Version">Raised when an older reader could not read the record rightly.</param>
/// <param name="Profile">The profile, whole.</param>
/// <param name="Shop">The shop's tables, whole.</param>
/// <param name="Hand">left, right, or either where the pieces are their own mirror image.</param>
/// <param name="MeasuredOn">The hand on which the values were measured.</param>
/// <param name="Paper">The paper's name in the shop's table.</param>
/// <param name="Cutter">What cuts the pieces, by its name in the shop's table, or none; absent where nobody has said.</param>
/// <param name="Kerf">The kerf as it was given for this job; absent where the shop's table has it.</param>
/// <param name="Dxf">Release and unit of the cut files; absent where nobody asked for others than R2000 in mm.</param>
/// <param name="Given">The values that somebody gave, as they wrote them.</param>
/// <param name="Demonstration">Whether some measured value stands at its default.</param>
/// <param name="Warning">What a demonstration says across every sheet; empty for what may be cut.</param>
/// <param name="Values">All values as they were used.</param>
/// <param name="Pieces">What came out.</param>
/// <param name="Files">Names of the files that were made.</param>
internal sealed record RecordDocument(
    string Format,
    int Version,
    RecordedProfile Profile,
    ImmutableArray<RecordedFile> Shop,
    string Hand,
    string MeasuredOn,
    string Paper,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Cutter,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Kerf,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Dxf,
    ImmutableArray<RecordedSetting> Given,
    bool Demonstration,
    string Warning,
    ImmutableArray<RecordedValue> Values,
    ImmutableArray<RecordedPiece> Pieces,
    ImmutableArray<string> Files);

internal sealed record RecordedProfile(string Name, int Version, string File, string Text);

internal sealed record RecordedFile(string File, string Text);

internal sealed record RecordedSetting(string Name, string Text);

internal sealed record RecordedValue(string Name, string Label, string Text, string Kind, string Given);

/// <param name="Name">Its name, part of file names.</param>
/// <param name="Title">What it is.</param>
/// <param name="Kind">cut away, blank or paper.</param>
/// <param name="Quantity">How many are made.</param>
/// <param name="Thickness">In mm.</param>
/// <param name="Area">Of the finished piece, as far as it is shown, in mm².</param>
/// <param name="Boundary">Length of the whole outline of that area, in mm.</param>
/// <param name="Bounds">Of the finished piece.</param>
/// <param name="Length">Length of all finish lines, in mm.</param>
/// <param name="Finish">The finish lines, holes first.</param>
/// <param name="Holes">The holes of the finished piece.</param>
/// <param name="Cut">What the cut file has; absent for paper.</param>
/// <param name="Plan">How a machine cuts it; absent where nobody has said which.</param>
/// <param name="Datums">What everything is measured from.</param>
/// <param name="Checks">The distances to check by rule.</param>
/// <param name="Material">What it is made of; absent where nobody has said.</param>
/// <param name="Bends">In their order; absent on what is not bent.</param>
/// <param name="CurvedBends">Bends along arcs; absent where there are none.</param>
/// <param name="Warnings">What a foreman would say; absent where that is nothing.</param>
internal sealed record RecordedPiece(
    string Name,
    string Title,
    string Kind,
    int Quantity,
    double Thickness,
    double Area,
    double Boundary,
    RecordedBox Bounds,
    double Length,
    ImmutableArray<RecordedLine> Finish,
    ImmutableArray<RecordedHole> Holes,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] RecordedCut? Cut,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] RecordedPlan? Plan,
    ImmutableArray<RecordedDatum> Datums,
    ImmutableArray<RecordedCheck> Checks,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] RecordedMaterial? Material,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<RecordedBend>? Bends,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<RecordedCurvedBend>? CurvedBends,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] ImmutableArray<RecordedWarning>? Warnings);

internal sealed record RecordedBox(Numbers Min, Numbers Max);

/// <param name="Closed">Whether it comes back to where it began.</param>
/// <param name="Vertices">x, y and the bulge of what follows; a polyline's own convention.</param>
internal sealed record RecordedLine(bool Closed, ImmutableArray<Numbers> Vertices);

/// <param name="Centre">Of the circle, or of the bounds of what is not round.</param>
/// <param name="Diameter">Absent where it is not round.</param>
/// <param name="Area">In mm².</param>
/// <param name="Length">Once round it, in mm.</param>
internal sealed record RecordedHole(
    Numbers Centre,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Diameter,
    double Area,
    double Length);

/// <param name="File">Name of the cut file.</param>
/// <param name="Length">Length of all cuts, run-outs included, in mm.</param>
/// <param name="Bounds">Of all cuts.</param>
/// <param name="Open">How many cuts run on and off.</param>
/// <param name="Closed">How many come back to where they began.</param>
internal sealed record RecordedCut(string File, double Length, RecordedBox Bounds, int Open, int Closed);

internal sealed record RecordedDatum(string Label, Numbers At, double Diameter);

internal sealed record RecordedCheck(string Label, double Distance, string Measured, Numbers From, Numbers To);

/// <param name="Name">Its name in the shop's table.</param>
/// <param name="Weight">Of one finished piece, in kg.</param>
internal sealed record RecordedMaterial(string Name, double Weight);

/// <param name="From">One end of the bend line on the flat.</param>
/// <param name="To">The other end.</param>
/// <param name="Angle">How far it is bent, in degrees from flat.</param>
/// <param name="BentTo">How far it is bent before it springs back.</param>
/// <param name="Way">up or down, as one looks at the face that is up.</param>
/// <param name="InsideRadius">In mm.</param>
/// <param name="Allowance">Width of what is bent, on the flat, in mm.</param>
internal sealed record RecordedBend(Numbers From, Numbers To, double Angle, double BentTo, string Way, double InsideRadius, double Allowance);

/// <param name="Along">The middle of what is bent.</param>
/// <param name="Angle">How far it is bent, in degrees from flat.</param>
/// <param name="BentTo">How far it is bent before it springs back.</param>
/// <param name="Way">up or down, as one looks at the face that is up.</param>
/// <param name="InsideRadius">In mm.</param>
internal sealed record RecordedCurvedBend(RecordedLine Along, double Angle, double BentTo, string Way, double InsideRadius);

internal sealed record RecordedWarning(string Rule, string Text, Numbers At, string Source);

/// <summary>A few numbers that belong together and stand on one line: a point, a vertex.</summary>
[JsonConverter(typeof(OnOneLine))]
internal readonly record struct Numbers(params ImmutableArray<double> Values)
{
    /// <summary>Writes the numbers beside each other, where an indented list would take a line for each.</summary>
    internal sealed class OnOneLine : JsonConverter<Numbers>
    {
        public override void Write(Utf8JsonWriter writer, Numbers value, JsonSerializerOptions options) =>
            writer.WriteRawValue($"[{string.Join(", ", value.Values.Select(JsonText))}]");

        public override Numbers Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Results are written and never read back.");

        private static string JsonText(double number) => number.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
    }
}

/// <summary>How the record becomes text, worked out when the program is built.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(RecordDocument))]
internal sealed partial class RecordText : JsonSerializerContext;
