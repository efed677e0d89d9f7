using TemplateForge.Notation;

namespace TemplateForge.Shop.Tests;

public class ShopReaderTests
{
    [Fact]
    public void The_shipped_tables_are_sound()
    {
        var shop = Shipped.Tables;
        Assert.Equal("Copperbeck Works", shop.Name);
        Assert.Equal("a4", shop.UsualPaper.Name);
    }

    // ISO 216:2007, A series; US sizes from ANSI/ASME Y14.1 (legal from memory).
    [Theory]
    [InlineData("a4", 210, 297)]
    [InlineData("a3", 297, 420)]
    [InlineData("a2", 420, 594)]
    [InlineData("a1", 594, 841)]
    [InlineData("a0", 841, 1189)]
    [InlineData("letter", 215.9, 279.4)]
    [InlineData("legal", 215.9, 355.6)]
    [InlineData("tabloid", 279.4, 431.8)]
    public void A_paper_has_the_size_of_its_standard(string name, double width, double height)
    {
        var paper = Shipped.Tables.Papers.Single(p => p.Name == name);
        Assert.Equal((width, height), (Math.Round(paper.Width, 9), Math.Round(paper.Height, 9)));
    }

    [Fact]
    public void Every_caution_says_more_than_its_title() =>
        Assert.All(Shipped.Tables.Cautions.Values, c => Assert.True(c.Text.Length > 2 * c.Title.Length));

    [Theory]
    [InlineData("habits.yaml", "paper: a4", "paper: a5x", 3, 8)]
    [InlineData("habits.yaml", "overlap: 12 mm", "overlap: 3 mm", 4, 10)]
    [InlineData("habits.yaml", "overlap: 12 mm", "overlap: 12 deg", 4, 10)]
    [InlineData("habits.yaml", "overlap: 12 mm", "overlop: 12 mm", 4, 1)]
    [InlineData("papers.yaml", "a4: {width: 210 mm, height: 297 mm", "a4: {width: 297 mm, height: 210 mm", 4, 3)]
    [InlineData("papers.yaml", "height: 297 mm, margin: 8 mm}", "height: 297 mm, margin: 8 mm}\n  tiny: {width: 140 mm, height: 140 mm, margin: 30 mm}", 5, 3)]
    [InlineData("cautions.yaml", "title: Brakes", "titel: Brakes", 5, 5)]
    public void A_fault_in_a_table_is_told_with_its_place(string file, string there, string instead, int line, int column)
    {
        var complaints = new List<Complaint>();
        var files = Shipped.Files.Select(f => f.Name == $"shop/{file}" ? f with { Text = f.Text.Replace(there, instead, StringComparison.Ordinal) } : f);
        Assert.False(ShopReader.TryRead([.. files], complaints, out _));
        Assert.Contains(complaints, c => c.File == $"shop/{file}" && (c.Line, c.Column) == (line, column));
    }

    [Fact]
    public void A_missing_table_is_told()
    {
        var complaints = new List<Complaint>();
        Assert.False(ShopReader.TryRead(Shipped.Files.RemoveAt(0), complaints, out _));
        Assert.NotEmpty(complaints);
    }

}
