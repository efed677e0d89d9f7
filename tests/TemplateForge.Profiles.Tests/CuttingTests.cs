using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Every profile that ships, cut with a laser's, a torch's and a router's kerf, and what a piece may ask of its cutting.</summary>
public class CuttingTests
{
    /// <summary>How near the slot's edge must come to the part's, and how far it may reach into it, in mm.</summary>
    private const double Within = 0.01;

    private const string Plate =
        """
        profile: plate
        version: 1
        title: Plate
        about: A plate.
        hand: either
        face_up: outer face
        shapes:
          plate:
            rectangle: {from: [0, 0], to: [100 mm, 60 mm]}
          window:
            rectangle: {from: [30 mm, 20 mm], to: [70 mm, 40 mm]}
          left:
            subtracted: {from: plate, take: [window]}
        pieces:
          plate:
            title: Plate
            blank: left
            thickness: 1 mm

        """;

    public static TheoryData<string> Names => [.. TheLibrary.Library.Entries.Select(e => e.Name)];

    [Theory, MemberData(nameof(Names))]
    public void The_slot_leaves_every_piece_that_ships_and_never_touches_it(string name)
    {
        foreach (var piece in TheLibrary.Profile(name).Make().Pieces.Where(p => p.Kind != PieceKind.Paper))
        {
            foreach (var kerf in (double[])[0.2, 1.5, 6]) IsLeft(piece, kerf);
        }
    }

    [Fact]
    public void A_piece_asks_for_tabs_stop_holes_and_drill_marks()
    {
        var piece = Read("    cutting: {tabs: 3, tabs_at: [[50 mm, 0]], stop_holes: 4 mm, drill_marks: 6 mm}\n").Make().Pieces[0];
        Assert.Equal((3, 4.0, 6.0), (piece.Cutting.Tabs, piece.Cutting.StopHole, piece.Cutting.DrillUpTo));
        Assert.Equal(new Point(50, 0), Assert.Single(piece.Cutting.TabsAt));
        Assert.Contains("stop hole of 4 mm", Assert.Single(piece.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mirror_image_has_its_tabs_on_the_other_side()
    {
        var piece = Read("    cutting: {tabs_at: [[100 mm, 20 mm]]}\n").Make().Pieces[0].Mirrored();
        Assert.Equal(-100, Assert.Single(piece.Cutting.TabsAt).X, 1e-9);
    }

    [Theory]
    [InlineData("tabs: -1")]
    [InlineData("tabs: 2.5")]
    [InlineData("tabs: 51")]
    [InlineData("tabs_at: [[50 mm, 30 mm]], stop_holes: -1 mm")]
    [InlineData("tabs_at: [[50 mm, -10.5 mm]]")]
    [InlineData("drill_marks: -2 mm")]
    public void What_no_machine_can_do_is_refused_at_its_place(string cutting)
    {
        var complaint = Read($"    cutting: {{{cutting}}}\n").Refuse()[0];
        Assert.Equal((19, true), (complaint.Line, complaint.Column > 14));
    }

    [Theory]
    [InlineData("    cutting: {tab: 3}\n", 15)]
    [InlineData("    cutting: {stop_holes: 3 deg}\n", 27)]
    [InlineData("    cutting: yes\n", 14)]
    public void A_misspelt_wish_is_refused_at_its_place(string cutting, int column)
    {
        var complaints = new List<Notation.Complaint>();
        Assert.False(Profile.TryRead(new("plate.yaml", Plate + cutting), TheLibrary.Shop, complaints, out _));
        Assert.Equal((19, column), (complaints[0].Line, complaints[0].Column));
    }

    [Fact]
    public void Paper_is_not_cut_on_a_machine()
    {
        var complaints = new List<Notation.Complaint>();
        Assert.False(Profile.TryRead(new("plate.yaml", Plate.Replace("blank:", "paper:", StringComparison.Ordinal) + "    cutting: {tabs: 3}\n"), TheLibrary.Shop, complaints, out _));
        Assert.Contains("not cut on a machine", complaints[0].Problem, StringComparison.Ordinal);
    }

    private static Profile Read(string cutting) => TheLibrary.Read(new("plate.yaml", Plate + cutting));

    private static void IsLeft(Piece piece, double kerf)
    {
        var plan = CutPlan.Of(piece, new("tool", "tool", kerf, LeastHole: 0) { LeadIn = 4, LeastLead = 0.1 }, kerf, runOut: 10);
        Assert.True(plan.RapidLength >= plan.RapidBound - 1e-6);
        Assert.DoesNotContain(plan.Troubles, t => t.Kind is CutTroubleKind.RunOutTouches or CutTroubleKind.NoRoomForTab);
        var swept = new SweptKerf(plan.Part, [.. plan.Cuts.Select(c => c.Path)], kerf);
        var entered = swept.Entered();
        Assert.True(entered <= Within, $"{piece.Name}, kerf {kerf}: the slot reaches {entered} mm into the part");
        var uncut = plan.Troubles.Where(t => t.Kind is CutTroubleKind.NoRoomToPierce).Select(t => t.At).ToList();
        Assert.Empty(swept.NotCut(Within, (at, contour) =>
            uncut.Exists(u => plan.Part.Contours[contour].Segments.Any(s => s.DistanceTo(u) < kerf / 2 + 1e-3))
            || (piece.Kind == PieceKind.CutAway && (!piece.Before.Contains(at) || piece.Before.BoundaryDistanceTo(at) < 1e-3))));
    }
}
