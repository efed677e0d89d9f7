using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads an outline drawn step by step: a start, then lines and arcs.</summary>
internal static class OutlineReader
{
    private const int MostSteps = 2_000;

    public static ShapeRecipe Read(Reading reading, Node node)
    {
        var start = (PointTerm)new NamedPoint(node.Place, "");
        var steps = ImmutableArray.CreateBuilder<OutlineStep>();
        foreach (var (item, i) in reading.Items(node).Take(MostSteps).Select((item, i) => (item, i)))
        {
            if (item is not MappingNode mapping)
            {
                reading.Complain(Wordings.OutlineStepWanted(item.Place));
                continue;
            }
            var fields = reading.Fields(mapping, "A step of the outline");
            if (i == 0) start = reading.Point(fields, "start");
            else if (fields.Optional("line_to", out var to)) steps.Add(new LineStep(reading.Point(to)));
            else if (fields.Optional("arc_to", out var end)) steps.Add(ReadArc(reading, fields, reading.Point(end)));
            else reading.Complain(Wordings.OutlineStepWanted(item.Place));
            fields.Done();
        }
        if (node is SequenceNode { Items.Length: > MostSteps }) reading.Complain(Wordings.TooManySteps(node.Place, MostSteps));
        if (steps.Count == 0) reading.Complain(Wordings.OutlineWithoutArea(node.Place));
        return new OutlineRecipe(node.Place, start, steps.ToImmutable());
    }

    private static OutlineStep ReadArc(Reading reading, Fields fields, PointTerm end)
    {
        if (fields.Optional("through", out var through)) return new ArcThroughStep(end, reading.Point(through));
        var radius = reading.Length(fields, "radius");
        var turning = reading.Words(fields, "turning");
        if (turning is not ("left" or "right")) reading.Complain(Wordings.LeftOrRightWanted(fields.Place, turning));
        return new ArcRadiusStep(end, radius, turning == "left");
    }
}
