using System.Collections.Immutable;
using System.IO;
using System.Xml.Linq;
using TemplateForge.Notation;
using TemplateForge.Profiles;
using TemplateForge.Shop;

namespace TemplateForge.Cli.Tests;

/// <summary>The project files draw no arrow that the architecture's picture does not, and no C# knows what ships in the library.</summary>
public sealed class ArchitectureTests
{
    // Words of the profile language (a circle has a diameter, a datum a hole, a bend an inside radius) and of the shop's tables (a brake
    // has a length, a way to weld a gap, a bolt its hole) that are names of parameters as well.
    private static readonly ImmutableArray<string> WordsOfTheLanguage =
        [
            "angle", "aside", "bend", "bolt", "chord", "clearance", "corner_radius", "corners", "cut", "cutter", "diameter", "edge", "height",
            "hole", "holes", "inside_radius", "jig", "lap", "length", "margin", "offset", "other", "paper", "pieces",
            "pitch", "plate", "plug_hole", "relief_cuts", "rise", "sheet", "shroud", "step", "straight", "tack_pitch", "tilt", "wall",
            "weld_gap", "width", "work",
        ];

    private static readonly string Root = FindRoot();

    // The picture in docs/architecture.md. A project may also use what its arrows lead to, never what leads to it.
    private static readonly ILookup<string, string> Arrows = File.ReadLines(Path.Combine(Root, "docs", "architecture.md"))
        .Select(line => line.Split("──▶"))
        .Where(sides => sides.Length == 2)
        .SelectMany(sides => sides[1].Split(',').Select(to => (From: sides[0].Trim(), To: to.Trim())))
        .ToLookup(arrow => arrow.From, arrow => arrow.To);

    public static TheoryData<string> Projects =>
        [.. Directory.EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Root, f)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Projects))]
    public void A_project_refers_only_to_what_its_arrows_lead_to(string project)
    {
        var allowed = Reached(NameOf(project)).ToHashSet(StringComparer.Ordinal);
        foreach (var reference in Included(project, "ProjectReference").Select(NameOf))
            Assert.True(allowed.Contains(reference), $"{project} refers to {reference}, and the architecture draws no such arrow.");
    }

    [Fact]
    public void The_picture_has_every_project() =>
        Assert.Equal(
            Projects.Select(p => NameOf(p.Data)).Order(StringComparer.Ordinal),
            Arrows.SelectMany(a => a.Append(a.Key)).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_project_has_its_tests() =>
        Assert.Equal(
            Projects.Select(p => NameOf(p.Data)).Order(StringComparer.Ordinal),
            Directory.EnumerateDirectories(Path.Combine(Root, "tests"), "TemplateForge.*.Tests")
                .Select(d => Path.GetFileName(d)["TemplateForge.".Length..^".Tests".Length])
                .Order(StringComparer.Ordinal));

    [Fact]
    public void Geometry_stands_on_nothing()
    {
        var project = Projects.Select(p => p.Data).Single(p => NameOf(p) == "Geometry");
        Assert.Empty(Included(project, "ProjectReference"));
        Assert.Empty(Included(project, "PackageReference"));
    }

    [Theory, MemberData(nameof(Projects))]
    public void No_project_reaches_around_the_references(string project) =>
        Assert.Empty(Included(project, "Reference").Concat(Included(project, "Compile")));

    [Fact]
    public void No_source_names_a_profile_that_ships_or_a_parameter_of_it()
    {
        var (profiles, parameters) = Shipped();
        var found = new List<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Root, "src"), "*.cs", SearchOption.AllDirectories).Where(f => !IsBuildOutput(Path.GetRelativePath(Root, f))))
        {
            // What comments say of a method's own parameters is nobody's profile.
            var text = string.Join('\n', File.ReadLines(file).Where(l => !l.TrimStart().StartsWith("///", StringComparison.Ordinal)));
            found.AddRange(profiles.Where(p => text.Contains(p, StringComparison.OrdinalIgnoreCase)).Select(p => $"{file}: {p}"));
            found.AddRange(parameters.Where(p => text.Contains($"\"{p}\"", StringComparison.Ordinal)).Select(p => $"{file}: \"{p}\""));
        }
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    private static (ImmutableArray<string> Profiles, ImmutableArray<string> Parameters) Shipped()
    {
        var complaints = new List<Complaint>();
        Assert.True(ProfileLibrary.TryOpen(Path.Combine(Root, "profiles"), complaints, out var library));
        Assert.True(ShopReader.TryRead(library.ShopFiles, complaints, out var shop));
        var parameters = new HashSet<string>(StringComparer.Ordinal);
        foreach (var entry in library.Entries)
        {
            Assert.True(Profile.TryRead(entry.File, shop, complaints, out var profile));
            parameters.UnionWith(profile.Parameters.Select(p => p.Name));
        }
        Assert.NotEmpty(parameters);
        Assert.All(WordsOfTheLanguage, word => Assert.Contains(word, parameters));
        return ([.. library.Entries.Select(e => e.Name)], [.. parameters.Except(WordsOfTheLanguage)]);
    }

    private static IEnumerable<string> Reached(string from) => Arrows[from].SelectMany(to => Reached(to).Append(to));

    private static IEnumerable<string> Included(string project, string kind) =>
        XDocument.Load(Path.Combine(Root, project)).Descendants(kind).Select(e => (string?)e.Attribute("Include") ?? "");

    private static string NameOf(string project) => Path.GetFileNameWithoutExtension(project.Replace('\\', '/'))["TemplateForge.".Length..];

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "TemplateForge.sln")))
            folder = folder.Parent ?? throw new InvalidOperationException("The tests run somewhere below the solution's folder.");
        return folder.FullName;
    }

    private static bool IsBuildOutput(string file) => file.Split('/', '\\').Any(part => part is "bin" or "obj");
}
