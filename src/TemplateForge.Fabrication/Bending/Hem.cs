using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Edges that are turned back on themselves, as the folds that end a section.</summary>
public static class Hem
{
    /// <summary>Folded flat.</summary>
    /// <param name="width">Over the outside, from fold to cut edge, in mm.</param>
    /// <param name="thickness">Of the sheet, in mm.</param>
    /// <param name="way">Which way the edge turns.</param>
    /// <remarks>By <see cref="HemRule"/>: the blank grows by the width.</remarks>
    public static ImmutableArray<Fold> Closed(double width, double thickness, BendWay way) =>
        [new(new(Angle.HalfTurn, 0, thickness, new HemRule()), way, new(width))];

    /// <summary>Folded flat twice, so that the cut edge is hidden.</summary>
    /// <remarks>By <see cref="HemRule"/>: the blank grows by twice the width. The inner layer ends where the round of the outer fold begins.</remarks>
    /// <param name="width">Over the outside of the finished hem, in mm.</param>
    /// <param name="thickness">Of the sheet, in mm.</param>
    /// <param name="way">Which way the edge turns.</param>
    public static ImmutableArray<Fold> Double(double width, double thickness, BendWay way) =>
    [
        new(new(Angle.HalfTurn, thickness / 2, thickness, new HemRule()), way, new(width)),
        new(new(Angle.HalfTurn, 0, thickness, new HemRule()), way, new(width - 1.5 * thickness)),
    ];

    /// <summary>Folded back with air between.</summary>
    /// <param name="width">Over the outside, from fold to cut edge, in mm.</param>
    /// <param name="gap">Clear between the layers, in mm, more than 0.</param>
    /// <param name="thickness">Of the sheet, in mm.</param>
    /// <param name="way">Which way the edge turns.</param>
    /// <param name="rule">By which the fold is reckoned, with half the gap as inside radius.</param>
    public static ImmutableArray<Fold> Open(double width, double gap, double thickness, BendWay way, BendRule rule) =>
        [new(new(Angle.HalfTurn, gap / 2, thickness, rule), way, new(width))];

    /// <summary>Rolled round a rod up to the cut edge.</summary>
    /// <param name="angle">How far round: more than 180°, at most 360°, less where the sheet needs room to leave.</param>
    /// <param name="insideRadius">Of the roll, in mm; the handbooks want 2 thicknesses at least.</param>
    /// <param name="thickness">Of the sheet, in mm.</param>
    /// <param name="way">Which way the edge turns.</param>
    /// <param name="rule">By which the roll is reckoned.</param>
    public static ImmutableArray<Fold> Rolled(Angle angle, double insideRadius, double thickness, BendWay way, BendRule rule) =>
        [new(new(angle, insideRadius, thickness, rule), way, new(0, MeasuredBy.TangentLine))];
}
