using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Bent sections in a profile: each length by a closed form or a published figure, each fault with its place.</summary>
public class SectionsTests
{
    private const string Angle = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        sections:
          angle:
            thickness: 1 mm
            material: dc01
            inside_radius: 1 mm
            reckoned_by: rule_of_thumb
            first_leg: 50 mm
            folds:
              - {turned: 90 deg, way: up, leg: 40 mm}
              - {turned: 90 deg, way: up, leg: 30 mm}
        shapes:
          blank:
            unfolded: {section: angle, across: 80 mm}
        pieces:
          part: {title: Part, blank: blank, bends: angle, thickness: 1 mm}
        """;

    private static Piece Made(params (string There, string Instead)[] changes) => TheLibrary.Read(new("example.yaml", Changed(changes))).Make().Pieces[0];

    private static string Changed(params (string There, string Instead)[] changes) => changes.Aggregate(Angle, (text, change) =>
    {
        Assert.Contains(change.There, text, StringComparison.Ordinal);
        return text.Replace(change.There, change.Instead, StringComparison.Ordinal);
    });

    // Austrian school text, ch. 16.8, p. 206 (read): legs 50, 40 and 30, r = 1, t = 1: 116 mm. DIN 6935 gives 116.16 (calculated).
    [Theory]
    [InlineData("rule_of_thumb", 116, 1e-6)]
    [InlineData("din_6935", 116.16, 0.005)]
    public void The_blank_of_a_channel_is_as_long_as_the_books_say(string rule, double length, double within) =>
        Approximately.Equal(length, Made(("rule_of_thumb", rule)).Shape.Bounds.Height, within);

    // Straight 60 − 3.5 and 40 − 3.5, and a quarter turn at 2 + 0.44 × 1.5 (the material's K-factor).
    [Fact]
    public void The_material_s_neutral_line_is_used_where_the_profile_gives_none()
    {
        var bracket = TheLibrary.Profile("angle-bracket").Make("held_leg=60", "bent_leg=40", "sheet=1.5", "inside_radius=2", "width=100", "angle=90").Pieces[0];
        Approximately.Equal(56.5 + 36.5 + Math.PI / 2 * (2 + 0.44 * 1.5), bracket.Shape.Bounds.Height, Tolerance.Length);
        Assert.Equal("dc01", bracket.Material.Name);
        Assert.Contains(bracket.Notes, n => n.Contains("K-factor 0.44", StringComparison.Ordinal));
        // Area × 1.5 mm × 7850 kg/m³.
        Approximately.Equal(bracket.Shape.Area * 1.5 * 7.85e-6, bracket.Weight, 1e-12);
    }

    [Fact]
    public void A_bend_line_lies_across_the_blank_between_its_tangent_lines_and_what_is_held_lies_to_its_left()
    {
        var part = Made(("rule_of_thumb", "k_factor"));
        Assert.Equal([1, 2], part.BendLines.Select(b => b.Number));
        foreach (var bend in part.BendLines)
        {
            Approximately.Equal(80, bend.Length, Tolerance.Length);
            Approximately.Equal(Math.PI / 2 * 1.44, bend.Allowance, Tolerance.Length);
            Approximately.Equal(bend.From.Y, bend.To.Y, Tolerance.Length);
            var (held, turned) = bend.TangentLines;
            Assert.True((bend.To - bend.From).Cross(held.Segments[0].Start - bend.From) > 0);
            Assert.True((bend.To - bend.From).Cross(turned.Segments[0].Start - bend.From) < 0);
        }
        // 50 outside less setback (r + t), and half the allowance.
        Assert.Contains(part.BendLines, b => Math.Abs(b.From.Y - (50 - 2 + Math.PI / 4 * 1.44)) < Tolerance.Length);
    }

    [Fact]
    public void Springback_is_bent_past()
    {
        var bend = Made(("rule_of_thumb", "k_factor\n    springback: 0.9")).BendLines[0];
        Approximately.Equal(90, bend.Bend.Degrees, 1e-9);
        Approximately.Equal(100, bend.Overbend.Degrees, 1e-9);
    }

    // US Navy Steelworker, volume 2, ch. 2 (read): a single hem takes its width.
    [Fact]
    public void A_closed_hem_takes_its_width_of_the_blank() => Approximately.Equal(
        50 + 8,
        Made(("  - {turned: 90 deg, way: up, leg: 40 mm}\n      - {turned: 90 deg, way: up, leg: 30 mm}", "  - {closed_hem: 8 mm, way: up}")).Shape.Bounds.Height,
        Tolerance.Length);

    [Fact]
    public void A_radius_that_the_material_does_not_take_is_warned_of_on_the_blank()
    {
        var warned = TheLibrary.Profile("angle-bracket").Make("metal=aluminium", "sheet=2", "inside_radius=1");
        var warning = Assert.Single(warned.Pieces[0].Warnings);
        Assert.Equal("radius too small", warning.Rule);
        Assert.True(warned.Pieces[0].Shape.Bounds.Grown(1e-6).Contains(warning.At));
        Assert.Empty(TheLibrary.Profile("angle-bracket").Make("metal=aluminium", "sheet=2", "inside_radius=3").Pieces[0].Warnings);
    }

    [Fact]
    public void A_bend_longer_than_the_brake_and_a_leg_that_fouls_are_warned_of()
    {
        var stiffener = TheLibrary.Profile("top-hat-stiffener");
        Assert.Empty(stiffener.Make().Pieces[0].Warnings);
        Assert.Contains(stiffener.Make("length=1400").Pieces[0].Warnings, w => w.Rule == "bend longer than the brake");
        Assert.Contains(stiffener.Make("depth=12").Pieces[0].Warnings, w => w.Rule == "leg fouls");
    }

    [Theory]
    [InlineData("material: dc01", "material: dc99", 10, 15, "dc99")]
    [InlineData("bends: angle", "bends: angel", 21, 44, "angel")]
    [InlineData("section: angle", "section: angel", 19, 25, "angel")]
    [InlineData("rule_of_thumb", "rule_of_finger", 12, 18, "rule_of_finger")]
    [InlineData("way: up, leg: 40 mm", "way: over, leg: 40 mm", 15, 31, "over")]
    [InlineData("first_leg: 50 mm", "k_factor: 0.4\n    first_leg: 50 mm", 13, 15, "another rule")]
    [InlineData("turned: 90 deg, way: up, leg: 40 mm", "turned: 60 deg, way: up, leg: 40 mm", 15, 18, "says nothing of a bend through 60")]
    [InlineData("leg: 40 mm", "leg: 3 mm", 9, 5, "Leg 2")]
    [InlineData("leg: 40 mm", "leg: -3 mm", 15, 40, "more than 0")]
    [InlineData("turned: 90 deg, way: up, leg: 40", "turned: 190 deg, way: up, leg: 40", 15, 18, "190")]
    [InlineData("bends: angle, thickness: 1 mm", "bends: angle, thickness: 2 mm", 21, 62, "2 mm thick")]
    public void A_fault_is_told_with_its_place(string there, string instead, int line, int column, string words)
    {
        var complaints = new List<Complaint>();
        if (Profile.TryRead(new("example.yaml", Changed((there, instead))), TheLibrary.Shop, complaints, out var profile))
            Assert.False(profile.TryMake([], profile.Hand, profile.Hand, complaints, out _));
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_that_has_none_of_its_section_s_bends_is_refused()
    {
        var complaints = new List<Complaint>();
        var text = Changed(("unfolded: {section: angle, across: 80 mm}", "rectangle: {from: [0, 0], to: [80 mm, 20 mm]}"));
        Assert.True(Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out var profile));
        Assert.False(profile.TryMake([], profile.Hand, profile.Hand, complaints, out _));
        Assert.Contains(complaints, c => c.Line == 21 && $"{c}".Contains("None of its bends", StringComparison.Ordinal));
    }
}
