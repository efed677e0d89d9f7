using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>What a foreman would say on seeing the drawing: it can be made, but not well.</summary>
/// <param name="Rule">The rule in a few words: flange too short.</param>
/// <param name="Text">A sentence with the figures: what is there, what would do.</param>
/// <param name="At">Where on the flat piece.</param>
/// <param name="Source">Where the rule comes from.</param>
public sealed record Warning(string Rule, string Text, Point At, string Source);
