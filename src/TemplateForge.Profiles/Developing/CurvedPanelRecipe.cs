using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a curved panel is made from a path and values.</summary>
internal sealed record CurvedPanelRecipe
{
    public required Place Place { get; init; }
    public required Chosen<string> Section { get; init; }
    public required Term Thickness { get; init; }
    public required Chosen<bool> IsMeasuredInside { get; init; }
    public required Chosen<bool> LiesInside { get; init; }
    public required Chosen<bool> IsCutStraight { get; init; }
    public required Term Datum { get; init; }
    public required Term Rulings { get; init; }
    public required Chosen<bool> SeesThePanel { get; init; }

    /// <summary>Where one looks square at it; none for the datum.</summary>
    public required ImmutableArray<Term> SquareAt { get; init; }
    public required Term Tilted { get; init; }

    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out CurvedPanel panel)
    {
        panel = null;
        var square = 0.0;
        if (!from.TryPick(Section, out var path) || !(from.TryPath(path, Section.Place, out var section)
            & from.TrySize(Thickness, out var thickness)
            & from.TryPick(IsMeasuredInside, out var measuredInside)
            & from.TryPick(LiesInside, out var liesInside)
            & from.TryPick(IsCutStraight, out var straight)
            & from.TryPick(SeesThePanel, out var seesThePanel)
            & from.TryLength(Datum, out var datum)
            & from.TryAngle(Rulings, out var rulings)
            & from.TryAngle(Tilted, out var tilted)
            & (SquareAt.IsEmpty || from.TryLength(SquareAt[0], out square)))) return false;
        var measured = new PanelSection
        {
            Section = section!,
            MeasuredOn = measuredInside ? PanelFace.Inside : PanelFace.Outside,
            Thickness = thickness,
            Datum = datum,
            Rulings = rulings,
            Tilt = tilted,
            SquareAt = !seesThePanel ? [] : [SquareAt.IsEmpty ? datum : square],
            LiesOn = liesInside ? PanelFace.Inside : PanelFace.Outside,
            Cut = straight ? ThroughCut.Straight : ThroughCut.Square,
        };
        return CurvedPanel.TryOf(measured, out panel, out var fault) || from.Refuse(Wordings.CurvedPanelFault(Place, fault));
    }
}

/// <summary>A curved panel, called by its name.</summary>
internal sealed record CurvedPanelName(string Name, Place Place);

/// <summary>A shape of the flat view on the flat pattern of a curved panel.</summary>
internal sealed record CarriedRecipe(Place Place, CurvedPanelName Panel, ShapeName Shape) : ShapeRecipe(Place)
{
    public override bool TryMake(Evaluation from, out Region region)
    {
        if (!(from.TryShape(Shape, out region) & from.TryCurvedPanel(Panel, out var panel))) return false;
        if (!panel!.TryCarry(region, out var carried, out var fault)) return from.Refuse(Wordings.NotCarried(Shape.Place, Shape.Name, fault));
        region = carried;
        return true;
    }
}

/// <summary>A point of the flat view on the flat pattern of a curved panel.</summary>
internal sealed record CarriedPoint(Place Place, CurvedPanelName Panel, PointTerm Point) : PointTerm(Place)
{
    public override bool TryFind(Evaluation from, out Point point)
    {
        if (!(from.TryPoint(Point, out point) & from.TryCurvedPanel(Panel, out var panel))) return false;
        if (!panel!.TryCarry(point, out var carried, out var fault)) return from.Refuse(Wordings.NotCarried(Point.Place, "this point", fault));
        point = carried;
        return true;
    }
}

/// <summary>What is printed of the curved panel that a piece lies on.</summary>
internal sealed record OnPanelRecipe(CurvedPanelName Panel, Term Steps)
{
    /// <summary>More than anybody reads.</summary>
    private const int MostSteps = 40;

    public bool TryMake(Evaluation from, out OnPanel made)
    {
        made = OnPanel.None;
        if (!(from.TryCurvedPanel(Panel, out var panel) & from.TrySize(Steps, out var step))) return false;
        var count = (panel!.Seen.To - panel.Seen.From) / step;
        if (count > MostSteps) return from.Refuse(Wordings.TooManyPanelSteps(Steps.Place, step, count, MostSteps));
        made = new(panel, CurvedPanelWords.Notes(panel, step));
        return true;
    }
}

/// <summary>A curved panel with what is said of it; or none.</summary>
internal sealed record OnPanel(ImmutableArray<string> Notes, ImmutableArray<EdgeView> EdgeViews, bool IsMirrored)
{
    public static OnPanel None { get; } = new([], [], IsMirrored: false);

    public OnPanel(CurvedPanel panel, ImmutableArray<string> notes)
        : this(notes, [new EdgeView("the panel's section, outside above", panel.Edge, [])], panel.IsMirrored)
    {
    }

    /// <summary>The ways to somewhere, as one looks at the face that the piece lies on.</summary>
    public ImmutableArray<Arrow> Turned(ImmutableArray<Arrow> arrows) => IsMirrored
        ? [.. arrows.Select(a => a with { Direction = Angle.HalfTurn - a.Direction })]
        : arrows;
}
