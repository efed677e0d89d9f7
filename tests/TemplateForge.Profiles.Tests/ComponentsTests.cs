using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Components in the profile language and in the profiles that ship: the notch for a body as it is, and what is complained of.</summary>
public class ComponentsTests
{
    private static readonly Profile Notch = TheLibrary.Profile("booster-clearance-notch");
    private static readonly Profile Stepped = TheLibrary.Profile("stepped-component-notch");

    private const string Sound = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: either
        face_up: inner face
        parameters:
          room: {label: Room, unit: mm, default: 12, range: 0 to 50, shop: Habit.}
          radius: {label: Radius, unit: mm, default: 30, range: -10 to 50, measured: Rule.}
          tall: {label: Height, unit: mm, default: 40, range: 0 to 50, measured: Rule.}
        components:
          can:
            half_profile:
              - start: [-50 mm, 0]
              - line_to: [-50 mm, radius]
              - line_to: [50 mm, 30 mm]
              - line_to: [50 mm, 0]
            at: [0, 0]
            sheet: 1 mm
          chest:
            box: [60 mm, 50 mm, tall]
            at: [120 mm, 0]
            sheet: 1 mm
            rocks: {by: 2 deg, about: [120 mm, 0], height: -100 mm}
            travels: {by: 5 mm, towards: 0 deg}
        shapes:
          opening:
            cleared: {components: [can, chest], clearance: room}
        pieces:
          opening:
            title: Opening
            paper: opening
            thickness: 1 mm
            notes:
              - "{clearance_in(opening, can)}"
        """;

    public static TheoryData<string, string, int, int, string> Faults() => new()
    {
        // what stands there, what is written instead, line, column, words of the complaint
        { "[can, chest]", "[can, chset]", 28, 32, "chest" },
        { "[can, chest]", "[]", 28, 27, "components" },
        { "[60 mm, 50 mm, tall]", "[60 mm, 50 mm]", 21, 12, "three sizes" },
        { "[60 mm, 50 mm, tall]", "60 mm", 21, 12, "three sizes" },
        { "rocks: {by: 2 deg,", "rocks: {by: 2 mm,", 24, 19, "an angle" },
        { "travels: {by: 5 mm", "travels: {buy: 5 mm", 25, 15, "by" },
        { "box: [60", "bocks: [60", 21, 7, "box" },
        { "clearance_in(opening, can)", "clearance_in(opening)", 35, 14, "clearance_in" },
        { "clearance_in(opening, can)", "clearance_in(opening, cam)", 35, 36, "can" },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_complained_of_where_it_stands(string sound, string faulty, int line, int column, string words)
    {
        Assert.Contains(sound, Sound, StringComparison.Ordinal);
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(new("example.yaml", Sound.Replace(sound, faulty, StringComparison.Ordinal)), TheLibrary.Shop, complaints, out _));
        Assert.True(complaints.Any(c => c.Line == line && $"{c}".Contains(words, StringComparison.Ordinal)), string.Join('\n', complaints) + column);
    }

    [Theory]
    [InlineData("room=0.4", "0.5")]
    [InlineData("radius=-10", "across its axis")]
    [InlineData("tall=0", "more than 0")]
    public void What_cannot_be_is_refused_when_values_are_put_in(string given, string words) =>
        Assert.Contains(TheLibrary.Read(new("example.yaml", Sound)).Refuse(given), c => $"{c}".Contains(words, StringComparison.Ordinal));

    [Theory]
    [InlineData("clearance_in(can, opening)", "clearance_in(shape, component)")]
    [InlineData("top(can)", "is a component")]
    public void A_component_is_measured_as_one(string written, string words)
    {
        var text = Sound.Replace("clearance_in(opening, can)", written, StringComparison.Ordinal);
        Assert.Contains(TheLibrary.Read(new("example.yaml", text)).Refuse(), c => $"{c}".Contains(words, StringComparison.Ordinal));
    }

    // A can as long as the sheet can see is a cylinder: both answers within the sum of what is promised.
    [Theory]
    [InlineData("tilt=0")]
    [InlineData("tilt=8")]
    [InlineData("tilt=30", "tilt_direction=200", "sheet=3", "axis_in=60")]
    [InlineData("tilt=45", "tilt_direction=340", "fit_direction=20", "diameter=120", "movement=5")]
    public void A_long_body_leaves_the_same_notch_as_the_cylinder(params string[] given)
    {
        string[] wide = ["panel_depth=600", "datum_spacing=900", "axis_along=450", .. given];
        var cylinder = Notch.Make(wide).Piece("panel").Shape;
        var body = Notch.Make([.. wide, "body=stepped", "can_front=400", "can_behind=500", "rim_radius=0", "neck_diameter=50"]).Piece("panel").Shape;
        foreach (var (one, other) in new[] { (cylinder, body), (body, cylinder) })
        {
            foreach (var point in one.Contours.SelectMany(c => c.PointsEvery(3)))
                Assert.True(other.BoundaryDistanceTo(point) <= ClearanceRegion.MostError, $"{point} is {other.BoundaryDistanceTo(point)} off");
        }
    }

    // Square through, the shoulder of the can 6 mm in front of the face: its sharp rim reaches √(12² − 6²) over the face, the neck less.
    [Fact]
    public void A_neck_through_the_panel_leaves_more_of_it()
    {
        string[] given = ["tilt=0", "body=stepped", "can_front=80", "can_behind=-6", "rim_radius=0"];
        var deepest = Notch.Make(given).Piece("panel").Checks.Single(c => c.Label.Contains("deepest", StringComparison.Ordinal) && c.Along == CheckDirection.Up);
        Approximately.Equal(40 + 95 + Math.Sqrt(144 - 36), deepest.Distance, within: 1e-4);
    }

    [Fact]
    public void The_panel_says_how_near_the_component_comes_and_where()
    {
        var panel = Stepped.Make().Piece("panel");
        var label = Assert.Single(panel.Labels);
        Assert.Equal("least clearance 10 mm", label.Text);
        Assert.True(panel.Shape.BoundaryDistanceTo(label.At) < 1e-6);
    }

    [Fact]
    public void Without_its_block_the_notch_is_smaller_and_without_movement_smaller_still()
    {
        var areas = new[] { "with_block=beside", "with_block=none" }.Select(b => Stepped.Make(b).Piece("panel").Waste().Area)
            .Append(Stepped.Make("with_block=none", "movement=still").Piece("panel").Waste().Area).ToList();
        Assert.True(areas[0] > areas[1] + 100 && areas[1] > areas[2] + 100, string.Join(", ", areas));
    }
}
