using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>One set of values put into a profile: works out what is asked for, once, and complains of what cannot be.</summary>
/// <remarks>
/// A value, point or shape is worked out when something needs it, so that what belongs to another choice is never touched. Every
/// Try that answers false has complained, or one that it asked has.
/// </remarks>
internal sealed class Evaluation(Definitions definitions, ImmutableDictionary<string, Value> parameters, ICollection<Complaint> complaints)
    : IExpressionValues
{
    /// <summary>The most holes or tacks in one row: a profile from a stranger must not keep a computer busy for ever.</summary>
    public const int MostRepeats = 500;

    // Coordinates in a shop lie within ±100 m; there the geometry keeps its promises.
    private const double Reach = 100_000;
    private const int MostSegments = 20_000;

    private readonly Dictionary<string, Value> values = [];
    private readonly Dictionary<string, Region> shapes = [];
    private readonly Dictionary<string, Point> points = [];
    private readonly Dictionary<string, Path> paths = [];
    private readonly Dictionary<string, StationRow> stations = [];
    private readonly Dictionary<string, BentSection> sections = [];
    private readonly Dictionary<string, BentFlanges> flanged = [];
    private readonly Dictionary<string, WrapPattern> wraps = [];
    private readonly Dictionary<string, Component> components = [];
    private readonly Dictionary<string, LeastClearance> clearances = [];
    private readonly Dictionary<string, BentTransition> transitions = [];
    private readonly Dictionary<string, CurvedPanel> curvedPanels = [];
    private readonly Dictionary<string, ImmutableArray<Quantity>> rows = [];
    private readonly HashSet<string> failed = [];
    private readonly HashSet<string> inProgress = [];

    /// <summary>Complains, once for each thing that is wrong, and answers false.</summary>
    public bool Refuse(Complaint complaint)
    {
        if (!complaints.Contains(complaint)) complaints.Add(complaint);
        return false;
    }

    public bool TryLength(Term term, out double millimetres) => TryNumber(term, out millimetres);

    /// <summary>A length that must be more than 0.</summary>
    public bool TrySize(Term term, out double millimetres) =>
        TryNumber(term, out millimetres)
        && (millimetres > Tolerance.Length || Refuse(Wordings.SizeNotPositive(term.Place, millimetres)));

    /// <summary>A length of 0 or more.</summary>
    public bool TryAtLeastZero(Term term, out double millimetres) =>
        TryNumber(term, out millimetres)
        && (millimetres >= 0 || Refuse(Wordings.BelowZero(term.Place, millimetres)));

    /// <summary>A number between two others, which it may be.</summary>
    public bool TryWithin(Term term, double least, double most, out double number) =>
        TryNumber(term, out number)
        && ((number >= least && number <= most) || Refuse(Wordings.NumberOutOfBounds(term.Place, number, least, most)));

    /// <summary>An angle of more than one and no more than another, in degrees.</summary>
    public bool TryTurn(Term term, double moreThan, double most, out Angle angle)
    {
        var found = TryNumber(term, out var degrees)
            && ((degrees > moreThan + 1e-9 && degrees <= most + 1e-9) || Refuse(Wordings.TurnOutOfBounds(term.Place, degrees, moreThan, most)));
        angle = Angle.FromDegrees(Math.Min(degrees, most));
        return found;
    }

    public bool TryAngle(Term term, out Angle angle)
    {
        var found = TryNumber(term, out var degrees);
        angle = Angle.FromDegrees(degrees);
        return found;
    }

    public bool TryTruth(Term term, out bool truth)
    {
        truth = false;
        if (!TryValue(term, out var value)) return false;
        truth = value.AsTruth();
        return true;
    }

    /// <summary>A whole number from 1, or from 0 where none will do.</summary>
    public bool TryCount(Term term, int most, out int count, int least = 1)
    {
        count = 0;
        if (!TryNumber(term, out var number)) return false;
        var whole = Math.Round(number);
        if (Math.Abs(number - whole) > 1e-9 || whole < least || whole > most) return Refuse(Wordings.CountNotWhole(term.Place, number, least, most));
        count = (int)whole;
        return true;
    }

    public bool TryValue(Term term, [MaybeNullWhen(false)] out Value value)
    {
        value = null;
        return TryPick(term.Choice, out var expression) && expression.TryEvaluate(this, complaints, out value!);
    }

    /// <summary>Whether every condition holds.</summary>
    public bool TryHolds(ImmutableArray<Term> conditions, out bool holds)
    {
        holds = true;
        foreach (var condition in conditions)
        {
            if (!TryTruth(condition, out var truth)) return false;
            if (truth) continue;
            holds = false;
            break;
        }
        return true;
    }

    public bool TryText(FilledText text, out string filled) => text.TryFill(this, complaints, out filled);

    public bool TryChosenText(Chosen<FilledText> text, out string filled)
    {
        filled = "";
        return TryPick(text, out var chosen) && TryText(chosen, out filled);
    }

    public delegate bool Maker<TIn, TOut>(TIn recipe, out TOut made);

    /// <summary>Makes every thing whose conditions hold.</summary>
    public bool TryMany<TIn, TOut>(ImmutableArray<Conditional<TIn>> recipes, Maker<TIn, TOut> make, out ImmutableArray<TOut> made)
    {
        var sound = true;
        var things = ImmutableArray.CreateBuilder<TOut>();
        foreach (var recipe in recipes)
        {
            if (!TryHolds(recipe.When, out var holds)) sound = false;
            else if (holds && make(recipe.Thing, out var thing)) things.Add(thing);
            else sound &= !holds;
        }
        made = things.ToImmutable();
        return sound;
    }

    public bool TryPoint(PointTerm term, out Point point) => term.TryFind(this, out point);

    public bool IsWithinReach(Point point, Place place) =>
        (Math.Abs(point.X) <= Reach && Math.Abs(point.Y) <= Reach) || Refuse(Wordings.OutOfReach(place, point));

    public bool TryPick<T>(Chosen<T> chosen, [MaybeNullWhen(false)] out T thing)
    {
        thing = default;
        if (chosen.By.Length == 0) return chosen.Options.TryGetValue("", out thing);
        return TryValue(chosen.By, chosen.Place, out var word) && chosen.Options.TryGetValue(word.AsWord(), out thing);
    }

    public bool TryNamedPoint(string name, Place place, out Point point) =>
        TryOnce(points, name, place, out point, (out Point made) => definitions.Points[name].TryFind(this, out made));

    public bool TryPath(string name, Place place, [MaybeNullWhen(false)] out Path path) =>
        TryOnce(paths, name, place, out path, (out Path made) => definitions.Paths[name].TryMake(this, out made!));

    public bool TryStations(StationsName row, [MaybeNullWhen(false)] out StationRow made) =>
        TryOnce(stations, row.Name, row.Place, out made, (out StationRow fresh) => definitions.Stations[row.Name].TryMake(this, out fresh!));

    public bool TrySection(SectionName section, [MaybeNullWhen(false)] out BentSection made) =>
        TryOnce(sections, section.Name, section.Place, out made, (out BentSection fresh) => definitions.Sections[section.Name].TryMake(this, out fresh!));

    public bool TryFlanged(FlangedName name, [MaybeNullWhen(false)] out BentFlanges made) =>
        TryOnce(flanged, name.Name, name.Place, out made, (out BentFlanges fresh) => definitions.Flanged[name.Name].TryMake(this, out fresh!));

    public bool TryWrap(WrapName name, [MaybeNullWhen(false)] out WrapPattern made) =>
        TryOnce(wraps, name.Name, name.Place, out made, (out WrapPattern fresh) => definitions.Wraps[name.Name].TryMake(this, out fresh!));
    public bool TryComponent(ComponentName name, [MaybeNullWhen(false)] out Component made) =>
        TryOnce(components, name.Name, name.Place, out made, (out Component fresh) => definitions.Components[name.Name].TryMake(this, out fresh!));

    /// <summary>How near what stays, or what is all round an opening, comes to a component.</summary>
    public bool TryClearance(ShapeName shape, bool isOpening, ComponentName component, [MaybeNullWhen(false)] out LeastClearance made) =>
        TryOnce(clearances, $"{(isOpening ? "in" : "of")} {shape.Name} {component.Name}", shape.Place, out made, (out LeastClearance fresh) =>
        {
            fresh = null!;
            if (!(TryShape(shape, out var region) & TryComponent(component, out var near))) return false;
            if (region.IsEmpty) return Refuse(Wordings.ShapeIsEmpty(shape));
            fresh = isOpening ? LeastClearance.OfOpening(region, [near!]) : LeastClearance.OfMetal(region, [near!]);
            return true;
        });
    public bool TryCurvedPanel(CurvedPanelName name, [MaybeNullWhen(false)] out CurvedPanel made) =>
        TryOnce(curvedPanels, name.Name, name.Place, out made, (out CurvedPanel fresh) => definitions.CurvedPanels[name.Name].TryMake(this, out fresh!));

    public bool TryTransition(TransitionName name, [MaybeNullWhen(false)] out BentTransition made) =>
        TryOnce(transitions, name.Name, name.Place, out made, (out BentTransition fresh) => definitions.Transitions[name.Name].TryMake(this, out fresh!));

    /// <summary>A section, a flanged sheet or a transition.</summary>
    public bool TryBent(BentName name, [MaybeNullWhen(false)] out BentSheet made)
    {
        made = null;
        if (definitions.Sections.ContainsKey(name.Name))
        {
            if (!TrySection(new(name.Name, name.Place), out var section)) return false;
            made = section;
            return true;
        }
        if (definitions.Transitions.ContainsKey(name.Name))
        {
            if (!TryTransition(new(name.Name, name.Place), out var transition)) return false;
            made = transition;
            return true;
        }
        if (!TryFlanged(new(name.Name, name.Place), out var bent)) return false;
        made = bent;
        return true;
    }

    /// <summary>The value of a column in the row of a table that is chosen with these values.</summary>
    public bool TryCell(string name, string column, out Quantity cell)
    {
        var table = definitions.Tables[name];
        var found = TryOnce(rows, name, table.Place, out var cells, (out ImmutableArray<Quantity> made) => table.TryRow(this, out made));
        cell = found ? cells[table.Columns.IndexOf(column)] : default;
        return found;
    }

    /// <summary>Copies of a shape, joined.</summary>
    public bool TryCopies(Place place, ShapeName shape, IReadOnlyCollection<Placement> placements, out Region copies)
    {
        copies = Region.Empty;
        if (!TryShape(shape, out var one)) return false;
        if (one.IsEmpty) return Refuse(Wordings.ShapeIsEmpty(shape));
        if (one.Contours.Sum(c => c.Segments.Length) * placements.Count > MostSegments)
            return Refuse(Wordings.TooManySegments(place, $"So many of {shape.Name}", MostSegments));
        copies = placements.Count == 1 ? one.Placed(placements.First()) : Combination.Union(placements.Select(p => one.Placed(p)));
        return true;
    }

    public bool TryShape(ShapeName shape, out Region region)
    {
        var found = TryOnce(shapes, shape.Name, shape.Place, out var made, (out Region fresh) => TryMakeShape(shape.Name, out fresh));
        region = made ?? Region.Empty;
        return found;
    }

    public bool TryShapes(ImmutableArray<ShapeName> names, out ImmutableArray<Region> regions)
    {
        var found = true;
        var made = ImmutableArray.CreateBuilder<Region>();
        foreach (var name in names)
        {
            found &= TryShape(name, out var region);
            made.Add(region);
        }
        regions = made.ToImmutable();
        return found;
    }

    /// <summary>The one outer contour of a shape.</summary>
    public bool TryOutline(ShapeName shape, [MaybeNullWhen(false)] out Contour outline)
    {
        outline = null;
        if (!TryShape(shape, out var region)) return false;
        var outer = region.Contours.Where(c => c.IsCounterClockwise).ToList();
        if (outer.Count != 1) return Refuse(Wordings.NotOneOutline(shape, outer.Count));
        outline = outer[0];
        return true;
    }

    /// <summary>A parameter or derived value by its name.</summary>
    public bool TryValue(string name, Place place, [MaybeNullWhen(false)] out Value value)
    {
        if (parameters.TryGetValue(name, out value)) return true;
        if (definitions.Values.TryGetValue(name, out var recipe))
            return TryOnce(values, name, place, out value, (out Value made) => recipe.TryFind(this, out made!));
        // A parameter that is known but has no value now is not asked for with these choices.
        return Refuse(Wordings.ParameterNotAskedFor(place, name, definitions.WhenOf(name)));
    }

    /// <summary>A measure of shapes and points.</summary>
    public bool TryMeasure(string function, ImmutableArray<string> of, Place place, out Quantity measure)
    {
        measure = default;
        if (Measures.IsClearance(function, out var isOpening))
        {
            if (!definitions.Shapes.ContainsKey(of[0]) || !definitions.Components.ContainsKey(of[1]))
                return Refuse(Wordings.ClearanceOfWhat(place, function, of));
            if (!TryClearance(new(of[0], place), isOpening, new(of[1], place), out var least)) return false;
            measure = new(least.Distance, Dimension.Length);
            return true;
        }
        if (of.FirstOrDefault(definitions.Components.ContainsKey) is { } component) return Refuse(Wordings.ComponentIsNoShape(place, function, component));
        var things = new List<Thing>();
        foreach (var name in of)
        {
            if (definitions.Points.ContainsKey(name))
            {
                if (!TryNamedPoint(name, place, out var point)) return false;
                things.Add(new Thing(point));
                continue;
            }
            if (definitions.Stations.ContainsKey(name))
            {
                if (!TryStations(new(name, place), out var row)) return false;
                things.Add(new Thing(row));
                continue;
            }
            if (!TryShape(new(name, place), out var shape)) return false;
            if (shape.IsEmpty) return Refuse(Wordings.ShapeIsEmpty(new(name, place)));
            things.Add(new Thing(shape));
        }
        return Measures.TryOf(function, things, out measure) || Refuse(Wordings.NoSuchMeasure(place, function, of));
    }

    private bool TryNumber(Term term, out double number)
    {
        number = 0;
        if (!TryValue(term, out var value)) return false;
        number = value.AsQuantity().Value;
        return true;
    }

    private bool TryMakeShape(string name, out Region region)
    {
        var recipe = definitions.Shapes[name];
        if (!recipe.TryMake(this, out region)) return false;
        if (region.Contours.Sum(c => c.Segments.Length) > MostSegments) return Refuse(Wordings.TooManySegments(recipe.Place, name, MostSegments));
        return region.IsEmpty
            || (IsWithinReach(region.Bounds.Min, recipe.Place) && IsWithinReach(region.Bounds.Max, recipe.Place));
    }

    private delegate bool Maker<T>(out T made);

    // Worked out once and remembered; what needs itself is complained of, and what failed fails again without a second complaint.
    private bool TryOnce<T>(Dictionary<string, T> known, string name, Place place, [MaybeNullWhen(false)] out T thing, Maker<T> make)
    {
        if (known.TryGetValue(name, out thing)) return true;
        if (failed.Contains(name)) return false;
        if (!inProgress.Add(name)) return Refuse(Wordings.NeedsItself(place, name));
        var made = make(out thing!);
        inProgress.Remove(name);
        if (made) known[name] = thing;
        else failed.Add(name);
        return made;
    }
}
