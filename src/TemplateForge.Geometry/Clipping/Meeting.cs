namespace TemplateForge.Geometry;

/// <summary>A point that two segments have in common, and the shares of their lengths at which it lies.</summary>
internal readonly record struct Meeting(Point At, double OnFirst, double OnSecond);

/// <summary>A run along which two segments coincide, in the order of the first; the second may run the other way.</summary>
internal readonly record struct SharedRun(Meeting From, Meeting To);
