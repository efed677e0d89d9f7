using System.Collections.Immutable;
using System.Text;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs.Tests;

/// <summary>The library that ships, and short ways to make jobs from it.</summary>
internal static class Jobsite
{
    public const string Notch = "booster-clearance-notch";
    public const string Patch = "hole-plug-patch";

    public static ProfileLibrary Library { get; } = Open();

    /// <summary>A patch for a 30 mm hole: the fewest lines of all that ships.</summary>
    public static JobSet SmallJob { get; } = Make(Request(Patch));

    /// <summary>A notch for both hands.</summary>
    public static JobSet Pair { get; } = Make(Request(Notch) with { Hand = Choose("both") });

    public static JobRequest Request(string profile, params string[] settings) => new()
    {
        Profile = Library.Entries.Single(e => e.Name == profile).File,
        ShopFiles = Library.ShopFiles,
        Settings = [.. settings.Select(s => new Setting(s.Split('=')[0], s.Split('=', 2)[1], OnTheLine(7)))],
    };

    public static Place OnTheLine(int column) => new("command line", 1, column);

    public static Choice Choose(string word) => new(word, OnTheLine(20));

    public static JobSet Make(JobRequest request)
    {
        var complaints = new List<Complaint>();
        Assert.True(JobSet.TryMake(request, complaints, CancellationToken.None, out var set), string.Join('\n', complaints));
        Assert.Empty(complaints);
        return set;
    }

    public static JobPlan Plan(JobRequest request)
    {
        var complaints = new List<Complaint>();
        Assert.True(JobPlan.TryMake(request, complaints, out var plan), string.Join('\n', complaints));
        Assert.Empty(complaints);
        return plan;
    }

    public static List<Complaint> Refuse(JobRequest request)
    {
        var complaints = new List<Complaint>();
        Assert.False(JobSet.TryMake(request, complaints, CancellationToken.None, out _));
        Assert.NotEmpty(complaints);
        return complaints;
    }

    public static string RecordOf(Job job) => Encoding.UTF8.GetString(job.Files.Single(f => f.Name == JobRecord.FileName).Bytes.AsSpan());

    public static JobRecord Read(string record)
    {
        var complaints = new List<Complaint>();
        Assert.True(JobRecord.TryRead(new("job.json", record), complaints, out var read), string.Join('\n', complaints));
        Assert.Empty(complaints);
        return read;
    }

    public static void AreTheSame(ImmutableArray<NamedBytes> expected, ImmutableArray<NamedBytes> actual)
    {
        Assert.Equal(expected.Select(f => f.Name), actual.Select(f => f.Name));
        foreach (var (before, after) in expected.Zip(actual))
            Assert.True(before.Bytes.SequenceEqual(after.Bytes), $"{before.Name} is not the same");
    }

    private static ProfileLibrary Open()
    {
        var complaints = new List<Complaint>();
        Assert.True(
            ProfileLibrary.TryOpen(System.IO.Path.Combine(AppContext.BaseDirectory, "profiles"), complaints, out var library),
            string.Join('\n', complaints));
        return library;
    }
}
