using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>A flanged sheet laid flat: the blank, its bends, and what a foreman would say of its flanges.</summary>
public sealed class FlangedBlank
{
    // What the flat of two flanges may share: they touch where one goes on smoothly from the other.
    private const double Touching = 0.001;

    private readonly ImmutableArray<FlangeStrip> _strips;

    private FlangedBlank(FlangedSheet sheet, Region shape, ImmutableArray<FlangeStrip> strips) => (Sheet, Shape, _strips) = (sheet, shape, strips);

    public FlangedSheet Sheet { get; }

    /// <summary>The flat blank: the base, its flanges, the reliefs taken out.</summary>
    public Region Shape { get; }

    /// <summary>How far the free edges of flanges along arcs are stretched or shrunk.</summary>
    public ImmutableArray<FlangeStrain> Strains => [.. _strips.Where(s => !s.Edge.Side.IsLine).Select(FlangeStrain.Of)];

    /// <summary>Lays a sheet flat.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="blank">The blank.</param>
    /// <param name="faults">Why it cannot be laid flat.</param>
    public static bool TryLayFlat(FlangedSheet sheet, out FlangedBlank blank, out ImmutableArray<FlangeFault> faults)
    {
        blank = null!;
        if (!FlangeStrips.TryLay(sheet, out var strips, out var corners, out faults)) return false;
        var flanges = strips.Select(s => Combination.Union(s.Outlines.Select(Region.Of))).ToList();
        var reliefs = corners.SelectMany(c => c.Relief()).Concat(strips.SelectMany(ReliefCuts.Of)).Select(Region.Of);
        var flat = Combination.Union([sheet.Base.Subtract(corners.Select(c => c.CutAway()).Concat(strips.SelectMany(s => s.CutFromBase()).Select(Region.Of))), .. flanges]);
        faults = Overlaps(sheet, strips, flanges);
        if (!faults.IsEmpty) return false;
        // What a relief cuts loose is waste.
        var shape = flat.Subtract(reliefs).Parts().OrderByDescending(p => p.Area).Take(sheet.Base.Parts().Length);
        blank = new(sheet, Combination.Union(shape), strips);
        return true;
    }

    /// <summary>The straight bends, in the order of bending: what lies outermost is bent first, then as the flanges are listed.</summary>
    public ImmutableArray<BendLine> BendLines(Springback springback) =>
    [
        .. Numbered().Where(b => b.Strip.Edge.Side.IsLine).Select(b =>
        {
            var line = b.Strip.Beside(b.Fold, b.Strip.Flange.MiddleOf(b.Fold));
            var isOverFormer = _strips.Any(s => s.Run == b.Strip.Run && !s.Edge.Side.IsLine);
            return b.Strip.Flange.Flat.Bends[b.Fold].Line(b.Number, line.Start, line.End, springback) with { IsOverFormer = isOverFormer };
        }).Where(line => line.Length > Tolerance.Length),
    ];

    /// <summary>The bends along arcs; what runs on from a straight bend without a corner has its number.</summary>
    public ImmutableArray<CurvedBend> CurvedBends(Springback springback) =>
    [
        .. Numbered().Where(b => !b.Strip.Edge.Side.IsLine).Select(b =>
        {
            var (strip, fold) = (b.Strip, b.Strip.Flange.Folds[b.Fold]);
            return new CurvedBend(
                b.Number, Along(strip.Flange.MiddleOf(b.Fold)), Along(strip.Flange.StartOf(b.Fold)), Along(strip.Flange.EndOf(b.Fold)),
                fold.Bend.Angle, springback.Overbend(fold.Bend.Angle), fold.Way, fold.Bend.InsideRadius);

            Path Along(double outwards) => new(strip.Beside(b.Fold, outwards));
        }),
    ];

    /// <summary>Each kind of flange seen on its edge, with a stub of the base.</summary>
    public ImmutableArray<EdgeView> EdgeViews
    {
        get
        {
            var views = ImmutableArray.CreateBuilder<EdgeView>();
            foreach (var alike in Numbered().GroupBy(b => b.Strip.Wanted.Folds, FoldsInOrder.Instance))
            {
                var strip = alike.First().Strip;
                var stub = 10 + 2 * Sheet.Measured.SetbackOf(strip.Flange.Folds[0].Bend);
                var numbers = alike.Where(b => b.Strip == strip).OrderBy(b => b.Fold).Select(b => b.Number).ToImmutableArray();
                // The same folds on other edges, by their numbers too.
                var others = alike.Where(b => b.Strip.Run != strip.Run).GroupBy(b => b.Strip.Run)
                    .Select(run => string.Join(", ", run.OrderBy(b => b.Fold).Select(b => b.Number).Distinct().Select(n => n.ToString(CultureInfo.InvariantCulture)))).ToList();
                var title = (numbers.Length > 1 ? "bends " : "bend ") + string.Join(", ", numbers.Select(n => n.ToString(CultureInfo.InvariantCulture)))
                    + (others.Count > 0 ? $"; alike {string.Join("; ", others)}" : "");
                views.Add(EdgeView.Of(title, new(Sheet.Thickness, new(stub, Sheet.Measured), strip.Flange.Folds), numbers));
            }
            return views.ToImmutable();
        }
    }

    /// <summary>What a foreman would say of the flanges.</summary>
    /// <param name="material">The sheet's; one that is unstated has no limits.</param>
    /// <param name="brake">The shop's brake.</param>
    public ImmutableArray<Warning> Warnings(Material material, Brake brake) =>
    [
        .. Runs().SelectMany(run => OfRun(run, material, brake)),
        .. Strains.SelectMany(strain => strain.WarningsFor(material, Sheet.Thickness)),
    ];

    private static IEnumerable<Warning> OfRun(IGrouping<int, FlangeStrip> run, Material material, Brake brake)
    {
        // What runs round an arc is not bent on the brake.
        var length = run.All(s => s.Edge.Side.IsLine) ? run.Sum(s => s.Edge.Length) : 0;
        foreach (var alike in run.GroupBy(s => s.Flange.Folds, FoldsInOrder.Instance))
        {
            var strip = alike.MaxBy(s => s.Edge.Length)!;
            foreach (var warning in SectionWarnings.Of(strip.Flange.Flat, material, length, brake).Concat(SectionWarnings.Through(strip.Flange.Flat)))
            {
                var outwards = Math.Min(strip.Flange.FromOutline(warning.At.X), strip.Flange.FreeEdge);
                yield return warning with { At = strip.Edge.At(strip.Edge.Length / 2, outwards) };
            }
        }
    }

    // Bends that run on into each other without a corner are one, and are made together.
    private IEnumerable<IGrouping<int, FlangeStrip>> Runs() => _strips.GroupBy(s => s.Run);

    private IEnumerable<(FlangeStrip Strip, int Fold, int Number)> Numbered()
    {
        var runs = Runs().ToList();
        var inOrder = runs.SelectMany(run => Enumerable.Range(0, run.First().Flange.Folds.Length).Select(fold => (Run: run, Fold: fold)))
            .OrderByDescending(b => b.Fold).ThenBy(b => b.Run.First().Index).ToList();
        return inOrder.SelectMany((b, i) => b.Run.Select(strip => (strip, b.Fold, i + 1)));
    }

    private sealed class FoldsInOrder : IEqualityComparer<ImmutableArray<Fold>>
    {
        public static FoldsInOrder Instance { get; } = new();

        public bool Equals(ImmutableArray<Fold> x, ImmutableArray<Fold> y) => x.SequenceEqual(y);

        public int GetHashCode(ImmutableArray<Fold> obj) => obj.Length;
    }

    private static ImmutableArray<FlangeFault> Overlaps(FlangedSheet sheet, ImmutableArray<FlangeStrip> strips, List<Region> flanges)
    {
        var found = ImmutableArray.CreateBuilder<FlangeFault>();
        for (var i = 0; i < flanges.Count; i++)
        {
            var past = flanges[i].Subtract(sheet.Base);
            if (Math.Abs(past.Area + flanges[i].Intersect(sheet.Base).Area - strips[i].Outlines.Sum(o => o.Area)) > Touching)
                found.Add(strips[i].Fault(FlangeFaultKind.LiesOverItself));
            if (flanges[i].Intersect(sheet.Base).Area > strips[i].AreaInside + Touching) found.Add(strips[i].Fault(FlangeFaultKind.LiesOverTheBase));
            for (var j = 0; j < i; j++)
            {
                if (flanges[i].Bounds.Touches(flanges[j].Bounds) && flanges[i].Intersect(flanges[j]).Area > Touching)
                    found.Add(strips[i].Fault(FlangeFaultKind.LiesOverAnother));
            }
        }
        return found.ToImmutable();
    }
}
