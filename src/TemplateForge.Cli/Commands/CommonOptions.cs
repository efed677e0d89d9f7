using System.CommandLine;

namespace TemplateForge.Cli.Commands;

/// <summary>Options that several commands take.</summary>
internal static class CommonOptions
{
    public static Option<string> Shop() => new("--shop")
    {
        Description = "A folder with your shop's own tables; their entries replace those of the library, by name.",
        HelpName = "dir",
    };

    public static Option<bool> Json() => new("--json") { Description = "Report as JSON, for other programs." };
}
