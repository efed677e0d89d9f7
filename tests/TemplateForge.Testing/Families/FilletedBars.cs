using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>Bars and stairs with equal fillets, offset by the fillet's radius, half a bar's width, and what lies a hair beside them.</summary>
internal static class FilletedBars
{
    private const double Quarter = 0.41421356237309503; // tan(90° / 4)

    public static Trial Draw(Random dice)
    {
        var (one, width, radius) = Bar(dice);
        var (other, _, _) = Bar(dice);
        var first = dice.OneOf(radius, width / 2, width, radius / 2, width / 2 - radius, width + radius) * dice.Sign();
        if (Math.Abs(first) < Tolerance.Merge) first = dice.GridOffset();
        if (dice.OneIn(6)) first += dice.OfAnySize(1e-9, 1e-3) * dice.Sign();
        return Trial.Of(
            first, dice.OneOf(radius, width / 2), [one], [other.Turned(Angle.QuarterTurn * dice.Next(4)).Moved(dice.GridWay(4))]);
    }

    /// <summary>A staircase of bars of one width: steps to the right and up by turns, back along the other side.</summary>
    private static (Contour Contour, double Width, double Radius) Bar(Random dice)
    {
        var width = dice.Next(1, 4) * Shapes.Grid;
        var radius = width * dice.OneOf(0.25, 0.5, 0.2, 1.0 / 3);
        var runs = Enumerable.Range(0, dice.Next(1, 5)).Select(_ => width + dice.Next(1, 5) * Shapes.Grid).ToArray();
        var (lower, upper) = (new List<Point>(), new List<Point>());
        var at = Point.Origin;
        lower.Add(at);
        upper.Add(at + new Vector(0, width));
        for (var i = 0; i < runs.Length; i++)
        {
            var across = i % 2 == 0;
            at += across ? new Vector(runs[i], 0) : new Vector(0, runs[i]);
            // A turn to the left, up, is round a lower right corner; a turn to the right round an upper left one.
            if (i == runs.Length - 1)
            {
                lower.Add(across ? at : at + new Vector(0, width));
                upper.Add(across ? at + new Vector(0, width) : at + new Vector(-width, width));
            }
            else
            {
                lower.Add(at);
                upper.Add(at + new Vector(-width, width));
            }
        }
        upper.Reverse();
        return (Filleted([.. lower, .. upper], radius, dice), width, radius);
    }

    private static Contour Filleted(Point[] corners, double radius, Random dice)
    {
        var (points, bulges) = (new List<Point>(), new List<double>());
        for (var i = 0; i < corners.Length; i++)
        {
            var (before, after) = (corners[(i + corners.Length - 1) % corners.Length], corners[(i + 1) % corners.Length]);
            var (arriving, leaving) = ((corners[i] - before).Unit, (after - corners[i]).Unit);
            if (dice.OneIn(5) || Math.Abs(arriving.Cross(leaving)) < 0.5)
            {
                Append(corners[i], 0);
                continue;
            }
            Append(corners[i] - arriving * radius, Quarter * Math.Sign(arriving.Cross(leaving)));
            Append(corners[i] + leaving * radius, 0);
        }
        if (points[^1].DistanceTo(points[0]) < Tolerance.Merge)
        {
            points.RemoveAt(points.Count - 1);
            bulges.RemoveAt(bulges.Count - 1);
        }
        return Shapes.ThroughPoints(points, bulges);

        // Two fillets may use up the whole side between them.
        void Append(Point p, double bulge)
        {
            if (points.Count == 0 || points[^1].DistanceTo(p) >= Tolerance.Merge)
            {
                points.Add(p);
                bulges.Add(bulge);
            }
            else
            {
                bulges[^1] = bulge;
            }
        }
    }
}
