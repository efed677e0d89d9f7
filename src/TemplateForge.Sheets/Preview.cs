using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The pieces side by side with their main dimensions, for the screen.</summary>
public static class Preview
{
    /// <summary>Width in mm of the picture for which lettering and marks are sized.</summary>
    private const double Width = 250;
    private const double Height = 150;
    private const double Text = 2.6;

    /// <param name="modification">What is shown.</param>
    /// <returns>A drawing some 250 mm wide, smaller than the pieces where they are large; for the eye, not to measure from.</returns>
    public static LineDrawing Of(Modification modification)
    {
        // Many pieces take more room than a few, and a screen can be scrolled.
        var height = Height * Math.Max(1, Math.Ceiling(modification.Pieces.Length / 2.0));
        Block picture;
        double reduction;
        while (!double.IsFinite((picture = Picture.Fitting(modification, Width, height, Text, withGuideNames: true, out reduction)).Height)) height *= 2;
        var width = Math.Max(picture.Width, 150);
        var blocks = new CoverBlocks(modification, Text);
        var whole = Block.Stacked(5,
        [
            blocks.Heading("Preview", width),
            .. blocks.Banners(width),
            picture,
            Block.Text($"{Wording.ScaleOf(reduction)}. Dimensions in mm.", width, Text),
        ]);
        var board = new Board();
        board.Add(LineKinds.Demonstration, DemonstrationAcross.Marks(modification, new(new(0, -whole.Height), new(whole.Width, 0))));
        whole.PutOn(board, Point.Origin);
        return board.ToDrawing();
    }
}
