using System.IO;
using TemplateForge.Geometry;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>A profile that somebody wrote from docs/profile-language.md alone, kept as they wrote it.</summary>
public class WrittenFromThePageTests
{
    private static readonly Profile Guard = TheLibrary.Read(new(
        "cable-guard.yaml", File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, "WrittenFromThePage", "cable-guard.yaml"))));

    [Theory]
    [InlineData("edge=hem", "place=wet", 3)]
    [InlineData("edge=trim", "place=wet", 3)]
    [InlineData("edge=trim", "place=dry", 2)]
    public void It_makes_its_pieces_for_every_choice(string edge, string place, int pieces)
    {
        var made = Guard.Make(edge, place);
        Assert.Equal(pieces, made.Pieces.Length);
        Assert.All(made.Pieces, p => Law.IsWellMade(p.Shape));
        Assert.Contains(made.Steps, s => s.IsHold);
    }

    // Foot 24, wall 28 and shelf 30 over the outside, sheet 1, radius 1.5 (so 2.5 of setback at each end of a bend), a quarter turn at
    // 1.5 + 0.44 twice, and the hem's whole 8.
    [Fact]
    public void The_blank_of_its_hemmed_guard_is_as_long_as_its_legs_say()
    {
        var guard = Guard.Make("edge=hem").Pieces.First(p => !p.BendLines.IsEmpty);
        Approximately.Equal(24 + 28 + 30 - 4 * 2.5 + 2 * Math.PI / 2 * 1.94 + 8, guard.Shape.Bounds.Height, 2 * Tolerance.Length);
        Assert.Equal(3, guard.BendLines.Length);
    }
}
