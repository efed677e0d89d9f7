using System.Globalization;
using TemplateForge.Notation;
using TemplateForge.Testing;

namespace TemplateForge.Profiles.Tests;

/// <summary>Every profile that ships, at both ends of every parameter and at random settings: made cleanly, or refused with a place and a remedy.</summary>
public class LibraryTests
{
    public static TheoryData<string> Names => [.. TheLibrary.Library.Entries.Select(e => e.Name)];

    [Theory, MemberData(nameof(Names))]
    public void At_its_defaults_a_profile_gives_a_foreman_nothing_to_say(string name) =>
        Assert.All(TheLibrary.Profile(name).Make().Pieces, piece => Assert.Empty(piece.Warnings));

    [Theory, MemberData(nameof(Names))]
    public void At_both_ends_of_every_parameter_a_profile_is_made_cleanly_or_refused_in_words(string name)
    {
        var profile = TheLibrary.Profile(name);
        foreach (var parameter in profile.Parameters)
        {
            foreach (var end in Ends(parameter)) IsCleanOrRefused(profile, $"{parameter.Name}={end}");
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void At_random_settings_a_profile_is_made_cleanly_or_refused_in_words(string name)
    {
        var profile = TheLibrary.Profile(name);
        var random = new Random(7);
        var made = 0;
        for (var i = 0; i < 200; i++)
        {
            var given = profile.Parameters.Where(p => p.InsteadOf.Length == 0 && p.When.Length == 0 && random.NextDouble() < 0.5).Select(p =>
            {
                var ends = Ends(p);
                // Near the default more often than anywhere in the range, or nearly all would be refused.
                var share = 0.2 * random.NextDouble();
                return $"{p.Name}={(p.Unit.Length == 0 ? ends[random.Next(ends.Count)] : Between(p, ends, share, up: random.Next(2) == 0))}";
            });
            if (IsCleanOrRefused(profile, [.. given])) made++;
        }
        Assert.True(made >= 60, $"only {made} of 200 were made");
    }

    private static bool IsCleanOrRefused(Profile profile, params string[] given)
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

    private static List<string> Ends(ParameterInfo parameter)
    {
        if (parameter.Unit.Length == 0) return [.. parameter.Range.Split(',', StringSplitOptions.TrimEntries).Select(w => w.Split(' ')[0])];
        return [.. parameter.Range.Split(" to ").Select(e => e.Trim())];
    }

    private static string Between(ParameterInfo parameter, List<string> ends, double share, bool up)
    {
        if (!TryNumber(parameter.Default, out var usual) || ends.Count != 2
            || !TryNumber(ends[up ? 1 : 0], out var end)) return parameter.Default;
        return (usual + share * (end - usual)).ToString("0.###", CultureInfo.InvariantCulture);
    }

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text.Split(' ')[0].TrimEnd('°'), NumberStyles.Float, CultureInfo.InvariantCulture, out number);
}
