using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests;

public sealed class GlyphTests
{
    private const double Pen = 1;

    // Which way round a letter is, is known from reading: where its strokes lie, beside its middle.
    [Theory]
    [InlineData("BCDEFGKLPRbchkpr([")]
    public void Stems_on_the_left_stay_on_the_left(string letters) =>
        Assert.All(letters, letter => Assert.InRange(Lean(letter), double.NegativeInfinity, -0.05));

    [Theory]
    [InlineData("Jdgjq)]134")]
    public void Stems_on_the_right_stay_on_the_right(string letters) =>
        Assert.All(letters, letter => Assert.InRange(Lean(letter), 0.05, double.PositiveInfinity));

    [Theory]
    [InlineData("GSN56", 7.5)]
    [InlineData("\\", 9)]
    [InlineData("s", 5.2)]
    [InlineData("<", 4.5)]
    [InlineData("ef", 2.5)]
    [InlineData("y", -2)]
    [InlineData("àèìòù", 10.3)]
    [InlineData("ÀÈÌÒÙ", 13.3)]
    public void At_this_height_it_lies_on_the_left(string letters, double height) =>
        Assert.All(letters, letter => Assert.InRange(Lean(letter, height), double.NegativeInfinity, -0.1));

    [Theory]
    [InlineData("Z237?", 7.5)]
    [InlineData("/", 9)]
    [InlineData(">", 4.5)]
    [InlineData("S9", 2.5)]
    [InlineData("Q", 0.8)]
    [InlineData("a", 5.5)]
    [InlineData("z", 5.5)]
    [InlineData("áéíóúý", 10.3)]
    [InlineData("ÁÉÍÓÚÝ", 13.3)]
    public void At_this_height_it_lies_on_the_right(string letters, double height) =>
        Assert.All(letters, letter => Assert.InRange(Lean(letter, height), 0.1, double.PositiveInfinity));

    [Fact]
    public void Arcs_that_meet_share_a_tangent()
    {
        foreach (var character in Written.Characters)
            foreach (var stroke in Alphabet.Strokes(Written.Out(character)))
                foreach (var (a, b) in stroke.Segments.Zip(stroke.Segments.Skip(1)))
                    Assert.True(a.IsLine || b.IsLine || (a.EndDirection - b.StartDirection).Length < 1e-6, $"{character} has a corner at {b.Start}.");
    }

    [Theory]
    [InlineData("CSJUOo0689csjlt()~°f?∞")]
    public void A_round_letter_has_no_corner(string letters) =>
        Assert.All(letters, letter => Assert.All(Alphabet.Strokes(Written.Out(letter)), stroke =>
            Assert.All(stroke.Segments.Zip(stroke.Segments.Skip(1)), pair =>
                Assert.Equal(0, (pair.First.EndDirection - pair.Second.StartDirection).Length, 1e-6))));

    // x²/a² + y²/b² = 1 about the middle of the letter; eyes and pens do not see a twentieth of the pen's width.
    [Fact]
    public void An_O_is_round_as_an_ellipse_is()
    {
        var bounds = Written.Bounds('O');
        var (a, b) = (bounds.Width / 2, bounds.Height / 2);
        Assert.All(Alphabet.Strokes(Written.Out('O')).Points(), point =>
        {
            var from = point - bounds.Centre;
            var reach = Math.Sqrt(from.X * from.X / (a * a) + from.Y * from.Y / (b * b));
            Assert.InRange(from.Length * Math.Abs(1 - 1 / reach), 0, Pen / 20);
        });
    }

    [Theory]
    [InlineData("AÀÁÂÃÄÅ EÈÉÊËĚ IÌÍÎÏİ OÒÓÔÕÖŐ UÙÚÛÜŮŰ YÝŸ NÑŃŇ CĆČ SŚŠ ZŹŻŽ GĞ RŘ TŤ DĎ")]
    [InlineData("aàáâãäå eèéêëě ıìíîïi oòóôõöő uùúûüůű yýÿ nñńň cćč sśš zźżž gğ rř")]
    public void Accents_stand_clear_of_the_letter(string families)
    {
        foreach (var family in families.Split(' '))
        {
            var letter = Alphabet.Strokes(Written.Out(family[0])).Points(steps: 40).ToArray();
            foreach (var accented in family[1..])
            {
                var strokes = Alphabet.Strokes(Written.Out(accented));
                var accent = strokes.Skip(Alphabet.Strokes(Written.Out(family[0])).Length).ToArray();
                var aside = Written.Width(accented.ToString()) - Written.Width(family[..1]);
                Assert.NotEmpty(accent);
                foreach (var point in accent.Points(steps: 20))
                    Assert.InRange(letter.Min(p => (p + new Vector(aside / 2, 0)).DistanceTo(point)), 1.3 * Pen, 5);
            }
        }
    }

    // Half the pen's width: enough for a pen to come down and a torch to mark it, too little to be seen as a line.
    [Theory]
    [InlineData(".:;!?ij…·")]
    public void A_dot_is_a_short_stroke(string letters) =>
        Assert.All(letters, letter =>
            Assert.Contains(Alphabet.Strokes(Written.Out(letter)), s => Math.Abs(s.Length - Pen / 2) < 1e-9));

    [Fact]
    public void No_segment_is_too_short_to_draw()
    {
        foreach (var character in Written.Characters)
            Assert.All(
                Alphabet.Strokes(Written.Out(character)).SelectMany(s => s.Segments),
                s => Assert.InRange(s.Length, 0.05, 20));
    }

    /// <summary>How far right of the middle its strokes lie on average, or only what of them is near one height.</summary>
    private static double Lean(char letter, double? height = null)
    {
        var samples =
            from segment in Alphabet.Strokes(Written.Out(letter)).SelectMany(s => s.Segments)
            let steps = (int)Math.Ceiling(segment.Length / 0.02)
            from step in Enumerable.Range(0, steps)
            select segment.At((step + 0.5) / steps);
        return samples.Where(p => height is null || Math.Abs(p.Y - height.Value) < 0.1).Average(p => p.X)
            - Written.Width(letter.ToString()) / 2;
    }
}
