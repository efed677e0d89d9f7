using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A bent sheet seen on its edge, the face that is up above where it begins, at the left.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Sheet">The sheet's thickness and all, in mm.</param>
/// <param name="Bends">Its bends.</param>
public sealed record EdgeView(string Title, Region Sheet, ImmutableArray<EdgeViewBend> Bends)
{
    /// <summary>A section with every bend made.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="section">The section.</param>
    /// <param name="numbers">The place in the order of bending of each of its bends.</param>
    public static EdgeView Of(string title, Section section, ImmutableArray<int> numbers)
    {
        var folded = FoldedSection.Whole(section);
        return new(title, folded.Sheet, [.. folded.Bends.Select((b, i) => b with { Number = numbers[i] })]);
    }
}

/// <summary>A bend of a sheet that is seen on its edge.</summary>
/// <param name="Number">The place of the bend in the order of bending, from 1.</param>
/// <param name="At">On the outside of its round.</param>
/// <param name="Outwards">Away from the sheet there.</param>
public sealed record EdgeViewBend(int Number, Point At, Vector Outwards);
