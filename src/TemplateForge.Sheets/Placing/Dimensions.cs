using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>Puts the distances to check, and those that are only shown, on a drawing as dimension lines, where they cross least and their figures stand free.</summary>
/// <remarks>
/// A dimension line may run on either side of what it measures. Each place costs: the length of its extension lines, what the
/// line runs across, and how far its figures must move from the middle to stand free. The cheapest is taken. Short ones are
/// placed first, so that they lie nearest to the piece.
/// </remarks>
internal static class Dimensions
{
    public const double TextHeight = 2.5;

    private const double Nearest = 7;
    private const double Step = 1;
    private const double TextAbove = 0.9;
    private const double TextClear = 0.7;
    private const double ExtensionCost = 0.35;
    private const double CrossedCost = 2.5;
    private const double AsideCost = 0.1;
    private const double ThroughWordsCost = 200;
    private const double NoRoomCost = 1000;

    /// <param name="board">The drawing.</param>
    /// <param name="free">What is taken on it; the dimensions are taken too, afterwards.</param>
    /// <param name="piece">Whose distances they are.</param>
    /// <param name="firstNumber">The number of the first of them in the lists.</param>
    /// <param name="unit">How many mm of the piece are one mm on the paper.</param>
    /// <param name="turn">How far the piece was turned for the drawing.</param>
    /// <param name="asItWas">The piece before that: its distances are stated.</param>
    public static void PutOn(Board board, FreePlace free, Piece piece, int firstNumber, double unit, Angle turn, Piece asItWas)
    {
        var checks = piece.Checks.Select((check, i) => (
            Shown: new ShownDistance(Wording.NumberedDistance(firstNumber + i, asItWas.Checks[i]), check.From, check.To, check.Along),
            asItWas.Checks[i].Distance, Order: i));
        var others = piece.Dimensions.Select((shown, i) => (
            Shown: shown.Text.Length > 0 ? shown : shown with { Text = Wording.Distance(asItWas.Dimensions[i]) },
            asItWas.Dimensions[i].Distance, Order: piece.Checks.Length + i));
        foreach (var (shown, _, _) in checks.Concat(others).Where(c => c.Distance > Tolerance.Length).OrderBy(c => c.Distance).ThenBy(c => c.Order))
        {
            var (marks, heads) = Best(free, piece, shown, shown.Text, unit, turn);
            board.Add(LineKinds.Dimension, marks.Where(m => m is not Lettering));
            board.Add(LineKinds.Note, marks.Where(m => m is Lettering));
            free.Take(marks.Where(m => m is not Lettering), 0.8 * unit);
            foreach (var words in marks.OfType<Lettering>()) free.TakeWords(words.Bounds.Grown(0.8 * unit));
            foreach (var head in heads) free.TakeWords(head);
        }
    }

    private static (List<Mark> Marks, List<Box> Heads) Best(FreePlace free, Piece piece, ShownDistance shown, string text, double unit, Angle turn)
    {
        var along = shown.Along switch
        {
            CheckDirection.Across => Vector.Polar(1, turn),
            CheckDirection.Up => Vector.Polar(1, turn + Angle.QuarterTurn),
            _ => (shown.To - shown.From).Unit,
        };
        var aside = (shown.To - shown.From).Dot(along.Left);
        var bounds = piece.Shape.Bounds;
        var farthest = Math.Max(bounds.Width, bounds.Height) + 60 * unit;
        var width = Alphabet.Width(text, TextHeight * unit);
        var (least, best) = (double.PositiveInfinity, (Marks: new List<Mark>(), Heads: new List<Box>()));
        for (var away = Nearest * unit; away < farthest && away * ExtensionCost / unit < least; away += Step * unit)
        {
            // Below a level dimension and to the right of an upright one come first: nearest to where they are read from.
            foreach (var offset in (double[])[Math.Min(0, aside) - away, Math.Max(0, aside) + away])
            {
                var candidate = new Candidate(free, piece, shown, along, offset, text, width, unit);
                var cost = candidate.Cost(aside, least);
                if (cost < least - 1e-9) (least, best) = (cost, (candidate.Marks(), candidate.Heads()));
            }
        }
        return best;
    }

    /// <summary>One place for a dimension line.</summary>
    private sealed record Candidate(
        FreePlace Free, Piece Piece, ShownDistance Shown, Vector Along, double Offset, string Text, double Width, double Unit)
    {
        private double Height => TextHeight * Unit;
        private Point Start => Shown.From + Along.Left * Offset;
        private Point End => Start + Along * (Shown.To - Shown.From).Dot(Along);
        private double Length => Start.DistanceTo(End);
        private bool HasRoomInside => Length >= Width + 7 * Unit;

        // Figures read from below or from the right.
        private Vector Reads => Along.X > 1e-9 || (Math.Abs(Along.X) <= 1e-9 && Along.Y > 0) ? Along : -Along;
        private Point Left => (End - Start).Dot(Reads) >= 0 ? Start : End;
        private Point Right => (End - Start).Dot(Reads) >= 0 ? End : Start;

        // As a dimension line that is too short for its arrows or figures has them: past its ends.
        private bool ArrowsAreOutside => Length < 8 * Unit || !HasRoomInside;
        private bool FiguresAreOutside => !HasRoomInside && Length < Width + Unit;
        private double Tail => ArrowsAreOutside ? 5 * Unit : 0;
        private double Shelf => Tail + (FiguresAreOutside ? Width : 0);

        /// <summary>What the place costs; once that is more than the least so far, no more is looked at.</summary>
        public double Cost(double aside, double least)
        {
            var cost = ExtensionCost * (Math.Abs(Offset) + Math.Abs(Offset - aside)) / Unit;
            if (cost < least) cost += Through(Left - Reads * Tail, Right + Reads * Shelf) + Through(Shown.From, PastLine(Shown.From, Start)) + Through(Shown.To, PastLine(Shown.To, End));
            if (cost < least) cost += CrossedCost * Crossed();
            if (cost < least) cost += ExtensionCrosses(Shown.From, Start);
            if (cost < least) cost += ExtensionCrosses(Shown.To, End);
            if (cost < least) cost += TextCost();
            return cost;
        }

        public List<Mark> Marks()
        {
            // A dimension line is made for paper: it is drawn at the paper's size and brought to the piece's.
            var toPaper = Placement.Scaled(1 / Unit, Point.Origin);
            var (from, fromOffset) = ClearOfDatum(Shown.From, Offset);
            var (to, _) = ClearOfDatum(Shown.To, Offset - (Shown.To - Shown.From).Dot(Along.Left));
            var text = HasRoomInside ? "" : Text;
            var marks = DimensionLine.Of(toPaper.Of(from), toPaper.Of(to), Along, fromOffset / Unit, text, TextHeight);
            var board = new Board();
            var onPaper = new Board();
            onPaper.Add(LineKinds.Dimension, marks.Where(m => m is not Lettering { Text: "" }));
            board.Add(onPaper, Placement.Scaled(Unit, Point.Origin));
            if (HasRoomInside)
            {
                TryFindMiddleOfText(out var middle);
                board.Add(LineKinds.Dimension, new Lettering(Text, middle + Reads.Left * (TextAbove * Unit), Height, Reads.Direction, Anchor.BaseMiddle));
            }
            return [.. board.Marks];
        }

        // Extension lines begin outside a datum's cross, not in its open middle.
        private (Point Point, double Offset) ClearOfDatum(Point point, double offset)
        {
            var reach = Piece.Datums.Where(d => d.At.DistanceTo(point) < 0.01).Select(d => PieceLines.Reach(d, Unit)).FirstOrDefault();
            var shift = Math.Sign(offset) * Math.Min(reach, Math.Abs(offset));
            return (point + Along.Left * shift, offset - shift);
        }

        private double Crossed()
        {
            var steps = (int)Math.Ceiling(Length / Unit);
            var (crossed, start, along) = (0, Start, End - Start);
            for (var i = 0; i <= steps; i++)
                if (!Free.IsFree(Around(start + along * ((double)i / steps), 1.2))) crossed++;
            return crossed;
        }

        // What an extension line runs over once it has left its own place.
        private double ExtensionCrosses(Point from, Point onLine)
        {
            const double cost = 0.3;
            var (length, away) = (from.DistanceTo(onLine) / Unit, (onLine - from).Unit * Unit);
            var crossed = 0;
            for (var i = 3.0; i < length - 1; i++)
                if (!Free.IsFree(new(from + away * i, from + away * i))) crossed++;
            return cost * crossed;
        }

        private Point PastLine(Point from, Point onLine) => from.DistanceTo(onLine) > Tolerance.Length ? onLine + (onLine - from).Unit * (2 * Unit) : onLine;

        /// <summary>The arrow heads without their tips, at which other lines may end.</summary>
        public List<Box> Heads()
        {
            const double tip = 1.3, end = 3, half = 0.4;
            var inwards = ArrowsAreOutside ? -Reads : Reads;
            return [Head(Left, inwards), Head(Right, -inwards)];

            Box Head(Point at, Vector into) => Box.Around([at + into * (tip * Unit), at + into * (end * Unit)]).Grown(half * Unit);
        }

        // No line of a dimension may run through words.
        private double Through(Point from, Point to) =>
            from.DistanceTo(to) > Tolerance.Length && Free.RunsThroughWords(Segment.Line(from, to), 0.5 * Unit) ? ThroughWordsCost : 0;

        private double TextCost()
        {
            if (!HasRoomInside) return IsTextFree(Left + Reads * (FiguresAreOutside ? Length + Tail + Width / 2 : Length / 2)) ? 0 : NoRoomCost;
            return TryFindMiddleOfText(out var middle) ? AsideCost * middle.DistanceTo(Start.MidpointTo(End)) / Unit : NoRoomCost;
        }

        private bool TryFindMiddleOfText(out Point middle)
        {
            var centre = Start.MidpointTo(End);
            var room = Length / 2 - Width / 2 - 3.5 * Unit;
            for (var shift = 0.0; shift <= room; shift += Unit)
            {
                foreach (var way in (double[])[1, -1])
                {
                    middle = centre + Reads * (way * shift);
                    if (IsTextFree(middle)) return true;
                }
            }
            middle = centre;
            return false;
        }

        private bool IsTextFree(Point middleOnLine)
        {
            var middle = middleOnLine + Reads.Left * (TextAbove * Unit + Height / 2);
            var steps = (int)Math.Ceiling(Width / Height);
            for (var i = 0; i <= steps; i++)
                if (!Free.IsFree(Around(middle + Reads * (Width * ((double)i / steps - 0.5)), TextHeight / 2 + TextClear))) return false;
            return true;
        }

        private Box Around(Point point, double reach) => new Box(point, point).Grown(reach * Unit);
    }
}
