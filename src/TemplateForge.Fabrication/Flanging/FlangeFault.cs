using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Why a flanged sheet cannot be laid flat.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Flange">Which flange, from 0.</param>
/// <param name="At">Where on the base's outline.</param>
/// <param name="Leg">The leg that is too short, from 1, the base being 1; 0 for none.</param>
/// <param name="Straight">What of it stays flat, in mm, below 0.</param>
public sealed record FlangeFault(FlangeFaultKind Kind, int Flange, Point At, int Leg = 0, double Straight = 0);

/// <summary>What can be wrong with a flange.</summary>
public enum FlangeFaultKind
{
    /// <summary>Its bends use a leg up.</summary>
    LegTooShort,

    /// <summary>Its bend, or the flange, would reach past the centre of its arc.</summary>
    ArcTooTight,

    /// <summary>It is too low for its relief cuts, or they would run into each other.</summary>
    NoRoomForCuts,

    /// <summary>Its ends are cut back so far that nothing is left of it.</summary>
    NothingLeft,

    /// <summary>An edge that goes on from its own without a corner is bent in another way.</summary>
    NeighbourDiffers,

    /// <summary>On the flat it lies over another flange.</summary>
    LiesOverAnother,

    /// <summary>On the flat it lies over the base.</summary>
    LiesOverTheBase,

    /// <summary>On the flat it runs into itself.</summary>
    LiesOverItself,
}
