using System.Globalization;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>What every profile that ships must come to, whatever is put into it.</summary>
internal static class MadeOrRefused
{
    public static bool IsCleanOrRefused(Profile profile, params string[] given)
    {
        var complaints = new List<Complaint>();
        if (!profile.TryMake(TheLibrary.Settings(given), profile.Hand, profile.Hand, complaints, out var made))
        {
            Assert.NotEmpty(complaints);
            Assert.All(complaints, c => Assert.True(c.Line > 0 && c.Column > 0 && c.Problem.Length > 0, $"{c}"));
            return false;
        }
        Assert.Empty(complaints);
        foreach (var piece in made.Pieces)
        {
            Law.IsWellMade(piece.Shape);
            foreach (var bend in piece.BendLines)
                Assert.True(piece.Shape.Bounds.Grown(1e-6).Contains(bend.From) && piece.Shape.Bounds.Grown(1e-6).Contains(bend.To));
            Assert.All(piece.Warnings, w => Assert.True(piece.Shape.Bounds.Grown(1e-6).Contains(w.At), w.Text));
        }
        return true;
    }

    public static List<string> Ends(ParameterInfo parameter)
    {
        if (parameter.Unit.Length == 0) return [.. parameter.Range.Split(',', StringSplitOptions.TrimEntries).Where(w => w != "whole").Select(w => w.Split(' ')[0])];
        return [.. parameter.Range.Split(" to ").Select(e => e.Trim())];
    }

    public static string Between(ParameterInfo parameter, List<string> ends, double share, bool up)
    {
        if (!TryNumber(parameter.Default, out var usual) || ends.Count != 2
            || !TryNumber(ends[up ? 1 : 0], out var end)) return parameter.Default;
        return (usual + share * (end - usual)).ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Split(' ')[0].TrimEnd('°'), NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
