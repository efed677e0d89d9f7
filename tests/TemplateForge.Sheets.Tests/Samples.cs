using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets.Tests;

/// <summary>Two modifications such as the library makes: an opening in from a panel's edge, and a patch with its opening.</summary>
internal static class Samples
{
    public static Modification Notch { get; } = MakeNotch(given: false);

    /// <summary>The same with every measured value given.</summary>
    public static Modification MeasuredNotch { get; } = MakeNotch(given: true);

    public static Modification ButtPatch { get; } = MakePatch(given: false, lapped: false);

    public static Modification LapPatch { get; } = MakePatch(given: true, lapped: true);

    /// <summary>More than a page, with so many plug welds that their numbers stand close.</summary>
    public static Modification LargePatch { get; } = MakePatch(given: true, lapped: true, Outline.RoundedRectangle(new(new(-110, -60), new(110, 60)), 15));

    /// <summary>
    /// An angle bracket on the flat, 100 wide: legs 60 and 40 outside, sheet 1.5, inside radius 2, bent square; by K-factor 0.44 its
    /// allowance is π/2 × 2.66 = 4.178, and each leg is flat as far as 3.5 short of its outside.
    /// </summary>
    public static Modification Bracket { get; } = Notch with
    {
        Profile = "angle-bracket",
        Title = "Angle bracket",
        Hand = Hand.Either,
        HandWasMeasured = true,
        Values =
        [
            Measured("leg", "Leg that is held, outside", "60 mm", "60"),
            Measured("flange", "Leg that is bent up, outside", "40 mm", "40"),
            Shop("inside_radius", "Inside radius", "2 mm", ""),
        ],
        Steps = ["Cut, deburr, pencil the bend line, bend.", "Check the angle with a square before the next one."],
        Pieces =
        [
            new()
            {
                Name = "bracket",
                Title = "Bracket",
                Kind = PieceKind.Blank,
                Shape = Region.Of(Outline.Rectangle(new(new(0, 0), new(100, 97.178)))).Subtract(Region.Of(Outline.Circle(new(20, 20), 4))),
                Thickness = 1.5,
                Quantity = 2,
                Material = new("dc01", "mild steel DC01", MetalFamily.Steel, 7850, 0.5, 0.44, 0.28, IsZincCoated: false),
                FaceUp = "outer face",
                BendLines = [new(1, new(100, 58.589), new(0, 58.589), Angle.QuarterTurn, Angle.FromDegrees(92), BendWay.Up, 1.5, 4.178)],
                ScribeLines = [Path.Line(new(50, 0), new(50, 20))],
                Warnings = [new("hole near a bend", "The hole is 6 mm from the bend, and 8 is the least.", new(20, 20), "common practice, no source")],
                Checks = [new("Width of the blank", new(0, 0), new(100, 0), CheckDirection.Across)],
            },
        ],
    };

    /// <summary>A round lid whose rim runs round it as two half circles, with a return: two bends along arcs.</summary>
    public static Modification Lid { get; } = MakeLid();

    /// <summary>For the other hand, which nobody has measured.</summary>
    public static Modification OtherHand(Modification modification) => modification with
    {
        Hand = Hand.Right,
        HandWasMeasured = false,
        IsMirrored = true,
        Pieces = [.. modification.Pieces.Select(p => p.Mirrored())],
    };

    private static Modification MakeLid()
    {
        var plan = Region.Of(Outline.Circle(new(0, 0), 40));
        var rule = new KFactorRule(0.44);
        Fold Turned(BendWay way, double leg) => new(new(Angle.QuarterTurn, 2, 1, rule), way, new(leg));
        Flange rim = new([.. plan.Contours[0].Segments], [Turned(BendWay.Up, 15), Turned(BendWay.Down, 10)]);
        if (!FlangedBlank.TryLayFlat(new(plan, 1, MeasuredBy.Outside, rim), out var blank, out _)) throw new InvalidOperationException("The lid lies flat.");
        return Bracket with
        {
            Title = "Lid",
            Pieces =
            [
                Bracket.Pieces[0] with
                {
                    Name = "lid",
                    Title = "Lid",
                    Shape = blank.Shape,
                    Thickness = 1,
                    BendLines = [],
                    CurvedBends = blank.CurvedBends(Springback.Unstated),
                    EdgeViews = blank.EdgeViews,
                    ScribeLines = [],
                    Checks = [],
                    Warnings =
                    [
                        new("edge shrunk too far", "It shrinks by 40 %.", new(50, 0), "radial model"),
                        new("hole near a bend", "Too near.", new(0, 20), "common practice, no source"),
                        new("edge shrunk too far", "It shrinks by 40 %.", new(-50, 0), "radial model"),
                    ],
                },
            ],
        };
    }

    private static Modification MakeNotch(bool given)
    {
        var before = Region.Of(Outline.Rectangle(new(new(-40, 0), new(340, 260))));
        var near = Region.Of(Outline.Ellipse(new(150, 40), 108.05, 107, Angle.QuarterTurn, Tolerance.Curve)).Swept(new(0, 0.2));
        var opening = near.Swept(new(0, -200));
        var left = before.Subtract(opening);
        var mouth = opening.Bounds;
        var finished = left.RoundedCorners(10, p => Math.Abs(p.Y) < 1 && p.X > mouth.Min.X - 1 && p.X < mouth.Max.X + 1).Region;
        var removed = before.Subtract(finished);
        var deepest = removed.Extreme(new(0, 1));
        var (start, end) = (removed.Extreme(new(-1, 0)), removed.Extreme(new(1, 0)));
        return new()
        {
            Shop = "Copperbeck Works",
            Profile = "bulkhead-notch",
            Version = 1,
            Title = "Clearance notch for a round component",
            About = "A panel edge is cut back so that a round component passes through the panel with its axis tilted.",
            Hand = Hand.Left,
            HandWasMeasured = true,
            Values =
            [
                Measured("diameter", "Diameter of the component", "190 mm", given ? "190" : ""),
                Measured("tilt", "Tilt of its axis off square to the panel", "8°", given ? "8 deg" : ""),
                Measured("tilt_direction", "Way the axis moves as it goes through the sheet, away from you", "90°", given ? "90" : ""),
                Measured("axis_in", "Axis in from the panel edge", "40 mm", "40"),
                Measured("axis_along", "Axis along the edge from datum A", "150 mm", "150"),
                Shop("clearance", "Clearance square to the component", "12 mm", ""),
                Measured("movement", "Movement of the component", "0 mm", given ? "0" : ""),
                Shop("mouth_radius", "Radius of the mouth corners", "10 mm", ""),
                Measured("fit_direction", "Way the panel is fitted, off square to the edge", "0°", given ? "0" : ""),
                Measured("sheet", "Sheet thickness", "1.4 mm", given ? "1.4 mm" : ""),
                Measured("datum_spacing", "Datum hole A to datum hole B, along the edge", "300 mm", given ? "11 13/16 in" : ""),
                Measured("datum_a_diameter", "Diameter of datum hole A", "8 mm", given ? "8" : ""),
                Measured("datum_b_diameter", "Diameter of datum hole B", "8 mm", given ? "8" : ""),
                Measured("datum_a_in", "Datum hole A in from the panel edge", "20 mm", given ? "20" : ""),
                Measured("datum_b_in", "Datum hole B in from the panel edge", "20 mm", given ? "20" : ""),
                Measured("panel_depth", "Depth of the panel from this edge", "260 mm", given ? "260" : ""),
                Shop("rough_allowance", "Rough cut outside the finish line", "3 mm", "3"),
            ],
            Pieces =
            [
                new()
                {
                    Name = "panel",
                    Title = "Panel with its opening",
                    Kind = PieceKind.CutAway,
                    Shape = finished,
                    Before = before,
                    Edges = [Path.Line(new(-40, 0), new(340, 0)), Path.Line(new(-40, 260), new(340, 260))],
                    Thickness = 1.4,
                    RoughAllowance = 3,
                    FaceUp = "inner face, the one towards the engine bay",
                    Arrows = [new("FRONT", Angle.Zero), new("UP", Angle.QuarterTurn)],
                    Datums = [new("A", new(0, 20), 8), new("B", new(300, 20), 8)],
                    CentreLines = [new(new(150, 40 - 120), new(150, 40 + 120.2)), new(new(31, 40), new(269, 40))],
                    Checks =
                    [
                        new("Datum A to datum B", new(0, 20), new(300, 20), CheckDirection.Straight),
                        new("Panel edge to the deepest point", new(deepest.X, 0), deepest, CheckDirection.Up),
                        new("Mouth along the panel edge", start, end, CheckDirection.Across),
                        new("Datum A to the near end of the mouth", new(0, 20), start, CheckDirection.Across),
                        new("Datum A to the deepest point", new(0, 20), deepest, CheckDirection.Straight),
                    ],
                    Notes =
                    [
                        "Clearance 12 mm square to the component, through the whole 1.4 mm of the sheet.",
                        "A formed panel does not lie on a table: transfer with the paper template, or cut this only in flat stock.",
                    ],
                },
            ],
            Cautions = [Brakes, Cutting, Edges, Fire],
            Steps =
            [
                "Check the two scale checks on every page, then join the pages edge to edge by their marks.",
                "Check every distance below on the paper and on the panel before anything is cut.",
                "Fix the template to the marked face with datums A and B over their holes and its edge line on the panel edge.",
                "Centre-punch along the finish line, scribe it, and take the paper off.",
                "Cut 3 mm outside the finish line, on the hatched side.",
                "File to the finish line, round the edge over and deburr both faces.",
                "Offer the panel up and go round the component with a 12 mm gauge.",
                "Prime and seal the bare edge.",
            ],
        };
    }

    private static Modification MakePatch(bool given, bool lapped) => MakePatch(given, lapped, Outline.Circle(Point.Origin, 15));

    private static Modification MakePatch(bool given, bool lapped, Contour hole)
    {
        var opening = Region.Of(hole);
        var outline = opening.Offset(lapped ? 16 : -0.8);
        var line = outline.Offset(-10.5);
        var holes = lapped ? EvenSpacing.FromTheTop(line.Contours[0], EvenSpacing.CountNearest(line.Contours[0], 30)) : [];
        var patch = outline.Subtract(Combination.Union(holes.Select(h => Region.Of(Outline.Circle(h, 3.5)))));
        var bare = outline.Offset(25);
        return new()
        {
            Shop = "Copperbeck Works",
            Profile = "hole-patch",
            Version = 1,
            Title = "Patch for a hole that should not be there",
            About = "An old hole is dressed to a clean round and closed with a patch.",
            Hand = Hand.Either,
            HandWasMeasured = true,
            Values =
            [
                Measured("hole", "Shape of the hole, dressed", "round", given ? "round" : ""),
                Measured("diameter", "Diameter of the hole", "30 mm", given ? "30" : ""),
                Measured("sheet", "Sheet thickness", "1 mm", given ? "1" : ""),
                Shop("joint", "How the patch is joined", lapped ? "lapped behind and plug-welded" : "butt-welded flush", lapped ? "lap" : ""),
                Shop("process", "Welding process", "MIG", ""),
                lapped ? Shop("lap", "Lap all round", "16 mm", "") : Shop("weld_gap", "Weld gap all round, after tacking", "0.8 mm", ""),
                lapped ? Shop("plug_hole", "Diameter of the plug holes", "7 mm", "") : Shop("tack_pitch", "Most between tacks", "30 mm", ""),
            ],
            Pieces =
            [
                new()
                {
                    Name = "patch",
                    Title = "Patch, cut from new sheet",
                    Kind = PieceKind.Blank,
                    Shape = patch,
                    Thickness = 1,
                    FaceUp = "outer face",
                    Arrows = [new("UP", Angle.QuarterTurn)],
                    CentreLines = Cross(outline.Bounds),
                    GuideLines = lapped ? [new("edge of the hole in the panel", opening)] : [],
                    Tacks = lapped ? TackPlan.Numbered(holes) : TackPlan.Quartered(outline.Contours[0], 30),
                    Checks = Across("Patch", outline.Bounds),
                    Notes =
                    [
                        lapped
                            ? "Lap 16 mm all round, plug holes 7 mm, their centres 10.5 mm in from the edge, all over steel."
                            : "Weld gap 0.8 mm all round: the patch is that much smaller than the hole on every side.",
                    ],
                },
                new()
                {
                    Name = "opening",
                    Title = "Paper for the opening in the panel",
                    Kind = PieceKind.Paper,
                    Shape = opening,
                    Thickness = 1,
                    FaceUp = "outer face",
                    Arrows = [new("UP", Angle.QuarterTurn)],
                    CentreLines = Cross(opening.Bounds),
                    GuideLines =
                    [
                        .. lapped ? [new GuideLine("edge of the lap", outline)] : ImmutableArray<GuideLine>.Empty,
                        new("bare metal to here on both faces", bare),
                    ],
                    Checks = Across("Hole", opening.Bounds),
                    Notes = ["Strip paint and zinc 25 mm wide all round, on both faces."],
                },
            ],
            Cautions = [Zinc, Fire, Cutting, Edges, Recoating],
            Steps =
            [
                "Dress the hole until every bit of rust and every crack is gone, then measure it.",
                "Check the scale checks on the paper, and the distances below on the paper and on the hole.",
                "Strip paint and zinc 25 mm wide all round the hole, on both faces.",
                "Cut the patch, deburr it and offer it up.",
                "Set it with an even gap of 0.8 mm and tack it in the order of the numbers, each tack far from the one before.",
                "Let it cool, then join the tacks with short runs, each far from the last; grind flush.",
                "Re-coat both faces, zinc primer first.",
            ],
        };
    }

    private static ImmutableArray<CentreLine> Cross(Box shape) =>
        [new(new(shape.Min.X - 6, 0), new(shape.Max.X + 6, 0)), new(new(0, shape.Min.Y - 6), new(0, shape.Max.Y + 6))];

    private static ImmutableArray<DistanceCheck> Across(string what, Box shape) =>
    [
        new($"{what} across", new(shape.Min.X, 0), new(shape.Max.X, 0), CheckDirection.Across),
        new($"{what} from top to bottom", new(0, shape.Min.Y), new(0, shape.Max.Y), CheckDirection.Up),
    ];

    private static UsedValue Measured(string name, string label, string text, string given) =>
        new(name, label, text, ValueSource.Measured, given, "By rule or calipers.");

    private static UsedValue Shop(string name, string label, string text, string given) =>
        new(name, label, text, ValueSource.Shop, given, "By habit.");

    private static Caution Brakes => new("Brakes",
        "This work is next to the brakes. Whoever touches a brake part must be trained for it, and the vehicle needs the licensed "
        + "inspection that local law asks for before it is driven.");

    private static Caution Zinc => new("Zinc fume",
        "Welding or cutting zinc-coated sheet gives off fume that makes people ill hours later. Strip the zinc first, extract at the "
        + "arc, keep your head out of the plume.");

    private static Caution Fire => new("Fire",
        "Sparks reach further than you think. Fuel, lines, trim, sealer and wax out of the way, battery off, extinguisher at "
        + "hand, and someone to watch for half an hour after.");

    private static Caution Cutting => new("Cutting",
        "Eye, ear and hand protection; see what lies behind the panel before the tool comes through it.");

    private static Caution Edges => new("Sharp edges", "Cut sheet is sharp and hot. Deburr every edge before a hand goes near it.");

    private static Caution Recoating => new("Bare metal",
        "Where zinc and paint were taken off, the sheet rusts from both sides. Prime, seal and paint both faces the same day.");
}
