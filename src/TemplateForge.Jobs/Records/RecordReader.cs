using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs;

/// <summary>Reads the half of a job record that a job is made from; the results are made again and not read.</summary>
internal sealed class RecordReader
{
    private static readonly ImmutableArray<string> Keys =
        ["format", "version", "profile", "shop", "hand", "measured_on", "paper", "cutter", "kerf", "dxf", "given", "demonstration", "warning", "values", "pieces", "files"];

    private readonly ICollection<Complaint> complaints;
    private bool isSound = true;

    private RecordReader(ICollection<Complaint> complaints) => this.complaints = complaints;

    public static bool TryRead(TextFile source, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out JobRecord record)
    {
        record = null;
        if (source.Text.Length > JobRecord.LongestText)
        {
            complaints.Add(Wordings.RecordTooLong(new(source.Name, 1, 1)));
            return false;
        }
        return JsonReading.TryRead(source, complaints, out var thing) && new RecordReader(complaints).TryRead(thing, source.Name, out record);
    }

    private bool TryRead(JsonThing thing, string file, [MaybeNullWhen(false)] out JobRecord record)
    {
        record = null;
        if (thing.Kind != JsonTokenType.StartObject || !thing.Members.Any(m => m.Name == "format" && m.Value.Text == JobRecord.Format))
            return Refuse(Wordings.NotAJobRecord(thing.Place));
        var version = thing.Members.FirstOrDefault(m => m.Name == "version");
        if (version is null) return Refuse(Wordings.MissingInRecord(thing.Place, "version"));
        if (version.Value.Text != $"{JobRecord.Version}") return Refuse(Wordings.OtherRecordVersion(version.Value.Place, version.Value.Text));

        Known(thing, Keys);
        // The names say that the text stands inside the record, and lose it again when they are recorded: see PlainName.
        var profile = Part(thing, "profile", JsonTokenType.StartObject);
        var profileFile = Known(profile, ["name", "version", "file", "text"]) ? FileIn(profile, file) : new("", "");
        var shop = List(thing, "shop").Select(f => Known(f, ["file", "text"]) ? FileIn(f, file) : new("", "")).ToImmutableArray();
        var given = List(thing, "given").Select(SettingIn).ToImmutableArray();
        var request = new JobRequest
        {
            Profile = profileFile,
            ShopFiles = shop,
            Settings = given,
            Hand = HandIn(thing, "hand"),
            MeasuredOn = HandIn(thing, "measured_on"),
            Paper = ChoiceIn(thing, "paper"),
            Cutter = OptionalIn(thing, "cutter"),
            Kerf = OptionalIn(thing, "kerf"),
            Dxf = OptionalIn(thing, "dxf"),
        };
        var files = List(thing, "files").Select(f => f.Text).ToImmutableArray();
        if (!isSound) return false;
        record = new(request, Text(profile, "name"), files);
        return true;
    }

    private Setting SettingIn(JsonThing thing) =>
        Known(thing, ["name", "text"])
            ? new(Text(thing, "name"), Text(thing, "text"), Part(thing, "name", JsonTokenType.String).Place)
            : new("", "", thing.Place);

    private TextFile FileIn(JsonThing thing, string recordFile) =>
        new($"{recordFile}/{RecordWriter.PlainName(Text(thing, "file"))}", Text(thing, "text"));

    private Choice ChoiceIn(JsonThing thing, string key)
    {
        var part = Part(thing, key, JsonTokenType.String);
        return new(part.Text, part.Place);
    }

    private Choice OptionalIn(JsonThing thing, string key) => thing.Members.Any(m => m.Name == key) ? ChoiceIn(thing, key) : Choice.Open;

    private Choice HandIn(JsonThing thing, string key)
    {
        var choice = ChoiceIn(thing, key);
        if (isSound && !HandWords.TryRead(choice.Word, out _)) Refuse(Wordings.UnknownHand(choice, ["left", "right", "either"]));
        return choice;
    }

    private string Text(JsonThing thing, string key) => Part(thing, key, JsonTokenType.String).Text;

    private ImmutableArray<JsonThing> List(JsonThing thing, string key) =>
        [.. Part(thing, key, JsonTokenType.StartArray).Members.Select(m => m.Value)];

    // The part of this name; an empty one, and a complaint, where there is none of the right kind.
    private JsonThing Part(JsonThing thing, string key, JsonTokenType kind)
    {
        var member = thing.Members.FirstOrDefault(m => m.Name == key);
        if (member?.Value.Kind == kind) return member.Value;
        // What is not there has no parts, and was complained of once.
        if (thing.Kind == JsonTokenType.None) return thing;
        Refuse(member is null ? Wordings.MissingInRecord(thing.Place, key) : Wordings.WrongKindInRecord(member.Value.Place, key, kind));
        return new(JsonTokenType.None, "", thing.Place, []);
    }

    private bool Known(JsonThing thing, ImmutableArray<string> keys)
    {
        if (thing.Kind == JsonTokenType.None) return true;
        if (thing.Kind != JsonTokenType.StartObject)
            return Refuse(Wordings.WrongKindInRecord(thing.Place, string.Join(" and ", keys), JsonTokenType.StartObject));
        foreach (var member in thing.Members.Where(m => !keys.Contains(m.Name)))
            Refuse(Wordings.UnknownInRecord(member.Place, member.Name, keys));
        foreach (var again in thing.Members.GroupBy(m => m.Name).SelectMany(g => g.Skip(1)))
            Refuse(Wordings.TwiceInRecord(again.Place, again.Name));
        return true;
    }

    private bool Refuse(Complaint complaint)
    {
        complaints.Add(complaint);
        return isSound = false;
    }
}
