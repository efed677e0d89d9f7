using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads an outline or a path drawn step by step: a start, then lines and arcs.</summary>
internal static class OutlineReader
{
    private const int MostSteps = 2_000;

    private static readonly ImmutableArray<Field> Corner =
    [
        Field.May("fillet", Holds.Expression, "the corner at this end rounded, by its radius"),
        Field.May("chamfer", Holds.Expression, "the corner at this end cut straight off, so far along both sides"),
    ];

    private static readonly Field Turning = Field.Must("turning", Holds.OneOf("left", "right"), "the way an arc turns");

    private static readonly Word Start = new("start", "where the drawing begins", [Field.Must("start", Holds.Point, "the first point"), .. Corner]);

    private static readonly Word LineTo = new("line_to", "a straight line to a point", [Field.Must("line_to", Holds.Point, "its end"), .. Corner]);

    private static readonly Word Line = new("line", "a straight line by its length and direction",
        [Field.Must("line", Holds.Expression, "its length"), Field.May("towards", Holds.Expression, "its direction; straight on if nothing is said"), .. Corner]);

    private static readonly Word ArcThrough = new("through", "an arc to a point that goes through another",
        [Field.Must("arc_to", Holds.Point, "its end"), Field.Must("through", Holds.Point, "a point that it goes through"), .. Corner]);

    private static readonly Word ArcTo = new("arc_to", "an arc to a point by its radius",
        [Field.Must("arc_to", Holds.Point, "its end"), Field.Must("radius", Holds.Expression, "its radius"), Turning, .. Corner]);

    private static readonly Word TangentTo = new("tangent_to", "an arc that goes on without a corner, to a point",
        [Field.Must("tangent_to", Holds.Point, "its end"), .. Corner]);

    private static readonly Word TangentArc = new("tangent_arc", "an arc that goes on without a corner, by turned angle and radius",
        [Field.Must("tangent_arc", Holds.Expression, "the angle that it turns through"), Field.Must("radius", Holds.Expression, "its radius"), Turning, .. Corner]);

    private static readonly Word Smooth = new("smooth_through", "a smooth curve through measured points, in arcs",
        [Field.Must("smooth_through", Holds.ListOf(Holds.Point, 1), "the points after the one where the drawing is"),
            Field.May("within", Holds.Expression, "how far the arcs may stray from the curve; 0.001 mm if nothing is said, fewer arcs for more"), .. Corner]);

    public static ImmutableArray<Word> Words { get; } = [Start, LineTo, Line, ArcThrough, ArcTo, TangentTo, TangentArc, Smooth];

    public static ShapeRecipe Read(Reading reading, Node node)
    {
        var (start, atStart, steps) = ReadSteps(reading, node);
        return new OutlineRecipe(node.Place, start, atStart, steps);
    }

    public static PathRecipe ReadPath(Reading reading, Node node)
    {
        var (start, atStart, steps) = ReadSteps(reading, node);
        foreach (var corner in steps.Select(s => s.Corner).Prepend(atStart).Where(c => !c.IsSharp))
            reading.Complain(Wordings.PathCornersStaySharp(corner.Fillet.Concat(corner.Chamfer).First().Place));
        return new(node.Place, start, steps);
    }

    private static (PointTerm Start, CornerTerm AtStart, ImmutableArray<OutlineStep> Steps) ReadSteps(Reading reading, Node node)
    {
        var (start, atStart) = ((PointTerm)new NamedPoint(node.Place, ""), CornerTerm.Sharp);
        var steps = ImmutableArray.CreateBuilder<OutlineStep>();
        var isFirst = true;
        foreach (var item in reading.Items(node).Take(MostSteps))
        {
            // A start that is missing, or stands again, is complained of in the words for a step.
            if (!reading.TryOpen(item, "A step of the outline", isFirst ? [Start] : Words[1..], out var fields, out var word))
            {
                isFirst = false;
                continue;
            }
            if (word == Start) (start, atStart) = (reading.Point(fields, "start"), ReadCorner(reading, fields));
            else steps.Add(ReadStep(reading, fields, word));
            isFirst = false;
        }
        if (node is SequenceNode { Items.Length: > MostSteps }) reading.Complain(Wordings.TooManySteps(node.Place, MostSteps));
        if (steps.Count == 0) reading.Complain(Wordings.OutlineWithoutArea(node.Place));
        return (start, atStart, steps.ToImmutable());
    }

    private static OutlineStep ReadStep(Reading reading, Fields fields, Word word)
    {
        var (place, corner) = (fields.Place, ReadCorner(reading, fields));
        if (word == LineTo) return new LineStep(place, corner, reading.Point(fields, "line_to"));
        if (word == Line)
            return new LineOnStep(place, corner, reading.Length(fields, "line"), fields.Optional("towards", out var towards) ? [reading.Angle(towards)] : []);
        if (word == TangentTo) return new TangentToStep(place, corner, reading.Point(fields, "tangent_to"));
        if (word == TangentArc)
            return new TangentArcStep(place, corner, reading.Angle(fields, "tangent_arc"), reading.Length(fields, "radius"), TurnsLeft(reading, fields));
        if (word == Smooth) return SmoothStep.Read(reading, fields, corner);
        var end = reading.Point(fields, "arc_to");
        return word == ArcThrough
            ? new ArcThroughStep(place, corner, end, reading.Point(fields, "through"))
            : new ArcRadiusStep(place, corner, end, reading.Length(fields, "radius"), TurnsLeft(reading, fields));
    }

    private static bool TurnsLeft(Reading reading, Fields fields) =>
        fields.Required("turning", out var turning) && reading.OneOf(turning, "left", "right") == "left";

    private static CornerTerm ReadCorner(Reading reading, Fields fields)
    {
        var isRounded = fields.Optional("fillet", out var fillet);
        var isChamfered = fields.Optional("chamfer", out var chamfer);
        if (isRounded && isChamfered) reading.Complain(Wordings.OneOfWanted(chamfer.Place, "fillet", "chamfer"));
        return new(isRounded ? [reading.Length(fillet)] : [], isChamfered ? [reading.Length(chamfer)] : []);
    }
}
