namespace TemplateForge.Fabrication;

/// <summary>A machine or tool that cuts sheet. Lengths in mm.</summary>
/// <param name="Name">By which profiles call it.</param>
/// <param name="Title">As it is printed.</param>
/// <param name="Kerf">Width of the slot that it takes away; 0 of what shears; without end where nobody has measured it.</param>
/// <param name="LeastHole">Diameter of the least round hole that it cuts.</param>
public sealed record Cutter(string Name, string Title, double Kerf, double LeastHole);
