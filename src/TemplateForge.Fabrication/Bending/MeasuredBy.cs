namespace TemplateForge.Fabrication;

/// <summary>To where the length of a leg is measured at each of its bends; at an edge of the sheet it is measured to the edge.</summary>
public enum MeasuredBy
{
    /// <summary>Over the outside: to the mould line up to 90°, past that to the furthest point of the round.</summary>
    Outside,

    /// <summary>On the inside: to where the inner faces would meet up to 90°, past that to the bottom of the round.</summary>
    Inside,

    /// <summary>To the mould line, where the outer faces would meet; there is none from 180° on.</summary>
    MouldLine,

    /// <summary>To the tangent line: what stays flat.</summary>
    TangentLine,
}

/// <summary>What the ways of measuring take off a leg.</summary>
internal static class Measuring
{
    public static double SetbackOf(this MeasuredBy by, Bend bend) => by switch
    {
        MeasuredBy.Outside => bend.OutsideSetback,
        MeasuredBy.Inside => bend.InsideSetback,
        MeasuredBy.MouldLine => bend.Setback,
        _ => 0,
    };
}
