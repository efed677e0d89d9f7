using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Profiles.Tests;

/// <summary>
/// The finished outline of the notch against the component itself, in three dimensions: distances from points of the sheet to a
/// tilted cylinder by the vector formula for the distance of a point from a line (any book of analytic geometry), which shares
/// nothing with the ellipses and sweeps that drew the outline.
/// </summary>
public class ClearanceTests
{
    private const double Allowed = 0.02;
    private const int PointsOnTheOutline = 10_000;

    // Tilts up to 45° in every direction, thick and thin sheet, the axis inside and outside the panel, fitted straight and askew.
    public static TheoryData<double, double, double, double, double, double, double> Settings()
    {
        var data = new TheoryData<double, double, double, double, double, double, double>();
        for (var i = 0; i < 20; i++)
        {
            data.Add(
                i % 4 == 0 ? 45 : 45.0 * i / 19,                    // tilt
                i * 360.0 / 20,                                      // its direction
                i % 3 == 0 ? 3 : i % 3 == 1 ? 1.4 : 0.8,             // sheet
                i % 5 == 4 ? -30 : 20 + 4 * i,                       // axis in
                i % 2 == 0 ? 0 : i % 4 == 1 ? 25 : -25,              // fit direction
                6 + i,                                               // clearance
                i % 7);                                              // movement
        }
        return data;
    }

    [Theory, MemberData(nameof(Settings))]
    public void The_outline_keeps_its_clearance_from_the_tilted_component_through_the_whole_sheet(
        double tilt, double direction, double sheet, double axisIn, double fit, double clearance, double movement)
    {
        const double diameter = 120, along = 400;
        var notch = TheLibrary.Profile("booster-clearance-notch").Make(
            Set("diameter", diameter), Set("tilt", tilt), Set("tilt_direction", direction), Set("sheet", sheet), Set("axis_in", axisIn),
            Set("axis_along", along), Set("fit_direction", fit), Set("clearance", clearance), Set("movement", movement),
            Set("datum_spacing", 800), Set("panel_depth", 500));
        var finish = Assert.Single(notch.Piece("panel").FinishLines());
        var component = new Cylinder(along, axisIn, Angle.FromDegrees(tilt), Angle.FromDegrees(direction), diameter / 2);
        var wanted = clearance + movement;
        var fitted = Vector.Polar(1, Angle.FromDegrees(270 + fit));

        var (curved, all) = (0, 0);
        foreach (var segment in finish.Segments)
        {
            var isCurved = segment.IsLine ? Math.Abs(segment.StartDirection.Cross(fitted)) > 1e-6 : segment.Bulge < 0;
            var count = (int)Math.Ceiling(PointsOnTheOutline * segment.Length / finish.Length);
            for (var i = 0; i <= count; i++)
            {
                var least = component.LeastDistance(segment.At((double)i / count), sheet);
                Assert.True(least >= wanted - Allowed, $"{least} mm at {segment.At((double)i / count)}, but {wanted} mm is wanted.");
                if (isCurved) Assert.InRange(least, wanted - Allowed, wanted + Allowed);
                all++;
                if (isCurved) curved++;
            }
        }
        Assert.True(all >= PointsOnTheOutline);
        Assert.True(curved > all / 10, "The curved part was not looked at.");
    }

    [Fact]
    public void An_upright_component_leaves_a_half_round_notch_with_straight_flanks()
    {
        var notch = TheLibrary.Profile("booster-clearance-notch").Make("tilt=0", "diameter=190", "axis_in=40", "clearance=12", "mouth_radius=10");
        // Half a circle of 95 + 12, a rectangle down to the edge, and two mouth corners of r² − πr²/4 each.
        const double radius = 107, mouth = 10;
        var area = Math.PI * radius * radius / 2 + 2 * radius * 40 + 2 * (mouth * mouth - Math.PI * mouth * mouth / 4);
        Assert.Equal(area, notch.Piece("panel").Waste().Area, Tolerance.Curve * 2 * Math.PI * radius);
    }

    [Fact]
    public void A_component_whose_axis_misses_the_panel_leaves_a_shallow_arc()
    {
        var notch = TheLibrary.Profile("booster-clearance-notch").Make("tilt=0", "diameter=190", "axis_in=-60", "clearance=12");
        Assert.Equal(107 - 60, notch.Piece("panel").Checks.Single(c => c.Label.Contains("deepest", StringComparison.Ordinal) && c.Along == CheckDirection.Up).Distance, 0.01);
    }

    private static string Set(string name, double value) => $"{name}={value.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>An endless cylinder whose axis meets the face that is up at (x, y) and drifts in some direction below it.</summary>
    private sealed class Cylinder(double x, double y, Angle tilt, Angle direction, double radius)
    {
        private readonly (double X, double Y, double Z) axis = (tilt.Sin * direction.Cos, tilt.Sin * direction.Sin, -tilt.Cos);

        /// <summary>The least distance of the sheet's points at one place from the cylinder: both faces, nine depths between, and
        /// the depth where the distance has its least value.</summary>
        public double LeastDistance(Point at, double sheet)
        {
            // |p − (p·a) a|² is a quadratic in the depth z; its least value lies where the derivative is zero.
            var (dx, dy) = (at.X - x, at.Y - y);
            var planar = dx * axis.X + dy * axis.Y;
            var across = 1 - axis.Z * axis.Z;
            var best = across > 1e-12 ? planar * axis.Z / across : 0;
            return Enumerable.Range(0, 11).Select(i => -sheet * i / 10).Append(Math.Clamp(best, -sheet, 0)).Min(z => Distance(dx, dy, z));
        }

        private double Distance(double dx, double dy, double dz)
        {
            var (cx, cy, cz) = (dy * axis.Z - dz * axis.Y, dz * axis.X - dx * axis.Z, dx * axis.Y - dy * axis.X);
            return Math.Sqrt(cx * cx + cy * cy + cz * cz) - radius;
        }
    }
}
