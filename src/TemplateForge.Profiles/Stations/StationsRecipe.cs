using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>How a row of stations is made.</summary>
internal abstract record StationsRecipe(Place Place, LineTerm Line)
{
    public bool TryMake(Evaluation from, [MaybeNullWhen(false)] out StationRow row)
    {
        row = null;
        if (!Line.TryFind(from, out var run) || !TryDistances(from, run, out var distances, out var pitch)) return false;
        row = new([.. distances.Select(d => new Station(run.At(d), run.WayAt(d)))], pitch);
        return true;
    }

    protected abstract bool TryDistances(Evaluation from, Run run, out ImmutableArray<double> distances, out double pitch);
}

/// <summary>Stations at given distances from the start and from the end.</summary>
internal sealed record ListedStations(Place Place, LineTerm Line, ImmutableArray<Term> At, ImmutableArray<Term> FromEnd) : StationsRecipe(Place, Line)
{
    protected override bool TryDistances(Evaluation from, Run run, out ImmutableArray<double> distances, out double pitch)
    {
        pitch = 0;
        var (found, sound) = (ImmutableArray.CreateBuilder<double>(), true);
        foreach (var (term, isFromEnd) in At.Select(t => (t, false)).Concat(FromEnd.Select(t => (t, true))))
        {
            if (!from.TryLength(term, out var distance)) sound = false;
            else if (!run.Reaches(distance)) sound = from.Refuse(Wordings.PastTheEnd(term.Place, distance, run.Length));
            else found.Add(isFromEnd ? run.Length - distance : distance);
        }
        distances = [.. found.Order()];
        return sound;
    }
}

/// <summary>How many stations there are, evenly apart.</summary>
internal enum Spacing
{
    /// <summary>As many as are asked for.</summary>
    Count,

    /// <summary>As many as come nearest to a pitch.</summary>
    Nearest,

    /// <summary>As many as keep neighbours no more than a distance apart.</summary>
    MostApart,
}

/// <summary>Stations evenly along a line from end to end, or from a margin to a margin; evenly round an outline.</summary>
internal sealed record EvenStations(Place Place, LineTerm Line, Spacing Spacing, Term Size, Term Margin) : StationsRecipe(Place, Line)
{
    protected override bool TryDistances(Evaluation from, Run run, out ImmutableArray<double> distances, out double pitch)
    {
        (distances, pitch) = ([], 0);
        if (!from.TryLength(Margin, out var margin)) return false;
        var length = run.Length - 2 * margin;
        if (margin < 0 || length <= Tolerance.Length) return from.Refuse(Wordings.MarginTooLarge(Margin.Place, margin, run.Length));
        if (!TryCount(from, run, length, out var count)) return false;
        if (run.IsClosed) pitch = length / count;
        else if (count > 1) pitch = length / (count - 1);
        var step = pitch;
        // One station alone stands in the middle.
        distances = count == 1 && !run.IsClosed
            ? [run.Length / 2]
            : [.. Enumerable.Range(0, count).Select(i => margin + i * step)];
        return true;
    }

    private bool TryCount(Evaluation from, Run run, double length, out int count)
    {
        count = 0;
        if (Spacing == Spacing.Count) return from.TryCount(Size, Evaluation.MostRepeats, out count);
        if (!from.TrySize(Size, out var pitch)) return false;
        if (length / pitch > Evaluation.MostRepeats) return from.Refuse(Wordings.TooManyRepeats(Size.Place, length / pitch));
        var gaps = Spacing == Spacing.MostApart
            ? (int)Math.Ceiling(length / pitch - 1e-9)
            : (int)Math.Round(length / pitch, MidpointRounding.AwayFromZero);
        count = Math.Max(1, gaps) + (run.IsClosed ? 0 : 1);
        return count <= Evaluation.MostRepeats || from.Refuse(Wordings.TooManyRepeats(Size.Place, count));
    }
}

/// <summary>A row of stations, called by its name.</summary>
internal sealed record StationsName(string Name, Place Place);

/// <summary>A place along a line, and the way the line runs there as a vector of length 1.</summary>
internal readonly record struct Station(Point At, Vector Way);

/// <summary>Places along a line in their order.</summary>
/// <param name="Stations">One or more.</param>
/// <param name="Pitch">The distance between neighbours along the line in mm; 0 where it is not the same for all.</param>
internal sealed record StationRow(ImmutableArray<Station> Stations, double Pitch);
