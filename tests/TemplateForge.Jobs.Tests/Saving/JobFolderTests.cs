using System.Collections.Immutable;
using System.IO;
using TemplateForge.Notation;

namespace TemplateForge.Jobs.Tests.Saving;

public sealed class JobFolderTests : IDisposable
{
    private static readonly ImmutableArray<NamedBytes> Job = Jobsite.SmallJob.Files;
    private static readonly ImmutableArray<NamedBytes> OtherJob = Jobsite.Make(Jobsite.Request(Jobsite.Patch, "diameter=40")).Files;
    private static readonly Place Said = Jobsite.OnTheLine(33);

    private readonly TemporaryFolder disk = new();
    private readonly List<Complaint> complaints = [];

    public void Dispose() => disk.Dispose();

    [Fact]
    public void A_job_is_saved_with_the_folders_that_it_lies_in_and_nothing_else()
    {
        Assert.True(Save(disk["out", "patch"], Job));

        Assert.Equal(["out", "out/patch", .. Job.Select(f => $"out/patch/{f.Name}").Order(StringComparer.Ordinal)], disk.Everything);
        Holds(disk["out", "patch"], Job);
    }

    [Fact]
    public void The_same_job_is_renewed_where_a_file_of_it_was_lost()
    {
        Save(disk["patch"], Job);
        File.Delete(disk["patch", "template.pdf"]);

        Assert.True(Save(disk["patch"], Job));

        Holds(disk["patch"], Job);
    }

    [Fact]
    public void Another_job_in_the_place_stays_as_it_was()
    {
        Save(disk["patch"], OtherJob);

        Assert.False(Save(disk["patch"], Job));

        Assert.Equal([Wordings.FolderHoldsAnotherJob(Said, disk["patch"], [Jobsite.Patch])], complaints);
        Holds(disk["patch"], OtherJob);
    }

    [Fact]
    public void Another_job_in_the_place_goes_when_it_may()
    {
        Save(disk["patch"], OtherJob);

        Assert.True(Save(disk["patch"], Job, replace: true));

        Holds(disk["patch"], Job);
        Assert.Equal(["patch"], disk.Everything.Where(e => !e.Contains('/')));
    }

    [Fact]
    public void An_empty_folder_is_taken()
    {
        Directory.CreateDirectory(disk["patch"]);
        Assert.True(Save(disk["patch"], Job));
        Holds(disk["patch"], Job);
    }

    [Theory, InlineData("letters.txt"), InlineData("job.json")]
    public void A_folder_that_is_no_job_is_left_alone_even_when_it_may_be_replaced(string name)
    {
        Directory.CreateDirectory(disk["patch"]);
        File.WriteAllText(disk["patch", name], "{\"format\": \"something else\"}");

        Assert.False(Save(disk["patch"], Job, replace: true));

        Assert.Equal([Wordings.FolderIsNotAJob(Said, disk["patch"], [name])], complaints);
        Assert.Equal(["patch", $"patch/{name}"], disk.Everything);
    }

    [Theory, InlineData("photo.jpg"), InlineData("photos"), InlineData("left/template.pdf")]
    public void A_job_with_something_of_somebody_elses_is_left_alone_even_when_it_may_be_replaced(string name)
    {
        Save(disk["patch"], Job);
        if (name == "photos") Directory.CreateDirectory(disk["patch", name]);
        else Write(disk["patch", name], "mine");

        Assert.False(Save(disk["patch"], Job, replace: true));

        Assert.Equal([Wordings.FolderHoldsMore(Said, disk["patch"], [name])], complaints);
        Assert.Contains($"patch/{name}", disk.Everything);
    }

    [Fact]
    public void A_file_in_the_place_is_left_alone()
    {
        File.WriteAllText(disk["patch"], "a list of patches");

        Assert.False(Save(disk["patch"], Job, replace: true));

        Assert.Equal([Wordings.PlaceIsAFile(Said, disk["patch"])], complaints);
        Assert.Equal(["patch"], disk.Everything);
    }

    // These tests may run as root, whom no read-only folder stops; a file where a folder should be stops everybody.
    [Fact]
    public void A_place_that_cannot_be_written_to_is_said_and_nothing_is_left()
    {
        File.WriteAllText(disk["out"], "not a folder");

        Assert.False(Save(disk["out", "jobs", "patch"], Job));

        Assert.Equal(Said, new Place(complaints[0].File, complaints[0].Line, complaints[0].Column));
        Assert.Single(complaints);
        Assert.Equal(["out"], disk.Everything);
    }

    [Fact]
    public void A_failure_while_building_leaves_the_old_job_and_nothing_half_built()
    {
        Save(disk["patch"], OtherJob);
        // A file and a folder of one name: the second cannot be made once the first is there.
        ImmutableArray<NamedBytes> impossible = [new("left", "", [1]), new("left/panel.dxf", "", [1]), .. Job];

        Assert.False(Save(disk["patch"], impossible, replace: true));

        Assert.Single(complaints);
        Holds(disk["patch"], OtherJob);
        Assert.Equal(["patch"], disk.Everything.Where(e => !e.Contains('/')));
    }

    [Fact]
    public void Work_that_is_stopped_leaves_the_old_job_and_nothing_half_built()
    {
        Save(disk["patch"], OtherJob);

        Assert.Throws<OperationCanceledException>(() =>
            JobFolder.TrySave(disk["patch"], Job, replace: true, Said, complaints, new CancellationToken(canceled: true)));

        Holds(disk["patch"], OtherJob);
        Assert.Equal(["patch"], disk.Everything.Where(e => !e.Contains('/')));
    }

    [Fact]
    public void Work_that_is_stopped_leaves_no_folder_that_it_made()
    {
        Assert.Throws<OperationCanceledException>(() =>
            JobFolder.TrySave(disk["out", "jobs", "patch"], Job, replace: false, Said, complaints, new CancellationToken(canceled: true)));

        Assert.Empty(disk.Everything);
    }

    [Fact]
    public void An_old_job_that_a_killed_run_had_moved_aside_comes_back()
    {
        Save(disk["patch"], OtherJob);
        Directory.Move(disk["patch"], disk[".patch.0123abcd.old"]);

        Assert.False(Save(disk["patch"], Job));

        Assert.Equal([Wordings.FolderHoldsAnotherJob(Said, disk["patch"], [Jobsite.Patch])], complaints);
        Holds(disk["patch"], OtherJob);
    }

    [Fact]
    public void What_killed_runs_left_is_cleared_and_what_others_own_is_not()
    {
        Save(disk["patch"], Job);
        foreach (var left in (string[])[".patch.0123abcd.old", ".patch.89abcdef.new", ".patch.mine.new", ".patch2.0123abcd.new", ".patch.0123abcd.new.txt"])
            Write(disk[left, "template.pdf"], "half");

        Assert.True(Save(disk["patch"], Job));

        Assert.Equal([".patch.0123abcd.new.txt", ".patch.mine.new", ".patch2.0123abcd.new", "patch"], disk.Everything.Where(e => !e.Contains('/')));
    }

    [Fact]
    public void Two_runs_do_not_write_to_one_place_at_once()
    {
        using (new FileStream(disk[".patch.lock"], FileMode.Create, FileAccess.ReadWrite, FileShare.None))
            Assert.False(Save(disk["patch"], Job));

        Assert.Equal([Wordings.AnotherRunIsWriting(Said, disk["patch"])], complaints);
        Assert.True(Save(disk["patch"], Job));
    }

    [Fact]
    public void A_link_to_a_folder_stays_a_link()
    {
        Directory.CreateDirectory(disk["elsewhere"]);
        Directory.CreateSymbolicLink(disk["patch"], disk["elsewhere"]);

        Assert.True(Save(disk["patch"], Job));

        Assert.NotNull(new DirectoryInfo(disk["patch"]).LinkTarget);
        Holds(disk["elsewhere"], Job);
    }

    [Fact]
    public void Both_hands_are_one_set()
    {
        var both = Jobsite.Pair;
        Assert.True(Save(disk["notch"], both.Files));
        Assert.True(Save(disk["notch"], both.Files));
        Assert.False(Save(disk["notch"], both.Jobs[0].Files));

        Assert.Equal([Wordings.FolderHoldsAnotherJob(Said, disk["notch"], [$"{Jobsite.Notch}, left hand", $"{Jobsite.Notch}, right hand"])], complaints);
        Holds(disk["notch"], both.Files);
    }

    [Theory, InlineData(""), InlineData("  "), InlineData("/")]
    public void A_folder_that_a_job_cannot_have_for_itself_is_refused(string folder)
    {
        Assert.False(Save(folder, Job, replace: true));
        Assert.Equal([Wordings.FolderHasNoName(Said)], complaints);
    }

    [Fact]
    public void The_folder_that_somebody_stands_in_is_not_swapped_away()
    {
        var current = Directory.GetCurrentDirectory();
        Assert.False(Save(current, Job, replace: true));
        Assert.Equal([Wordings.FolderIsCurrent(Said, current)], complaints);
    }

    private bool Save(string folder, ImmutableArray<NamedBytes> files, bool replace = false) =>
        JobFolder.TrySave(folder, files, replace, Said, complaints, CancellationToken.None);

    private static void Write(string path, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    private static void Holds(string folder, ImmutableArray<NamedBytes> files)
    {
        foreach (var file in files) Assert.Equal(file.Bytes, File.ReadAllBytes(System.IO.Path.Combine(folder, file.Name)));
        Assert.Equal(files.Length, Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Length);
    }
}
