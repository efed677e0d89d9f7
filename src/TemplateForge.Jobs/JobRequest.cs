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

    /// <summary>A name from the shop's table of papers; open for what is usually in the printer.</summary>
    public Choice Paper { get; init; }

    /// <summary>A name from the shop's table of cutters, or <c>none</c>; open for the one that the shop usually cuts with, if any.</summary>
    public Choice Cutter { get; init; }

    /// <summary>Width of the cutter's slot, as somebody measured it for this job; open for what the shop's table says.</summary>
    public Choice Kerf { get; init; }

    /// <summary>Release and unit of the cut files, a name of <see cref="Drawing.DxfFormat.All"/>; open for what the shop's tables usually take.</summary>
    public Choice Dxf { get; init; }
}
