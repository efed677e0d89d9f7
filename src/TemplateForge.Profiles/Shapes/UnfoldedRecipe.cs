using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>A bent section laid flat: a blank that begins with its first leg at y = 0 and reaches from x = 0 across.</summary>
internal sealed record UnfoldedRecipe(Place Place, SectionName Section, Term Across) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        if (!(from.TrySection(Section, out var section) & from.TrySize(Across, out var across))) return false;
        region = Region.Of(Outline.Rectangle(new(Point.Origin, new(across, section!.Flat.Length))));
        return true;
    }
}
