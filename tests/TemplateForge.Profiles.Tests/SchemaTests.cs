using System.Text.Json;
using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>What the schema refuses the program refuses too; and a word that the program does not know the schema does not know either.</summary>
public class SchemaTests
{
    private const int SomeChanges = 40;

    private static readonly JsonElement Schema = JsonDocument.Parse(ProfileSchema.Text).RootElement;

    public static IEnumerable<string> ShapeWords() =>
        Schema.GetProperty("definitions").GetProperty("shape_word").GetProperty("properties").EnumerateObject().Select(p => p.Name);

    [Fact]
    public void Every_profile_that_ships_and_every_example_keeps_to_the_schema() =>
        Assert.All(Texts(), text => Assert.True(Takes(text), text));

    [Fact]
    public void A_word_misspelt_or_taken_away_is_refused_by_the_schema_where_the_program_refuses_it_for_that_reason()
    {
        foreach (var text in Texts())
        {
            Assert.True(YamlReader.TryRead("example.yaml", text, new List<Complaint>(), out var root));
            // The examples use every word; a profile that ships says the same ones over and over, and some of its changes will do.
            var changes = Changed(root).ToList();
            foreach (var changed in changes.Where((_, i) => i % (1 + changes.Count / SomeChanges) == 0))
            {
                var complaints = new List<Complaint>();
                Profile.TryRead(new("example.yaml", Written(changed)), TheLibrary.Shop, complaints, out _);
                var isOfWords = complaints.Any(c => c.Problem.Contains("lacks `", StringComparison.Ordinal) || c.Problem.Contains("is not understood here", StringComparison.Ordinal));
                var accepted = complaints.Count == 0;
                var takes = Accepts(changed, Schema);
                Assert.False(accepted && !takes, "The schema refuses what is right:\n" + Written(changed));
                // Within a choice by words the schema does not know the words, so it lets one that is missing through.
                if (isOfWords && !text.Contains("by:", StringComparison.Ordinal))
                    Assert.False(takes, string.Join('\n', complaints) + "\nThe schema takes:\n" + Written(changed));
            }
        }
    }

    private static IEnumerable<string> Texts() => TheLibrary.Library.Entries.Select(e => e.File.Text)
        .Concat(TheLanguagePage.Examples().Where(e => !e.Answer.StartsWith("complains", StringComparison.Ordinal)).Select(e => TheLanguagePage.Whole(e.Yaml, []).Text));

    private static bool Takes(string text) =>
        YamlReader.TryRead("example.yaml", text, new List<Complaint>(), out var root) && Accepts(root, Schema);

    // Every field once without its value, and once under another name.
    private static IEnumerable<Node> Changed(Node node)
    {
        switch (node)
        {
            case MappingNode mapping:
                for (var i = 0; i < mapping.Entries.Length; i++)
                {
                    var (key, value) = mapping.Entries[i];
                    yield return mapping with { Entries = mapping.Entries.RemoveAt(i) };
                    yield return mapping with { Entries = mapping.Entries.SetItem(i, (new ScalarNode(key.Place, key.Text + "_x", IsPlain: true), value)) };
                    foreach (var inner in Changed(value)) yield return mapping with { Entries = mapping.Entries.SetItem(i, (key, inner)) };
                }
                break;
            case SequenceNode list:
                for (var i = 0; i < list.Items.Length; i++)
                {
                    foreach (var inner in Changed(list.Items[i])) yield return list with { Items = list.Items.SetItem(i, inner) };
                }
                break;
        }
    }

    private static string Written(Node node) => node switch
    {
        MappingNode mapping => "{" + string.Join(", ", mapping.Entries.Select(e => $"{e.Key.Text}: {Written(e.Value)}")) + "}",
        SequenceNode list => "[" + string.Join(", ", list.Items.Select(Written)) + "]",
        ScalarNode scalar => "\"" + scalar.Text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"",
        _ => "",
    };

    // As much of JSON Schema as the schema uses; a text stands for a number or a truth as well.
    private static bool Accepts(Node node, JsonElement schema)
    {
        if (schema.TryGetProperty("$ref", out var reference))
            return Accepts(node, Schema.GetProperty("definitions").GetProperty(reference.GetString()!["#/definitions/".Length..]));
        if (schema.TryGetProperty("anyOf", out var any) && !any.EnumerateArray().Any(other => Accepts(node, other))) return false;
        if (schema.TryGetProperty("allOf", out var all) && !all.EnumerateArray().All(other => Accepts(node, other))) return false;
        if (schema.TryGetProperty("enum", out var words) && !(node is ScalarNode word && words.EnumerateArray().Any(w => w.ValueKind == JsonValueKind.String && w.GetString() == word.Text))) return false;
        if (schema.TryGetProperty("type", out var type))
        {
            var types = type.ValueKind == JsonValueKind.Array ? [.. type.EnumerateArray().Select(t => t.GetString())] : new List<string?> { type.GetString() };
            if (!types.Contains(node switch { MappingNode => "object", SequenceNode => "array", _ => "string" })) return false;
        }
        return node switch
        {
            MappingNode mapping => IsMapping(mapping, schema),
            SequenceNode list =>
                (!schema.TryGetProperty("minItems", out var least) || list.Items.Length >= least.GetInt32())
                && (!schema.TryGetProperty("maxItems", out var most) || list.Items.Length <= most.GetInt32())
                && (!schema.TryGetProperty("items", out var items) || list.Items.All(i => Accepts(i, items))),
            _ => true,
        };
    }

    private static bool IsMapping(MappingNode mapping, JsonElement schema)
    {
        if (schema.TryGetProperty("required", out var required)
            && !required.EnumerateArray().All(r => mapping.Entries.Any(e => e.Key.Text == r.GetString()))) return false;
        if (schema.TryGetProperty("minProperties", out var least) && mapping.Entries.Length < least.GetInt32()) return false;
        if (schema.TryGetProperty("maxProperties", out var most) && mapping.Entries.Length > most.GetInt32()) return false;
        return mapping.Entries.All(e =>
            schema.TryGetProperty("properties", out var known) && known.TryGetProperty(e.Key.Text, out var own) ? Accepts(e.Value, own)
            : !schema.TryGetProperty("additionalProperties", out var others)
                || (others.ValueKind != JsonValueKind.False && (others.ValueKind == JsonValueKind.True || Accepts(e.Value, others))));
    }
}
