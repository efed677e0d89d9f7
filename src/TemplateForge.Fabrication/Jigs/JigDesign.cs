using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What is asked of a jig, before it is known whether it can be made.</summary>
public sealed record JigDesign
{
    /// <summary>Short name, part of file names.</summary>
    public required string Name { get; init; }
    public required string Title { get; init; }

    /// <summary>The piece whose finish line it guides, or which it drills.</summary>
    public required Piece Work { get; init; }

    public required Location Location { get; init; }
    public required PlateStock Stock { get; init; }

    /// <summary>What runs along its edge; <see cref="GuideEdge.Scriber"/> and unused where it drills.</summary>
    public GuideEdge Edge { get; init; } = GuideEdge.Scriber;

    /// <summary>The holes that it drills, as they will be; empty for a jig that guides an edge.</summary>
    public Region Drills { get; init; } = Region.Empty;

    /// <summary>How far the plate reaches past the finish line or the holes, in mm.</summary>
    public required double Margin { get; init; }

    /// <summary>Whether its pins and bushes stand out of one face: pressed pins, bushes with a head.</summary>
    public bool IsOneSided { get; init; }

    /// <summary>What the plate must take.</summary>
    public GuideKind Guides => IsDrillJig ? GuideKind.Drill : Edge.Kind;

    public bool IsDrillJig => !Drills.IsEmpty;

    /// <summary>The same for the other hand.</summary>
    public JigDesign Mirrored()
    {
        var mirror = Placement.Mirrored(Point.Origin, Angle.QuarterTurn);
        return this with { Work = Work.Mirrored(), Location = Location.Mirrored(mirror), Drills = Drills.Placed(mirror) };
    }
}

/// <summary>For whom a jig is lettered.</summary>
/// <param name="Revision">Profile and version.</param>
/// <param name="Hand">The hand for which it lies with its face A up.</param>
/// <param name="HandWasMeasured">Whether the values were measured on that hand; if not, on the other.</param>
public sealed record JigLettering(string Revision, Hand Hand, bool HandWasMeasured);
