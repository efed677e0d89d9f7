using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A bend as it stands on a flat blank, straight or along an arc.</summary>
public interface IBendOnBlank
{
    /// <summary>The place of the bend in the order of bending, from 1; stretches that are bent together share it.</summary>
    int Number { get; }

    /// <summary>The middle of what is bent.</summary>
    Path Middle { get; }

    /// <summary>Where the part that is held ends, and where the flange begins.</summary>
    (Path Held, Path Turned) TangentLines { get; }

    /// <summary>Width of what is bent, on the flat, in mm: the tangent lines lie half of it on either side of the middle.</summary>
    double Allowance { get; }

    /// <summary>How far the sheet is bent, from flat.</summary>
    Angle Bend { get; }

    /// <summary>How far it is bent before it springs back, from flat.</summary>
    Angle Overbend { get; }

    /// <summary>Towards the face that is up or away from it.</summary>
    BendWay Way { get; }

    /// <summary>In mm.</summary>
    double InsideRadius { get; }
}
