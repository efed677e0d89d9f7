using TemplateForge.Geometry;

namespace TemplateForge.Drawing.Tests;

public sealed class LetteringTests
{
    // Two plain capitals fill their box: from the base line to 10, from 0 to the width.
    [Theory]
    [InlineData(Anchor.BaseStart, 0, 0)]
    [InlineData(Anchor.BaseMiddle, 0.5, 0)]
    [InlineData(Anchor.BaseEnd, 1, 0)]
    [InlineData(Anchor.MiddleStart, 0, 0.5)]
    [InlineData(Anchor.Middle, 0.5, 0.5)]
    [InlineData(Anchor.MiddleEnd, 1, 0.5)]
    public void The_anchor_lies_where_it_was_asked_for(Anchor anchor, double shareOfWidth, double shareOfHeight)
    {
        var at = new Point(31, -12);
        var bounds = (Written.Out("HE") with { At = at, Anchor = anchor }).Bounds;
        Assert.Equal(at.X, bounds.Min.X + shareOfWidth * bounds.Width, 1e-9);
        Assert.Equal(at.Y, bounds.Min.Y + shareOfHeight * bounds.Height, 1e-9);
        Assert.Equal(Written.Width("HE"), bounds.Width, 1e-9);

        // Turned a quarter to the left, the same box lies on its side round the same anchor, its base line to the right.
        var turned = (Written.Out("HE") with { At = at, Anchor = anchor, Turn = Angle.QuarterTurn }).Bounds;
        Assert.Equal(at.Y, turned.Min.Y + shareOfWidth * turned.Height, 1e-9);
        Assert.Equal(at.X, turned.Max.X - shareOfHeight * turned.Width, 1e-9);
    }

    [Fact]
    public void Turning_never_mirrors()
    {
        for (var degrees = 0; degrees < 360; degrees += 15)
        {
            // An L is written down its stem, then along its foot: always to the left of the way it came.
            var stroke = Assert.Single(Alphabet.Strokes(Written.Out("L") with { Turn = Angle.FromDegrees(degrees) }));
            Assert.True(stroke.Segments[0].StartDirection.Cross(stroke.Segments[1].StartDirection) > 0.99);
            Assert.Equal(Angle.FromDegrees(degrees).Cos, stroke.Segments[1].StartDirection.X, 1e-9);
            Assert.Equal(Angle.FromDegrees(degrees).Sin, stroke.Segments[1].StartDirection.Y, 1e-9);
        }
    }

    // The strokes are walked in steps of 1/200 of a segment, at most 0.1 mm long here; on an arc of 2 mm or more,
    // half a step off an extreme is 0.0006 mm short of it.
    [Fact]
    public void Bounds_touch_the_strokes_on_all_four_sides()
    {
        foreach (var degrees in (double[])[0, 30, 90, 222])
        {
            var lettering = new Lettering("Größe SOS 8°", new(5, 9), Height: 20, Angle.FromDegrees(degrees), Anchor.Middle);
            var walked = Box.Around(Alphabet.Strokes(lettering).Points());
            Assert.Equal(walked.Min.X, lettering.Bounds.Min.X, 0.001);
            Assert.Equal(walked.Min.Y, lettering.Bounds.Min.Y, 0.001);
            Assert.Equal(walked.Max.X, lettering.Bounds.Max.X, 0.001);
            Assert.Equal(walked.Max.Y, lettering.Bounds.Max.Y, 0.001);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void Text_without_strokes_is_where_its_anchor_is(string text)
    {
        Assert.Empty(Alphabet.Strokes(Written.Out(text)));
        Assert.Equal(new Box(new(3, 4), new(3, 4)), (Written.Out(text) with { At = new(3, 4) }).Bounds);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Letters_without_a_height_are_refused(double height)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Lettering("A", Point.Origin, height, Angle.Zero, Anchor.Middle));
        Assert.Throws<ArgumentOutOfRangeException>(() => Written.Out("A") with { Height = height });
    }
}
