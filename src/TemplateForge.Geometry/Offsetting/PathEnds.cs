namespace TemplateForge.Geometry;

/// <summary>How a slot along a path ends.</summary>
public enum PathEnds
{
    /// <summary>By half a disc about the end.</summary>
    Round,

    /// <summary>Cut square through the end.</summary>
    Flat,
}
