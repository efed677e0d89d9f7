using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A straight bend as it stands on a flat blank: the middle of what is bent, and the tangent lines on either side of it.</summary>
/// <remarks>
/// A bend line is pencilled on the metal and never scribed: a scratch is where the bend would crack.
/// <code>
///     held under the nose bar              .  tangent line
///     . . . . . . . . . . . . . . . . . . .'  sight line, one inside radius on: the nose bar stands over it
///     From ---------------------------- To    bend line
///     . . . . . . . . . . . . . . . . . . .   tangent line
///     turned up or down
/// </code>
/// </remarks>
/// <param name="Number">The place of the bend in the order of bending, from 1.</param>
/// <param name="From">One end of the middle line; the part that is held lies to the left as one goes to the other end.</param>
/// <param name="To">The other end.</param>
/// <param name="Bend">How far the sheet is bent, from flat: more than 0, at most a full turn (a roll).</param>
/// <param name="Overbend">How far it is bent before it springs back, from flat; as far as <paramref name="Bend"/> where nothing is known.</param>
/// <param name="Way">Towards the face that is up or away from it.</param>
/// <param name="InsideRadius">In mm.</param>
/// <param name="Allowance">Width of what is bent, on the flat, in mm: the tangent lines lie half of it on either side.</param>
public sealed record BendLine(
    int Number, Point From, Point To, Angle Bend, Angle Overbend, BendWay Way, double InsideRadius, double Allowance)
    : IBendOnBlank
{
    public double Length => From.DistanceTo(To);

    public Path Middle => Path.Line(From, To);

    /// <summary>Where the part that is held ends, and where the flange begins.</summary>
    public (Path Held, Path Turned) TangentLines => (Beside(Allowance / 2), Beside(-Allowance / 2));

    /// <summary>Whether it is worked over a former together with bends along arcs, and not on a brake.</summary>
    public bool IsOverFormer { get; init; }

    /// <summary>Whether it is a slight bend pressed along its own line, by eye against a pattern: it has neither tangent lines nor a sight line.</summary>
    public bool IsPressLine { get; init; }

    /// <summary>Which it is of the press lines that share its number, from 1.</summary>
    public int Place { get; init; } = 1;

    /// <summary>How many press lines share its number.</summary>
    public int Alike { get; init; } = 1;

    /// <summary>Whether it has a sight line of its own: where it is made under a nose bar, unless that stands over the bend line itself.</summary>
    public bool HasSightLine =>
        !IsOverFormer && !IsPressLine && InsideRadius > 0 && Bend <= Angle.HalfTurn && Math.Abs(Allowance / 2 - InsideRadius) >= LeastApart;

    // Two pencil lines that are nearer to each other, in mm, look like one thick one, and are cut.
    private const double LeastApart = 0.2;

    /// <summary>What the edge of a brake's nose bar is set over.</summary>
    /// <remarks>One inside radius in from the tangent line that goes under the nose bar: FAA-H-8083-31, chapter 4, from memory.</remarks>
    public Path SightLine => Beside(Allowance / 2 - InsideRadius);

    /// <summary>The same bend on the piece for the other hand; what is held still lies to the left.</summary>
    public BendLine Mirrored(Placement mirror) => this with { From = mirror.Of(To), To = mirror.Of(From) };

    private Path Beside(double left)
    {
        var aside = (To - From).Unit.Left * left;
        return Path.Line(From + aside, To + aside);
    }
}

/// <summary>Which way a flange turns, as one looks at the face that is up.</summary>
public enum BendWay
{
    /// <summary>Towards whoever looks.</summary>
    Up,

    /// <summary>Away.</summary>
    Down,
}
