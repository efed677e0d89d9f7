using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>An outline that a transition joins, and its place in space.</summary>
internal sealed record TransitionEndRecipe
{
    // A corner that is moved outwards stays a corner, unless it is a needle.
    private const double SharpestCorner = 4;

    // Steeper ends than this lie on their side or upside down; which way they are gone along is then not what one would think.
    private const double SteepestTilt = 120;

    public required Place Place { get; init; }
    public required ShapeName Outline { get; init; }
    public required bool IsPath { get; init; }
    public required string Title { get; init; }
    public required Term Height { get; init; }
    public required (Term Along, Term Up) Shift { get; init; }
    public required Term Tilt { get; init; }
    public required Term Towards { get; init; }

    /// <param name="from">The values that are put in.</param>
    /// <param name="outwards">From the face that is measured to the middle of the sheet, in mm, above 0 outwards.</param>
    /// <param name="end">The end, along the middle of the sheet, gone along to the left round what is inside.</param>
    public bool TryMake(Evaluation from, double outwards, [MaybeNullWhen(false)] out TransitionEnd end)
    {
        end = null;
        ImmutableArray<Segment> outline = [];
        if (!((IsPath ? TryPath(from, outwards, out outline) : TryShape(from, outwards, out outline))
            & from.TryLength(Height, out var height)
            & from.TryLength(Shift.Along, out var along)
            & from.TryLength(Shift.Up, out var up)
            & from.TryWithin(Tilt, -SteepestTilt, SteepestTilt, out var tilt)
            & from.TryAngle(Towards, out var towards))) return false;
        end = new TransitionEnd(outline) { Title = Title, Height = height, Shift = new(along, up), Tilt = Angle.FromDegrees(tilt), Towards = towards };
        return true;
    }

    private bool TryShape(Evaluation from, double outwards, out ImmutableArray<Segment> outline)
    {
        outline = [];
        if (!from.TryOutline(Outline, out var contour)) return false;
        var moved = Region.Of(contour).Offset(outwards, CornerStyle.Mitred(SharpestCorner));
        if (moved.Contours.Length != 1) return from.Refuse(Wordings.NothingLeftOfOffset(Outline.Place, Outline.Name, outwards));
        outline = moved.Contours[0].Segments;
        return true;
    }

    // What the chord from its end to its start closes off is inside.
    private bool TryPath(Evaluation from, double outwards, out ImmutableArray<Segment> outline)
    {
        outline = [];
        if (!from.TryPath(Outline.Name, Outline.Place, out var path)) return false;
        if (path.Start.DistanceTo(path.End) < Tolerance.Length) return from.Refuse(Wordings.PathCloses(Outline.Place, Outline.Name));
        if (new Contour([.. path.Segments, Segment.Line(path.End, path.Start)]).SignedArea < 0) path = path.Reversed();
        ImmutableArray<Path> moved = Math.Abs(outwards) <= Tolerance.Length ? [path] : outwards > 0 ? path.OffsetToRight(outwards) : path.OffsetToLeft(-outwards);
        if (moved.Length != 1) return from.Refuse(Wordings.NothingLeftOfOffset(Outline.Place, Outline.Name, outwards));
        outline = moved[0].Segments;
        return true;
    }
}
