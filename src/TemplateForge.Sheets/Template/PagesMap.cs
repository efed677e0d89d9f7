using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The pages of a template as they are joined, small, with the piece's outline over them.</summary>
internal static class PagesMap
{
    private const double Letters = 4;

    /// <param name="template">The pages and what they show.</param>
    /// <param name="width">Width in mm of the map.</param>
    /// <param name="height">Height in mm of the map with the line below it.</param>
    /// <param name="textHeight">Height in mm of the capitals of that line.</param>
    public static Block Of(PieceTemplate template, double width, double height, double textHeight)
    {
        var (plan, lines) = (template.Plan, template.Laid.Lines);
        var whole = Box.Around(plan.Tiles.Select(t => t.Window));
        var below = Block.Text($"{template.Piece.Title}: {Wording.PagesOf(plan.Tiles.Length)}{Wording.TurnOf(template)}", width, textHeight);
        var scale = Math.Min(width / whole.Width, (height - below.Height - 2) / whole.Height);
        var toMap = Placement.Moved(new(-whole.Min.X, -whole.Max.Y)).Then(Placement.Scaled(scale, Point.Origin));

        var outline = new Board();
        foreach (var kind in (ImmutableArray<LineKind>)[LineKinds.Finish, LineKinds.PanelEdge]) outline.Add(kind, lines.On(kind));
        var map = new Board();
        map.Add(outline, toMap);
        foreach (var tile in plan.Tiles) map.Frame(LineKinds.Frame, new(toMap.Of(tile.Window.Min), toMap.Of(tile.Window.Max)));

        // The address of a page near its middle, on nothing.
        var free = new FreePlace(new(toMap.Of(whole.Min), toMap.Of(whole.Max)), 0.5);
        free.Take(map.Marks, 0.6);
        foreach (var tile in plan.Tiles)
        {
            var window = new Box(toMap.Of(tile.Window.Min), toMap.Of(tile.Window.Max));
            for (var size = Letters; size > 0.5; size *= 0.85)
            {
                var address = Block.Line(tile.Address, size, strong: true);
                if (!free.TryFind(address.Width, address.Height, window.Centre, window, out var place)) continue;
                address.PutOn(map, place);
                break;
            }
        }
        return Block.Stacked(2, new Block(whole.Width * scale, whole.Height * scale, map), below);
    }
}
