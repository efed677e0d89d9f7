using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Contours as drawings have them: crossing and touching themselves, turned the wrong way, drawn twice, with sides run there and back.</summary>
internal static class Loose
{
    public static Trial Draw(Random dice) =>
        Trial.Of(dice.GridOffset(), dice.GridLength(), Drawing(dice), Drawing(dice));

    private static List<Contour> Drawing(Random dice)
    {
        var drawing = new List<Contour>();
        for (var i = dice.Next(1, 4); i > 0; i--)
        {
            var contour = dice.Next(3) == 0 ? Shapes.GridContour.Case(dice.Next()) : Scribble(dice);
            drawing.Add(dice.OneIn(2) ? contour : contour.Reversed());
            if (dice.OneIn(3)) drawing.Add(dice.OneIn(2) ? contour : contour.Reversed());
            if (dice.OneIn(6)) drawing.Add(Symmetries.BegunAt(dice.Next(contour.Segments.Length), contour));
        }
        return drawing;
    }

    /// <summary>From grid point to grid point in any order, now and then straight back to the one before.</summary>
    private static Contour Scribble(Random dice)
    {
        var (points, bulges) = (new List<Point>(), new List<double>());
        for (var wanted = dice.Next(3, 10); points.Count < wanted;)
        {
            var next = points.Count > 2 && dice.OneIn(6) ? points[^2] : Point.Origin + dice.GridWay(4);
            if (points.Count > 0 && next == points[^1] || points.Count == wanted - 1 && next == points[0]) continue;
            points.Add(next);
            bulges.Add(dice.OneOf(0, 0, 0, 1, -1, 0.41421356237309503, -0.41421356237309503, dice.Between(-1, 1)));
        }
        return Shapes.ThroughPoints(points, bulges);
    }
}
