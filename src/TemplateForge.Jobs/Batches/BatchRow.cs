using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>A row of a table as a job: its name, which is that of its folder, and all that it depends on.</summary>
public sealed record BatchRow(string Name, Place Place, JobRequest Request);
