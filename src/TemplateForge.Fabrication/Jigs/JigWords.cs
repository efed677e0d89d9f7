using System.Collections.Immutable;

namespace TemplateForge.Fabrication;

/// <summary>What is lettered on a jig, and said beside it.</summary>
internal static class JigWords
{
    /// <summary>The kind of edge with its cutter and bush.</summary>
    public static string EdgeOf(JigPlate plate)
    {
        var (design, edge) = (plate.Design, plate.Design.Edge);
        if (design.IsDrillJig)
            return "DRILL JIG: bushes " + string.Join(", ", plate.Bushes.GroupBy(b => b.Bush.Bore).OrderBy(g => g.Key).Select(g => $"{g.Count()} x {Mm(g.Key)}"));
        return edge.Kind switch
        {
            GuideKind.Bush when edge.Guide - edge.Cut <= Geometry.Tolerance.Length => $"EDGE FOR BEARING {Mm(edge.Guide)} AS LARGE AS ITS CUTTER: the finish line itself",
            GuideKind.Bush => $"EDGE FOR BUSH {Mm(edge.Guide)}, CUTTER {Mm(edge.Cut)}: {Mm(edge.Offset)} back from the finish line",
            GuideKind.Shroud => $"EDGE FOR TORCH, SHROUD {Mm(edge.Guide)}, KERF {Mm(edge.Cut)}: {Mm(edge.Offset)} back from the finish line",
            _ => "EDGE IS THE FINISH LINE: scriber and file only",
        };
    }

    /// <summary>The way the tool is fed, and why.</summary>
    public static string FeedOf(JigDesign design) => design switch
    {
        { IsDrillJig: true } => "FEED: straight down through each bush",
        { Edge.Kind: GuideKind.Bush } => "FEED: along the arrow, metal that stays on the LEFT",
        { Edge.Kind: GuideKind.Shroud } => "FEED: along the arrow, metal that stays on the RIGHT",
        _ => "FEED: either way, scriber held against the edge",
    };

    /// <summary>What is lettered on a face that is up.</summary>
    public static ImmutableArray<string> UpperFace(JigPlate plate, JigLettering lettering, Hand hand, string face) =>
        Face(plate, lettering, $"{HandOf(hand)}, FACE {face} UP{NotMeasured(lettering, hand)}", [FeedOf(plate.Design)]);

    /// <summary>What is lettered on a face that never is up.</summary>
    public static ImmutableArray<string> LowerFace(JigPlate plate, JigLettering lettering, Hand hand) =>
    [
        "WRONG FACE UP: TURN THE PLATE OVER",
        .. Face(plate, lettering, $"{HandOf(hand)}, FACE B: it lies on the panel{NotMeasured(lettering, hand)}", []),
    ];

    private static ImmutableArray<string> Face(JigPlate plate, JigLettering lettering, string face, ImmutableArray<string> feed)
    {
        var design = plate.Design;
        return
        [
            design.Title,
            $"{design.Name}, revision: {lettering.Revision}",
            face,
            EdgeOf(plate),
            .. feed,
            .. design.IsDrillJig ? ImmutableArray<string>.Empty : ["WASTE SIDE: where the arrow WASTE points"],
            $"DATUMS: {design.Location.Distance}",
            $"PLATE {Mm(design.Stock.Thickness)}, SHEET {Mm(design.Work.Thickness)}",
            design.IsDrillJig ? "WEAR PINS TRIED ON: ____________" : "CHECKED AGAINST GAUGE ON: ____________",
        ];
    }

    public static ImmutableArray<string> Notes(JigPlate plate)
    {
        var design = plate.Design;
        // A finish line that ends at a panel edge has a run-on past it; a closed one is begun and left in the waste.
        var runsOff = design.Work.FinishLines().Any(l => l.Start.DistanceTo(l.End) > Geometry.Tolerance.Merge);
        var stops = design.Location.Locators.Any(l => l.Kind == LocatorKind.Stop);
        return
        [
            EdgeOf(plate) + ".",
            design.IsDrillJig
                ? "Bushes flush with the face that lies on the sheet; deburr the sheet under the plate before the next hole."
                : "Dress the guide edge where a table cut it: file off taper, burr and dross to the line, stone it along its length, and try it with the gauge.",
            .. design.Edge.Kind switch
            {
                GuideKind.Bush when !design.IsDrillJig =>
                [
                    "Feed along the arrow with the metal that stays on the left: the cutter turns clockwise seen from above, cuts against the feed, and draws the bush to the edge.",
                    runsOff
                        ? $"Start and stop on the run-on, {Mm(WasteSide.RunOn)} past the panel edge, never in the cut."
                        : "Drill a hole in the waste that the cutter passes through, start there, come to the edge on a curve and leave it so.",
                ],
                GuideKind.Shroud when !design.IsDrillJig =>
                [
                    "Feed along the arrow with the metal that stays on the right, which is the square side of a plasma cut. Never wood or board under a torch.",
                    runsOff
                        ? $"Light and put out the torch on the run-on, {Mm(WasteSide.RunOn)} past the panel edge, never in the cut."
                        : "Pierce in the waste, come to the edge on a curve and leave it so.",
                ],
                _ => ImmutableArray<string>.Empty,
            },
            "Holes for pins and bushes are drilled and reamed to the fits of the part list; a slot is filed to its pin. No torch cuts either to size.",
            stops
                ? "Located by two stops on the panel edge and one pin in a slot square to it: three holds, no more."
                : "Located by a round pin and a pin in a slot that points to it: three holds, no more.",
            $"Clamps: {plate.Clamps.Length} places are drawn, {Mm(design.IsDrillJig ? GuideEdge.Scriber.ClampsClear : design.Edge.ClampsClear)} or more clear of the cut. Clamp before anything turns.",
            plate.Flips
                ? "Nothing stands out of one face only: turned over, with face B up, this plate is the other hand's."
                : "Pins or bushes stand out of one face: this plate does not flip, the other hand has a plate of its own.",
        ];
    }

    public static string GaugeNote(double wear) =>
        $"Lay it on the plate with the pins through both. On a new plate the guide edge stands out {Mm(wear)} past the gauge all along. Where the two are flush, "
        + $"or the gauge stands out, the edge has worn by {Mm(wear)}: make a new plate. Letter the date on the plate.";

    /// <summary>A hand other than that of the job, as pages say it.</summary>
    public static string ForHand(JigLettering lettering, Hand hand) => HandOf(hand) + NotMeasured(lettering, hand);

    private static string NotMeasured(JigLettering lettering, Hand hand) =>
        hand == Hand.Either || (hand == lettering.Hand) == lettering.HandWasMeasured ? "" : ", NOT MEASURED on this hand";

    private static string HandOf(Hand hand) => hand switch { Hand.Left => "LEFT HAND", Hand.Right => "RIGHT HAND", _ => "EITHER HAND" };

    public static string Mm(double length) => FormattableString.Invariant($"{length:0.###} mm");
}
