using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>From what the fabricator gave, and the defaults, to the values that are used.</summary>
internal static class UsedValues
{
    /// <summary>Values of the parameters that are asked for, and how they are printed; complaints about all of them at once.</summary>
    public static bool TryRead(
        string profile,
        Definitions definitions,
        ImmutableArray<Setting> settings,
        ICollection<Complaint> complaints,
        out ImmutableDictionary<string, Value> values,
        out ImmutableArray<UsedValue> used)
    {
        var before = complaints.Count;
        values = ImmutableDictionary.Create<string, Value>(StringComparer.Ordinal);
        var given = Sorted(profile, definitions, settings, complaints);
        var found = ImmutableArray.CreateBuilder<UsedValue>();
        // Choices first: whether a parameter is asked for, its range and its default may hang on them.
        foreach (var parameter in definitions.Parameters.OrderBy(p => p is not ChoiceParameter))
        {
            var soFar = new Evaluation(definitions, values, complaints);
            if (!soFar.TryHolds(parameter.When, out var isAskedFor)) continue;
            var setting = given.GetValueOrDefault(parameter.Name);
            if (!isAskedFor)
            {
                if (setting is not null) complaints.Add(Wordings.NotAskedFor(setting, parameter.WhenText));
                continue;
            }
            // Where a value is wrong its default stands in, so that what hangs on it brings no complaints of its own.
            if (!parameter.TryDefault(soFar, out var value)) continue;
            var printed = Printed(parameter, value);
            if (setting is not null && parameter.TryGiven(soFar, setting, complaints, out var own, out var ownPrinted))
                (value, printed) = (own, ownPrinted);
            values = values.Add(parameter.Name, value);
            found.Add(new(parameter.Name, parameter.Label, printed, parameter.Source, setting is null ? "" : setting.Text.Trim(), ExplanationOf(parameter, setting)));
        }
        used = [.. definitions.Parameters.SelectMany(p => found.Where(f => f.Name == p.Name))];
        return complaints.Count == before;
    }

    private static Dictionary<string, Setting> Sorted(
        string profile, Definitions definitions, ImmutableArray<Setting> settings, ICollection<Complaint> complaints)
    {
        var given = new Dictionary<string, Setting>(StringComparer.Ordinal);
        foreach (var setting in settings)
        {
            var parameter = definitions.Parameters.FirstOrDefault(p => p.GivenNames.Contains(setting.Name));
            if (parameter is null) complaints.Add(Wordings.UnknownParameter(setting, profile, definitions.Parameters.SelectMany(p => p.GivenNames)));
            else if (!given.TryAdd(parameter.Name, setting)) complaints.Add(Wordings.GivenTwice(setting, parameter.Name));
        }
        return given;
    }

    private static string Printed(Parameter parameter, Value value) =>
        parameter is ChoiceParameter choice ? choice.LabelOf(value.AsWord()) : $"{value}";

    private static string ExplanationOf(Parameter parameter, Setting? setting) =>
        parameter.Infos.Where(i => i.Name == setting?.Name).Select(i => i.Explanation).FirstOrDefault(parameter.Explanation);
}
