using System.Collections.Immutable;
using TemplateForge.Geometry;

namespace TemplateForge.Fabrication;

/// <summary>In which order the bends of a section are made on a folding brake.</summary>
/// <remarks>
/// A model of the section seen from its end, with these assumptions (docs/sheet-metal.md, "Order of bending"): every bend is made on the
/// brake from flat to its overbend in one go, upwards, the sheet turned over for a bend the other way; what is bent already keeps its
/// shape; table, leaf and nose are the ones of <see cref="Brake"/>, and nothing else is in the way; the swing is looked at in
/// <see cref="Stops"/> places. Past the brake's steepest angle a bend is finished off the brake.
/// </remarks>
public sealed record BendingOrder
{
    private const int Stops = 6;

    private BendingOrder(ImmutableArray<BendStep> steps, ImmutableArray<Foul> fouls) => (Steps, Fouls) = (steps, fouls);

    /// <summary>The bends in the order in which they are made.</summary>
    public ImmutableArray<BendStep> Steps { get; }

    /// <summary>What is in the way in that order; none in an order that can be done.</summary>
    public ImmutableArray<Foul> Fouls { get; }

    public bool CanBeDone => Fouls.IsEmpty;

    /// <summary>The first order found that can be done, or the one from the outside in with what fouls in it.</summary>
    /// <remarks>Short legs are turned first and the long side lies on the table, as far as that can be done.</remarks>
    public static BendingOrder Of(FlatSection flat, Brake brake, Springback springback)
    {
        var trial = new Trial(flat, brake, springback);
        var steps = new List<BendStep>();
        if (trial.Find(steps)) return new([.. steps], []);
        var fouls = ImmutableArray.CreateBuilder<Foul>();
        while (steps.Count < flat.Bends.Length)
        {
            var step = trial.Choices(steps).MinBy(s => trial.FoulsOf(steps, s).Count())!;
            fouls.AddRange(trial.FoulsOf(steps, step));
            steps.Add(step);
        }
        return new([.. steps], fouls.ToImmutable());
    }

    /// <summary>Searches step by step; what has been bent already decides what can follow, so a state is looked at once.</summary>
    private sealed class Trial(FlatSection flat, Brake brake, Springback springback)
    {
        private readonly HashSet<string> _hopeless = [];

        public bool Find(List<BendStep> steps)
        {
            if (steps.Count == flat.Bends.Length) return true;
            var state = string.Join(',', steps.Select(s => s.Bend).Order());
            if (_hopeless.Contains(state)) return false;
            foreach (var step in Choices(steps).Where(s => !FoulsOf(steps, s).Any()))
            {
                steps.Add(step);
                if (Find(steps)) return true;
                steps.RemoveAt(steps.Count - 1);
            }
            _hopeless.Add(state);
            return false;
        }

        // What swings is as short as can be.
        public IEnumerable<BendStep> Choices(List<BendStep> made) => Enumerable.Range(1, flat.Bends.Length)
            .Where(bend => made.TrueForAll(s => s.Bend != bend))
            .SelectMany(bend => new[] { Step(bend, ClampedSide.First), Step(bend, ClampedSide.Last) })
            .OrderBy(Swinging);

        public IEnumerable<Foul> FoulsOf(List<BendStep> made, BendStep step)
        {
            var index = step.Bend - 1;
            var section = flat.Section;
            var angles = section.Folds
                .Select((f, i) => made.Exists(s => s.Bend == i + 1) ? f.Bend.Angle : Angle.Zero)
                .ToArray();
            bool OnTable(int leg) => step.Clamped == ClampedSide.First ? leg <= step.Bend : leg > step.Bend;
            var found = new HashSet<(int, string)>();
            void Look(Angle at)
            {
                angles[index] = at;
                var sheet = FoldedSection.Clamped(section, index, step.Clamped, angles);
                foreach (var leg in Enumerable.Range(1, section.Straights.Length))
                {
                    if (sheet.Meets(brake.Nose(section.Thickness), l => l == leg)) found.Add((leg, "the nose"));
                    if (OnTable(leg) && sheet.Meets(brake.Table, l => l == leg)) found.Add((leg, "the table"));
                    if (at == Angle.Zero && !OnTable(leg) && sheet.Meets(brake.Leaf, l => l == leg)) found.Add((leg, "the leaf"));
                }
                foreach (var (one, other) in sheet.Meetings()) found.Add((other, FormattableString.Invariant($"leg {one}")));
            }

            var bend = section.Folds[index].Bend;
            var swing = springback.Overbend(bend.Angle);
            if (swing > brake.Steepest) swing = brake.Steepest;
            for (var stop = 0; stop < Stops; stop++) Look(swing * (stop / (Stops - 1.0)));
            return found.Order().Select(f => new Foul(step.Bend, f.Item1, f.Item2));
        }

        private BendStep Step(int bend, ClampedSide clamped) =>
            new(bend, clamped, TurnedOver: flat.Bends[bend - 1].Way == BendWay.Down, flat.Bends[bend - 1].SightLine(clamped));

        private double Swinging(BendStep step)
        {
            var bend = flat.Bends[step.Bend - 1];
            return step.Clamped == ClampedSide.First ? flat.Length - bend.LastTangent : bend.FirstTangent;
        }
    }
}

/// <summary>One bend as it is made.</summary>
/// <param name="Bend">Which bend of the section, from 1.</param>
/// <param name="Clamped">The side that lies on the table.</param>
/// <param name="TurnedOver">Whether the marked face lies on the table.</param>
/// <param name="SightLine">Where on the flat section the front of the nose stands, in mm from the edge of the first leg.</param>
public sealed record BendStep(int Bend, ClampedSide Clamped, bool TurnedOver, double SightLine);

/// <summary>Something in the way while a bend is made.</summary>
/// <param name="Bend">Which bend of the section, from 1.</param>
/// <param name="Leg">Which leg fouls, from 1.</param>
/// <param name="With">With what: the nose, the table, the leaf, leg 2.</param>
public sealed record Foul(int Bend, int Leg, string With);
