using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests;

/// <remarks>
/// The proportions are those of ISO 3098 type B: small letters 7/10 h, ascenders and descenders 3/10, space between characters
/// 2/10 and between words 6/10, base lines 19/10 apart where there are accents, line width 1/10.
/// </remarks>
public sealed class AlphabetTests
{
    private const double Pen = 1;
    private const double Rounding = 1e-9;

    [Theory]
    [InlineData(" !\"#$%&'()*+,-./0123456789:;<=>?")]
    [InlineData("@ABCDEFGHIJKLMNOPQRSTUVWXYZ[\\]^_")]
    [InlineData("`abcdefghijklmnopqrstuvwxyz{|}~")]
    [InlineData("ÀÁÂÃÄÅÆÇÈÉÊËÌÍÎÏÐÑÒÓÔÕÖØÙÚÛÜÝÞß")]
    [InlineData("àáâãäåæçèéêëìíîïðñòóôõöøùúûüýþÿ")]
    [InlineData("ŒœŠšŽžŁłŸĄąĆćĘęŃńŚśŹźŻżČčĎďĚěŇňŘřŤťŮůŐőŰűĞğİıŞş")]
    [InlineData("°±×÷·–—‘’“”«»…€£²³½¼¾µØ⌀≤≥≈→←↑↓☐✓•√π")]
    public void Every_promised_character_is_there(string characters) =>
        Assert.Equal("", string.Concat(characters.Where(c => !Alphabet.Has(c))));

    [Theory]
    [InlineData("字")]
    [InlineData("\n")]
    [InlineData("\U0001F527")]
    public void A_character_that_is_not_there_is_drawn_as_one_small_open_box(string text)
    {
        var box = Assert.Single(Alphabet.Strokes(Written.Out(text)));
        Assert.Equal(box.Start, box.End);
        Assert.Equal(4, box.Segments.Length);
        Assert.Equal(new Box(new(0, 1), new(4, 7)), Rounded(box.Bounds));
    }

    [Fact]
    public void Half_of_a_pair_of_surrogates_is_drawn_as_one_box() =>
        Assert.Equal(Written.Width("字"), Written.Width("\uD83D"));

    [Fact]
    public void Every_character_but_the_spaces_leaves_a_mark() =>
        Assert.Equal(" \u00A0", string.Concat(Written.Characters.Where(c => Alphabet.Strokes(Written.Out(c)).IsEmpty)));

    [Theory]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWXYZÆŒÐÞ", 0, 10)]
    [InlineData("0123456789", 0, 10)]
    [InlineData("acemnorsuvwxzæœı", 0, 7)]
    [InlineData("bdfhiklß", 0, 10)]
    [InlineData("gpqy", -3, 7)]
    [InlineData("jþ", -3, 10)]
    public void Letters_stand_on_their_base_line_and_reach_their_height(string letters, double foot, double top) =>
        Assert.All(letters, letter =>
        {
            var bounds = Written.Bounds(letter);
            Assert.Equal((foot, top), (bounds.Min.Y, bounds.Max.Y), WithinRounding);
        });

    [Fact]
    public void Lines_19_tenths_apart_never_touch()
    {
        var bounds = Box.Around(Written.Characters.Except([' ', '\u00A0']).Select(Written.Bounds));
        Assert.InRange(bounds.Min.Y, -3 - Rounding, 0);
        Assert.InRange(bounds.Height + Pen, 0, 19);
    }

    [Fact]
    public void Strokes_stay_within_the_width_of_their_character() =>
        Assert.All(Written.Characters.Except([' ', '\u00A0']), character =>
        {
            Assert.InRange(Written.Bounds(character).Min.X, -Rounding, Written.Width("1"));
            Assert.InRange(Written.Bounds(character).Max.X, -Rounding, Written.Width(character.ToString()) + Rounding);
        });

    [Fact]
    public void Figures_are_all_of_one_width() =>
        Assert.All("0123456789", figure => Assert.Equal(Written.Width("8"), Written.Width(figure.ToString())));

    [Fact]
    public void Two_tenths_stay_clear_between_letters_and_six_between_words()
    {
        var letter = Written.Width("H");
        Assert.Equal(2, Written.Width("HH") - 2 * letter - Pen, Rounding);
        Assert.Equal(6, Written.Width("H H") - 2 * letter - Pen, Rounding);
        Assert.Equal(Written.Width("HH") - letter, Alphabet.Strokes(Written.Out("HH"))[3].Start.X, Rounding);
        Assert.Equal(Written.Width("H H") - letter, Alphabet.Strokes(Written.Out("H H"))[3].Start.X, Rounding);
    }

    [Fact]
    public void The_width_of_two_texts_together_is_that_of_both_and_one_gap()
    {
        foreach (var a in Written.Characters)
            foreach (var b in "Hl1 Å.字")
                Assert.Equal(Written.Width($"{a}") + 3 + Written.Width($"{b}"), Written.Width($"{a}{b}"), Rounding);
    }

    [Fact]
    public void Text_of_capitals_is_as_wide_as_its_strokes_at_every_height()
    {
        foreach (var height in (double[])[1.8, 2.5, 3.5, 5, 7, 10, 14, 20])
        {
            var lettering = new Lettering("DO NOT CUT", new(40, -7), height, Angle.Zero, Anchor.BaseStart);
            Assert.Equal(Alphabet.Width(lettering.Text, height), lettering.Bounds.Width, Rounding);
            Assert.Equal(height, lettering.Bounds.Height, Rounding);
        }
    }

    private static bool WithinRounding((double, double) a, (double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < Rounding && Math.Abs(a.Item2 - b.Item2) < Rounding;

    private static Box Rounded(Box box) => new(Rounded(box.Min), Rounded(box.Max));

    private static Point Rounded(Point p) => new(Math.Round(p.X, 9), Math.Round(p.Y, 9));
}
