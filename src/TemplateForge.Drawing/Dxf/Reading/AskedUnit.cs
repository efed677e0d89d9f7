namespace TemplateForge.Drawing;

/// <summary>In which unit the numbers of a file are to be taken.</summary>
/// <param name="Unit">The unit.</param>
/// <param name="Overrules">Whether it holds whatever the file states, or only where the file states none.</param>
public readonly record struct AskedUnit(DxfUnit Unit, bool Overrules)
{
    /// <summary>Millimetres where the file states nothing.</summary>
    public static AskedUnit None { get; } = new(DxfUnit.Millimetre, Overrules: false);
}
