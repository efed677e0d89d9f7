using System.Collections.Immutable;
using TemplateForge.Geometry;
using static TemplateForge.Fabrication.WrapWords;

namespace TemplateForge.Fabrication;

/// <summary>What is drawn and written on the pattern of a tube besides its outline.</summary>
internal static class TubeWords
{
    public static ImmutableArray<Generator> Generators(TubeWrap tube)
    {
        var lines = Drawn(tube.Seam, tube.Divisions, Named(tube)).Select(a => new Generator(LabelAt(tube, a), a, Line(tube, a))).ToList();
        if (tube.Lap > 0) lines.Add(new(LapLine(tube.Seam), tube.Seam, Line(tube, tube.Seam + Angle.FullTurn)));
        return [.. lines];
    }

    public static ImmutableArray<DistanceCheck> Checks(TubeWrap tube)
    {
        var (seam, lowest, highest) = (tube.Seam, tube.LowerAt(tube.Seam), tube.UpperAt(tube.Seam));
        var middle = (lowest + highest) / 2;
        var girth = new DistanceCheck(
            tube.Lap > 0 ? "Girth, edge to lap line" : "Girth, edge to edge",
            tube.At(seam.Radians, middle), tube.At(seam.Radians + 2 * Math.PI, middle), CheckDirection.Across);
        return tube.Lower.IsSquare && tube.Upper.IsSquare
            ? [girth, Along("Length", seam)]
            : [girth, Along("Length at 0°", Angle.Zero), Along("Length at 180°", Angle.HalfTurn)];

        DistanceCheck Along(string what, Angle at)
        {
            var line = Line(tube, seam + Angle.FromDegrees((Turn(at) - Turn(seam) + 360) % 360));
            return new(what, line.Start, line.End, CheckDirection.Up);
        }
    }

    public static ImmutableArray<string> Notes(TubeWrap tube)
    {
        var (diameter, material) = (tube.OutsideDiameter, tube.Material);
        return
        [
            material.IsRolled
                ? $"Rolled from {Mm(material.Thickness)} sheet to {Mm(diameter)} outside: {Mm(tube.Girth)} wide, π times the diameter in the middle of the sheet, {Mm(2 * tube.Neutral)}."
                : $"Wrap it round the outside of a tube of {Mm(diameter)}: a tape round the tube says {Mm(Math.PI * diameter)}. The paper, {Mm(material.Thickness)} thick, goes round in {Mm(tube.Girth)}.",
            LiningUp(material),
            .. Seams(tube.Lap, material),
            .. tube.Lower.IsSquare && tube.Upper.IsSquare && tube.Holes.IsEmpty ? (ImmutableArray<string>)[] : [Wall(tube)],
        ];
    }

    private static string Wall(TubeWrap tube) => tube.Wall > 0
        ? $"Cut square to the wall, the blade towards the tube's middle: through the wall of {Mm(tube.Wall)} nothing is in the way and every generator touches. What stands open is for the weld."
        : "The thickness of the wall is not considered: where its inside fouls, dress it.";

    private static Path Line(TubeWrap tube, Angle at) =>
        Path.Line(tube.At(at.Radians, tube.LowerAt(at)), tube.At(at.Radians, tube.UpperAt(at)));

    private static IEnumerable<Angle> Named(TubeWrap tube) =>
        ((TubeEnd[])[tube.Lower, tube.Upper]).SelectMany(end => Enumerable.Range(0, 4).Where(q => end.NameOf(q).Length > 0).Select(q => end.Turned + q * Angle.QuarterTurn))
            .Concat(tube.Holes.Select(h => h.Round)).Concat(tube.Footprints.Select(f => f.Outline.Round));

    private static string LabelAt(TubeWrap tube, Angle at)
    {
        var (lower, upper) = (NameAt(tube.Lower, at), NameAt(tube.Upper, at));
        var name = lower == upper ? lower
            : tube.Lower.IsSquare ? upper
            : tube.Upper.IsSquare ? lower
            : string.Join(", ", ((string[])[lower.Length > 0 ? "below " + lower : "", upper.Length > 0 ? "above " + upper : ""]).Where(n => n.Length > 0));
        if (name.Length == 0) return IsQuarter(at) || IsOfAHole(tube, at) ? Degrees(at) : "";
        return $"{Degrees(at)} {name}";
    }

    private static bool IsOfAHole(TubeWrap tube, Angle at) =>
        tube.Holes.Concat(tube.Footprints.Select(f => f.Outline)).Any(h => Math.Abs(Turn(h.Round) - Turn(at)) < 1e-6);

    private static string NameAt(TubeEnd end, Angle at)
    {
        var past = Turn(at - end.Turned) / 90;
        return Math.Abs(past - Math.Round(past)) < 1e-6 ? end.NameOf((int)Math.Round(past) % 4) : "";
    }
}
