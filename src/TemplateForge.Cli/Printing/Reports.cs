using System.Collections.Immutable;
using System.IO;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Cli.Printing;

/// <summary>What commands report, and how it becomes JSON.</summary>
internal static class Reports
{
    private static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void Print<T>(T report, JsonTypeInfo<T> type, Terminal terminal)
    {
        using var text = new MemoryStream();
        using (var writer = new Utf8JsonWriter(text, Layout)) JsonSerializer.Serialize(writer, report, type);
        terminal.Output.WriteLine(Encoding.UTF8.GetString(text.ToArray()));
    }

    public static ImmutableArray<ReportedComplaint> Of(IEnumerable<Complaint> complaints) =>
        [.. complaints.Select(c => new ReportedComplaint(c.File, c.Line, c.Column, c.Problem, c.Remedy))];

    public static string Word(Hand hand) => hand switch
    {
        Hand.Left => "left",
        Hand.Right => "right",
        _ => "either",
    };

    public static string Word(ValueSource source) => source == ValueSource.Measured ? "measured" : "shop";
}

internal sealed record ReportedComplaint(string File, int Line, int Column, string Problem, string Remedy);

internal sealed record RefusedReport(ImmutableArray<ReportedComplaint> Complaints);

internal sealed record ListReport(ImmutableArray<ListedProfile> Profiles, ImmutableArray<ReportedComplaint> Complaints);

/// <param name="Name">Its name.</param>
/// <param name="Family">Its folder in the library.</param>
/// <param name="Title">What it is.</param>
/// <param name="Hand">The hand that it is drawn for.</param>
/// <param name="MayBeAlike">Whether some values make one of it fit either hand.</param>
/// <param name="Version">Its version.</param>
internal sealed record ListedProfile(string Name, string Family, string Title, string Hand, bool MayBeAlike, int Version);

internal sealed record CheckReport(ImmutableArray<CheckedFile> Files, ImmutableArray<ReportedComplaint> Complaints);

internal sealed record CheckedFile(string File, bool IsSound);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(RefusedReport))]
[JsonSerializable(typeof(ListReport))]
[JsonSerializable(typeof(ProfileReport))]
[JsonSerializable(typeof(CheckReport))]
[JsonSerializable(typeof(MakeReport))]
[JsonSerializable(typeof(BatchReport))]
[JsonSerializable(typeof(DxfReport))]
[JsonSerializable(typeof(CouponReport))]
internal sealed partial class ReportText : JsonSerializerContext;
