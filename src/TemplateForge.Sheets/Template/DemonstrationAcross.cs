using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Large letters across what must not be cut from.</summary>
internal static class DemonstrationAcross
{
    private const double Share = 0.86;

    /// <summary>The letters from the lower left to the upper right of a box; nothing for what is no demonstration.</summary>
    public static IEnumerable<Mark> Marks(Modification modification, Box box)
    {
        if (!modification.IsDemonstration) return [];
        var turn = new Vector(box.Width, box.Height).Direction;
        var (across, perHeight) = (Math.Sqrt(box.Width * box.Width + box.Height * box.Height), Alphabet.Width(Wording.Demonstration, 1));
        // The corners of the line of letters stay in the box as well.
        var height = across * Share / (perHeight + 2 * Math.Max(turn.Tan, 1 / turn.Tan) / 2);
        return [new Lettering(Wording.Demonstration, box.Centre, height, turn, Anchor.Middle)];
    }

    /// <summary>The same as the lowest view of a page.</summary>
    public static IEnumerable<View> Views(Modification modification, Box paper, Box box)
    {
        var board = new Board();
        board.Add(LineKinds.Demonstration, Marks(modification, box));
        return board.Marks.Any() ? [new View(board.ToDrawing(), Placement.Unmoved, paper)] : [];
    }
}
