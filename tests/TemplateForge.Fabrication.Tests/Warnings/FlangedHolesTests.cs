using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests.Warnings;

/// <summary>Openings that have their edges turned, laid flat: their reliefs, mitres and rims are no holes beside a bend.</summary>
public class FlangedHolesTests
{
    private static readonly Fold Up = new(new(Angle.QuarterTurn, 1.5, 1, new KFactorRule(0.44)), BendWay.Up, new(6));

    public static TheoryData<string, string> Openings()
    {
        var data = new TheoryData<string, string>();
        foreach (var corners in Enum.GetNames<CornerJoint>())
        {
            foreach (var opening in (string[])["rectangle", "one side", "rounded", "round", "slot", "triangle"]) data.Add(corners, opening);
        }
        return data;
    }

    [Theory, MemberData(nameof(Openings))]
    public void An_opening_with_its_edges_turned_is_no_hole_beside_a_bend(string corners, string opening)
    {
        var flat = Laid(corners, opening, []);
        Assert.Contains(flat.Shape.Contours, c => !c.IsCounterClockwise);
        Assert.Empty(HoleWarnings.Of(flat));
    }

    // 2 t + r is 3.5; the first tangent line lies r + t inside of where the flange stands.
    [Theory, MemberData(nameof(Openings))]
    public void But_a_hole_in_the_sheet_or_in_the_flange_beside_it_is(string corners, string opening)
    {
        var beside = Plates.Round(100, 20 - 2.5 - 3.4 - 2, 4);
        Assert.Contains(HoleWarnings.Of(Laid(corners, opening, [beside])), w => w.At.DistanceTo(new(100, 20 - 2.5 - 3.4)) < 1e-3);
    }

    private static Contour Opening(string kind) => kind switch
    {
        "rectangle" or "one side" => Outline.Rectangle(new(new(60, 20), new(140, 80))),
        "rounded" => Outline.RoundedRectangle(new(new(60, 20), new(140, 80)), 20),
        "round" => Outline.Circle(new(100, 50), 30),
        "slot" => Outline.Slot(new(80, 50), new(120, 50), 60),
        _ => Outline.Polygon(new(60, 20), new(140, 20), new(100, 85)),
    };

    private static Piece Laid(string corners, string opening, Contour[] holes)
    {
        var floor = Region.Of(Outline.Rectangle(new(Point.Origin, new(200, 100)))).Subtract(Region.Of(Opening(opening)));
        var sides = floor.Contours.Single(c => !c.IsCounterClockwise).Segments;
        var rim = new Flange(opening == "one side" ? [sides.MinBy(s => s.At(0.5).Y)] : sides, [Up]);
        var sheet = new FlangedSheet(floor, 1, MeasuredBy.Outside, rim) { Corners = Enum.Parse<CornerJoint>(corners) };
        Assert.True(FlangedBlank.TryLayFlat(sheet, out var blank, out var faults), string.Join(", ", faults));
        return Plates.With() with
        {
            Shape = blank.Shape.Subtract(Region.FromContours(holes)),
            BendLines = blank.BendLines(Springback.Unstated),
            CurvedBends = blank.CurvedBends(Springback.Unstated),
        };
    }
}
