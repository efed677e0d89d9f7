using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TemplateForge.Drawing;

/// <summary>What a DXF holds, as records: variables of its header, layers, blocks, entities.</summary>
internal sealed record DxfSections
{
    public required ImmutableDictionary<string, DxfPair> Variables { get; init; }

    /// <summary>What stands in comments.</summary>
    public required ImmutableArray<string> Comments { get; init; }
    public required ImmutableDictionary<string, DxfRecord> Layers { get; init; }
    public required ImmutableDictionary<string, DxfBlock> Blocks { get; init; }
    public required ImmutableArray<DxfEntity> Entities { get; init; }

    /// <summary>Whether the file ends as it should; one that was cut short does not.</summary>
    public required bool IsWhole { get; init; }

    public static bool TryRead(ReadOnlySpan<byte> file, [MaybeNullWhen(false)] out DxfSections sections, out DxfFault fault)
    {
        sections = null;
        if (!DxfPair.TryReadAll(file, out var read, out fault)) return false;
        // A comment may stand between any two pairs that belong together.
        var pairs = read.RemoveAll(p => p.Code == DxfPair.Comment);
        var (variables, layers, blocks) = (
            ImmutableDictionary.CreateBuilder<string, DxfPair>(StringComparer.Ordinal),
            ImmutableDictionary.CreateBuilder<string, DxfRecord>(StringComparer.OrdinalIgnoreCase),
            ImmutableDictionary.CreateBuilder<string, DxfBlock>(StringComparer.OrdinalIgnoreCase));
        ImmutableArray<DxfEntity> entities = [];
        var records = Records(pairs);
        for (var i = 0; i < records.Count; i++)
        {
            if (records[i].Name != "SECTION") continue;
            var end = records.FindIndex(i + 1, r => r.Name is "ENDSEC" or "SECTION" or "EOF");
            var inside = records[(i + 1)..(end < 0 ? records.Count : end)];
            switch (records[i].Text(2, ""))
            {
                case "HEADER":
                    foreach (var (name, value) in VariablesOf(records[i])) variables[name] = value;
                    break;
                case "TABLES":
                    foreach (var layer in inside.Where(r => r.Name == "LAYER")) layers[layer.Text(2, "")] = layer;
                    break;
                case "BLOCKS":
                    foreach (var block in BlocksOf(inside)) blocks[block.Name] = block;
                    break;
                case "ENTITIES":
                    entities = DxfEntity.Of(inside);
                    break;
            }
        }
        sections = new DxfSections
        {
            Variables = variables.ToImmutable(),
            Comments = [.. read.Where(p => p.Code == DxfPair.Comment).Select(p => p.Value)],
            Layers = layers.ToImmutable(),
            Blocks = blocks.ToImmutable(),
            Entities = entities,
            IsWhole = pairs[^1] is { Code: 0, Value: "EOF" },
        };
        return true;
    }

    private static List<DxfRecord> Records(ImmutableArray<DxfPair> pairs)
    {
        var records = new List<DxfRecord>();
        for (var i = 0; i < pairs.Length;)
        {
            var next = i + 1;
            while (next < pairs.Length && pairs[next].Code != 0) next++;
            if (pairs[i].Code == 0) records.Add(new(pairs[i].Value, pairs[i].Line, pairs[(i + 1)..next]));
            i = next;
        }
        return records;
    }

    // In the header a variable's name has code 9, and its value follows.
    private static IEnumerable<(string Name, DxfPair Value)> VariablesOf(DxfRecord header)
    {
        for (var i = 0; i + 1 < header.Pairs.Length; i++)
        {
            if (header.Pairs[i].Code == 9) yield return (header.Pairs[i].Value, header.Pairs[i + 1]);
        }
    }

    private static IEnumerable<DxfBlock> BlocksOf(List<DxfRecord> records)
    {
        for (var i = 0; i < records.Count; i++)
        {
            if (records[i].Name != "BLOCK") continue;
            var end = records.FindIndex(i + 1, r => r.Name is "ENDBLK" or "BLOCK");
            yield return new(records[i].Text(2, ""), records[i].At(10), DxfEntity.Of(records[(i + 1)..(end < 0 ? records.Count : end)]));
        }
    }
}

/// <summary>Entities that are drawn wherever the block is inserted.</summary>
internal sealed record DxfBlock(string Name, Spot Base, ImmutableArray<DxfEntity> Entities);

/// <summary>An entity and the vertices that follow an old polyline.</summary>
internal sealed record DxfEntity(DxfRecord Record, ImmutableArray<DxfRecord> Vertices)
{
    /// <summary>Vertices belong to the polyline before them; what ends such a run, and words attached to an inserted block, are no entities.</summary>
    public static ImmutableArray<DxfEntity> Of(IReadOnlyList<DxfRecord> records)
    {
        var entities = ImmutableArray.CreateBuilder<DxfEntity>();
        foreach (var record in records)
        {
            if (record.Name == "VERTEX" && entities.Count > 0) entities[^1] = entities[^1] with { Vertices = entities[^1].Vertices.Add(record) };
            else if (record.Name is not ("VERTEX" or "SEQEND")) entities.Add(new(record, []));
        }
        return entities.ToImmutable();
    }
}
