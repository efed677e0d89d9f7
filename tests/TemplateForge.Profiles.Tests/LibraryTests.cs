using System.Globalization;

namespace TemplateForge.Profiles.Tests;

/// <summary>Every profile that ships at random settings: made cleanly, or refused with a place and a remedy.</summary>
public class LibraryTests
{
    // Two hundred are a command of their own, which CI runs: too long for every time.
    private static readonly int Settings =
        int.TryParse(Environment.GetEnvironmentVariable("TEMPLATEFORGE_SETTINGS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 50;

    public static TheoryData<string> Names => [.. TheLibrary.Library.Entries.Select(e => e.Name)];

    [Theory, MemberData(nameof(Names))]
    public void At_its_defaults_a_profile_gives_a_foreman_nothing_to_say(string name) =>
        Assert.All(TheLibrary.Profile(name).Make().Pieces, piece => Assert.Empty(piece.Warnings));

    [Theory, MemberData(nameof(Names))]
    public void At_random_settings_a_profile_is_made_cleanly_or_refused_in_words(string name)
    {
        var profile = TheLibrary.Profile(name);
        var random = new Random(7);
        var made = 0;
        for (var i = 0; i < Settings; i++)
        {
            var given = profile.Parameters.Where(p => p.InsteadOf.Length == 0 && p.When.Length == 0 && random.NextDouble() < 0.5).Select(p =>
            {
                var ends = MadeOrRefused.Ends(p);
                // Near the default more often than anywhere in the range, or nearly all would be refused.
                var share = 0.2 * random.NextDouble();
                return $"{p.Name}={(p.Unit.Length == 0 ? ends[random.Next(ends.Count)] : MadeOrRefused.Between(p, ends, share, up: random.Next(2) == 0))}";
            });
            if (MadeOrRefused.IsCleanOrRefused(profile, [.. given])) made++;
        }
        Assert.True(made >= 0.3 * Settings, $"only {made} of {Settings} were made");
    }
}
