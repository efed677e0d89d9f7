using TemplateForge.Geometry;

namespace TemplateForge.Fabrication.Tests;

/// <summary>Components drawn by dice: cans with shoulders, cones and round ends, rings, boxes; standing, leaning and lying.</summary>
internal sealed record RandomComponent(Component Component, BruteDistance Brute, double Clearance)
{
    public static RandomComponent Of(int seed, bool moves)
    {
        var dice = new Random(seed);
        double Between(double low, double high) => low + (high - low) * dice.NextDouble();
        Angle Turn(double low, double high) => Angle.FromDegrees(Between(low, high));
        var stand = new Stand(
            new(Between(-50, 50), Between(-50, 50)), Between(-15, 15), seed % 4 == 3 ? Turn(70, 110) : Turn(0, 50), Turn(0, 360), Turn(0, 90));
        var (form, half, sizes) = Form(seed % 5, Between);
        var component = new Component(form, stand, seed % 7 == 0 ? 0 : Between(0.8, 3));
        if (moves && seed % 3 != 1)
            component = component with { Rocks = [new(Turn(1, 4), stand.At + new Vector(Between(-30, 30), Between(-30, 30)), Between(-150, 20), Turn(0, 180), Turn(0, 360))] };
        if (moves && seed % 3 != 0) component = component with { Travels = [new(Between(2, 9), Turn(0, 180), Turn(0, 360))] };
        return new(component, new(component, half, sizes.Length, sizes.Width, sizes.Height), Between(moves ? 10 : 4, 20));
    }

    private static (ComponentForm Form, Region[] Half, (double Length, double Width, double Height) Sizes) Form(int kind, Func<double, double, double> between)
    {
        if (kind == 0)
        {
            var (length, width, height) = (between(20, 70), between(20, 70), between(20, 90));
            return (new BoxForm(length, width, height), [], (length, width, height));
        }
        var (low, high, r) = (-between(10, 60), between(10, 60), between(12, 45));
        var half = Region.Of(kind switch
        {
            1 => Outline.Polygon(new(low, 0), new(high, 0), new(high, r), new(0, r), new(0, r + 12), new(-6, r + 12), new(-6, r), new(low, r * 0.7)),
            2 => new(Segment.Line(new(low, 0), new(high, 0)), Segment.Line(new(high, 0), new(high, r)), Segment.Arc(new(high, r), new(low, 0), between(0.3, 0.45))),
            3 => Outline.RoundedRectangle(new(new(low / 3, r), new(high / 3, r + between(8, 30))), 2.5),
            _ => Outline.Polygon(new(low, 0), new(high, 0), new(high, r / 3), new(low, r)),
        });
        return (new RevolvedForm(half), [half], default);
    }
}
