using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Every name that a profile defines and what it stands for, known before any expression is checked.</summary>
/// <remarks>Parameters, tables, values, sections, components, shapes, paths, points and stations share one set of names, so that no name means two things.</remarks>
internal sealed class ProfileNames : IExpressionNames
{
    private readonly Dictionary<string, ValueKind> kinds = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<Expression>> values = new(StringComparer.Ordinal);
    private readonly HashSet<string> inProgress = new(StringComparer.Ordinal);
    private readonly HashSet<string> shapes = new(StringComparer.Ordinal);
    private readonly HashSet<string> points = new(StringComparer.Ordinal);
    private readonly HashSet<string> paths = new(StringComparer.Ordinal);
    private readonly HashSet<string> sections = new(StringComparer.Ordinal);
    private readonly HashSet<string> flanged = new(StringComparer.Ordinal);
    private readonly HashSet<string> wraps = new(StringComparer.Ordinal);
    private readonly HashSet<string> components = new(StringComparer.Ordinal);
    private readonly HashSet<string> transitions = new(StringComparer.Ordinal);
    private readonly HashSet<string> curvedPanels = new(StringComparer.Ordinal);
    private readonly HashSet<string> stations = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableDictionary<string, Dimension>> tables = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Place> places = new(StringComparer.Ordinal);

    public IEnumerable<string> AllNames => kinds.Keys.Concat(values.Keys).Order(StringComparer.Ordinal);
    public IEnumerable<string> AllMeasures => Measures.Names;
    public IEnumerable<string> AllShapes => shapes.Concat(points).Concat(stations).Concat(components).Order(StringComparer.Ordinal);
    public IEnumerable<string> Shapes => shapes.Order(StringComparer.Ordinal);
    public IEnumerable<string> Points => points.Order(StringComparer.Ordinal);
    public IEnumerable<string> Sections => sections.Order(StringComparer.Ordinal);
    public IEnumerable<string> Flanged => flanged.Order(StringComparer.Ordinal);
    public IEnumerable<string> Wraps => wraps.Order(StringComparer.Ordinal);
    public IEnumerable<string> Components => components.Order(StringComparer.Ordinal);
    public IEnumerable<string> Transitions => transitions.Order(StringComparer.Ordinal);
    public IEnumerable<string> CurvedPanels => curvedPanels.Order(StringComparer.Ordinal);
    public IEnumerable<string> Stations => stations.Order(StringComparer.Ordinal);
    public IEnumerable<string> ShapesAndPaths => shapes.Concat(paths).Order(StringComparer.Ordinal);
    public IEnumerable<string> Paths => paths.Order(StringComparer.Ordinal);
    public IEnumerable<string> Tables => tables.Keys.Order(StringComparer.Ordinal);
    public IEnumerable<string> Choices => kinds.Where(k => k.Value is ChoiceKind).Select(k => k.Key).Order(StringComparer.Ordinal);

    public void AddParameter(ScalarNode name, ValueKind kind, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) kinds[name.Text] = kind;
    }

    /// <summary>A derived value: what it is follows from the first of its expressions that is sound.</summary>
    public void AddValue(ScalarNode name, ImmutableArray<Expression> expressions, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) values[name.Text] = expressions;
    }

    /// <summary>A derived value that cannot be read.</summary>
    public void AddUnread(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) kinds[name.Text] = ValueKind.Number;
    }

    /// <summary>A derived value from the column of a table.</summary>
    public void AddValue(ScalarNode name, Dimension dimension, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) kinds[name.Text] = ValueKind.Of(dimension);
    }

    public void AddPath(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) paths.Add(name.Text);
    }

    public void AddSection(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) sections.Add(name.Text);
    }

    public void AddFlanged(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) flanged.Add(name.Text);
    }

    public void AddWrap(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) wraps.Add(name.Text);
    }

    public void AddComponent(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) components.Add(name.Text);
    }

    public void AddTransition(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) transitions.Add(name.Text);
    }

    public void AddCurvedPanel(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) curvedPanels.Add(name.Text);
    }

    public void AddStations(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) stations.Add(name.Text);
    }

    public void AddTable(ScalarNode name, ImmutableDictionary<string, Dimension> columns, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) tables[name.Text] = columns;
    }

    public void AddShape(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) shapes.Add(name.Text);
    }

    public void AddPoint(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (IsNew(name, complaints)) points.Add(name.Text);
    }

    public bool KnowsShape(string name) => shapes.Contains(name) || points.Contains(name) || stations.Contains(name) || components.Contains(name);

    public bool IsShape(string name) => shapes.Contains(name);

    public bool IsPath(string name) => paths.Contains(name);

    public bool IsSection(string name) => sections.Contains(name);

    public bool IsFlanged(string name) => flanged.Contains(name);

    public bool IsWrap(string name) => wraps.Contains(name);
    public bool IsComponent(string name) => components.Contains(name);
    public bool IsTransition(string name) => transitions.Contains(name);
    public bool IsCurvedPanel(string name) => curvedPanels.Contains(name);

    public bool IsStations(string name) => stations.Contains(name);

    /// <summary>What the columns of a table hold; none where the name is not a table.</summary>
    public ImmutableDictionary<string, Dimension> ColumnsOf(string name) =>
        tables.GetValueOrDefault(name, ImmutableDictionary<string, Dimension>.Empty);

    public bool IsPoint(string name) => points.Contains(name);

    public bool TryMeasure(string function, int arity, out Dimension dimension) => Measures.TryFind(function, arity, out dimension);

    public bool TryKind(string name, out ValueKind kind)
    {
        if (kinds.TryGetValue(name, out kind!)) return true;
        kind = ValueKind.Number;
        if (!values.TryGetValue(name, out var expressions)) return false;
        // What a derived value is follows from its expression. A circle is complained of when values are put in; a faulty
        // expression where it stands.
        if (!inProgress.Add(name)) return true;
        var found = false;
        foreach (var expression in expressions.Where(e => !found && e.Text.Trim() != "0").DefaultIfEmpty(expressions[0]))
            found = found || expression.TryCheck(this, new List<Complaint>(), out kind);
        inProgress.Remove(name);
        if (found) kinds[name] = kind;
        return true;
    }

    /// <summary>The words of a choice parameter; none where the name is not a choice.</summary>
    public ImmutableArray<string> OptionsOf(string name) =>
        kinds.TryGetValue(name, out var kind) && kind is ChoiceKind choice ? choice.Options : [];

    private bool IsNew(ScalarNode name, ICollection<Complaint> complaints)
    {
        if (!Expression.IsName(name.Text) || Expression.IsReserved(name.Text))
        {
            complaints.Add(Wordings.NotAName(name.Place, name.Text));
            return false;
        }
        if (places.TryAdd(name.Text, name.Place)) return true;
        complaints.Add(Wordings.NameTaken(name.Place, name.Text, places[name.Text]));
        return false;
    }
}
