using System.CommandLine;

namespace TemplateForge.Cli.Commands;

/// <summary>Options that several commands take.</summary>
internal static class CommonOptions
{
    public static Option<bool> Json() => new("--json") { Description = "Report as JSON, for other programs." };
}
