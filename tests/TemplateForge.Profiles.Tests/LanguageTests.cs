using TemplateForge.Notation;

namespace TemplateForge.Profiles.Tests;

/// <summary>What is complained of, where, and that all of it comes at once. Wordings may change; places may not.</summary>
public class LanguageTests
{
    private const string Sound = """
        profile: example
        version: 1
        title: Example
        about: An example.
        hand: left
        face_up: outer face
        parameters:
          size: {label: Size, unit: mm, default: 30, range: 10 to 50, measured: Rule.}
          lean: {label: Lean, unit: deg, default: 10, range: 0 to 90, shop: Habit.}
        values:
          half: size / 2
        shapes:
          disc:
            circle: {centre: [0, 0], diameter: size}
        pieces:
          disc: {title: Disc, blank: disc, thickness: 1 mm}
        """;

    public static TheoryData<string, string, int, int, string> Faults() => new()
    {
        // what stands there, what is written instead, line, column, words of the complaint
        { "half: size / 2", "half: sise / 2", 11, 9, "size" },
        { "half: size / 2", "half: size + lean", 11, 9, "adds a length to an angle" },
        { "diameter: size", "diameter: lean", 14, 40, "a length" },
        { "diameter: size", "diametre: size", 14, 30, "diameter" },
        { "blank: disc", "blank: dics", 16, 30, "disc" },
        { "circle: {", "circel: {", 14, 5, "circle" },
        { "range: 10 to 50", "range: 10 - 50", 8, 53, "range" },
        { "range: 10 to 50", "range: 40 to 50", 8, 42, "default" },
        { "unit: mm", "unit: furlong", 8, 29, "furlong" },
        { "measured: Rule.", "remark: Rule.", 8, 3, "measured" },
        { "hand: left", "hand: third", 5, 7, "left or right" },
        { "version: 1", "version: one", 2, 10, "whole number" },
        { "profile: example", "profile: other", 1, 10, "example.yaml" },
        { "  disc: {title", "  ../disc: {title", 16, 3, "file name" },
        { "half: size / 2", "size: 3 mm", 11, 3, "something else" },
        { "title: Example", "title: Example\ncolour: red", 4, 1, "colour" },
        { "half: size / 2", "half: *size", 11, 9, "" },
        { "half: size / 2", "half: !!binary size", 11, 9, "" },
        { "version: 1", "version: 1\nversion: 2", 3, 1, "" },
    };

    [Theory, MemberData(nameof(Faults))]
    public void A_fault_is_told_with_its_place_and_what_is_right(string there, string instead, int line, int column, string words)
    {
        var text = Sound.Replace(there, instead, StringComparison.Ordinal);
        Assert.NotEqual(Sound, text);
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out _));
        Assert.Contains(complaints, c => (c.Line, c.Column) == (line, column) && $"{c}".Contains(words, StringComparison.Ordinal));
    }

    [Fact]
    public void The_sound_profile_is_sound() => TheLibrary.Read(new("example.yaml", Sound)).Make();

    [Fact]
    public void All_faults_of_a_file_are_told_at_once()
    {
        var text = Sound.Replace("hand: left", "hand: third", StringComparison.Ordinal)
            .Replace("half: size / 2", "half: size + lean", StringComparison.Ordinal)
            .Replace("blank: disc", "blank: dics", StringComparison.Ordinal);
        var complaints = new List<Complaint>();
        Profile.TryRead(new("example.yaml", text), TheLibrary.Shop, complaints, out _);
        Assert.Equal([5, 11, 16], complaints.Select(c => c.Line).Order());
    }

    [Theory]
    [InlineData("size=51", "takes 10 mm to 50 mm")]
    [InlineData("size=NaN", "")]
    [InlineData("size=1e300", "")]
    [InlineData("size=30 deg", "angle")]
    [InlineData("size=18 ga", "")]
    [InlineData("size=", "")]
    [InlineData("sise=30", "size")]
    public void A_wrong_value_is_told_with_its_place_on_the_command_line(string given, string words)
    {
        var complaint = Assert.Single(TheLibrary.Read(new("example.yaml", Sound)).Refuse(given));
        Assert.Equal(("command line", 1), (complaint.File, complaint.Line));
        Assert.Contains(words, $"{complaint}", StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_needs_itself_is_refused_and_not_followed_for_ever()
    {
        var text = Sound.Replace("half: size / 2", "half: width(disc)", StringComparison.Ordinal).Replace("diameter: size", "diameter: half", StringComparison.Ordinal);
        Assert.Contains("needs itself", Assert.Single(TheLibrary.Read(new("example.yaml", text)).Refuse()).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("diameter: size", "diameter: 300 * size", "9000 mm long")]
    [InlineData("blank: disc", "cut_away: {from: disc, leaves: disc}", "nothing is cut away")]
    [InlineData("blank: disc", "when: size > 40 mm, blank: disc", "no piece at all")]
    [InlineData("diameter: size", "diameter: size - 30 mm", "more than 0")]
    [InlineData("diameter: size", "diameter: 1e7 * size", "100 m")]
    public void A_piece_that_nobody_could_make_is_refused_in_words(string there, string instead, string words)
    {
        var profile = TheLibrary.Read(new("example.yaml", Sound.Replace(there, instead, StringComparison.Ordinal)));
        Assert.Contains(profile.Refuse(), c => c.Problem.Contains(words, StringComparison.Ordinal));
    }

    // A choice that is asked for only with a word of another is checked with that word, not refused without it.
    [Fact]
    public void Every_word_of_every_choice_is_rehearsed_where_it_is_asked_for()
    {
        var text = Sound.Replace("parameters:\n", """
            parameters:
              kind: {label: K, choices: {flat: flat, deep: deep}, default: flat, shop: S.}
              depth: {label: D, when: kind is deep, choices: {some: some, more: more, most: most}, default: some, shop: S.}

            """.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        var profile = TheLibrary.Read(new("example.yaml", text));
        var tried = profile.Rehearsals().ToList();
        Assert.Equal(["", "kind=deep", "kind=deep depth=more", "kind=deep depth=most"], tried.Select(s => string.Join(' ', s.Select(v => $"{v.Name}={v.Text}"))));
        var complaints = new List<Complaint>();
        Assert.All(tried, settings => Assert.True(profile.TryMake(settings, profile.Hand, profile.Hand, complaints, out _), string.Join('\n', complaints)));
    }

    [Fact]
    public void An_alias_bomb_is_refused_at_its_first_anchor()
    {
        const string bomb = "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: [*c, *c]\n";
        var complaints = new List<Complaint>();
        Assert.False(Profile.TryRead(new("example.yaml", bomb), TheLibrary.Shop, complaints, out _));
        Assert.Equal(1, complaints[0].Line);
    }
}
