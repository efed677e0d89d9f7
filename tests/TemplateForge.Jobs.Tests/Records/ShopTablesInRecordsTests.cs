using System.Collections.Immutable;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Jobs.Tests.Records;

/// <summary>A record holds the shop's tables as they were, however few or many there were.</summary>
public sealed class ShopTablesInRecordsTests
{
    // As records were before there were tables of metals, machines, processes and fasteners.
    [Fact]
    public void A_record_from_before_the_optional_tables_is_made_again_byte_for_byte()
    {
        var request = Jobsite.Request("curved-panel-opening");
        Remakes(request with { ShopFiles = [.. request.ShopFiles.Where(f => !ShopReader.IsOptional(f.Name.Split('/')[^1]))] });
    }

    [Fact]
    public void A_record_with_a_shops_own_tables_over_the_librarys_is_made_again_byte_for_byte()
    {
        var request = Jobsite.Request("angle-bracket");
        ImmutableArray<TextFile> own =
        [
            new("ours/materials.yaml", "materials:\n  dc01: {title: our steel, family: steel, density: 7000, least_inside_radius: 1, k_factor: 0.4, stretch_limit: 0.2, zinc: no, source: measured}\n"),
            new("ours/habits.yaml", "paper: letter\n"),
        ];
        var mine = request with { ShopFiles = [.. request.ShopFiles, .. own] };
        Remakes(mine);
        var job = Jobsite.Make(mine).Jobs[0];
        Assert.Equal("letter", job.Paper.Name);
        Assert.NotEqual(Jobsite.RecordOf(Jobsite.Make(request).Jobs[0]), Jobsite.RecordOf(job));
    }

    [Fact]
    public void A_record_whose_profile_asks_for_a_table_that_it_does_not_hold_is_refused_in_plain_words()
    {
        var request = Jobsite.Request("angle-bracket");
        var told = Jobsite.Refuse(request with { ShopFiles = [.. request.ShopFiles.Where(f => !f.Name.EndsWith("/materials.yaml", StringComparison.Ordinal))] });
        Assert.Contains(told, c => c.Problem.Contains("is no material in the shop's table", StringComparison.Ordinal));
    }

    private static void Remakes(JobRequest request)
    {
        var first = Jobsite.Make(request);
        var record = Jobsite.RecordOf(first.Jobs[0]);
        Jobsite.AreTheSame(first.Files, Jobsite.Make(Jobsite.Read(record).Request).Files);
    }
}
