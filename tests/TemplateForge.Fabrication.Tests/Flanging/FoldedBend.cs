namespace TemplateForge.Fabrication.Tests;

/// <summary>A bend of a folded blank, measured as somebody would on the finished part.</summary>
internal sealed class FoldedBend
{
    private readonly Vector3 _onAxis;

    public FoldedBend(BendLine line, FoldedPanel held, FoldedPanel turned, double thickness)
    {
        (Line, Held, Turned, Thickness) = (line, held, turned, thickness);
        var (middle, left) = (line.From.MidpointTo(line.To), (line.To - line.From).Unit.Left);
        var tangent = middle + left * (line.Allowance / 2);
        _onAxis = held.Motion.Of(new(tangent.X, tangent.Y, line.Way == BendWay.Up ? line.InsideRadius : -thickness - line.InsideRadius));
        var outwards = new Vector3(-left.X, -left.Y, 0);
        (Leaving, Going) = (held.Motion.OfDirection(outwards), turned.Motion.OfDirection(outwards));
    }

    public BendLine Line { get; }
    public FoldedPanel Held { get; }
    public FoldedPanel Turned { get; }
    public double Thickness { get; }

    /// <summary>Square to the bend, from the panel that is held towards it.</summary>
    public Vector3 Leaving { get; }

    /// <summary>Square to the bend, from it along the panel that is turned.</summary>
    public Vector3 Going { get; }

    /// <summary>Between the two panels, from flat.</summary>
    public double Degrees => Math.Atan2(Leaving.Cross(Going).Length, Leaving.Dot(Going)) * 180 / Math.PI;

    /// <summary>Whether the panel that is turned rises on the side of the drawn face.</summary>
    public bool Rises => Going.Dot(Held.Normal) > 0;

    /// <summary>Where the panel that is held ends, when it is measured over the outside or on the inside: so far along <see cref="Leaving"/>.</summary>
    public double EndOfHeld(bool outside) => Mark(Leaving, outside).Dot(Leaving);

    /// <summary>Where the panel that is turned begins: so far along <see cref="Going"/>.</summary>
    public double StartOfTurned(bool outside) => Mark(-Going, outside).Dot(Going);

    // Up to 90° where the faces of both would meet, past it where the round stands out furthest.
    private Vector3 Mark(Vector3 along, bool outside)
    {
        var radius = Line.InsideRadius + (outside ? Thickness : 0);
        if (Line.Bend.Degrees > 90 + 1e-9) return _onAxis + along * radius;
        // Both faces lie a radius from the axis: a corner of the kite that they make with it.
        var (a, b) = (Off(Held), Off(Turned));
        return _onAxis + (a + b) * (radius / (1 + a.Dot(b)));
    }

    // From the axis square to a panel.
    private Vector3 Off(FoldedPanel panel) => panel.Normal * (Line.Way == BendWay.Up ? -1 : 1);
}
