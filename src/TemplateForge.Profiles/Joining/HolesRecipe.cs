using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>What patterns of round holes have in common.</summary>
internal static class HolesRecipe
{
    public static bool IsSound(Evaluation from, Term term, double pitch, double diameter) =>
        pitch > diameter || from.Refuse(Wordings.HolesWouldMeet(term.Place, pitch, diameter));

    public static Region At(ImmutableArray<Point> places, double diameter) =>
        Combination.Union(places.Select(p => Region.Of(Outline.Circle(p, diameter / 2))));
}
