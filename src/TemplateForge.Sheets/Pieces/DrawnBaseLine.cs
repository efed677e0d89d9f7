using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The ends of the line from which a piece's bends are measured, where they must be drawn: datums are there already.</summary>
/// <param name="Ends">The letter of each, where it lies, and which way is away from the piece; none where nothing is bent.</param>
internal sealed record DrawnBaseLine(ImmutableArray<(string Name, Point At, Vector Outwards)> Ends)
{
    /// <summary>The line of a piece as it is drawn.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="turn">By how much it is turned for the drawing; the line is that of the piece as it was.</param>
    public static DrawnBaseLine Of(Piece piece, Angle turn)
    {
        if (piece.Bends.IsEmpty || piece.Shape.IsEmpty || BaseLine.Of(piece) is not { Kind: not BaseLineKind.Datums } line) return new([]);
        // A letter past a line's end would make the picture smaller.
        var (by, away) = (Placement.Turned(turn, Point.Origin), -line.Side);
        return new([(line.FirstName, by.Of(line.First), by.Of(away)), (line.SecondName, by.Of(line.Second), by.Of(away))]);
    }

    /// <summary>A small cross on each end.</summary>
    /// <param name="unit">How many mm of the piece are one mm on the paper.</param>
    public IEnumerable<Mark> Crosses(double unit)
    {
        const double arm = 1.8;
        return Ends.SelectMany(end => ((double[])[0, 90]).Select(turn => end.Outwards.Turned(Angle.FromDegrees(turn)) * (arm * unit))
            .Select(way => new OpenStroke(Path.Line(end.At - way, end.At + way))));
    }
}
