using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A section laid flat: how long the blank is, and where its bends lie, from the edge of the first leg.</summary>
public sealed record FlatSection
{
    internal FlatSection(Section section)
    {
        Section = section;
        var bends = ImmutableArray.CreateBuilder<FlatBend>();
        var along = Math.Max(0, section.Straights[0]);
        for (var i = 0; i < section.Folds.Length; i++)
        {
            var fold = section.Folds[i];
            bends.Add(new(fold.Bend, fold.Way, along, along + fold.Bend.Allowance));
            along += fold.Bend.Allowance + Math.Max(0, section.Straights[i + 1]);
        }
        (Bends, Length) = (bends.ToImmutable(), along);
    }

    /// <summary>Of a section that cannot be laid flat.</summary>
    public static FlatSection None { get; } = new(new Section(1, new(0)));

    public Section Section { get; }

    /// <summary>Length of the blank across its bends, in mm.</summary>
    public double Length { get; }

    /// <summary>In the order of the section.</summary>
    public ImmutableArray<FlatBend> Bends { get; }
}

/// <summary>A bend on the flat section; places in mm from the edge of the first leg.</summary>
/// <param name="Bend">The bend.</param>
/// <param name="Way">Up is towards the marked face, which is up.</param>
/// <param name="FirstTangent">Where what is bent begins.</param>
/// <param name="LastTangent">Where it ends.</param>
public sealed record FlatBend(Bend Bend, BendWay Way, double FirstTangent, double LastTangent)
{
    public double Middle => (FirstTangent + LastTangent) / 2;

    /// <summary>The line that stands under the front of a nose bar that clamps one side of the bend.</summary>
    /// <param name="clamped">The side that lies on the table.</param>
    /// <remarks>One inside radius in from the tangent line under the bar: from memory, FAA-H-8083-31, volume 1, chapter 4.</remarks>
    public double SightLine(ClampedSide clamped) =>
        clamped == ClampedSide.First ? FirstTangent + Bend.InsideRadius : LastTangent - Bend.InsideRadius;

    /// <summary>The bend as it is drawn on a blank.</summary>
    /// <param name="number">Its place in the order of bending, from 1.</param>
    /// <param name="from">One end of the middle line.</param>
    /// <param name="to">The other.</param>
    /// <param name="springback">How far the sheet comes back.</param>
    public BendLine Line(int number, Point from, Point to, Springback springback) =>
        new(number, from, to, Bend.Angle, springback.Overbend(Bend.Angle), Way, Bend.InsideRadius, Bend.Allowance);
}

/// <summary>Which side of a bend lies under the beam.</summary>
public enum ClampedSide
{
    /// <summary>The side of the section's first leg.</summary>
    First,

    /// <summary>The side of its last leg.</summary>
    Last,
}
