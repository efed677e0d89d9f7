using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What a wrap of a tube and one of a cone have in common.</summary>
internal sealed record WrapCommon(Place Place, Term Seam, Term Lap, Term Paper, Term Divisions)
{
    // More lines than that are a grey field.
    private const int MostDivisions = 96;

    /// <summary>How thick paper is that nobody has measured, in the words of a profile.</summary>
    public static string OfficePaper { get; } = FormattableString.Invariant($"{WrapMaterial.OfficePaper} mm");

    public bool TryMake(Evaluation from, out (Angle Seam, double Lap, double Paper, int Divisions) made)
    {
        made = default;
        if (!(from.TryAngle(Seam, out var seam) & from.TryAtLeastZero(Lap, out var lap) & from.TryAtLeastZero(Paper, out var paper)
            & from.TryCount(Divisions, MostDivisions, out var divisions))) return false;
        made = (seam, lap, paper, divisions);
        return divisions % 4 == 0 || from.Refuse(Wordings.NotAMultipleOfFour(Divisions.Place, divisions));
    }
}
