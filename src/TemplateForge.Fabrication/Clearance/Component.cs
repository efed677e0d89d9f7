using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>Something that the panel must keep clear of: its form, where it stands, and how it moves.</summary>
/// <remarks>
/// The panel's face that is up lies at z = 0, the sheet below it. The component rocks first, then it travels: every position is
/// possible, those between and those of both together.
/// </remarks>
/// <param name="Form">Its form.</param>
/// <param name="Stand">Where it stands.</param>
/// <param name="Sheet">Thickness of the sheet that must clear it, which lies from z = 0 down, in mm, 0 or more.</param>
public sealed record Component(ComponentForm Form, Stand Stand, double Sheet)
{
    /// <summary>How it rocks; one at most.</summary>
    public ImmutableArray<Rocking> Rocks { get; init; } = [];

    /// <summary>How it travels; one at most.</summary>
    public ImmutableArray<Travel> Travels { get; init; } = [];

    /// <summary>A box of the drawing that holds the component as it is seen from above, in all its positions.</summary>
    public Box Bounds => new MovedComponent(this).Bounds;
}

/// <summary>Where a component stands, and how its axis leans.</summary>
/// <param name="At">Its reference point as seen on the face that is up.</param>
/// <param name="Height">How far the reference point lies above that face; below 0 behind it.</param>
/// <param name="Tilt">How far the axis leans off square to the panel; at 90° it lies along the panel.</param>
/// <param name="Towards">The way that the axis moves as it goes through the sheet, away from whoever looks.</param>
/// <param name="Turned">How far the form is turned about its own axis before it leans, as seen on the face that is up.</param>
public sealed record Stand(Point At, double Height, Angle Tilt, Angle Towards, Angle Turned)
{
    internal InSpace Reference => new(At.X, At.Y, Height);

    /// <summary>The axis, away from whoever looks.</summary>
    internal InSpace Axis => AxisOf(Tilt, Towards);

    /// <summary>The way of the form's a and b: as x and y lie, turned, then leaning with the axis.</summary>
    internal (InSpace A, InSpace B) Across
    {
        get
        {
            // What lies square to the way it leans stays; what lies along it is lifted as much as the axis leans.
            InSpace level = new(-Towards.Sin, Towards.Cos, 0), lifted = new(Tilt.Cos * Towards.Cos, Tilt.Cos * Towards.Sin, Tilt.Sin);
            var turn = Turned - Towards;
            return (lifted * turn.Cos + level * turn.Sin, level * turn.Cos - lifted * turn.Sin);
        }
    }

    internal static InSpace AxisOf(Angle tilt, Angle towards) => new(tilt.Sin * towards.Cos, tilt.Sin * towards.Sin, -tilt.Cos);
}

/// <summary>Rocks about an axis, as far to one side as to the other.</summary>
/// <param name="By">How far to each side, less than a quarter turn.</param>
/// <param name="About">Where the axis goes through, as seen on the face that is up.</param>
/// <param name="Height">How far that point lies above the face; below 0 behind it.</param>
/// <param name="Tilt">How far the axis leans off square to the panel; at 90° it lies along the panel.</param>
/// <param name="Towards">The way that it leans.</param>
public sealed record Rocking(Angle By, Point About, double Height, Angle Tilt, Angle Towards);

/// <summary>Travels in a straight line, from where it stands.</summary>
/// <param name="By">How far, in mm.</param>
/// <param name="Tilt">How far the way leans off straight away from whoever looks: at 90° it lies along the panel, at 180° it comes up.</param>
/// <param name="Towards">The way that it leans.</param>
public sealed record Travel(double By, Angle Tilt, Angle Towards);
