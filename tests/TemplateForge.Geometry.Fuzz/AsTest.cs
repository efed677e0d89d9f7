using TemplateForge.Testing;

namespace TemplateForge.Geometry.Fuzz;

/// <summary>A failing case as it is pasted into a class of tests.</summary>
internal static class AsTest
{
    public static string Of(Trial trial, string family, string law, int number, string why)
    {
        var name = family.Replace('-', '_');
        var body = trial.ToString().ReplaceLineEndings("\n").Replace("\n", "\n    ", StringComparison.Ordinal);
        return $$"""

                // {{why.ReplaceLineEndings(" ")}}
                [Fact]
                public void {{law}}_holds_of_{{name}}_{{number}}() => Laws.{{law}}.Check({{body}});

            """;
    }
}
