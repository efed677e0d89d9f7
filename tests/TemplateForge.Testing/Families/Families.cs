using System.Collections.Immutable;

namespace TemplateForge.Testing;

/// <summary>Every family of shapes that is known to be hard, by name.</summary>
public static class Families
{
    public static ImmutableArray<Family> All { get; } =
    [
        new("grid", GridPlates.Draw),
        new("bars", FilletedBars.Draw),
        new("stars", Stars.Draw),
        new("needles", Needles.Draw),
        new("gears", Gears.Draw),
        new("tangent-chains", TangentChains.Draw),
        new("short-chains", ShortChains.Draw),
        new("fed-back", FedBack.Draw),
        new("common-points", CommonPoints.Draw),
        new("shaken", Shaken.Draw),
        new("loose", Loose.Draw),
        new("many", ManyRegions.Draw),
    ];
}
