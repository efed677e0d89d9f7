using System.IO;
using TemplateForge.Jobs.Tests.Saving;
using TemplateForge.Notation;

namespace TemplateForge.Jobs.Tests.Reading;

public sealed class TextFilesTests : IDisposable
{
    private static readonly Place Said = Jobsite.OnTheLine(6);

    private readonly TemporaryFolder disk = new();
    private readonly List<Complaint> complaints = [];

    public void Dispose() => disk.Dispose();

    [Theory, InlineData("profile: notch\r\n# 12 µm\n"), InlineData("\uFEFFprofile: notch\n")]
    public void A_text_is_read_as_it_stands_without_a_byte_order_mark(string text)
    {
        File.WriteAllText(disk["a.yaml"], text);
        Assert.True(TextFiles.TryRead(disk["a.yaml"], 1000, Said, complaints, out var file));
        Assert.Equal(text.TrimStart('\uFEFF'), file.Text);
    }

    [Fact]
    public void What_is_not_there_or_no_file_or_no_text_or_too_long_is_told()
    {
        File.WriteAllBytes(disk["bytes"], [0xFF, 0xFE, 0x41]);
        File.WriteAllText(disk["long"], new string('x', 1001));
        foreach (var name in (string[])["missing", "no-folder/missing", ".", "bytes", "long"])
            Assert.False(TextFiles.TryRead(disk[name], 1000, Said, complaints, out _));

        Assert.Equal(
            [
                Wordings.NoSuchFile(Said, disk["missing"]),
                Wordings.NoSuchFile(Said, disk["no-folder/missing"]),
                Wordings.IsAFolder(Said, disk["."]),
                Wordings.NotText(Said, disk["bytes"]),
                Wordings.FileTooLong(Said, disk["long"], 1000),
            ],
            complaints);
    }

    [Fact]
    public void A_device_without_an_end_is_read_no_further_than_the_limit()
    {
        if (OperatingSystem.IsWindows()) return; // it has no such device
        Assert.False(TextFiles.TryRead("/dev/zero", 1000, Said, complaints, out _));
        Assert.Equal([Wordings.FileTooLong(Said, "/dev/zero", 1000)], complaints);
    }
}
