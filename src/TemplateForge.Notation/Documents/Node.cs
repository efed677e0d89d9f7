using System.Collections.Immutable;

namespace TemplateForge.Notation;

/// <summary>A part of a file, with the place where it begins.</summary>
public abstract record Node(Place Place)
{
    /// <summary>As it is said in a sentence: "a text", "a list", "a group of fields".</summary>
    public abstract string Name { get; }

    /// <summary>This node as a text; complains where it is something else, or empty. <paramref name="what"/> begins the sentence.</summary>
    public bool TryText(string what, ICollection<Complaint> complaints, out ScalarNode text)
    {
        text = this as ScalarNode ?? new ScalarNode(Place, "", IsPlain: true);
        return text.Text.Length > 0 || Refused(what, "a text", complaints);
    }

    /// <summary>This node as a list; complains where it is something else.</summary>
    public bool TryList(string what, ICollection<Complaint> complaints, out SequenceNode list)
    {
        list = this as SequenceNode ?? new SequenceNode(Place, []);
        return this is SequenceNode || Refused(what, list.Name, complaints);
    }

    /// <summary>This node as a group of fields; complains where it is something else.</summary>
    public bool TryGroup(string what, ICollection<Complaint> complaints, out MappingNode group)
    {
        group = this as MappingNode ?? new MappingNode(Place, []);
        return this is MappingNode || Refused(what, group.Name, complaints);
    }

    private bool Refused(string what, string wanted, ICollection<Complaint> complaints)
    {
        ArgumentNullException.ThrowIfNull(complaints);
        complaints.Add(Wordings.WrongKindOfNode(Place, what, Name, wanted));
        return false;
    }
}

/// <summary>A text or a number, not interpreted yet.</summary>
/// <param name="Place">Of the first character of the text itself, behind a quote.</param>
/// <param name="Text">Without quotes, folded as YAML folds it.</param>
/// <param name="IsPlain">Written without quotes and not as a block.</param>
public sealed record ScalarNode(Place Place, string Text, bool IsPlain) : Node(Place)
{
    public override string Name => Text.Length == 0 ? "empty" : "a text";

    /// <summary>The text, with the place of each of its characters.</summary>
    public Writing Writing { get => field ?? new(Text, Place); init; }

    public bool Equals(ScalarNode? other) =>
        other is not null && Place == other.Place && Text == other.Text && IsPlain == other.IsPlain;

    public override int GetHashCode() => HashCode.Combine(Place, Text, IsPlain);
}

/// <summary>A list.</summary>
public sealed record SequenceNode(Place Place, ImmutableArray<Node> Items) : Node(Place)
{
    public override string Name => "a list";

    public bool Equals(SequenceNode? other) => other is not null && Place == other.Place && Items.SequenceEqual(other.Items);

    public override int GetHashCode() => HashCode.Combine(Place, Items.Length);
}

/// <summary>Names with a value each, in the order in which they are written; no name stands twice.</summary>
public sealed record MappingNode(Place Place, ImmutableArray<(ScalarNode Key, Node Value)> Entries) : Node(Place)
{
    public override string Name => "a group of fields";

    public bool Equals(MappingNode? other) => other is not null && Place == other.Place && Entries.SequenceEqual(other.Entries);

    public override int GetHashCode() => HashCode.Combine(Place, Entries.Length);
}
