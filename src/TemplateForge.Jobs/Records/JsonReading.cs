using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Reads JSON and remembers where everything stood.</summary>
internal ref struct JsonReading
{
    private const int Deepest = 16;

    private readonly string file;
    private readonly ReadOnlySpan<byte> bytes;
    private Utf8JsonReader reader;
    private int line;
    private int lineStart;
    private int counted;

    private JsonReading(string file, ReadOnlySpan<byte> bytes)
    {
        this.file = file;
        this.bytes = bytes;
        reader = new(bytes, new JsonReaderOptions { MaxDepth = Deepest });
        line = 1;
    }

    public static bool TryRead(TextFile source, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JsonThing thing)
    {
        var reading = new JsonReading(source.Name, Encoding.UTF8.GetBytes(source.Text));
        try
        {
            reading.reader.Read();
            thing = reading.Thing();
            reading.reader.Read(); // complains about anything after the end
            return true;
        }
        catch (Exception trouble) when (trouble is JsonException or InvalidOperationException)
        {
            // An InvalidOperationException is a text with half a character in it.
            complaints.Add(Wordings.NotJson(reading.PlaceOf(trouble)));
            thing = null;
            return false;
        }
    }

    private JsonThing Thing()
    {
        var (kind, place) = (reader.TokenType, Here());
        return kind switch
        {
            JsonTokenType.StartObject or JsonTokenType.StartArray => new(kind, "", place, Members(kind)),
            JsonTokenType.String => new(kind, reader.GetString() ?? "", place, []),
            JsonTokenType.Number => new(kind, Encoding.UTF8.GetString(reader.ValueSpan), place, []),
            _ => new(kind, "", place, []),
        };
    }

    private ImmutableArray<JsonMember> Members(JsonTokenType of)
    {
        var members = ImmutableArray.CreateBuilder<JsonMember>();
        while (reader.Read() && reader.TokenType is not (JsonTokenType.EndObject or JsonTokenType.EndArray))
        {
            var (name, place) = ("", Here());
            if (of == JsonTokenType.StartObject)
            {
                name = reader.GetString() ?? "";
                reader.Read();
            }
            members.Add(new(name, place, Thing()));
        }
        return members.ToImmutable();
    }

    private Place Here()
    {
        var at = (int)reader.TokenStartIndex;
        for (; counted < at; counted++)
            if (bytes[counted] == '\n')
                (line, lineStart) = (line + 1, counted + 1);
        return PlaceAt(line, lineStart, at - lineStart);
    }

    private readonly Place PlaceAt(int atLine, int start, int bytesAlong) =>
        new(file, atLine, 1 + Encoding.UTF8.GetCharCount(bytes.Slice(start, bytesAlong)));

    private readonly Place PlaceOf(Exception trouble)
    {
        if (trouble is not JsonException { LineNumber: { } atLine, BytePositionInLine: { } along })
            return PlaceAt(line, lineStart, (int)reader.TokenStartIndex - lineStart);
        var start = 0;
        for (var i = 0; i < atLine; i++) start += bytes[start..].IndexOf((byte)'\n') + 1;
        return PlaceAt((int)atLine + 1, start, Math.Min((int)along, bytes.Length - start));
    }
}

/// <summary>A value of a JSON text, and where it stands.</summary>
/// <param name="Kind">Object, array, text, number, true, false or null.</param>
/// <param name="Text">What a text says, or a number's digits; empty for the others.</param>
/// <param name="Place">Where it begins.</param>
/// <param name="Members">Members of an object, by name; of an array, without names.</param>
internal sealed record JsonThing(JsonTokenType Kind, string Text, Place Place, ImmutableArray<JsonMember> Members);

/// <summary>A member of a JSON object or array.</summary>
internal sealed record JsonMember(string Name, Place Place, JsonThing Value);
