namespace TemplateForge.Fabrication;

/// <summary>A thickness in which a sheet metal is sold.</summary>
/// <param name="Millimetres">In mm, more than 0.</param>
/// <param name="Text">As the shop's table writes it: 0.8 mm, 0.040 in, 20 ga galvanised.</param>
public readonly record struct SheetThickness(double Millimetres, string Text);
