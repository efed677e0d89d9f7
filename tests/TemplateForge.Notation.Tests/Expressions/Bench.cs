using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace TemplateForge.Notation.Tests;

/// <summary>A few names, measures and shapes to try expressions with.</summary>
internal sealed class Bench : IExpressionNames, IExpressionValues
{
    private readonly Dictionary<string, (ValueKind Kind, Value Value)> known = new(StringComparer.Ordinal)
    {
        ["diameter"] = (ValueKind.Length, Value.Of(Quantity.Length(190))),
        ["clearance"] = (ValueKind.Length, Value.Of(Quantity.Length(12))),
        ["nothing"] = (ValueKind.Length, Value.Of(Quantity.Length(0))),
        ["tilt"] = (ValueKind.Angle, Value.Of(Quantity.Angle(8))),
        ["count"] = (ValueKind.Number, Value.Of(Quantity.Number(3))),
        ["process"] = (ValueKind.Choice("mig", "tig"), Value.Of("mig")),
        ["outline"] = (ValueKind.Choice("rounded-rectangle", "round"), Value.Of("rounded-rectangle")),
        ["lapped"] = (ValueKind.Truth, Value.Of(true)),
    };

    public IEnumerable<string> AllNames => known.Keys;
    public IEnumerable<string> AllMeasures => ["top", "distance", "area", "gone"];
    public IEnumerable<string> AllShapes => ["opening", "edge"];

    public bool TryKind(string name, out ValueKind kind)
    {
        var isKnown = known.TryGetValue(name, out var found);
        kind = isKnown ? found.Kind : ValueKind.Number;
        return isKnown;
    }

    public bool TryMeasure(string function, int arity, out Dimension dimension)
    {
        dimension = function == "area" ? Dimension.Area : Dimension.Length;
        return (function, arity) is ("top", 1) or ("distance", 2) or ("area", 1) or ("gone", 1);
    }

    public bool KnowsShape(string name) => AllShapes.Contains(name);

    public bool TryValue(string name, Place place, [MaybeNullWhen(false)] out Value value)
    {
        value = known[name].Value;
        return true;
    }

    public bool TryMeasure(string function, ImmutableArray<string> shapes, Place place, out Quantity measure)
    {
        measure = (function, string.Join(',', shapes)) switch
        {
            ("top", "opening") => Quantity.Length(35.25),
            ("distance", "opening,edge") => Quantity.Length(40),
            ("area", "opening") => Quantity.Area(900),
            _ => Quantity.Length(double.NaN),
        };
        return true;
    }

    public static Expression Read(string text)
    {
        Expression? expression = null;
        Heard.Nothing(complaints => Expression.TryRead(text, Heard.Start, complaints, out expression));
        return expression!;
    }

    public static Complaint NotRead(string text) => Heard.One(complaints => Expression.TryRead(text, Heard.Start, complaints, out _));

    public static ValueKind Check(string text)
    {
        var kind = ValueKind.Number;
        Heard.Nothing(complaints => Read(text).TryCheck(new Bench(), complaints, out kind));
        return kind;
    }

    public static Complaint NotRight(string text) => Heard.One(complaints => Read(text).TryCheck(new Bench(), complaints, out _));

    /// <summary>The value of an expression that is right; it must be of the kind that the check told.</summary>
    public static Value Evaluate(string text)
    {
        var kind = Check(text);
        var value = Value.Of(false);
        Heard.Nothing(complaints => Read(text).TryEvaluate(new Bench(), complaints, out value));
        if (value is QuantityValue quantity)
            Assert.Equal(ValueKind.Of(quantity.Quantity.Dimension), kind);
        return value;
    }

    public static Complaint NotComputed(string text)
    {
        Check(text);
        return Heard.One(complaints => Read(text).TryEvaluate(new Bench(), complaints, out _));
    }
}
