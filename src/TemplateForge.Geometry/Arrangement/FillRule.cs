namespace TemplateForge.Geometry;

/// <summary>Which points are inside contours that cross, overlap or run twice.</summary>
public enum FillRule
{
    /// <summary>Those that the contours run round, either way: overlapping contours add up.</summary>
    NonZero,

    /// <summary>Those that the contours run round an odd number of times: a contour in another is a hole.</summary>
    EvenOdd,
}
