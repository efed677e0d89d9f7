using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>What lies nearer to some components than a clearance, anywhere through the sheet and in all their positions.</summary>
internal sealed record ClearedRecipe(Place Place, ImmutableArray<ComponentName> Components, Term Clearance) : ShapeRecipe(Place)
{
    private const double MostClearance = 1000;

    public override bool TryMake(Evaluation from, out Region region)
    {
        region = Region.Empty;
        var components = new List<Component>();
        foreach (var name in Components)
        {
            if (!from.TryComponent(name, out var component)) return false;
            components.Add(component);
        }
        if (!from.TryWithin(Clearance, ClearanceRegion.LeastClearance, MostClearance, out var clearance)) return false;
        var bounds = Box.Around(components.Select(c => c.Bounds)).Grown(clearance);
        if (Math.Max(bounds.Width, bounds.Height) > ClearanceRegion.LargestSize(clearance))
            return from.Refuse(Wordings.ComponentsTooLarge(Place, Math.Max(bounds.Width, bounds.Height), ClearanceRegion.LargestSize(clearance)));
        region = ClearanceRegion.Of(components, clearance);
        return true;
    }
}
