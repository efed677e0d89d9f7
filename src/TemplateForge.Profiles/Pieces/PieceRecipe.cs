using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How one piece is made from shapes and values.</summary>
internal sealed record PieceRecipe
{
    // Longer than any panel; paper would take a thousand pages.
    private const double Longest = 5_000;
    private const int MostOfOnePiece = 1_000;
    private const int LongestLabel = 60;

    public required Place Place { get; init; }
    public required string Name { get; init; }
    public required ImmutableArray<Term> When { get; init; }
    public required string Title { get; init; }
    public required PieceKind Kind { get; init; }
    public required ShapeName Shape { get; init; }

    /// <summary>The panel before it is cut; none unless something is cut away.</summary>
    public required ImmutableArray<ShapeName> Before { get; init; }

    public required Term Thickness { get; init; }
    public required ImmutableArray<Chosen<Material>> Material { get; init; }

    /// <summary>What it is fastened to; none where nobody has said.</summary>
    public required ImmutableArray<Chosen<Material>> Against { get; init; }

    public required ImmutableArray<Conditional<RivetRecipe>> Rivets { get; init; }
    public required ImmutableArray<Chosen<BentName>> Bends { get; init; }
    public required ImmutableArray<Chosen<WrapName>> Wraps { get; init; }
    public required ImmutableArray<OnPanelRecipe> OnPanel { get; init; }
    public required Term Quantity { get; init; }
    public required ImmutableArray<Term> RoughCut { get; init; }
    public required string FaceUp { get; init; }
    public required ImmutableArray<Conditional<(PointTerm From, PointTerm To)>> Edges { get; init; }
    public required ImmutableArray<Conditional<DatumRecipe>> Datums { get; init; }
    public required ImmutableArray<Conditional<CentreRecipe>> Centres { get; init; }
    public required ImmutableArray<Conditional<(string Label, ShapeName Along)>> GuideLines { get; init; }
    public required ImmutableArray<Conditional<Chosen<TackRecipe>>> Tacks { get; init; }
    public required ImmutableArray<Conditional<PlugWeldRecipe>> PlugWelds { get; init; }
    public required ImmutableArray<Conditional<WeldRunsRecipe>> WeldRuns { get; init; }
    public required ImmutableArray<Conditional<ZincStripRecipe>> ZincStrips { get; init; }
    public required ImmutableArray<Conditional<ScribeRecipe>> ScribeLines { get; init; }
    public required ImmutableArray<Conditional<CheckRecipe>> Checks { get; init; }
    public required ImmutableArray<Conditional<DimensionRecipe>> Dimensions { get; init; }
    public required ImmutableArray<Conditional<(Chosen<FilledText> Say, PointTerm At)>> Labels { get; init; }
    public required ImmutableArray<Conditional<Chosen<FilledText>>> Notes { get; init; }

    /// <summary>What it asks of whoever cuts it; nothing where it does not say.</summary>
    public ImmutableArray<CuttingRecipe> Cutting { get; init; } = [];

    /// <summary>Makes the piece.</summary>
    /// <param name="from">The values that are put in.</param>
    /// <param name="arrows">FRONT, UP: the same for all the pieces of a profile.</param>
    /// <param name="piece">The piece, for the hand that the profile is drawn for.</param>
    public bool TryMake(Evaluation from, ImmutableArray<Arrow> arrows, [MaybeNullWhen(false)] out Piece piece)
    {
        piece = null;
        var sound = from.TryShape(Shape, out var shape);
        sound &= from.TryShapes(Before, out var before);
        sound &= from.TrySize(Thickness, out var thickness);
        sound &= from.TryCount(Quantity, MostOfOnePiece, out var quantity);
        var material = Fabrication.Material.Unstated;
        if (!Material.IsEmpty) sound &= from.TryPick(Material[0], out material);
        var against = Fabrication.Material.Unstated;
        if (!Against.IsEmpty) sound &= from.TryPick(Against[0], out against);
        BentSheet? bent = null;
        if (!Bends.IsEmpty) sound &= from.TryPick(Bends[0], out var name) && from.TryBent(name, out bent);
        if (sound && bent is not null) sound = IsBentTo(bent);
        WrapPattern? wrap = null;
        if (!Wraps.IsEmpty) sound &= from.TryPick(Wraps[0], out var wrapped) && from.TryWrap(wrapped, out wrap);
        var panel = Profiles.OnPanel.None;
        if (!OnPanel.IsEmpty) sound &= OnPanel[0].TryMake(from, out panel);
        var rough = 0.0;
        if (!RoughCut.IsEmpty) sound &= from.TryLength(RoughCut[0], out rough);
        if (sound && shape.IsEmpty) sound = from.Refuse(Wordings.ShapeIsEmpty(Shape));
        if (sound && Math.Max(shape.Bounds.Width, shape.Bounds.Height) > Longest)
            sound = from.Refuse(Wordings.PieceTooLong(Place, Name, Math.Max(shape.Bounds.Width, shape.Bounds.Height), Longest));

        sound &= from.TryMany<(PointTerm From, PointTerm To), Path>(Edges, TryEdge, out var edges);
        sound &= from.TryMany<DatumRecipe, Datum>(Datums, TryDatum, out var datums);
        sound &= from.TryMany(Centres, (CentreRecipe c, out ImmutableArray<CentreLine> lines) => c.TryMake(from, out lines), out var centres);
        sound &= from.TryMany<(string Label, ShapeName Along), GuideLine>(GuideLines, TryGuideLine, out var guides);
        sound &= from.TryMany<Chosen<TackRecipe>, ImmutableArray<Tack>>(Tacks, TryTacks, out var tacks);
        sound &= from.TryMany(ScribeLines, (ScribeRecipe s, out ImmutableArray<Path> lines) => s.TryMake(from, out lines), out var scribed);
        sound &= from.TryMany(Rivets, (RivetRecipe r, out RivetRow row) => r.TryMake(from, shape, out row), out var rivets);
        sound &= from.TryMany(PlugWelds, (PlugWeldRecipe p, out ImmutableArray<PlugWeld> made) => p.TryMake(from, shape, out made), out var plugs);
        sound &= from.TryMany(WeldRuns, (WeldRunsRecipe r, out WeldSeam made) => r.TryMake(from, out made), out var seams);
        var metal = bent is not null && Material.IsEmpty ? bent.Sheet.Material : material;
        var strips = ImmutableArray<ZincStrip>.Empty;
        if (metal is { IsZincCoated: true }) sound &= from.TryMany(ZincStrips, (ZincStripRecipe z, out ZincStrip made) => z.TryMake(from, shape, out made), out strips);
        sound &= from.TryMany<CheckRecipe, DistanceCheck>(Checks, TryCheck, out var checks);
        sound &= from.TryMany<DimensionRecipe, ShownDistance>(Dimensions, TryDimension, out var dimensions);
        sound &= from.TryMany<(Chosen<FilledText> Say, PointTerm At), Label>(Labels, TryLabel, out var labels);
        sound &= from.TryMany(Notes, (Chosen<FilledText> note, out string text) => from.TryChosenText(note, out text), out var notes);
        var cutting = CuttingWishes.None;
        if (!Cutting.IsEmpty) sound &= Cutting[0].TryMake(from, shape, out cutting);
        if (!sound) return false;

        piece = new Piece
        {
            Name = Name,
            Title = Title,
            Kind = Kind,
            Shape = shape,
            Before = before.IsEmpty ? Region.Empty : before[0],
            Edges = edges,
            Quantity = quantity,
            Thickness = thickness,
            Material = metal!,
            BendLines = bent?.LinesOn(shape) ?? [],
            EdgeViews = bent?.EdgeViews ?? panel.EdgeViews,
            CurvedBends = bent?.CurvesOn(shape) ?? [],
            Warnings = bent?.WarningsOn(shape) ?? [],
            RoughAllowance = rough,
            FaceUp = FaceUp,
            Arrows = panel.Turned(arrows),
            Datums = datums,
            CentreLines = [.. centres.SelectMany(c => c)],
            GuideLines = guides,
            ScribeLines = [.. scribed.SelectMany(s => s), .. bent?.ScribedOn(shape) ?? []],
            Tacks = [.. tacks.SelectMany(t => t)],
            WeldSeams = WeldRunsRecipe.NumberedOn(seams),
            ZincStrips = strips,
            Checks = checks,
            Dimensions = dimensions,
            Labels = [.. labels, .. bent?.LabelsOn(shape) ?? []],
            Notes = [.. notes, .. bent?.Notes ?? [], .. panel.Notes, .. CuttingRecipe.NotesOf(cutting)],
            Cutting = cutting,
        };
        if (wrap is not null) piece = WrappedPiece.Of(piece, wrap);
        piece = piece with { Warnings = [.. piece.Warnings, .. BlankWarnings.Of(piece, rivets, against!), .. PlugWeldWarnings.Of(piece, [.. plugs.SelectMany(p => p)])] };
        if (!Against.IsEmpty && piece.Material == Fabrication.Material.Unstated) return from.Refuse(Wordings.MaterialWantedToo(Against[0].Place, Name));
        return !piece.FinishLines().IsEmpty || from.Refuse(Wordings.NothingToCut(Place, Name));

        bool IsBentTo(BentSheet sheet)
        {
            if (Math.Abs(sheet.Sheet.Thickness - thickness) > Tolerance.Length)
                return from.Refuse(Wordings.BentSheetOfOtherThickness(Thickness.Place, thickness, sheet.Sheet.Thickness));
            if (!Material.IsEmpty && material != sheet.Sheet.Material)
                return from.Refuse(Wordings.BentSheetOfOtherMetal(Material[0].Place, material!, sheet.Sheet.Material));
            return !sheet.LinesOn(shape).IsEmpty || !sheet.CurvesOn(shape).IsEmpty || from.Refuse(Wordings.NoBendOnThePiece(Bends[0].Place));
        }

        bool TryEdge((PointTerm From, PointTerm To) edge, out Path path)
        {
            path = null!;
            if (!(from.TryPoint(edge.From, out var a) & from.TryPoint(edge.To, out var b))) return false;
            if (a.DistanceTo(b) <= Tolerance.Length) return from.Refuse(Wordings.StepWithoutLength(edge.To.Place, b));
            path = Path.Line(a, b);
            return true;
        }

        bool TryDatum(DatumRecipe datum, out Datum made)
        {
            var diameter = 0.0;
            var found = from.TryPoint(datum.At, out var at) & (datum.Hole.IsEmpty || from.TrySize(datum.Hole[0], out diameter));
            made = new(datum.Label, at, diameter);
            return found;
        }

        bool TryGuideLine((string Label, ShapeName Along) guide, out GuideLine made)
        {
            var found = from.TryShape(guide.Along, out var along);
            made = new(guide.Label, along);
            return found && (!along.IsEmpty || from.Refuse(Wordings.ShapeIsEmpty(guide.Along)));
        }

        bool TryTacks(Chosen<TackRecipe> chosen, out ImmutableArray<Tack> made)
        {
            made = [];
            return from.TryPick(chosen, out var recipe) && recipe.TryMake(from, out made);
        }

        bool TryCheck(CheckRecipe check, out DistanceCheck made)
        {
            var found = from.TryPoint(check.From, out var a) & from.TryPoint(check.To, out var b);
            made = new(check.What, a, b, check.Measured);
            return found;
        }

        bool TryDimension(DimensionRecipe dimension, out ShownDistance made)
        {
            made = null!;
            if (!(from.TryPoint(dimension.From, out var a) & from.TryPoint(dimension.To, out var b) & from.TryChosenText(dimension.Say, out var text))) return false;
            made = new(text, a, b, dimension.Measured);
            if (text.Length > LongestLabel) return from.Refuse(Wordings.LabelTooLong(dimension.Place, text, LongestLabel));
            return made.Distance > Tolerance.Length || from.Refuse(Wordings.NothingToMeasure(dimension.Place, a));
        }

        bool TryLabel((Chosen<FilledText> Say, PointTerm At) label, out Label made)
        {
            var found = from.TryPoint(label.At, out var at) & from.TryChosenText(label.Say, out var text);
            made = new(text, at);
            if (!found) return false;
            return text.Length is > 0 and <= LongestLabel || from.Refuse(Wordings.LabelTooLong(label.Say.Place, text, LongestLabel));
        }
    }
}

internal sealed record DatumRecipe(string Label, PointTerm At, ImmutableArray<Term> Hole);

internal sealed record CheckRecipe(string What, PointTerm From, PointTerm To, CheckDirection Measured);

internal sealed record DimensionRecipe(Place Place, PointTerm From, PointTerm To, CheckDirection Measured, Chosen<FilledText> Say);

/// <summary>A straight centre line, or two that cross.</summary>
internal abstract record CentreRecipe
{
    public abstract bool TryMake(Evaluation from, out ImmutableArray<CentreLine> lines);
}

internal sealed record CentreLineRecipe(PointTerm From, PointTerm To) : CentreRecipe
{
    public override bool TryMake(Evaluation from, out ImmutableArray<CentreLine> lines)
    {
        var found = from.TryPoint(From, out var a) & from.TryPoint(To, out var b);
        lines = [new(a, b)];
        return found;
    }
}

internal sealed record CentreCrossRecipe(PointTerm Centre, Term Turned, Term HalfLengthX, Term HalfLengthY) : CentreRecipe
{
    public override bool TryMake(Evaluation from, out ImmutableArray<CentreLine> lines)
    {
        lines = [];
        if (!(from.TryPoint(Centre, out var centre)
            & from.TryAngle(Turned, out var turned)
            & from.TrySize(HalfLengthX, out var a)
            & from.TrySize(HalfLengthY, out var b))) return false;
        var (along, across) = (Vector.Polar(a, turned), Vector.Polar(b, turned + Angle.QuarterTurn));
        lines = [new(centre - along, centre + along), new(centre - across, centre + across)];
        return true;
    }
}
