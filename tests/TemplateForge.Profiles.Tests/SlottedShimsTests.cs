using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

public class SlottedShimsTests
{
    private static readonly Profile Shims = TheLibrary.Profile("slotted-shims");

    private static readonly Dictionary<string, double[]> Stock = new()
    {
        ["stainless_1_4301"] = [0.5, 1, 3],
        ["dc01"] = [0.6, 1.2, 3],
        ["dx51_z275"] = [0.6, 1.2, 2],
        ["en_aw_5052_h32"] = [1, 2, 3],
    };

    // Every pack of up to eight of each, tried: of those no further from the gap than half the thinnest, the fewest.
    private static (int Count, double Least) Fewest(double[] stock, double gap)
    {
        var best = (Count: int.MaxValue, Pack: 0.0);
        for (var thin = 0; thin <= 8; thin++)
        {
            for (var middle = 0; middle <= 8; middle++)
            {
                for (var thick = 0; thick <= 8; thick++)
                {
                    var pack = thin * stock[0] + middle * stock[1] + thick * stock[2];
                    if (Math.Abs(pack - gap) <= stock[0] / 2 + 1e-9 && thin + middle + thick < best.Count) best = (thin + middle + thick, pack);
                }
            }
        }
        return best;
    }

    [Theory]
    [InlineData("stainless_1_4301")]
    [InlineData("dc01")]
    [InlineData("dx51_z275")]
    [InlineData("en_aw_5052_h32")]
    public void A_pack_is_the_fewest_shims_that_come_within_half_the_thinnest(string metal)
    {
        for (var tenths = 3; tenths <= 72; tenths += 3)
        {
            var gap = tenths / 10.0;
            if (Fewest(Stock[metal], gap) is not { Count: > 0 and <= 6 } fewest) continue;
            var pieces = Shims.Make($"metal={metal}", FormattableString.Invariant($"gap_1={gap}"), "gap_2=0", "gap_3=0", "spare=0").Pieces;
            Assert.Equal(fewest.Count, pieces.Sum(p => p.Quantity));
            Assert.True(Math.Abs(pieces.Sum(p => p.Quantity * p.Thickness) - gap) <= Stock[metal][0] / 2 + 1e-9, $"{gap}");
        }
    }

    [Fact]
    public void There_are_enough_of_each_for_all_mounts_and_sets()
    {
        // 4.6 is 3 + 1 + 0.5, 3 is 3, 1.5 is 1 + 0.5; two sets and two spare.
        var made = Shims.Make("sets=2");
        Assert.Equal((4, 4, 6), (made.Piece("thick-shim").Quantity, made.Piece("middle-shim").Quantity, made.Piece("thin-shim").Quantity));
    }

    [Theory]
    [InlineData("thin-shim", 1)]
    [InlineData("middle-shim", 2)]
    [InlineData("thick-shim", 3)]
    public void Notches_tell_the_thicknesses_apart(string name, int notches)
    {
        // Half a circle of 3 each.
        var plain = Shims.Make().Piece("thin-shim").Shape.Area + Math.PI * 1.5 * 1.5 / 2;
        Approximately.Equal(plain - notches * Math.PI * 1.5 * 1.5 / 2, Shims.Make().Piece(name).Shape.Area, within: 1e-6);
    }

    // ISO 273, medium: 9 for M8. The slot reaches half of it past the middle of the bolt.
    [Fact]
    public void The_slot_takes_the_bolt_and_a_keyhole_has_no_mouth()
    {
        var shape = Shims.Make().Piece("thin-shim").Shape;
        Assert.Single(shape.Contours);
        Approximately.Equal(4.5, Geometry.RegionDistance.BoundaryDistanceTo(shape, new(0, 0)), within: 1e-6);
        Assert.Equal(2, Shims.Make("opening=keyhole").Piece("thin-shim").Shape.Contours.Length);
    }

    [Theory]
    [InlineData("spacer", "gap_1=14.6")]
    [InlineData("width", "width=18")]
    [InlineData("width", "bolt=m12", "opening=keyhole", "width=34")]
    [InlineData("behind", "behind=15")]
    public void What_would_bend_or_come_loose_is_refused_with_what_would_do(string remedy, params string[] given) =>
        Assert.Contains(Shims.Refuse(given), c => c.Remedy.Contains(remedy, StringComparison.Ordinal));
}
