using System.Collections.Immutable;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>What goes to the bench: what it is, what was measured, what to check, the work in order, what can hurt, and where every vertex
/// lies for whoever has no printer.</summary>
/// <remarks>
/// <code>
///     sheet 1    overview: picture | values        sheets after it    marking out, piece by piece, in two columns;
///                checks            | the work                         the plans of cutting
///                title block, names to write                          title block
/// </code>
/// The overview has a page of its own where one holds it in letters that a person can read; else it runs on, and what follows goes on
/// where it ends.
/// </remarks>
public static class JobSheet
{
    /// <summary>Height of capitals in mm where the overview runs on over several pages, and in the tables behind it.</summary>
    private static readonly ImmutableArray<(double RunningOn, double Tables)> Running = [(2.3, 2.1), (2.2, 2), (2.1, 1.9), (2, 1.8)];

    /// <summary>A last page of which less than this share is used is saved, if smaller letters can.</summary>
    private const double LittleUsed = 0.2;

    /// <summary>Room between two columns in mm.</summary>
    private const double Between = 6;

    /// <summary>Heights of capitals in mm; the largest with which one page holds the overview is taken.</summary>
    private static ImmutableArray<double> Sizes { get; } = [2.5, 2.35, 2.2, 2.1, 2, 1.9, 1.8];

    /// <summary>Smaller letters than this, in mm, are taken to have one page, not to have a larger picture.</summary>
    private const double EasilyRead = 2.1;

    /// <param name="modification">What is worked.</param>
    /// <param name="paper">What the sheet is printed on, whatever the template is on.</param>
    /// <param name="withInches">Whether inches stand beside the millimetres even where nobody gave a length in inches.</param>
    public static Document Of(Modification modification, Paper paper, bool withInches = false)
    {
        var inInches = withInches || Wording.IsInInches(modification);
        var frame = new SheetFrame(modification, paper);
        var (first, later) = (frame.ContentOf(1), frame.ContentOf(2));
        var pictures = new ColumnPictures(modification, ColumnFlow.WidthOf(first, Between));
        var isOnePage = TryOnePage(size => new(modification, first, size, Between, pictures, inInches), frame, pictures, out var page, out var onePage);
        var (pages, overview) = Laid(Running[0]);
        for (var i = 1; i < Running.Length && pages.Count > 1 && Used(pages[^1], frame.ContentOf(pages.Count)) < LittleUsed; i++)
        {
            var (fewer, smaller) = Laid(Running[i]);
            if (fewer.Count < pages.Count) (pages, overview) = (fewer, smaller);
        }
        return new(
            modification.Title,
            $"Job sheet: {Wording.ProfileOf(modification)}, {Wording.HandOf(modification)}",
            frame.Pages(pages, overview.Scale));

        (IReadOnlyList<Board> Pages, OverviewItems Overview) Laid((double RunningOn, double Tables) sizes)
        {
            ImmutableArray<FlowItem> following =
            [
                .. new MarkOutSheets(modification, sizes.Tables, later, Between, inInches).Items(),
                .. new PlanBlocks(modification, sizes.Tables).Plans(later.Width, later.Height).Select(b => new FlowItem(b, sizes.Tables * 3) { IsWide = true }),
            ];
            if (isOnePage) return ([page, .. ColumnFlow.Pages(following, sheet => frame.ContentOf(sheet + 1), Between)], onePage);
            var runningOn = new Overview(modification, first, sizes.RunningOn, Between, pictures, inInches).RunningOn();
            return (ColumnFlow.Pages([.. runningOn.Items, .. following], frame.ContentOf, Between), runningOn);
        }
    }

    // How far down its lowest mark comes, as a share of the height.
    private static double Used(Board page, Box frame) => (frame.Max.Y - Box.Around(page.Marks.Select(m => m.Bounds)).Min.Y) / frame.Height;

    // The largest letters that leave a picture which fills its column well; else those that leave the largest picture.
    private static bool TryOnePage(Func<double, Overview> overview, SheetFrame frame, ColumnPictures pictures, out Board page, out OverviewItems items)
    {
        const double well = 1.6;
        (page, items) = (new(), new([], double.PositiveInfinity, AtOneScale: true));
        foreach (var size in Sizes)
        {
            if (size < EasilyRead && double.IsFinite(items.Reduction)) return true;
            foreach (var tried in overview(size).OnOnePage())
            {
                if (tried.Reduction >= items.Reduction || ColumnFlow.Pages(tried.Items, frame.ContentOf, Between) is not [var only]) continue;
                (page, items) = (only, tried);
                if (tried.Reduction <= well * pictures.AsWideAsTheColumn) return true;
                break;
            }
        }
        return double.IsFinite(items.Reduction);
    }
}
