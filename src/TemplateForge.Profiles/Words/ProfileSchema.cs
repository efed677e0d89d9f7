using System.Collections.Immutable;
using System.IO;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace TemplateForge.Profiles;

/// <summary>What an editor is told of the profile language, so that it completes words and underlines what cannot stand there.</summary>
/// <remarks>
/// Written from the same words with which the reader opens every group, as JSON Schema, draft 7, which editors of YAML take. A schema
/// knows neither names nor units: what it lets through the program may still refuse, and never the other way round.
/// </remarks>
public static class ProfileSchema
{
    private static ImmutableArray<(string Name, string Meaning, Action<Utf8JsonWriter> Write)> Definitions { get; } =
    [
        ("words", "Plain words.", json => Type(json, "string", "number")),
        ("name", "A name.", json => Type(json, "string", "number", "boolean")),
        ("literal", "A value with its unit, as 12 mm.", json => Type(json, "string", "number", "boolean")),
        ("expression", "A value with its unit, or arithmetic with names: 12 mm, width / 2; or one for each word of a choice.", json =>
            AnyOf(json, () => Type(json, "string", "number", "boolean"), () => By(json, () => Type(json, "string", "number", "boolean")))),
        ("sentence", "A sentence, with values in braces; or one for each word of a choice.", json =>
            AnyOf(json, () => Type(json, "string", "number", "boolean"), () => By(json, () => Type(json, "string", "number", "boolean")))),
        ("point", "A point: [along, up], its name, or one that is found on something.", json => AnyOf(json,
            () => Type(json, "string"),
            () => Body(json, Holds.TwoExpressions),
            () => OneOfWords(json, PointReader.Words),
            () => By(json, () => Reference(json, "point")))),
        ("shape", "A shape: one word and what belongs to it; or one for each word of a choice.", json => AnyOf(json,
            () => Reference(json, "shape_word"),
            () => By(json, () => Reference(json, "shape_word")))),
        ("shape_word", "A shape: one word and what belongs to it.", json =>
        {
            json.WriteString("type", "object");
            Properties(json, ShapeReader.Words);
            json.WriteNumber("minProperties", 1);
            json.WriteNumber("maxProperties", 1);
        }),
        ("steps", "A start, then lines and arcs.", json => List(json, 2, () => OneOfWords(json, OutlineReader.Words))),
        ("stations", "A row of places along a line.", json => OneOfWords(json, StationsReader.RowWords)),
        ("parameter", "What the fabricator sets per job.", json => OneOfWords(json, ParameterReader.Words)),
        ("sentences", "Sentences, each of which may be there only when something holds.", json =>
            List(json, 0, () => AnyOf(json, () => Reference(json, "sentence"), () => Group(json, Reading.SentenceWord)))),
        ("work", "The work in order: what is done, and where somebody must sign before it goes on.", json =>
            List(json, 0, () => AnyOf(json, () => Reference(json, "sentence"), () => OneOfWords(json, StepReader.Words)))),
    ];

    /// <summary>The schema as the text of a JSON file.</summary>
    public static string Text { get; } = Write(); // after the definitions, which it needs

    private static string Write()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "http://json-schema.org/draft-07/schema#");
            json.WriteString("title", "TemplateForge profile");
            Group(json, ProfileReader.Word);
            json.WriteStartObject("definitions");
            foreach (var (name, meaning, write) in Definitions)
            {
                json.WriteStartObject(name);
                json.WriteString("description", meaning);
                write(json);
                json.WriteEndObject();
            }
            json.WriteEndObject();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void Body(Utf8JsonWriter json, Holds holds)
    {
        switch (holds)
        {
            case DefinedHolds defined:
                Reference(json, defined.Definition);
                break;
            case ListHolds list:
                List(json, list.Least, () => Body(json, list.Item));
                if (list.Most < int.MaxValue) json.WriteNumber("maxItems", list.Most);
                break;
            case NamesHolds names:
                json.WriteString("type", "object");
                Inner(json, "additionalProperties", () => Body(json, names.Thing));
                break;
            case OneOfHolds words:
                json.WriteStartArray("enum");
                foreach (var word in words.Words) json.WriteStringValue(word);
                // Editors take a bare yes or no for a truth.
                if (words.Words.Contains("yes"))
                {
                    json.WriteBooleanValue(true);
                    json.WriteBooleanValue(false);
                }
                json.WriteEndArray();
                break;
            case GroupHolds group:
                Group(json, group.Word);
                break;
            case ByHolds by:
                By(json, () => Body(json, by.Thing));
                break;
            case AnyHolds any:
                AnyOf(json, [.. any.Others.Select(other => (Action)(() => Body(json, other)))]);
                break;
            default:
                throw new ArgumentException($"{holds.GetType().Name} holds nothing that a schema knows.", nameof(holds));
        }
    }

    private static void Group(Utf8JsonWriter json, Word word)
    {
        json.WriteString("type", "object");
        json.WriteString("description", word.Meaning);
        Properties(json, word.Fields);
        json.WriteStartArray("required");
        foreach (var field in word.Fields.Where(f => f.IsRequired)) json.WriteStringValue(field.Name);
        json.WriteEndArray();
    }

    private static void Properties(Utf8JsonWriter json, ImmutableArray<Field> fields)
    {
        json.WriteStartObject("properties");
        foreach (var field in fields)
        {
            json.WriteStartObject(field.Name);
            // In this draft nothing may stand beside a reference.
            if (field.Holds is DefinedHolds or AnyHolds)
            {
                json.WriteString("description", field.Meaning);
                json.WriteStartArray("allOf");
                json.WriteStartObject();
                Body(json, field.Holds);
                json.WriteEndObject();
                json.WriteEndArray();
            }
            else
            {
                if (field.Holds is not GroupHolds) json.WriteString("description", field.Meaning);
                Body(json, field.Holds);
            }
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteBoolean("additionalProperties", false);
    }

    private static void OneOfWords(Utf8JsonWriter json, ImmutableArray<Word> words) =>
        AnyOf(json, [.. words.Select(word => (Action)(() => Group(json, word)))]);

    // One thing for each word of a choice.
    private static void By(Utf8JsonWriter json, Action thing)
    {
        json.WriteString("type", "object");
        json.WriteStartObject("properties");
        json.WriteStartObject("by");
        Type(json, "string");
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteStartArray("required");
        json.WriteStringValue("by");
        json.WriteEndArray();
        Inner(json, "additionalProperties", thing);
    }

    private static void List(Utf8JsonWriter json, int least, Action item)
    {
        json.WriteString("type", "array");
        Inner(json, "items", item);
        if (least > 0) json.WriteNumber("minItems", least);
    }

    private static void AnyOf(Utf8JsonWriter json, params ImmutableArray<Action> others)
    {
        json.WriteStartArray("anyOf");
        foreach (var other in others)
        {
            json.WriteStartObject();
            other();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Inner(Utf8JsonWriter json, string name, Action body)
    {
        json.WriteStartObject(name);
        body();
        json.WriteEndObject();
    }

    private static void Reference(Utf8JsonWriter json, string definition) => json.WriteString("$ref", $"#/definitions/{definition}");

    // An editor reads 12 as a number and yes as a truth, where the program reads text.
    private static void Type(Utf8JsonWriter json, params ImmutableArray<string> types)
    {
        if (types.Length == 1)
        {
            json.WriteString("type", types[0]);
            return;
        }
        json.WriteStartArray("type");
        foreach (var type in types) json.WriteStringValue(type);
        json.WriteEndArray();
    }
}
