namespace TemplateForge.Drawing.Tests;

public class MarginsTests
{
    [Fact]
    public void Margins_are_told_by_their_four_widths() => Assert.Equal("left 1.5, right 2, top 3, bottom 4 mm", $"{new Margins(1.5, 2, 3, 4)}");
}
