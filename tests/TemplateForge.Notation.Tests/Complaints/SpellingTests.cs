namespace TemplateForge.Notation.Tests;

public class SpellingTests
{
    private static readonly string[] Names = ["diameter", "clearance", "mouth_radius", "tilt", "hole-pitch", "tilt_direction"];

    [Theory]
    [InlineData("diamter", "diameter")] // a letter lost
    [InlineData("diametre", "diameter")] // two swapped
    [InlineData("claerance", "clearance")]
    [InlineData("Clearance", "clearance")]
    [InlineData("mouth-radius", "mouth_radius")]
    [InlineData("hole_pitch", "hole-pitch")]
    [InlineData("mouthradius", "mouth_radius")]
    [InlineData("tlit", "tilt")]
    [InlineData("mouth", "mouth_radius")] // a beginning
    [InlineData("clear", "clearance")]
    [InlineData("tilt_dir", "tilt_direction")]
    public void A_misspelt_word_finds_the_right_one(string word, string right)
    {
        Assert.True(Spelling.Nearest(word, Names, out var nearest));
        Assert.Equal(right, nearest);
    }

    [Theory]
    [InlineData("girth")]
    [InlineData("x")]
    [InlineData("")]
    [InlineData("thickness")]
    public void A_word_that_is_like_none_finds_none(string word)
    {
        Assert.False(Spelling.Nearest(word, Names, out var nearest));
        Assert.Equal("", nearest);
    }

    [Fact]
    public void One_letter_alone_is_not_taken_for_another() => Assert.False(Spelling.Nearest("a", ["b"], out _));

    [Fact]
    public void The_nearest_of_several_near_ones_is_found()
    {
        Assert.True(Spelling.Nearest("radius_2", ["radius_11", "radius_21", "radius"], out var nearest));
        Assert.Equal("radius_21", nearest);
    }
}
