using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Shop;

namespace TemplateForge.Jobs.Tests;

/// <summary>The job sheet lies on the bench: A4, or letter in a shop that prints on US sizes. Sizes from ISO 216 and ANSI/ASME Y14.1.</summary>
public class BenchPaperTests
{
    private static readonly Paper A4 = new("a4", 210, 297, 8);
    private static readonly Paper A3 = new("a3", 297, 420, 8);
    private static readonly Paper A0 = new("a0", 841, 1189, 10);
    private static readonly Paper Letter = new("letter", 215.9, 279.4, 6);
    private static readonly Paper Legal = new("legal", 215.9, 355.6, 8);
    private static readonly Paper Tabloid = new("tabloid", 279.4, 431.8, 8);
    private static readonly Paper AnsiE = new("ansi-e", 863.6, 1117.6, 10);

    [Fact]
    public void A_template_on_A4_or_letter_has_its_job_sheet_on_the_same()
    {
        Assert.Same(A4, Of(A4, usual: Letter));
        Assert.Same(Letter, Of(Letter, usual: A4));
    }

    [Fact]
    public void A_larger_template_has_it_on_what_is_usually_in_the_printer()
    {
        Assert.Same(A4, Of(A0, usual: A4));
        Assert.Same(Letter, Of(A3, usual: Letter));
        Assert.Same(A4, Of(Tabloid, usual: A4));
    }

    [Fact]
    public void Where_the_printer_has_neither_the_family_of_the_template_s_paper_decides()
    {
        Assert.Same(A4, Of(A3, usual: A0));
        Assert.Same(Letter, Of(Tabloid, usual: AnsiE));
        Assert.Same(Letter, Of(Legal, usual: A0));
    }

    [Fact]
    public void A_shop_that_has_no_such_paper_in_its_table_gets_it_all_the_same()
    {
        var paper = BenchPaper.For(AnsiE, Shop(AnsiE, [AnsiE]));
        Assert.Equal((215.9, 279.4), (paper.Width, paper.Height));
    }

    private static Paper Of(Paper template, Paper usual) => BenchPaper.For(template, Shop(usual, [A4, A3, A0, Letter, Legal, Tabloid, AnsiE]));

    private static ShopTables Shop(Paper usual, Paper[] papers) => new()
    {
        Name = "Copperbeck Works",
        Papers = [.. papers],
        UsualPaper = usual,
        Overlap = 12,
        Cautions = ImmutableDictionary<string, Caution>.Empty,
    };
}
