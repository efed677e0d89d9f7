using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>One drawn case stands for all its symmetries: what holds for it holds for every one of these.</summary>
public static class Symmetries
{
    /// <summary>A shape placed elsewhere or drawn differently, and the placement that takes the first to it.</summary>
    public sealed record Image<T>(string Name, Placement By, T Shape);

    /// <summary>Unmoved, 100 m away, turned, turned by quarters, mirrored, and some at once. Lengths stay as they are.</summary>
    public static IEnumerable<(string Name, Placement By)> Placements
    {
        get
        {
            var far = Placement.Moved(new(100_000, -100_000));
            var turned = Placement.Turned(Angle.FromDegrees(33), new(7, -5));
            var mirrored = Placement.Mirrored(new(3, 2), Angle.FromDegrees(20));
            yield return ("as drawn", Placement.Unmoved);
            yield return ("100 m away", far);
            yield return ("turned by a quarter", Placement.Turned(Angle.QuarterTurn, Point.Origin));
            yield return ("turned by a half", Placement.Turned(Angle.HalfTurn, Point.Origin));
            yield return ("turned by 33°", turned);
            yield return ("mirrored", Placement.Mirrored(Point.Origin, Angle.Zero));
            yield return ("mirrored across 20°", mirrored);
            yield return ("turned, mirrored, 100 m away", turned.Then(mirrored).Then(far));
        }
    }

    /// <summary>Placed, begun at every vertex, and run the other way.</summary>
    public static IEnumerable<Image<Contour>> Of(Contour contour)
    {
        foreach (var (name, by) in Placements)
        {
            var placed = contour.Placed(by);
            yield return new(name, by, placed);
            yield return new(name + ", reversed", by, placed.Reversed());
        }
        for (var i = 1; i < contour.Segments.Length; i++)
            yield return new($"begun at vertex {i}", Placement.Unmoved, BegunAt(i, contour));
    }

    /// <summary>Placed, and every contour begun at every vertex.</summary>
    public static IEnumerable<Image<Region>> Of(Region region)
    {
        foreach (var (name, by) in Placements) yield return new(name, by, region.Placed(by));
        var most = region.IsEmpty ? 0 : region.Contours.Max(c => c.Segments.Length);
        for (var i = 1; i < most; i++)
        {
            var begun = region.Contours.Select(c => BegunAt(i % c.Segments.Length, c));
            yield return new($"begun at vertex {i}", Placement.Unmoved, new Region([.. begun]));
        }
    }

    public static Contour BegunAt(int vertex, Contour contour) =>
        new(contour.Segments.Skip(vertex).Concat(contour.Segments.Take(vertex)));
}
