using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

/// <summary>Tries a drawn case at every placement, 100 m away among them, and holds each answer to what must hold of all.</summary>
internal static class Everywhere
{
    /// <summary>Union, intersection, difference and exclusive or, both ways round where it does not matter.</summary>
    public static void Combines(Region a, Region b, double union, double intersection, int contoursOfUnion = 1)
    {
        foreach (var (_, by) in Symmetries.Placements)
        {
            var (one, other) = (a.Placed(by), b.Placed(by));
            Is(union, one.Union(other));
            Is(union, other.Union(one));
            Is(intersection, one.Intersect(other));
            Is(intersection, other.Intersect(one));
            Is(a.Area - intersection, one.Subtract(other));
            Is(b.Area - intersection, other.Subtract(one));
            Is(union - intersection, one.ExclusiveOr(other));
            Assert.Equal(contoursOfUnion, one.Union(other).Contours.Length);
            Law.AreCombined(one, other);
        }

        void Is(double area, Region answer) => Approximately.Equal(area, answer.Area, within: Tolerance.Area(a.Length + b.Length));
    }

    public static void Offsets(Region source, double distance, double area, int contours)
    {
        foreach (var (_, by) in Symmetries.Placements)
        {
            var placed = source.Placed(by);
            var offset = placed.Offset(distance);
            Approximately.Equal(area, offset.Area, within: Tolerance.Area(source.Length + offset.Length));
            Assert.Equal(contours, offset.Contours.Length);
            Law.IsWellMade(offset);
            Law.IsOffset(offset, placed, distance);
        }
    }

    /// <summary>A convex region grows by its boundary and one circle: Steiner's formula, A + L d + π d².</summary>
    public static void Grows(Region convex, double distance) =>
        Offsets(convex, distance, convex.Area + convex.Length * distance + Math.PI * distance * distance, contours: 1);
}
