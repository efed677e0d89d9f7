using System.CommandLine;

namespace TemplateForge.Cli.Commands;

/// <summary>What make takes.</summary>
internal sealed class MakeOptions
{
    public Option<string[]> Set { get; } = new("--set")
    {
        Description = "A value: name=190, name=\"7 1/2 in\". Give it as often as needed.",
        HelpName = "name=value",
    };

    public Option<string> Hand { get; } = new("--hand")
    {
        Description = "The hand to make; without it, the one that the profile is drawn for.",
        HelpName = "left|right|both",
    };

    public Option<string> MeasuredOn { get; } = new("--measured-on")
    {
        Description = "The hand on which the values were measured; without it, the one that the profile is drawn for.",
        HelpName = "left|right",
    };

    public Option<string> Paper { get; } = new("--paper")
    {
        Description = "The paper in the printer: a4, a3, letter and what else the shop's table has.",
        HelpName = "name",
    };

    public Option<string> Cutter { get; } = new("--cutter")
    {
        Description = "What cuts the pieces: plasma-table, router and what else the shop's table has; the cut files then carry the torch's path.",
        HelpName = "name|none",
    };

    public Option<string> Kerf { get; } = new("--kerf")
    {
        Description = "The width of its slot as you measured it for this job, in place of the shop's table.",
        HelpName = "length",
    };

    public Option<string> Dxf { get; } = new("--dxf")
    {
        Description = "What the controller takes: r2000 in mm unless the shop says otherwise, r12 for old ones, -in for inches.",
        HelpName = "r2000|r2000-in|r12|r12-in",
    };

    public Option<string> Shop { get; } = CommonOptions.Shop();

    public Option<string> JobFile { get; } = new("--job")
    {
        Description = "Make a job again from its job.json, whatever the library says by now.",
        HelpName = "file",
    };

    public Option<string> Out { get; } = new("--out")
    {
        Description = "The job's folder; without it, out/ and the profile's name.",
        HelpName = "dir",
    };

    public Option<bool> Replace { get; } = new("--replace") { Description = "Let another job in that folder go." };
    public Argument<string> Named { get; } = new("profile")
    {
        Description = "Its name in the library, or a .yaml file.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public Option<bool> Json { get; } = CommonOptions.Json();

    /// <summary>The options that a value follows.</summary>
    public IReadOnlyList<Option> Valued => [Set, Hand, MeasuredOn, Paper, Cutter, Kerf, Dxf, Shop, JobFile, Out];
}
