using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The section of the other face of a sheet: a line beside each line, an arc about the same centre beside each arc.</summary>
internal static class OtherFace
{
    /// <summary>How far, in mm, the ends of neighbours may part in a corner too slight to matter.</summary>
    private const double Slight = 0.002;

    /// <summary>The section at a distance to the left, square across the sheet, segment by segment.</summary>
    /// <param name="section">The section of one face.</param>
    /// <param name="left">The thickness; below 0 to the right.</param>
    /// <param name="isExact">Whether corners and rounds that leave nothing are refused; where the other face is only drawn, they are passed over.</param>
    /// <param name="other">The section of the other face.</param>
    /// <param name="fault">What is wrong.</param>
    public static bool TryBeside(
        ImmutableArray<Segment> section, double left, bool isExact, out ImmutableArray<Segment> other, [MaybeNullWhen(true)] out CurvedPanelFault fault)
    {
        (other, fault) = (section, null);
        var thickness = Math.Abs(left);
        foreach (var s in section.Where(s => !s.IsLine))
        {
            // The other face of an arc that turns towards it is the smaller.
            if (s.Bulge > 0 != left > 0 || s.Radius > thickness + Tolerance.Length) continue;
            if (!isExact) return true;
            fault = new(CurvedPanelFaultKind.RounderThanTheSheet, s.At(0.5).X, thickness);
            return false;
        }
        var joints = new Point[section.Length + 1];
        joints[0] = section[0].Start + section[0].StartDirection.Left * left;
        joints[^1] = section[^1].End + section[^1].EndDirection.Left * left;
        for (var i = 1; i < section.Length; i++)
        {
            var (before, after) = (section[i - 1].EndDirection.Left, section[i].StartDirection.Left);
            if ((before - after).Length * thickness > Slight)
            {
                if (!isExact) return true;
                fault = CurvedPanelFault.At(CurvedPanelFaultKind.SharpCorner, section[i].Start);
                return false;
            }
            joints[i] = section[i].Start + (before + after) * (left / 2);
        }
        other = [.. section.Select((s, i) => Segment.Arc(joints[i], joints[i + 1], s.Bulge))];
        return true;
    }
}
