namespace TemplateForge.Notation;

/// <summary>A file's name, as complaints call it, and its text.</summary>
public sealed record TextFile(string Name, string Text);
