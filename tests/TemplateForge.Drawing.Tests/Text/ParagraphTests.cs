using CsCheck;

namespace TemplateForge.Drawing.Tests.Text;

public class ParagraphTests
{
    private static readonly Gen<string> Texts = Gen.Char["abcdefgh MI.-"].Array[0, 120].Select(c => new string(c));

    [Fact]
    public void No_line_is_wider_than_it_may_be_and_no_letter_is_lost() =>
        Gen.Select(Texts, Gen.Double[10, 200]).Sample((text, width) =>
        {
            var lines = Paragraph.Wrapped(text, 3.5, width);
            Assert.All(lines, l => Assert.True(Alphabet.Width(l, 3.5) <= width, l));
            Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
        }, seed: "0000KOIKe1r0", iter: 2000);

    [Fact]
    public void Lines_break_between_words_and_take_as_many_as_fit()
    {
        var width = Alphabet.Width("measure before", 2.5);
        Assert.Equal(["measure before", "use"], Paragraph.Wrapped("measure before use", 2.5, width));
    }

    [Fact]
    public void A_line_feed_begins_a_new_line_and_an_empty_line_stays() =>
        Assert.Equal(["one", "", "two"], Paragraph.Wrapped("one\r\n\ntwo", 3.5, 500));

    [Fact]
    public void A_word_too_long_for_a_line_is_broken()
    {
        var lines = Paragraph.Wrapped("iiiiiiiiii", 3.5, Alphabet.Width("iiii", 3.5));
        Assert.Equal(["iiii", "iiii", "ii"], lines);
    }

    [Fact]
    public void A_line_narrower_than_a_letter_takes_one_letter() =>
        Assert.Equal(["W", "W"], Paragraph.Wrapped("WW", 3.5, 0.1));

    [Fact]
    public void No_height_or_width_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Paragraph.Wrapped("a", 0, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => Paragraph.Wrapped("a", 3, double.NaN));
    }
}
