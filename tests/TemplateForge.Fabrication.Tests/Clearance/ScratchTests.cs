using TemplateForge.Geometry;
namespace TemplateForge.Fabrication.Tests;
public class ScratchTests(ITestOutputHelper output)
{
    static RevolvedForm Cyl(double r, double from, double to) => new(Region.Of(Outline.Rectangle(new(new(from, 0), new(to, r)))));
    static Stand At(double tilt, double towards, double h = 0, double turned = 0) => new(new(10, 20), h, Angle.FromDegrees(tilt), Angle.FromDegrees(towards), Angle.FromDegrees(turned));
    [Fact]
    public void Try()
    {
        var sphere = new RevolvedForm(Region.Of(new(Segment.Arc(new(40, 0), new(-40, 0), 1), Segment.Line(new(-40, 0), new(40, 0)))));
        foreach (var (name, c) in new (string, Component)[] {
            ("upright", new(Cyl(95, -100, 100), At(0, 0))),
            ("tilt8", new(Cyl(95, -100, 100), At(8, 70))),
            ("tilt45", new(Cyl(95, -200, 200), At(45, 200))),
            ("lying", new(Cyl(30, -60, 60), At(90, 30, 25))),
            ("sphere", new(sphere, At(0, 0, 30))),
            ("box", new(new BoxForm(60, 40, 50), At(0, 0, 0, 0))),
            ("box tilted", new(new BoxForm(60, 40, 50), At(20, 33, 5, 20))),
            ("rocks", new(new BoxForm(60, 40, 50), At(20, 33, 5, 20)) { Rocks = [new(Angle.FromDegrees(4), new(10, 20), -150, Angle.FromDegrees(90), Angle.FromDegrees(90))]}),
            ("travels", new(Cyl(30, -60, 60), At(10, 33, 5, 20)) { Travels = [new(15, Angle.FromDegrees(90), Angle.FromDegrees(45))]}),
            ("both", new(Cyl(30, -60, 60), At(10, 33, 5, 20)) { Travels = [new(15, Angle.FromDegrees(90), Angle.FromDegrees(45))], Rocks = [new(Angle.FromDegrees(4), new(10, 20), -150, Angle.FromDegrees(90), Angle.FromDegrees(90))]}),
        })
        for (var k = 0; k < 2; k++)
        {
            var watch = System.Diagnostics.Stopwatch.StartNew();
            var region = ClearanceRegion.Of([c], 12, 1.4);
            output.WriteLine($"{name}: {watch.Elapsed.TotalMilliseconds:0.0} ms, {region.Contours.Length} contours, {string.Join(",", region.Contours.Select(c => c.Segments.Length + "(" + c.Segments.Count(s => s.IsLine) + " lines)"))}, area {region.Area:0.000}, {ClearanceRegion.Log}");
        }
    }
}
