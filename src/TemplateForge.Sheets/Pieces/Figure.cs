using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;

namespace TemplateForge.Sheets;

/// <summary>One piece alone with its dimensions, labels and names, for a page of a book or of the documentation.</summary>
public static class Figure
{
    private const double Text = 2.5;

    /// <summary>The piece as large as fits in a width and height at a round scale.</summary>
    /// <param name="piece">What is shown.</param>
    /// <param name="width">Width in mm, more than 60.</param>
    /// <param name="height">Height in mm, more than 60.</param>
    /// <exception cref="ArgumentException">The piece fits at no scale.</exception>
    public static LineDrawing Of(Piece piece, double width, double height) =>
        Picture.TryFit(piece, width, height, Text, out var block)
            ? block.Board.ToDrawing()
            : throw new ArgumentException($"{piece.Name} fits into {width} by {height} mm at no scale.", nameof(piece));

    /// <summary>A piece's plan of cutting, as large as fits.</summary>
    /// <param name="piece">A piece that has one.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    public static LineDrawing OfPlan(Piece piece, double width, double height) =>
        PlanPicture.Fitting(piece, width, height, Text, out _).Board.ToDrawing();

    /// <summary>A bent piece seen on its edge, as large as fits.</summary>
    /// <param name="view">What is shown.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    public static LineDrawing Of(EdgeView view, double width, double height) => EdgeViews.Of(view, width, height, Text).Board.ToDrawing();

    /// <summary>Steps of the work as the job sheet prints them.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="width">Width in mm.</param>
    public static LineDrawing Of(ImmutableArray<WorkStep> steps, double width) => CoverBlocks.Steps(steps, width, Text).Board.ToDrawing();
}
