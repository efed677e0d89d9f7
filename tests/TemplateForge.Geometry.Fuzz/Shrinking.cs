using System.Diagnostics;
using TemplateForge.Testing;
using Corner = (double X, double Y, double Bulge);

namespace TemplateForge.Geometry.Fuzz;

/// <summary>Makes a failing case smaller, as long as the same law fails.</summary>
internal static class Shrinking
{
    private static readonly TimeSpan _enough = TimeSpan.FromSeconds(5);

    public static bool Breaks(NamedLaw law, Trial trial, out string why)
    {
        try
        {
            law.Check(trial);
            why = "";
            return false;
        }
#pragma warning disable CA1031 // whatever a law throws is the finding
        catch (Exception trouble)
#pragma warning restore CA1031
        {
            // What the law says; or where the engine gave up.
            why = trouble is InvalidOperationException ? trouble.Message : trouble.ToString();
            return true;
        }
    }

    /// <summary>Tries every smaller case, takes the first that fails, and begins again from it.</summary>
    public static Trial Smallest(NamedLaw law, Trial trial, Action alive)
    {
        var clock = Stopwatch.StartNew();
        for (var again = true; again && clock.Elapsed < _enough;)
        {
            again = false;
            foreach (var make in Smaller(trial))
            {
                if (clock.Elapsed > _enough) break;
                alive();
                if (!TryMake(make, out var smaller) || Weight(smaller).CompareTo(Weight(trial)) >= 0 || !Breaks(law, smaller, out _)) continue;
                (trial, again) = (smaller, true);
                break;
            }
        }
        return trial;
    }

    /// <summary>A case that is none, as its contours lost a side or all, is no smaller case.</summary>
    private static bool TryMake(Func<Trial> make, out Trial made)
    {
        try
        {
            made = make();
            return made.Corners.Length > 0 && made.Corners.All(s => s.Length > 0);
        }
        catch (ArgumentException)
        {
            made = new Trial(0, 0);
            return false;
        }
    }

    /// <summary>Fewer corners first, then fewer bends, then fewer digits.</summary>
    private static (int Corners, int Bends, int Digits) Weight(Trial trial)
    {
        var corners = trial.Corners.SelectMany(s => s).SelectMany(c => c).ToArray();
        var digits = corners.Sum(c => Digits(c.X) + Digits(c.Y) + Digits(c.Bulge)) + Digits(trial.First) + Digits(trial.Second);
        return (corners.Length + trial.Corners.Length, corners.Count(c => c.Bulge != 0), digits);

        static int Digits(double value) => FormattableString.Invariant($"{value}").Length;
    }

    private static IEnumerable<Func<Trial>> Smaller(Trial trial)
    {
        var shapes = trial.Corners;
        for (var s = 0; s < shapes.Length; s++)
        {
            var shape = s;
            if (shapes.Length > 1) yield return () => With(trial, [.. shapes[..shape], .. shapes[(shape + 1)..]]);
        }
        foreach (var (shape, contour) in Contours(shapes))
            yield return () => With(trial, Changed(shapes, shape, [.. shapes[shape][..contour], .. shapes[shape][(contour + 1)..]]));
        foreach (var (shape, contour, corner) in Corners(shapes))
        {
            var old = shapes[shape][contour];
            yield return () => With(trial, Changed(shapes, shape, contour, [.. old[..corner], .. old[(corner + 1)..]]));
        }
        foreach (var (shape, contour, corner) in Corners(shapes))
        {
            if (shapes[shape][contour][corner].Bulge != 0)
                yield return () => With(trial, Changed(shapes, shape, contour, corner, c => c with { Bulge = 0 }));
        }
        var origin = shapes[0][0][0];
        yield return () => Every(trial, c => (c.X - origin.X, c.Y - origin.Y, c.Bulge));
        foreach (var step in (double[])[10, 5, 1, 0.5, 0.1, 0.01, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8])
        {
            yield return () => new Trial(Rounded(trial.First, step), Math.Abs(Rounded(trial.Second, step)), shapes);
            yield return () => Every(trial, c => (Rounded(c.X, step), Rounded(c.Y, step), c.Bulge));
            yield return () => Every(trial, c => c with { Bulge = Rounded(c.Bulge, step / 10) });
            foreach (var (shape, contour, corner) in Corners(shapes))
            {
                yield return () => With(trial, Changed(shapes, shape, contour, corner, c => c with { X = Rounded(c.X, step) }));
                yield return () => With(trial, Changed(shapes, shape, contour, corner, c => c with { Y = Rounded(c.Y, step) }));
                yield return () => With(trial, Changed(shapes, shape, contour, corner, c => c with { Bulge = Rounded(c.Bulge, step / 10) }));
            }
        }
    }

    // Dividing by a whole number keeps 0.1 as 0.1.
    private static double Rounded(double value, double step) =>
        step >= 1 ? Math.Round(value / step) * step : Math.Round(value * Math.Round(1 / step)) / Math.Round(1 / step);

    private static Trial With(Trial trial, Corner[][][] shapes) => new(trial.First, Math.Abs(trial.Second), shapes);

    private static Trial Every(Trial trial, Func<Corner, Corner> change) =>
        With(trial, [.. trial.Corners.Select(s => s.Select(c => c.Select(change).ToArray()).ToArray())]);

    private static Corner[][][] Changed(Corner[][][] shapes, int shape, Corner[][] by) => [.. shapes[..shape], by, .. shapes[(shape + 1)..]];

    private static Corner[][][] Changed(Corner[][][] shapes, int shape, int contour, Corner[] by) =>
        Changed(shapes, shape, [.. shapes[shape][..contour], by, .. shapes[shape][(contour + 1)..]]);

    private static Corner[][][] Changed(Corner[][][] shapes, int shape, int contour, int corner, Func<Corner, Corner> change)
    {
        var old = shapes[shape][contour];
        return Changed(shapes, shape, contour, [.. old[..corner], change(old[corner]), .. old[(corner + 1)..]]);
    }

    private static IEnumerable<(int Shape, int Contour)> Contours(Corner[][][] shapes) =>
        from shape in Enumerable.Range(0, shapes.Length)
        from contour in Enumerable.Range(0, shapes[shape].Length)
        select (shape, contour);

    private static IEnumerable<(int Shape, int Contour, int Corner)> Corners(Corner[][][] shapes) =>
        from at in Contours(shapes)
        from corner in Enumerable.Range(0, shapes[at.Shape][at.Contour].Length)
        select (at.Shape, at.Contour, corner);
}
