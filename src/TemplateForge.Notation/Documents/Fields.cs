namespace TemplateForge.Notation;

/// <summary>The fields of a group, asked for by name; what nobody asks for is complained of at the end.</summary>
/// <remarks>
/// <code>
/// var fields = new Fields(mapping, "The parameter", complaints);
/// if (fields.RequiredText("help", out var help)) …
/// if (fields.OptionalText("range", out var range)) …
/// fields.Done();      // `raduis` is not understood here; did you mean `radius`?
/// </code>
/// </remarks>
public sealed class Fields
{
    private readonly MappingNode mapping;
    private readonly string what;
    private readonly ICollection<Complaint> complaints;
    private readonly List<string> asked = [];

    /// <summary>The fields of this group; <paramref name="what"/> it describes begins a sentence: "The parameter diameter".</summary>
    public Fields(MappingNode mapping, string what, ICollection<Complaint> complaints)
    {
        ArgumentNullException.ThrowIfNull(mapping);
        ArgumentNullException.ThrowIfNull(complaints);
        (this.mapping, this.what, this.complaints) = (mapping, what, complaints);
    }

    public Place Place => mapping.Place;

    /// <summary>The fields of a node that must be a group; complains where it is something else.</summary>
    public static bool TryOpen(Node node, string what, ICollection<Complaint> complaints, out Fields fields)
    {
        ArgumentNullException.ThrowIfNull(node);
        var isGroup = node.TryGroup(what, complaints, out var mapping);
        fields = new(mapping, what, complaints);
        return isGroup;
    }

    /// <summary>A field that must be there, of any kind; complains where it is missing.</summary>
    public bool Required(string name, out Node node)
    {
        if (Optional(name, out node))
            return true;
        complaints.Add(Wordings.MissingField(mapping.Place, what, name));
        return false;
    }

    /// <summary>A field that may be there. Where it is not, <paramref name="node"/> is empty text at the place of the group.</summary>
    public bool Optional(string name, out Node node)
    {
        if (!asked.Contains(name))
            asked.Add(name);
        foreach (var (key, value) in mapping.Entries)
        {
            if (key.Text == name)
            {
                node = value;
                return true;
            }
        }
        node = new ScalarNode(mapping.Place, "", IsPlain: true);
        return false;
    }

    /// <summary>A text that must be there and must not be empty.</summary>
    public bool RequiredText(string name, out ScalarNode text) =>
        Required(name, out var node) ? node.TryText(Field(name), complaints, out text) : node.TryText("", [], out text);

    /// <summary>True where the field is there and is a text that is not empty; complains where it is there and is not.</summary>
    public bool OptionalText(string name, out ScalarNode text) =>
        Optional(name, out var node) ? node.TryText(Field(name), complaints, out text) : node.TryText("", [], out text);

    public bool RequiredList(string name, out SequenceNode list) =>
        Required(name, out var node) ? node.TryList(Field(name), complaints, out list) : node.TryList("", [], out list);

    /// <summary>True where the field is there and is a list; complains where it is there and is not.</summary>
    public bool OptionalList(string name, out SequenceNode list) =>
        Optional(name, out var node) ? node.TryList(Field(name), complaints, out list) : node.TryList("", [], out list);

    public bool RequiredGroup(string name, out MappingNode group) =>
        Required(name, out var node) ? node.TryGroup(Field(name), complaints, out group) : node.TryGroup("", [], out group);

    /// <summary>True where the field is there and is a group of fields; complains where it is there and is not.</summary>
    public bool OptionalGroup(string name, out MappingNode group) =>
        Optional(name, out var node) ? node.TryGroup(Field(name), complaints, out group) : node.TryGroup("", [], out group);

    /// <summary>Complains of every field that was never asked for, with the nearest right name.</summary>
    /// <param name="listsAll">Whether a complaint lists every name that is understood here, not only those that are still free: a group
    /// that was filled up from elsewhere has names that its author never wrote.</param>
    /// <returns>Whether there was none.</returns>
    public bool Done(bool listsAll = false)
    {
        var strange = mapping.Entries.Where(entry => !asked.Contains(entry.Key.Text)).ToList();
        var free = asked.Where(name => !mapping.Entries.Any(entry => entry.Key.Text == name)).ToList();
        foreach (var (key, _) in strange)
            complaints.Add(Wordings.UnknownField(key.Place, key.Text, free.Count > 0 && !listsAll ? free : asked));
        return strange.Count == 0;
    }

    private static string Field(string name) => $"`{name}`";
}
