namespace TemplateForge.Jobs.Tests;

public sealed class NamedBytesTests
{
    [Theory]
    [InlineData("template.pdf")]
    [InlineData("panel-cut.dxf")]
    [InlineData("left/panel_2-cut.dxf")]
    [InlineData("console.dxf")]
    public void A_plain_name_stays_inside_the_folder(string name) => Assert.True(NamedBytes.IsSafe(name));

    [Theory]
    [InlineData("")]
    [InlineData("..")]
    [InlineData("../job.json")]
    [InlineData("left/../../x")]
    [InlineData("/etc/passwd")]
    [InlineData("a/b/c")]
    [InlineData("left/")]
    [InlineData("c:x")]
    [InlineData("a\\b")]
    [InlineData(".hidden")]
    [InlineData("-rf")]
    [InlineData("Panel.dxf")]
    [InlineData("a b")]
    [InlineData("a\0b")]
    [InlineData("dot.")]
    [InlineData("con.dxf")]
    [InlineData("left/lpt1")]
    public void A_name_that_could_leave_the_folder_or_mean_something_else_is_refused(string name)
    {
        Assert.False(NamedBytes.IsSafe(name));
        Assert.Throws<ArgumentException>(() => new NamedBytes(name, "", []));
    }
}
