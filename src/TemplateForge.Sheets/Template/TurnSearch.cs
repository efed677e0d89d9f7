using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Finds turns of a drawing that may take fewer pages, from points of it alone: nothing is drawn for it.</summary>
/// <remarks>A turn by half a circle takes as many pages as none, so turns lie within a quarter either way: what points up never comes to point down.</remarks>
internal static class TurnSearch
{
    private const double PointsApart = 5;
    private const double Degrees = 5;
    private const double CoarseDegrees = 15;
    private const int ManyPages = 24;
    private const double Border = 3;
    private const double WorthTurningARoll = 0.85;

    private static ImmutableArray<double> Shifts { get; } = [0, 16, -16];

    /// <summary>How much paper a plan takes: pages first, and of a roll its length.</summary>
    public static bool TakesLess(TilePlan plan, TilePlan than, Paper paper) =>
        plan.Tiles.Length < than.Tiles.Length
        || (paper.IsRoll && plan.Tiles.Length == than.Tiles.Length && Area(plan) < WorthTurningARoll * Area(than));

    /// <summary>Turns that promise fewer pages than there are, the best first and of equally good ones the plainest: a quarter, then small ones.</summary>
    /// <param name="ink">What must be seen on pages.</param>
    /// <param name="all">All that is drawn.</param>
    /// <param name="unturned">The pages as they are.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="layout">What is kept free on it.</param>
    public static IEnumerable<Angle> Candidates(IEnumerable<Mark> ink, IEnumerable<Mark> all, TilePlan unturned, Paper paper, PageLayout layout)
    {
        if (unturned.Tiles.Length == 1 && !paper.IsRoll) return [];
        var (inked, drawn) = (Points(ink).ToArray(), Points(all).ToArray());
        var step = unturned.Tiles.Length > ManyPages ? CoarseDegrees : Degrees;
        return Enumerable.Range(1, (int)(180 / step) - 1).Select(i => i * step).Select(d => d > 90 ? d - 180 : d)
            .Select(d => (Degrees: d, Plan: Fewest(inked, drawn, Angle.FromDegrees(d), paper, layout)))
            .Where(c => TakesLess(c.Plan, unturned, paper))
            .OrderBy(c => c.Plan.Tiles.Length).ThenBy(c => paper.IsRoll ? Area(c.Plan) : 0).ThenBy(c => c.Degrees == 90 ? 0 : Math.Abs(c.Degrees))
            .Select(c => Angle.FromDegrees(c.Degrees));
    }

    private static double Area(TilePlan plan) => plan.Tiles.Length * plan.PageWidth * plan.PageHeight;

    private static TilePlan Fewest(Point[] inked, Point[] drawn, Angle by, Paper paper, PageLayout layout)
    {
        var turn = Placement.Turned(by, Point.Origin);
        var (ink, content) = (Array.ConvertAll(inked, turn.Of), Box.Around(drawn.Select(turn.Of)).Grown(Border));
        return Shifts.SelectMany(right => Shifts.Select(up => new Vector(right, up)))
            .Select(shift => Tiling.Plan(LaidPiece.Shifted(content, shift), paper, layout, window => Array.Exists(ink, window.Contains)))
            .OrderBy(p => p.Tiles.Length).ThenBy(Area).First();
    }

    private static IEnumerable<Point> Points(IEnumerable<Mark> marks) => marks.SelectMany(mark => mark switch
    {
        OpenStroke open => open.Path.Segments.SelectMany(Along),
        ClosedStroke closed => closed.Contour.Segments.SelectMany(Along),
        _ => [mark.Bounds.Min, mark.Bounds.Max, new(mark.Bounds.Min.X, mark.Bounds.Max.Y), new(mark.Bounds.Max.X, mark.Bounds.Min.Y)],
    });

    private static IEnumerable<Point> Along(Segment segment)
    {
        var steps = (int)Math.Ceiling(segment.Length / PointsApart);
        return Enumerable.Range(0, steps + 1).Select(i => segment.At((double)i / steps));
    }
}
