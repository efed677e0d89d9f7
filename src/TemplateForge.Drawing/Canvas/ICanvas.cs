using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>What a drawing is put on, in mm, y upwards.</summary>
internal interface ICanvas
{
    /// <summary>Nothing shows outside this box until the next <see cref="Unclip"/>.</summary>
    void Clip(Box window);

    void Unclip();

    /// <summary>Draws lines with round ends and corners.</summary>
    /// <param name="pen">Its width and colour; dashes are strokes of their own by now.</param>
    /// <param name="runs">At least one run of segments.</param>
    /// <param name="closed">Whether each run's end is its start.</param>
    void Stroke(Pen pen, IReadOnlyCollection<ImmutableArray<Segment>> runs, bool closed);

    /// <summary>Writes words with the strokes of the alphabet.</summary>
    void Letter(Pen pen, Lettering words);

    /// <summary>Paints what closed runs enclose, holes the other way round left out.</summary>
    void Fill(Colour colour, IReadOnlyCollection<ImmutableArray<Segment>> runs);
}
