using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A sheet that goes from one outline to another in another plane: round to square, a tunnel from one section to the next.</summary>
/// <remarks>Both outlines are those of the sheet's middle face, both closed or both open, gone along the same way.</remarks>
public sealed record Transition
{
    /// <exception cref="ArgumentException">One outline is closed and the other is not.</exception>
    public Transition(TransitionEnd lower, TransitionEnd upper)
    {
        if (lower.IsClosed != upper.IsClosed) throw new ArgumentException("Both outlines are closed, or both are open.", nameof(upper));
        (Lower, Upper) = (lower, upper);
    }

    public TransitionEnd Lower { get; }
    public TransitionEnd Upper { get; }
    public bool IsClosed => Lower.IsClosed;

    /// <summary>How the sheet goes round an arc.</summary>
    public TransitionWork Work { get; init; } = TransitionWork.Rolled;

    /// <summary>
    /// Of flats that are pressed: into how many a quarter circle of an outline is divided. Of what is rolled: how many press lines bend it by 90°.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">It is less than 1.</exception>
    public int Divisions
    {
        get;
        init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A quarter has one division at least.");
    } = 6;

    /// <summary>Where a closed transition is joined: the place on the lower outline nearest to this point; none for the middle of its longest line.</summary>
    public ImmutableArray<Point> SeamAt { get; init; } = [];

    /// <summary>Over how many parts it is spread, as even along the lower outline as can be.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is less than 1.</exception>
    public int Parts
    {
        get;
        init => field = value >= 1 ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There is one part at least.");
    } = 1;

    /// <summary>How wide each part laps over the next at a seam, in mm; 0 where they butt.</summary>
    public double Lap { get; init; }

    /// <summary>How far the sheet goes on past the lower outline, to lap over what it meets there, in mm.</summary>
    public double LowerLap { get; init; }

    /// <summary>How far the sheet goes on past the upper outline, in mm.</summary>
    public double UpperLap { get; init; }
}

/// <summary>How the sheet goes round an arc.</summary>
public enum TransitionWork
{
    /// <summary>Curved all the way: its edges are as long as the arcs that they meet.</summary>
    Rolled,

    /// <summary>In flats, bent from one to the next: its edges are chords of the arcs.</summary>
    Pressed,
}

/// <summary>Why two outlines cannot be joined, or the sheet between them not be laid flat.</summary>
public enum TransitionFault
{
    /// <summary>The lower outline does not lie wholly below the plane of the upper one, or the upper not wholly above that of the lower.</summary>
    OutlinesCross,

    /// <summary>Somewhere the sheet would have to fold back on itself.</summary>
    DoublesBack,

    /// <summary>A part lies over itself when it is flat.</summary>
    LiesOverItself,
}
