using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Drawing;

/// <summary>The pages as they are joined, small.</summary>
internal static class PageMap
{
    private const double HatchPitch = 0.6;
    private const double LeastLettering = 1.5;
    private const double LargestAddress = 9;

    private static readonly Colour Grey = new(110, 110, 110);

    /// <summary>The drawing's outline where the pages of <see cref="Of"/> lie.</summary>
    public static ImmutableArray<Mark> OutlineOf(TilePlan plan, IEnumerable<Mark> outline, Box place)
    {
        var toPlace = Fitted(plan, place);
        return [.. outline.Select(m => m.Placed(toPlace)).Where(m => place.Contains(m.Bounds.Min) && place.Contains(m.Bounds.Max))];
    }

    /// <summary>The pages without the drawing, one of them dark.</summary>
    public static ImmutableArray<Mark> Of(TilePlan plan, Tile here, Box place)
    {
        var toPlace = Fitted(plan, place);
        return
        [
            .. plan.Tiles.Select(t => Outline(OnMap(t.Window, toPlace))),
            .. Hatch(OnMap(here.Window, toPlace)),
        ];
    }

    /// <summary>The pages over the drawing.</summary>
    public static LineDrawing Cover(TilePlan plan, LineDrawing content, Box place)
    {
        var toPlace = Fitted(plan, place);
        var layers = content.Layers.Select(l => l with
        {
            Pen = l.Pen with { Width = Math.Min(l.Pen.Width, 0.25) },
            Marks = [.. l.Marks.Where(m => IsShown(m, toPlace)).Select(m => m.Placed(toPlace))],
        });
        return new(
        [
            .. layers,
            new("PAGE-MAP", Pen.Solid(0.18, Grey), [.. plan.Tiles.Select(t => Outline(OnMap(t.Window, toPlace)))]),
            new("PAGE-ADDRESS", Pen.Solid(0.5, Grey), [.. plan.Tiles.Select(t => Address(t, OnMap(t.Window, toPlace), plan.Layout.Overlap * toPlace.Scale))]),
        ]);
    }

    private static bool IsShown(Mark mark, Placement toPlace) => mark is not Lettering words || words.Height * toPlace.Scale >= LeastLettering;

    private static Placement Fitted(TilePlan plan, Box place)
    {
        if (plan.Tiles.IsEmpty) return Placement.Unmoved;
        var whole = Whole(plan);
        var scale = Math.Min(place.Width / whole.Width, place.Height / whole.Height);
        return Placement.Scaled(scale, whole.Centre).Then(Placement.Moved(place.Centre - whole.Centre));
    }

    /// <summary>The whole grid, the pages left out included: any page says where all lie.</summary>
    private static Box Whole(TilePlan plan)
    {
        var (tile, overlap) = (plan.Tiles[0], plan.Layout.Overlap);
        var (stepX, stepY) = (tile.Window.Width - overlap, tile.Window.Height - overlap);
        return new(
            tile.Window.Min - new Vector(tile.Column * stepX, (plan.Rows - 1 - tile.Row) * stepY),
            tile.Window.Max + new Vector((plan.Columns - 1 - tile.Column) * stepX, tile.Row * stepY));
    }

    private static Box OnMap(Box window, Placement toPlace) => new(toPlace.Of(window.Min), toPlace.Of(window.Max));

    /// <summary>Lettered in the upper left corner, clear of the overlaps.</summary>
    private static Lettering Address(Tile tile, Box cell, double overlap)
    {
        var height = Math.Min(cell.Height / 6, Furniture.HeightThatFits(tile.Address, cell.Width / 3, LargestAddress));
        var corner = new Point(cell.Min.X + overlap + height / 3, cell.Max.Y - overlap - height / 3);
        return new(tile.Address, corner - new Vector(0, height), height, Angle.Zero, Anchor.BaseStart);
    }

    private static ClosedStroke Outline(Box box)
    {
        Point[] corners = [box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y)];
        return new(new Contour(Enumerable.Range(0, 4).Select(i => Segment.Line(corners[i], corners[(i + 1) % 4]))));
    }

    private static IEnumerable<Mark> Hatch(Box box)
    {
        for (var y = box.Min.Y + HatchPitch; y < box.Max.Y - HatchPitch / 4; y += HatchPitch)
            yield return new OpenStroke(Path.Line(new(box.Min.X, y), new(box.Max.X, y)));
    }
}
