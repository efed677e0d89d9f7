using System.Collections.Immutable;
using TemplateForge.Notation;
using TemplateForge.Profiles;

namespace TemplateForge.Jobs;

/// <summary>All that a job depends on. The same request makes the same bytes, whoever makes it, wherever and whenever.</summary>
public sealed record JobRequest
{
    public required TextFile Profile { get; init; }
    /// <summary>The shop's tables; a table that is there twice, the library's and the shop's own, in that order.</summary>
    public required ImmutableArray<TextFile> ShopFiles { get; init; }
    public ImmutableArray<Setting> Settings { get; init; } = [];

    /// <summary><c>left</c>, <c>right</c> or <c>both</c>; open for the hand that the profile is drawn for.</summary>
    public Choice Hand { get; init; }

    /// <summary>The hand on which the values were measured; open for the hand that the profile is drawn for.</summary>
    public Choice MeasuredOn { get; init; }

    /// <summary>A name from the shop's table of papers, a size as 500x700mm, or a roll as "roll 610mm"; open for what is usually in the printer.</summary>
    public Choice Paper { get; init; }

    /// <summary>How far neighbouring pages lie over each other; open for the shop's habit.</summary>
    public Choice Overlap { get; init; }

    /// <summary>A name from the shop's table of printers, or <c>none</c>; open for the one that it usually prints with, if any.</summary>
    public Choice Printer { get; init; }

    /// <summary><c>fewest</c>, <c>none</c> or degrees anticlockwise; open for the fewest pages.</summary>
    public Choice Turn { get; init; }

    /// <summary>How wide the lines to work to are; open for the shop's habit.</summary>
    public Choice Line { get; init; }

    /// <summary>A name from the shop's table of cutters, or <c>none</c>; open for the one that the shop usually cuts with, if any.</summary>
    public Choice Cutter { get; init; }

    /// <summary>Width of the cutter's slot, as somebody measured it for this job; open for what the shop's table says.</summary>
    public Choice Kerf { get; init; }

    /// <summary>Release and unit of the cut files, a name of <see cref="Drawing.DxfFormat.All"/>; open for what the shop's tables usually take.</summary>
    public Choice Dxf { get; init; }
}
