namespace TemplateForge.Fabrication;

/// <summary>A welding process as a shop sets it up. Lengths in mm.</summary>
/// <param name="Name">By which profiles call it.</param>
/// <param name="Title">As it is printed.</param>
/// <param name="WeldGap">Between two edges that are butt-welded, after tacking.</param>
/// <param name="TackPitch">The most from tack to tack, more than 0.</param>
/// <param name="ZincStrip">How far zinc and paint are taken off on either side of a weld.</param>
/// <param name="PlugHole">Diameter of the hole for a plug weld, by the thickness of the upper sheet.</param>
/// <param name="WeldRun">The longest run that is laid without a stop.</param>
public sealed record WeldingProcess(
    string Name, string Title, ByThickness WeldGap, ByThickness TackPitch, double ZincStrip, ByThickness PlugHole, ByThickness WeldRun);
