using CsCheck;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Tests;

public class BoxTreeTests
{
    private static readonly Gen<Box[]> Boxes =
        from count in Gen.Int[0, 90]
        from boxes in Gen.Select(Gen.Int[0, 60], Gen.Int[0, 60], Gen.Int[0, 9], Gen.Int[0, 9]).Array[count]
        select Array.ConvertAll(boxes, b => new Box(new(b.Item1, b.Item2), new(b.Item1 + b.Item3, b.Item2 + b.Item4)));

    // By trying all pairs. The boxes have whole numbers for corners, so many touch in a side or a corner only.
    [Fact]
    public void Every_pair_of_boxes_that_touch_is_found_once() => Boxes.Check(500, boxes =>
    {
        var pairs = new Buffer<(int, int)>();
        TreeOf(boxes).Pairs(pairs);
        var found = pairs.Items.ToArray();
        var expected =
            from i in Enumerable.Range(0, boxes.Length)
            from j in Enumerable.Range(0, i)
            where boxes[i].Touches(boxes[j])
            select (j, i);
        Assert.Equal(expected.Order(), found.Select(p => (Math.Min(p.Item1, p.Item2), Math.Max(p.Item1, p.Item2))).Order());
    });

    [Fact]
    public void Every_box_that_touches_another_is_found_once() => Boxes.Check(500, boxes =>
    {
        var asked = new Box(new(20, 20), new(31, 27));
        var hits = new Buffer<int>();
        TreeOf(boxes).Touching(Around(asked), hits);
        Assert.Equal(Enumerable.Range(0, boxes.Length).Where(i => boxes[i].Touches(asked)), hits.Items.ToArray().Order());
    });

    [Fact]
    public void Bounds_hold_an_arc_wherever_it_bulges() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[-1, 1]).Check(500, drawn =>
        {
            var (x, y, bulge) = drawn;
            if (new Vector(x, y).Length < 0.001) return;
            var arc = Segment.Arc(Point.Origin, new(x, y), bulge);
            var bounds = Bounds.Around(arc.Start, arc.End, arc.Bulge, margin: 1e-9);
            Assert.All(Enumerable.Range(0, 41), i => Assert.True(bounds.Contains(arc.At(i / 40.0))));
        });

    private static BoxTree TreeOf(Box[] boxes)
    {
        var tree = new BoxTree();
        var leaves = tree.Leaves(boxes.Length);
        for (var i = 0; i < boxes.Length; i++) leaves[i] = Around(boxes[i]);
        tree.Build();
        return tree;
    }

    private static Bounds Around(Box box) => Bounds.Around(box.Min, box.Max, bulge: 0, margin: 0);
}
