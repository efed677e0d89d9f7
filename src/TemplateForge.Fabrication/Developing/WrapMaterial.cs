namespace TemplateForge.Fabrication;

/// <summary>What a wrap is cut from: paper that goes round the outside, or sheet that becomes the tube or cone itself.</summary>
/// <remarks>
/// What bends keeps its length in the middle of its thickness. Paper lies outside of the surface, so it is longer than that by π times its
/// thickness; rolled sheet is measured on its outside and shorter (width = π (outside diameter − thickness), Cyclopedia of Drawing, 1906).
/// </remarks>
/// <param name="IsRolled">Whether it becomes the tube itself.</param>
/// <param name="Thickness">In mm.</param>
public sealed record WrapMaterial(bool IsRolled, double Thickness)
{
    /// <summary>Common practice, no source: office paper of 80 g/m² is 0.1 mm thick.</summary>
    public const double OfficePaper = 0.1;

    /// <summary>How far outside of the outer surface what keeps its length lies, in mm.</summary>
    public double Aside => IsRolled ? -Thickness / 2 : Thickness / 2;
}
