using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A bent sheet seen on its edge: a leg, then a bend and a leg as often as wanted, hems and joggles among them.</summary>
/// <remarks>
/// <code>
///     first leg    fold 1      fold 2
///     ----------.            .--------      fold 1 turns up, fold 2 down, as one looks at the marked face from above
///                |  leg 2    |
/// </code>
/// </remarks>
public sealed record Section
{
    /// <exception cref="ArgumentException">The folds are of different thicknesses.</exception>
    public Section(double thickness, Leg firstLeg, params IEnumerable<Fold> folds)
    {
        if (!(thickness > 0)) throw new ArgumentOutOfRangeException(nameof(thickness), thickness, "A sheet is thicker than 0.");
        (Thickness, FirstLeg, Folds) = (thickness, firstLeg, [.. folds]);
        if (Folds.Any(f => f.Bend.Thickness != thickness))
            throw new ArgumentException(FormattableString.Invariant($"Every bend is of the section's sheet, {thickness} mm."), nameof(folds));
        Straights = [.. Enumerable.Range(0, Folds.Length + 1).Select(Straight)];
    }

    /// <summary>In mm.</summary>
    public double Thickness { get; }
    public Leg FirstLeg { get; }
    public ImmutableArray<Fold> Folds { get; }

    /// <summary>What of each leg stays flat, between tangent lines, in mm; below 0 where the bends leave none.</summary>
    public ImmutableArray<double> Straights { get; }

    /// <summary>Legs, counted from 1, that are shorter than their bends need.</summary>
    public ImmutableArray<int> TooShort => [.. Straights.Select((s, i) => (s, i)).Where(l => l.s < -Tolerance.Length).Select(l => l.i + 1)];

    /// <summary>The section laid flat; it cannot be where a leg is <see cref="TooShort"/>.</summary>
    public bool TryUnfold(out FlatSection flat)
    {
        var possible = TooShort.IsEmpty;
        flat = possible ? new FlatSection(this) : FlatSection.None;
        return possible;
    }

    private double Straight(int leg)
    {
        var (length, by) = leg == 0 ? FirstLeg : Folds[leg - 1].Leg;
        if (leg > 0) length -= by.SetbackOf(Folds[leg - 1].Bend);
        if (leg < Folds.Length) length -= by.SetbackOf(Folds[leg].Bend);
        return Math.Abs(length) < Tolerance.Length ? 0 : length;
    }
}

/// <summary>A flat stretch of a section, and how its length is measured.</summary>
/// <param name="Length">In mm.</param>
/// <param name="By">To where.</param>
public readonly record struct Leg(double Length, MeasuredBy By = MeasuredBy.Outside);

/// <summary>A bend, and the leg beyond it.</summary>
/// <param name="Bend">The bend.</param>
/// <param name="Way">Towards the marked face or away from it.</param>
/// <param name="Leg">The leg that follows.</param>
public sealed record Fold(Bend Bend, BendWay Way, Leg Leg);
