using TemplateForge.Fabrication;

namespace TemplateForge.Jobs.Tests;

public sealed class JobSetTests
{
    [Fact]
    public void A_job_has_a_template_a_cut_file_for_every_piece_that_is_cut_pictures_a_sheet_and_a_record() =>
        Assert.Equal(
            ["template.pdf", "patch-cut.dxf", "preview.svg", "preview.png", "job-sheet.pdf", "job.json"],
            Jobsite.SmallJob.Files.Select(f => f.Name));

    // PNG (ISO/IEC 15948), 11.2.1: eight bytes of signature, a chunk's length and name, then the width, high byte first.
    [Fact]
    public void The_preview_is_at_least_1600_pixels_wide()
    {
        var png = Jobsite.SmallJob.Files.Single(f => f.Name == "preview.png").Bytes;
        Assert.InRange(png[16] << 24 | png[17] << 16 | png[18] << 8 | png[19], 1600, 4000);
    }

    [Fact]
    public void Without_a_word_the_hand_is_the_profiles_own_and_counts_as_measured()
    {
        var modification = Assert.Single(Jobsite.Plan(Jobsite.Request(Jobsite.Notch)).Modifications);
        Assert.Equal((Hand.Left, true), (modification.Hand, modification.HandWasMeasured));
    }

    [Theory, InlineData("right", "", false), InlineData("right", "right", true), InlineData("left", "right", false), InlineData("right", "left", false)]
    public void A_hand_that_was_not_measured_says_so(string hand, string measuredOn, bool wasMeasured)
    {
        var request = Jobsite.Request(Jobsite.Notch) with
        {
            Hand = Jobsite.Choose(hand),
            MeasuredOn = measuredOn.Length == 0 ? Choice.Open : Jobsite.Choose(measuredOn),
        };
        Assert.Equal(wasMeasured, Assert.Single(Jobsite.Plan(request).Modifications).HandWasMeasured);
    }

    [Fact]
    public void Both_hands_have_a_folder_each_and_one_of_them_was_not_measured()
    {
        var set = Jobsite.Pair;

        Assert.Equal([(Hand.Left, true), (Hand.Right, false)], set.Jobs.Select(j => (j.Modification.Hand, j.Modification.HandWasMeasured)));
        Assert.Equal(2 * set.Jobs[0].Files.Length, set.Files.Length);
        Assert.All(set.Files, f => Assert.Matches("^(left|right)/", f.Name));
    }

    [Theory, InlineData("left"), InlineData("both"), InlineData("sideways")]
    public void A_profile_for_either_hand_has_no_hand_to_choose(string hand)
    {
        var complaints = Jobsite.Refuse(Jobsite.Request(Jobsite.Patch) with { Hand = Jobsite.Choose(hand), MeasuredOn = Jobsite.Choose("left") });
        Assert.Equal(
            [Wordings.ProfileHasNoHand(Jobsite.Choose(hand), Jobsite.Patch), Wordings.ProfileHasNoHand(Jobsite.Choose("left"), Jobsite.Patch)],
            complaints);
    }

    [Fact]
    public void Everything_that_is_wrong_is_told_at_once()
    {
        var complaints = Jobsite.Refuse(Jobsite.Request(Jobsite.Notch, "diamter=190", "tilt=50") with
        {
            Hand = Jobsite.Choose("rihgt"),
            MeasuredOn = Jobsite.Choose("both"),
            Paper = Jobsite.Choose("leter"),
        });

        Assert.Contains(Wordings.UnknownHand(Jobsite.Choose("rihgt"), ["left", "right", "both"]), complaints);
        Assert.Contains(Wordings.UnknownHand(Jobsite.Choose("both"), ["left", "right"]), complaints);
        Assert.Contains(complaints, c => c.Problem.Contains("leter", StringComparison.Ordinal) && c.Remedy.Contains("letter", StringComparison.Ordinal));
        Assert.Contains(complaints, c => c.Problem.Contains("diamter", StringComparison.Ordinal) && c.Remedy.Contains("diameter", StringComparison.Ordinal));
        Assert.Contains(complaints, c => c.Problem.Contains("tilt", StringComparison.Ordinal));
        Assert.Equal(5, complaints.Count);
    }

    [Fact]
    public void What_is_wrong_for_both_hands_is_told_once() =>
        Assert.Single(Jobsite.Refuse(Jobsite.Request(Jobsite.Notch, "tilt=50") with { Hand = Jobsite.Choose("both") }));

    [Fact]
    public void Work_stops_when_it_is_asked_to() =>
        Assert.Throws<OperationCanceledException>(() =>
            JobSet.TryMake(Jobsite.Request(Jobsite.Patch), [], new CancellationToken(canceled: true), out _));
}
