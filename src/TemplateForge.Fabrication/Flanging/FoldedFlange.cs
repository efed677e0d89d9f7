using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>The folds of a flange seen on its edge, flat and folded. Across the base x is 0 on its outline and grows outwards.</summary>
internal sealed class FoldedFlange
{
    private readonly double _legOfBase;

    private FoldedFlange(FlatSection flat, ImmutableArray<Fold> folds, double legOfBase)
    {
        (Flat, Folds, _legOfBase) = (flat, folds, legOfBase);
        var thickness = flat.Section.Thickness;
        var panels = ImmutableArray.CreateBuilder<Panel>();
        var (at, direction) = (new Point(FirstTangent, -thickness / 2), Angle.Zero);
        for (var i = 0; i < folds.Length; i++)
        {
            var (bend, left) = (folds[i].Bend, folds[i].Way == BendWay.Up ? 1 : -1);
            var middle = bend.InsideRadius + thickness / 2;
            var axis = at + Vector.Polar(1, direction).Left * (middle * left);
            direction += bend.Angle * left;
            at = axis - Vector.Polar(1, direction).Left * (middle * left);
            var length = Math.Max(0, flat.Section.Straights[i + 1]);
            panels.Add(new(Flat.Bends[i].LastTangent - legOfBase, length, at, direction, thickness));
            at += Vector.Polar(length, direction);
        }
        Panels = panels.ToImmutable();
    }

    public FlatSection Flat { get; }
    public ImmutableArray<Fold> Folds { get; }

    /// <summary>What stays straight after each fold.</summary>
    public ImmutableArray<Panel> Panels { get; }

    /// <summary>Where on the flat the first bend begins; inside the outline.</summary>
    public double FirstTangent => Flat.Bends[0].FirstTangent - _legOfBase;

    /// <summary>Where on the flat the flange ends.</summary>
    public double FreeEdge => Flat.Length - _legOfBase;

    public double StartOf(int fold) => Flat.Bends[fold].FirstTangent - _legOfBase;

    public double MiddleOf(int fold) => Flat.Bends[fold].Middle - _legOfBase;

    public double EndOf(int fold) => Flat.Bends[fold].LastTangent - _legOfBase;

    /// <summary>A place along the flat section, on the flat from the outline.</summary>
    public double FromOutline(double alongFlat) => alongFlat - _legOfBase;

    /// <summary>Whether another flange runs in the same places up to a panel, so that the two meet all along.</summary>
    public bool IsLike(FoldedFlange other, int panel) => panel < other.Folds.Length
        && Enumerable.Range(0, panel + 1).All(i =>
            Folds[i].Bend == other.Folds[i].Bend && Folds[i].Way == other.Folds[i].Way && (i == panel || Folds[i].Leg == other.Folds[i].Leg));

    /// <summary>Whether its first panel goes as far from the base as a height.</summary>
    public bool Reaches(double height)
    {
        var (panel, way) = (Panels[0], Folds[0].Way == BendWay.Up ? 1 : -1);
        return height * way < Math.Max(panel.Face(panel.Length, up: true).Y * way, panel.Face(panel.Length, up: false).Y * way);
    }

    /// <param name="folds">One at least.</param>
    /// <param name="measured">To where the base is measured.</param>
    /// <param name="depthOfBase">How far the base reaches inwards from the edge, in mm.</param>
    /// <param name="folded">The flange.</param>
    /// <param name="tooShort">The first leg that its bends use up, from 1, the base being 1.</param>
    public static bool TryFold(ImmutableArray<Fold> folds, MeasuredBy measured, double depthOfBase, out FoldedFlange folded, out (int Leg, double Straight) tooShort)
    {
        var section = new Section(folds[0].Bend.Thickness, new(depthOfBase, measured), folds);
        tooShort = section.TooShort.Select(leg => (leg, section.Straights[leg - 1])).FirstOrDefault();
        folded = null!;
        if (!section.TryUnfold(out var flat)) return false;
        folded = new(flat, folds, depthOfBase);
        return true;
    }
}

/// <summary>A straight leg of a flange.</summary>
/// <param name="FlatStart">Where it begins on the flat, from the outline.</param>
/// <param name="Length">In mm.</param>
/// <param name="Start">Where the middle of the sheet begins when all is folded: x outwards from the outline, y up from the face that is up.</param>
/// <param name="Direction">The way it runs from there; 0 is outwards.</param>
/// <param name="Thickness">In mm.</param>
internal sealed record Panel(double FlatStart, double Length, Point Start, Angle Direction, double Thickness)
{
    public double FlatEnd => FlatStart + Length;

    /// <summary>A point of the middle of the sheet, so far along the panel.</summary>
    public Point Middle(double along) => Start + Vector.Polar(along, Direction);

    /// <summary>A point of the face that is up, or of the other, so far along the panel.</summary>
    public Point Face(double along, bool up) => Middle(along) + Vector.Polar(1, Direction).Left * (up ? Thickness / 2 : -Thickness / 2);

    /// <summary>How far outwards one of its faces, carried on, lies at a height; without end where it lies flat.</summary>
    public double FaceAt(double height, bool up)
    {
        var face = Face(0, up);
        return Math.Abs(Direction.Sin) < 1e-9 ? double.PositiveInfinity : face.X + (height - face.Y) * Direction.Cos / Direction.Sin;
    }
}
