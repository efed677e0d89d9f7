namespace TemplateForge.Cli.Printing;

/// <summary>Prints profiles for a person.</summary>
internal static class ProfilePrinter
{
    public static void Print(ListReport report, Terminal terminal) =>
        new Page(terminal).Table(
            ["Profile", "What it is", "Family", "Drawn for"],
            report.Profiles.Select(p => (IReadOnlyList<string>)[p.Name, p.Title, p.Family, HandOf(p.Hand) + (p.MayBeAlike ? " or either" : "")]));

    public static void Print(ProfileReport profile, Terminal terminal)
    {
        var page = new Page(terminal);
        page.Line($"{profile.Name}, version {profile.Version}: {profile.Title}", Page.Strong);
        page.Line(profile.About);
        page.Line($"Drawn for: {HandOf(profile.Hand)}{(profile.MayBeAlike ? ", or either where its values make it its own mirror image" : "")}.");
        page.Line();
        page.Table(
            ["Value", "What it is", " Default", "Unit", "Range", "From", "How"],
            profile.Parameters.Select(p => (IReadOnlyList<string>)[p.Name, p.Label, p.Default, p.Unit, p.Range, p.Kind, How(p)]));
    }

    private static string HandOf(string hand) => hand == "either" ? "either hand" : $"{hand} hand";

    private static string How(ReportedParameter parameter)
    {
        var how = parameter.Explanation;
        if (parameter.InsteadOf.Length > 0) how = $"Instead of {parameter.InsteadOf}. {how}";
        if (parameter.When.Length > 0) how = $"When {parameter.When}. {how}";
        return how;
    }
}
