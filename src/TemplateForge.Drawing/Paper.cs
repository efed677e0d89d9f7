namespace TemplateForge.Drawing;

/// <summary>A sheet size that a printer takes.</summary>
/// <param name="Name">As people call it: a4, letter.</param>
/// <param name="Width">Shorter side in mm.</param>
/// <param name="Height">Longer side in mm.</param>
/// <param name="Margin">Strip along every edge on which the printer may not print, in mm.</param>
public sealed record Paper(string Name, double Width, double Height, double Margin);
