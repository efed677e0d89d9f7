using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles;

/// <summary>A flanged sheet laid flat.</summary>
internal sealed record BentFlanges(FlangedBlank Blank, FoldedSheet Sheet) : BentSheet(Sheet)
{
    public override ImmutableArray<string> Notes =>
    [
        Sheet.Note,
        .. Blank.BendLines(Sheet.Springback).Select(b => b.Number).Distinct().Count() > 1
            ? (ImmutableArray<string>)["Bends are numbered from the free edges inwards; the last one between two that stand is bent between fingers as long as it is."]
            : [],
        .. Blank.Strains.Where(s => s.Share > 0).Select(s => s.Note).Distinct(),
    ];

    public override ImmutableArray<BendLine> LinesOn(Region blank) =>
        [.. Blank.BendLines(Sheet.Springback).Where(b => !Path.Line(b.From, b.To).PartsInside(blank).IsEmpty)];

    public override ImmutableArray<CurvedBend> CurvesOn(Region blank) =>
        [.. Blank.CurvedBends(Sheet.Springback).Where(b => !b.Middle.PartsInside(blank).IsEmpty)];

    public override ImmutableArray<EdgeView> EdgeViews => Blank.EdgeViews;

    public override ImmutableArray<Warning> WarningsOn(Region blank) =>
        Sheet.Brakes is [var brake, ..] ? Blank.Warnings(Sheet.Material, brake) : [];
}
