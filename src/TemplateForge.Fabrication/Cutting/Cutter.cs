using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>A machine or tool that cuts sheet. Lengths in mm.</summary>
/// <param name="Name">By which profiles and jobs call it.</param>
/// <param name="Title">As it is printed.</param>
/// <param name="Kerf">Width of the slot that it takes away in any sheet; 0 of what shears; without end where nobody has measured it.</param>
/// <param name="LeastHole">Diameter of the least round hole that it cuts in any sheet.</param>
public sealed record Cutter(string Name, string Title, double Kerf, double LeastHole)
{
    /// <summary>Width of the slot by the thickness of the sheet; where no row reaches, <see cref="Kerf"/> holds.</summary>
    public ByThickness Kerfs { get; init; } = ByThickness.Unstated;

    /// <summary>Whether its controller moves the torch aside by half the kerf itself: it is then given the finished edge.</summary>
    public bool Compensates { get; init; }

    /// <summary>On which hand of the torch the part lies as it travels: on that side it cuts the better edge.</summary>
    public Side PartOn { get; init; } = Side.Left;

    public LeadKind Lead { get; init; } = LeadKind.Arc;

    /// <summary>How far from the path the pierce stands where there is room: radius of an arc, length of a line.</summary>
    public double LeadIn { get; init; } = 3;

    /// <summary>The same of the curve on which the torch leaves a closed cut; 0 for none.</summary>
    public double LeadOut { get; init; } = 2;

    /// <summary>How far the pierce stands from the path at the least, however little room there is.</summary>
    public double LeastLead { get; init; } = 0.5;

    /// <summary>How far a closed cut runs on past its start.</summary>
    public double Overcut { get; init; }

    /// <summary>Width of the metal that is left where a tab holds the part.</summary>
    public double Tab { get; init; } = 1;

    /// <summary>Diameter of the least round hole, in thicknesses; 0 where <see cref="LeastHole"/> is all that counts.</summary>
    public double LeastHoleRatio { get; init; }

    /// <summary>How far apart cuts that follow each other are begun so that the sheet does not warp; 0 for the shortest way.</summary>
    public double Spread { get; init; }

    /// <summary>How fast it cuts, in mm/min.</summary>
    public ByThickness Feed { get; init; } = ByThickness.Unstated;

    /// <summary>How long a pierce takes, in s.</summary>
    public ByThickness PierceTime { get; init; } = ByThickness.Unstated;

    /// <summary>How fast it moves when it does not cut, in mm/min; 0 where nobody has said.</summary>
    public double RapidFeed { get; init; }

    /// <summary>The only families of metals that it cuts; empty where it cuts all.</summary>
    public ImmutableArray<MetalFamily> Families { get; init; } = [];

    /// <summary>Whether it cuts a material; what nobody has stated it may.</summary>
    public bool Takes(Material material) => Families.IsEmpty || material == Material.Unstated || Families.Contains(material.Family);

    /// <summary>What can hurt where it cuts.</summary>
    public ImmutableArray<Caution> Cautions { get; init; } = [];

    /// <summary>Width of the slot in sheet so thick.</summary>
    /// <returns>Whether anybody has measured it.</returns>
    public bool TryKerf(double thickness, out double kerf)
    {
        if (!Kerfs.TryFind(thickness, out kerf)) kerf = Kerf;
        return double.IsFinite(kerf);
    }

    /// <summary>Diameter of the least round hole that it cuts in sheet so thick; a smaller one is drilled.</summary>
    public double LeastHoleIn(double thickness) => Math.Max(LeastHole, LeastHoleRatio * thickness);
}

/// <summary>How a torch comes to the line that it cuts.</summary>
public enum LeadKind
{
    /// <summary>On a quarter of a circle that joins the path on its tangent.</summary>
    Arc,

    /// <summary>On a straight line.</summary>
    Line,
}

/// <summary>A hand, as one looks the way that something travels.</summary>
public enum Side
{
    Left,
    Right,
}
