using TemplateForge.Fabrication;
using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>The words from which a foreman's warnings come, and that nothing else is warned of. The rules are tried in Fabrication.</summary>
public class WarningsTests
{
    // 2 D is 8, 3 D is 12 for rivets of 4, which is the hole.
    private const string Plate = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        parameters:
          metal: {label: Metal, choices: {dc01: steel, en_aw_5052_h32: aluminium}, default: dc01, shop: What is at hand.}
          pitch: {label: Pitch, unit: mm, default: 20, range: 5 to 40, shop: Habit.}
          up: {label: Up, unit: mm, default: 30, range: 0 to 40, shop: Habit.}
        shapes:
          plate:
            rectangle: {from: [0, 0], to: [200 mm, 60 mm]}
          hole:
            circle: {centre: [20 mm, up], diameter: 4 mm}
          holes:
            row: {shape: hole, count: 3, pitch: pitch, towards: 0 deg}
          riveted:
            subtracted: {from: plate, take: [holes]}
        pieces:
          part:
            title: Part
            blank: riveted
            material: metal
            thickness: 1.5 mm
            against: metal
            rivets:
              - {holes: holes}
        """;

    private static string Changed(params (string There, string Instead)[] changes) => changes.Aggregate(Plate, (text, change) =>
    {
        Assert.Contains(change.There, text, StringComparison.Ordinal);
        return text.Replace(change.There, change.Instead, StringComparison.Ordinal);
    });

    private static Profile Read(params (string There, string Instead)[] changes) => TheLibrary.Read(new("example.yaml", Changed(changes)));

    private static string[] Rules(Modification made) => [.. made.Pieces[0].Warnings.Select(w => w.Rule)];

    [Fact]
    public void A_sound_plate_has_no_warning() => Assert.Empty(Rules(Read().Make()));

    [Theory]
    [InlineData("up=7.99", "rivet too near the edge")]
    [InlineData("up=8", "")]
    [InlineData("pitch=11.99", "rivets too near each other")]
    [InlineData("pitch=12", "")]
    public void Rivets_are_looked_at_with_the_diameter_of_their_holes(string given, string rule) =>
        Assert.Equal(rule.Length == 0 ? [] : [rule], Rules(Read().Make(given)).Distinct());

    [Fact]
    public void Holes_of_which_nobody_says_that_they_are_rivets_are_none() =>
        Assert.Empty(Rules(Read(("    rivets:\n      - {holes: holes}", "")).Make("up=7")));

    [Fact]
    public void A_row_may_be_there_only_in_some_cases()
    {
        var profile = Read(("{holes: holes}", "{holes: holes, when: metal is dc01}"));
        Assert.NotEmpty(Rules(profile.Make("up=7")));
        Assert.Empty(Rules(profile.Make("up=7", "metal=en_aw_5052_h32")));
    }

    [Fact]
    public void A_rivet_thinner_than_its_hole_and_a_thicker_sheet_count_where_they_are_given()
    {
        Assert.Empty(Rules(Read(("{holes: holes}", "{holes: holes, diameter: 3.5 mm}")).Make("up=7")));
        Assert.Equal(["rivet of the wrong diameter"], Rules(Read(("{holes: holes}", "{holes: holes, thickest_sheet: 5 mm}")).Make()));
    }

    [Theory]
    [InlineData("against: metal", "dc01", 0)]
    [InlineData("against: metal", "en_aw_5052_h32", 0)]
    [InlineData("against: dc01", "en_aw_5052_h32", 1)]
    [InlineData("against: stainless-1-4301", "en_aw_5052_h32", 1)]
    [InlineData("against: stainless-1-4301", "dc01", 0)]
    [InlineData("against: {by: metal, dc01: en-aw-5052-h32, en_aw_5052_h32: en-aw-5052-h32}", "dc01", 1)]
    public void What_it_is_fastened_to_is_named_like_what_it_is_made_of(string against, string metal, int warnings) =>
        Assert.Equal(warnings, Rules(Read(("against: metal", against)).Make("metal=" + metal)).Count(r => r == "aluminium against steel"));

    [Theory]
    [InlineData("    material: metal\n", "", 25, 14)] // nobody says what it is itself
    [InlineData("diameter: 4 mm", "diameter: 25 mm", 28, 17)] // its holes run together
    [InlineData("holes: holes}", "holes: plate}", 28, 17)] // no round hole
    [InlineData("riveted:\n    subtracted: {from: plate, take: [holes]}", "riveted:\n    same_as: plate", 28, 17)] // no hole there
    [InlineData("{holes: holes}", "{holes: holes, diameter: 4.1 mm}", 28, 34)] // the rivet does not go through
    public void What_cannot_be_is_complained_of_in_its_place(string there, string instead, int line, int column)
    {
        var complaint = Assert.Single(Read((there, instead)).Refuse());
        Assert.Equal((line, column), (complaint.Line, complaint.Column));
    }

    [Fact]
    public void Paper_is_neither_riveted_nor_fastened()
    {
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(new("example.yaml", Changed(("blank: riveted", "paper: riveted"))), TheLibrary.Shop, complaints, out _));
        Assert.Equal([(26, 14), (28, 7)], complaints.Select(c => (c.Line, c.Column)));
    }
}
