namespace TemplateForge.Profiles.Tests;

/// <summary>Every profile that ships, at both ends of every parameter: made cleanly, or refused with a place and a remedy.</summary>
public class LibraryEndsTests
{
    [Theory, MemberData(nameof(LibraryTests.Names), MemberType = typeof(LibraryTests))]
    public void At_both_ends_of_every_parameter_a_profile_is_made_cleanly_or_refused_in_words(string name)
    {
        var profile = TheLibrary.Profile(name);
        foreach (var parameter in profile.Parameters)
        {
            foreach (var end in MadeOrRefused.Ends(parameter)) MadeOrRefused.IsCleanOrRefused(profile, $"{parameter.Name}={end}");
        }
    }
}
