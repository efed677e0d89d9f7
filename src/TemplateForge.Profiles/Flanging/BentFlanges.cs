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
        .. Blank.BendLines(Sheet.Springback).Where(b => !b.IsOverFormer).Select(b => b.Number).Distinct().Count() > 1
            ? (ImmutableArray<string>)["Bend in the order of the numbers, from the free edges inwards. The last bend between two flanges that stand takes brake fingers no longer than that bend."]
            : [],
        .. Blank.Strains.Where(s => s.Share > 0 && s.Cuts == 0).Select(s => s.Note).Distinct(),
    ];

    public override ImmutableArray<BendLine> LinesOn(Region blank) =>
        [.. Blank.BendLines(Sheet.Springback).Where(b => !Path.Line(b.From, b.To).PartsInside(blank).IsEmpty)];

    public override ImmutableArray<CurvedBend> CurvesOn(Region blank) =>
        [.. Blank.CurvedBends(Sheet.Springback).Where(b => !b.Middle.PartsInside(blank).IsEmpty)];

    public override ImmutableArray<EdgeView> EdgeViews => Blank.EdgeViews;

    public override ImmutableArray<Warning> WarningsOn(Region blank) =>
        Sheet.Brakes is [var brake, ..] ? Blank.Warnings(Sheet.Material, brake) : [];
}
