using System.CommandLine;

namespace TemplateForge.Cli.Commands;

/// <summary>What make takes.</summary>
internal sealed class MakeOptions
{
    /// <summary>In the help of an option: a number of them is meant, not this word.</summary>
    public const string Degrees = "degrees";

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
        Description = "The paper in the printer: a4, letter, arch-d and what else the shop's table has, \"a3 across\", 500x700mm, or \"roll 610mm\".",
        HelpName = "name|size|roll",
    };

    public Option<string> Overlap { get; } = new("--overlap")
    {
        Description = "How far neighbouring pages lie over each other, 5 to 30 mm; without it, the shop's habit.",
        HelpName = "length",
    };

    public Option<string> Printer { get; } = new("--printer")
    {
        Description = "The printer, by its name in the shop's table: its margins are kept, and what its coupon says is corrected.",
        HelpName = "name|none",
    };

    public Option<string> Turn { get; } = new("--turn")
    {
        Description = "How the drawing lies on the pages: turned for the fewest pages (so it is without this), not at all, or by degrees anticlockwise, -180 to 180.",
        HelpName = $"fewest|none|{Degrees}",
    };

    public Option<string> Line { get; } = new("--line")
    {
        Description = "How wide the lines to work to are, 0.18 to 0.5 mm; without it, the shop's habit.",
        HelpName = "length",
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

    public Option<string> From { get; } = new("--from")
    {
        Description = "A table of values, comma-separated: a job for each row. show PROFILE --csv prints its headings.",
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

    /// <summary>The options that say how it is printed.</summary>
    public IReadOnlyList<Option> Printing => [Paper, Overlap, Printer, Turn, Line];

    /// <summary>The options that a value follows.</summary>
    public IReadOnlyList<Option> Valued => [Set, Hand, MeasuredOn, .. Printing, Cutter, Kerf, Dxf, Shop, JobFile, From, Out];
}
