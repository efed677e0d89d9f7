using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What a piece asks of whoever cuts it on a machine.</summary>
internal sealed record CuttingRecipe(
    Place Place, ImmutableArray<Term> Tabs, ImmutableArray<PointTerm> TabsAt, ImmutableArray<Term> StopHoles, ImmutableArray<Term> DrillMarks)
{
    private const int MostTabs = 50;

    /// <summary>A tab that is asked for farther from the edge than this, in mm, was meant for another piece.</summary>
    private const double FarthestTab = 10;

    /// <summary>Makes the wishes.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="piece">The piece; empty where it could not be made.</param>
    /// <param name="wishes">What is asked for.</param>
    public bool TryMake(Evaluation from, Region piece, out CuttingWishes wishes)
    {
        var (sound, tabs, stopHole, drill) = (true, 0, 0.0, 0.0);
        if (!Tabs.IsEmpty) sound &= from.TryCount(Tabs[0], MostTabs, out tabs, least: 0);
        if (!StopHoles.IsEmpty) sound &= from.TryAtLeastZero(StopHoles[0], out stopHole);
        if (!DrillMarks.IsEmpty) sound &= from.TryAtLeastZero(DrillMarks[0], out drill);
        var at = ImmutableArray.CreateBuilder<Point>();
        foreach (var term in TabsAt)
        {
            if (!from.TryPoint(term, out var point)) sound = false;
            else if (!piece.IsEmpty && piece.BoundaryDistanceTo(point) is > FarthestTab and var away) sound = from.Refuse(Wordings.TabFarFromTheEdge(term.Place, point, away, FarthestTab));
            else at.Add(point);
        }
        wishes = new() { Tabs = tabs, TabsAt = at.ToImmutable(), StopHole = stopHole, DrillUpTo = drill };
        return sound;
    }

    /// <summary>What a person does about it who has no machine.</summary>
    public static ImmutableArray<string> NotesOf(CuttingWishes wishes)
    {
        var diameter = wishes.StopHole.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
        return wishes.StopHole <= 0 ? [] : [$"Before cutting drill a stop hole of {diameter} mm in the waste of every inside corner, so that it touches both sides; cut from hole to hole."];
    }
}
