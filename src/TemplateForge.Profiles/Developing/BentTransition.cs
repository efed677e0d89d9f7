using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A transition laid flat: what a piece that is cut from it must know.</summary>
internal sealed record BentTransition(TransitionPattern Pattern, FoldedSheet Sheet) : BentSheet(Sheet)
{
    // Past this many degrees to and fro the sheet shows that it does not unroll.
    private const double MostTwist = 5;

    private bool IsRolled => Pattern.Transition.Work == TransitionWork.Rolled;

    public override ImmutableArray<string> Notes =>
    [
        IsRolled
            ? "Laid flat by triangulation along the middle of the sheet; its edges are as long as the arcs that they meet. The inside is up."
            : "Laid flat by triangulation along the middle of the sheet; its edges are the chords of the arcs that they meet. The inside is up.",
        .. Pattern.Parts.Any(p => p.Bends.Any(b => b.IsPressLine))
            ? (ImmutableArray<string>)["Press each line a little, go over all of them again, and try the ends in what they meet after every round. A stretch between two lines may be rolled instead."]
            : [],
        .. Pattern.Parts.Any(p => !p.LapLines.IsEmpty)
            ? (ImmutableArray<string>)["Where a lap begins a line is scribed: the edge of the other sheet comes to lie on it."]
            : [],
    ];

    public override ImmutableArray<BendLine> LinesOn(Region blank)
    {
        var lines = ImmutableArray.CreateBuilder<BendLine>();
        foreach (var part in PartsOn(blank))
        {
            var before = lines.Count == 0 ? 0 : lines.Max(l => l.Number);
            lines.AddRange(part.Bends.Select(bend => bend with { Number = before + bend.Number }));
        }
        return lines.ToImmutable();
    }

    public override ImmutableArray<EdgeView> EdgeViews => [];

    public override ImmutableArray<Path> ScribedOn(Region blank) => [.. PartsOn(blank).SelectMany(p => p.LapLines)];

    public override ImmutableArray<Label> LabelsOn(Region blank) =>
    [
        .. PartsOn(blank).SelectMany(part => (IEnumerable<Label>)
        [
            .. OfEdge(part.LowerEdge, Pattern.Transition.Lower.Title),
            .. OfEdge(part.UpperEdge, Pattern.Transition.Upper.Title),
        ]),
    ];

    public override ImmutableArray<Warning> WarningsOn(Region blank) => Pattern.Twist <= MostTwist || PartsOn(blank).FirstOrDefault() is not { } part
        ? []
        :
        [
            new(
                "does not unroll",
                string.Create(CultureInfo.InvariantCulture, $"Between these outlines no sheet can be rolled without being stretched: it would be bent {Pattern.Twist:0}° to and fro in all. Press it in flats, or round the outlines alike."),
                part.Shape.Bounds.Centre,
                "geometry"),
        ];

    private IEnumerable<TransitionPart> PartsOn(Region blank) => Pattern.Parts.Where(part =>
    {
        var (lower, upper, _) = part.Rulings[part.Rulings.Length / 2];
        return blank.Contains(lower.MidpointTo(upper));
    });

    private static IEnumerable<Label> OfEdge(ImmutableArray<Path> runs, string title)
    {
        if (runs.IsEmpty) yield break;
        var length = runs.Sum(r => r.Length);
        var longest = runs.MaxBy(r => r.Length)!;
        yield return new(string.Create(CultureInfo.InvariantCulture, $"{title}, {length:0.0} long"), longest.PointAlong(longest.Length * 0.45));
    }
}
