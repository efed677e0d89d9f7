using System.Collections.Immutable;
using System.IO;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TemplateForge.Notation;

/// <summary>Reads the part of YAML that people write by hand: groups of fields, lists, texts. Strangers' files are safe to read.</summary>
/// <remarks>
/// <para>Refused are anchors and aliases (a few lines of them can unfold into billions of values), tags, several documents in one
/// file, names that are not plain words or stand twice in a group, and whatever goes beyond the limits below. Nothing is
/// interpreted: every value is text until somebody reads it as something.</para>
/// <para>Faults that leave the rest of the file readable are all complained of; the first fault that does not ends the reading.</para>
/// </remarks>
public sealed class YamlReader
{
    /// <summary>In characters.</summary>
    public const int LongestFile = 200_000;

    /// <summary>Groups and lists one inside the other.</summary>
    public const int DeepestNesting = 30;

    /// <summary>Texts, lists and groups together.</summary>
    public const int MostNodes = 20_000;

    private readonly SourceText source;
    private readonly ICollection<Complaint> complaints;
    private readonly Parser parser;
    private int nodes;

    private YamlReader(SourceText source, ICollection<Complaint> complaints)
    {
        (this.source, this.complaints) = (source, complaints);
        parser = new Parser(new StringReader(source.Text));
    }

    /// <summary>Reads a file that has been loaded; <paramref name="file"/> is its name in complaints.</summary>
    /// <returns>False after at least one complaint; <paramref name="root"/> is empty text then.</returns>
    public static bool TryRead(string file, string text, ICollection<Complaint> complaints, out Node root)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(complaints);
        var start = new Place(file, 1, 1);
        root = new ScalarNode(start, "", IsPlain: true);
        if (text.StartsWith('\uFEFF'))
            text = text[1..]; // the mark that some editors put before UTF-8; they do not show it
        if (text.Length > LongestFile)
            return Refused(complaints, Wordings.FileTooLong(start, LongestFile));
        var whole = new SourceText(file, text);
        for (var i = 0; i < text.Length; i++)
        {
            if (!IsWritten(text, i))
                return Refused(complaints, Wordings.NotText(whole.At(i)));
        }
        return new YamlReader(whole, complaints).TryReadFile(out root);
    }

    private bool TryReadFile(out Node root)
    {
        root = new ScalarNode(source.At(0), "", IsPlain: true);
        var before = complaints.Count;
        try
        {
            var isRead = TryReadDocument(out var found) && complaints.Count == before;
            if (isRead)
                root = found;
            return isRead;
        }
        catch (YamlException fault)
        {
            return Refuse(YamlFault.Explain(source, fault));
        }
        catch (InvalidOperationException)
        {
            // The parser's answer to a list in brackets that goes on where a line like "name: value" begins.
            return Refuse(Wordings.BracketNotClosed(At(parser.Current)));
        }
    }

    private bool TryReadDocument(out Node root)
    {
        root = new ScalarNode(source.At(0), "", IsPlain: true);
        while (parser.MoveNext() && parser.Current is StreamStart or DocumentStart)
        {
        }
        if (parser.Current is null or StreamEnd || (parser.Current is Scalar { Value.Length: 0 } nothing && IsUnwritten(nothing)))
            return Refuse(Wordings.EmptyFile(source.At(0)));
        if (!TryReadNode(depth: 0, out root))
            return false;
        while (parser.MoveNext())
        {
            if (parser.Current is DocumentStart)
                return Refuse(Wordings.SecondDocument(At(parser.Current)));
        }
        return true;
    }

    /// <summary>Reads the node whose first event is the current one; the current one is its last event afterwards.</summary>
    private bool TryReadNode(int depth, out Node node)
    {
        var start = parser.Current;
        var place = At(start);
        node = new ScalarNode(place, "", IsPlain: true);
        if (depth > DeepestNesting)
            return Refuse(Wordings.NestedFileTooDeep(place, DeepestNesting));
        if (++nodes > MostNodes)
            return Refuse(Wordings.TooManyParts(place, MostNodes));
        if (start is AnchorAlias || (start is NodeEvent marked && !marked.Anchor.IsEmpty))
            return Refuse(Wordings.Anchor(place));
        if (source.IsIndentedByTab(start))
            return Refuse(Wordings.TabIndent(place with { Column = 1 }));
        if (start is NodeEvent tagged && !tagged.Tag.IsEmpty)
            return Refuse(Wordings.Tag(place));
        switch (start)
        {
            case Scalar scalar:
                node = ReadScalar(scalar);
                return true;
            case SequenceStart:
                return TryReadSequence(place, depth, out node);
            case MappingStart:
                return TryReadMapping(place, depth, out node);
            default:
                return Refuse(Wordings.NotYaml(place));
        }
    }

    private ScalarNode ReadScalar(Scalar scalar)
    {
        var writing = source.WritingOf(scalar);
        return new ScalarNode(writing.At(0), scalar.Value, scalar.Style == ScalarStyle.Plain) { Writing = writing };
    }

    private bool TryReadSequence(Place place, int depth, out Node node)
    {
        var items = ImmutableArray.CreateBuilder<Node>();
        node = new SequenceNode(place, []);
        while (parser.MoveNext() && parser.Current is not SequenceEnd)
        {
            if (!TryReadNode(depth + 1, out var item))
                return false;
            items.Add(item);
        }
        node = new SequenceNode(place, items.ToImmutable());
        return true;
    }

    private bool TryReadMapping(Place place, int depth, out Node node)
    {
        var entries = ImmutableArray.CreateBuilder<(ScalarNode, Node)>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        node = new MappingNode(place, []);
        while (parser.MoveNext() && parser.Current is not MappingEnd)
        {
            if (!TryReadNode(depth + 1, out var key))
                return false;
            parser.MoveNext();
            if (!TryReadNode(depth + 1, out var value))
                return false;
            if (key is not ScalarNode { IsPlain: true, Text.Length: > 0 } name)
                complaints.Add(Wordings.FieldNotPlain(key.Place));
            else if (!lines.TryAdd(name.Text, name.Place.Line))
                complaints.Add(Wordings.DuplicateField(name.Place, name.Text, lines[name.Text]));
            else
                entries.Add((name, value));
        }
        node = new MappingNode(place, entries.ToImmutable());
        return true;
    }

    /// <summary>Whether an editor writes this: no control character but tab and line end, no half of a pair, no mark of a damaged text.</summary>
    private static bool IsWritten(string text, int i) => text[i] switch
    {
        '\t' or '\n' or '\r' => true,
        '\u2028' or '\u2029' or '\uFEFF' or '\uFFFD' or '\uFFFE' or '\uFFFF' => false,
        var c when char.IsHighSurrogate(c) => i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]),
        var c when char.IsLowSurrogate(c) => i > 0 && char.IsHighSurrogate(text[i - 1]),
        var c => !char.IsControl(c),
    };

    private static bool IsUnwritten(Scalar scalar) =>
        scalar.Style == ScalarStyle.Plain && scalar.Anchor.IsEmpty && scalar.Tag.IsEmpty;

    private Place At(ParsingEvent? start) => source.At((int)(start?.Start.Index ?? 0));

    private bool Refuse(Complaint complaint) => Refused(complaints, complaint);

    private static bool Refused(ICollection<Complaint> complaints, Complaint complaint)
    {
        complaints.Add(complaint);
        return false;
    }
}
