namespace TemplateForge.Drawing;

/// <summary>Why a file cannot be read as a DXF at all.</summary>
/// <param name="Line">The line of the file, from 1.</param>
/// <param name="Problem">What was found there.</param>
/// <param name="Remedy">What would be right.</param>
public sealed record DxfFault(int Line, string Problem, string Remedy);
