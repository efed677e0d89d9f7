using System.Collections.Immutable;
using TemplateForge.Profiles;

namespace TemplateForge.Cli.Printing;

/// <summary>A profile as a person reads about it.</summary>
internal sealed record ProfileReport(
    string Name,
    int Version,
    string Title,
    string About,
    string Hand,
    bool MayBeAlike,
    ImmutableArray<ReportedParameter> Parameters)
{
    public static ProfileReport Of(Profile profile) => new(
        profile.Name,
        profile.Version,
        profile.Title,
        profile.About.Trim(),
        Reports.Word(profile.Hand),
        profile.MayBeAlike,
        [
            .. profile.Parameters.Select(p => new ReportedParameter(
                p.Name, p.Label, p.Unit, p.Default, p.Range, Reports.Word(p.Source), p.Explanation, p.When, p.InsteadOf)),
        ]);
}

internal sealed record ReportedParameter(
    string Name,
    string Label,
    string Unit,
    string Default,
    string Range,
    string Kind,
    string Explanation,
    string When,
    string InsteadOf);
