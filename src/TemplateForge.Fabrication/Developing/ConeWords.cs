using System.Collections.Immutable;
using TemplateForge.Geometry;
using static TemplateForge.Fabrication.WrapWords;

namespace TemplateForge.Fabrication;

/// <summary>What is drawn and written on the pattern of a cone besides its outline.</summary>
internal static class ConeWords
{
    public static string Base(ConeWrap cone) => $"base, {Mm(cone.BaseDiameter)}";

    public static string Top(ConeWrap cone) => $"top, {Mm(cone.TopDiameter)}";

    public static ImmutableArray<Generator> Generators(ConeWrap cone, IConeDevelopment flat)
    {
        var lines = Drawn(cone.Seam, cone.Divisions, []).Select(a => new Generator(LabelAt(cone, a), a, Line(flat, a.Radians))).ToList();
        if (cone.Lap > 0) lines.Add(new(LapLine(cone.Seam), cone.Seam, Line(flat, cone.Seam.Radians + 2 * Math.PI)));
        return [.. lines];
    }

    public static ImmutableArray<DistanceCheck> Checks(ConeWrap cone, IConeDevelopment flat)
    {
        var (from, to) = (cone.Seam.Radians, cone.Seam.Radians + 2 * Math.PI);
        var across = from + Math.PI;
        return
        [
            new("Seam edge", flat.Base(from), flat.Top(from), CheckDirection.Straight),
            .. cone.IsRight ? (ImmutableArray<DistanceCheck>)[] : [new($"Across from the seam, at {Degrees(cone.Seam + Angle.HalfTurn)}", flat.Base(across), flat.Top(across), CheckDirection.Straight)],
            new("Base, from seam to seam, straight", flat.Base(from), flat.Base(to), CheckDirection.Straight),
            .. flat.Top(from).DistanceTo(flat.Top(to)) > 1 ? (ImmutableArray<DistanceCheck>)[new("Top, from seam to seam, straight", flat.Top(from), flat.Top(to), CheckDirection.Straight)] : [],
        ];
    }

    public static ImmutableArray<string> Notes(ConeWrap cone, ImmutableArray<Segment> below, ImmutableArray<Segment> above)
    {
        var girths = $"along the base {Mm(new Path(below).Length)}" + (above.IsEmpty || cone.TopDiameter == 0 ? "" : $", along the top {Mm(new Path(above).Length)}");
        var material = cone.Material;
        var face = cone.Measured switch { MeasuredFace.Outside => "outside", MeasuredFace.Inside => "inside", _ => "to the middle of the sheet" };
        return
        [
            material.IsRolled
                ? $"Rolled from {Mm(material.Thickness)} sheet: {Mm(cone.BaseDiameter)} and {Mm(cone.TopDiameter)}, {Mm(cone.Height)} high, are measured {face}. True girth in the middle of the sheet, from seam to seam: {girths}."
                : $"Wrap it round the outside of a cone of {Mm(cone.BaseDiameter)} and {Mm(cone.TopDiameter)}, {Mm(cone.Height)} high. Paper {Mm(material.Thickness)} thick. True girth from seam to seam: {girths}.",
            LiningUp(material),
            .. Seams(cone.Lap, material),
            .. cone.IsRight ? (ImmutableArray<string>)[] : [$"The top stands {Mm(Math.Abs(cone.Aside))} aside, towards {(cone.Aside > 0 ? "0°" : "180°")}."],
            .. material.IsRolled ? (ImmutableArray<string>)["Edges are cut square to the sheet: dress them flat on a plate, so that each circle lies in its plane."] : [],
        ];
    }

    private static string LabelAt(ConeWrap cone, Angle at)
    {
        if (!IsQuarter(at)) return "";
        var (isNought, isHalf) = (Turn(at) is < 1e-6 or > 360 - 1e-6, Math.Abs(Turn(at) - 180) < 1e-6);
        var name = cone.IsRight || !(isNought || isHalf) ? "" : isNought == cone.Aside > 0 ? " short side" : " long side";
        return Degrees(at) + name;
    }

    private static Path Line(IConeDevelopment flat, double phi) => Path.Line(flat.Base(phi), flat.Top(phi));
}
