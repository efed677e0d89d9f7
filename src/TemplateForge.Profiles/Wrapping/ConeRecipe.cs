using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;

namespace TemplateForge.Profiles;

/// <summary>A cone or frustum.</summary>
/// <param name="Common">Seam, lap, paper, divisions.</param>
/// <param name="Base">Diameter of the larger circle.</param>
/// <param name="Top">Diameter of the smaller circle.</param>
/// <param name="Height">From plane to plane.</param>
/// <param name="Aside">How far the top lies aside.</param>
/// <param name="Sheet">Thickness, if it is rolled from sheet.</param>
/// <param name="Face">The face that is measured.</param>
internal sealed record ConeRecipe(WrapCommon Common, Term Base, Term Top, Term Height, Term Aside, ImmutableArray<Term> Sheet, string Face)
    : WrapRecipe(Common)
{
    public override bool TryMake(Evaluation from, [MaybeNullWhen(false)] out WrapPattern pattern)
    {
        pattern = null;
        var sheet = 0.0;
        if (!(Common.TryMake(from, out var common) & from.TrySize(Base, out var large) & from.TryAtLeastZero(Top, out var small) & from.TrySize(Height, out var height)
            & from.TryLength(Aside, out var aside) & (Sheet.IsEmpty || from.TrySize(Sheet[0], out sheet)))) return false;
        if (small > large * (1 - ConeWrap.LeastTaper)) return from.Refuse(Wordings.TopAsLargeAsBase(Top.Place, small, large));
        var steepest = SteepestAside * height + (large - small) / 2;
        if (Math.Abs(aside) > steepest) return from.Refuse(Wordings.TopTooFarAside(Aside.Place, aside, steepest));
        if (height < large * LeastHeight) return from.Refuse(Wordings.ConeTooFlat(Height.Place, height, large * LeastHeight));
        var face = Face switch { "inside" => MeasuredFace.Inside, "middle" => MeasuredFace.Middle, _ => MeasuredFace.Outside };
        var cone = new ConeWrap(large, small, height, aside, Sheet.IsEmpty ? new(IsRolled: false, common.Paper) : new(IsRolled: true, sheet), face)
        {
            Seam = common.Seam,
            Lap = common.Lap,
            Divisions = common.Divisions,
        };
        if (common.Lap > large) return from.Refuse(Wordings.LapTooWide(Common.Lap.Place, common.Lap, large));
        return cone.TryLayFlat(out pattern, out var fault) || from.Refuse(Wordings.WrapFault(Common.Place, fault, 0));
    }

    // A generator that leans further out than this for each mm of height is no reducer's, and its pattern has needles.
    private const double SteepestAside = 5;
    private const double LeastHeight = 0.01;
}
