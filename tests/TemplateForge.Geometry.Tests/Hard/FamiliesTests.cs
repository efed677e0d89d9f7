using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>A short run of the fuzz program: every law over every family. A failing case comes back by its number.</summary>
public class FamiliesTests
{
    public static TheoryData<string> Names => [.. Families.All.Select(f => f.Name)];

    [Theory, MemberData(nameof(Names))]
    public void Every_law_holds_of_the_first_cases(string name)
    {
        var family = Families.All.Single(f => f.Name == name);
        for (var number = 0; number < 15; number++)
        {
            var trial = family.Case(seed: 1, number);
            foreach (var law in Laws.All.Where(l => number % l.OneIn == 0))
            {
                var trouble = Record.Exception(() => law.Check(trial));
                Assert.True(trouble is null, $"{law.Name} of case {number}: {trouble?.Message}\n{trial}");
            }
        }
    }
}
