using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Every sentence with which a profile, or a value put into it, is complained of.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownParameter(Setting setting, string profile, IEnumerable<string> known) =>
        setting.Place.Complain(
            $"{profile} has no parameter {setting.Name}.",
            Spelling.Nearest(setting.Name, known, out var nearest)
                ? $"Did you mean {nearest}?"
                : $"Its parameters are {string.Join(", ", known)}.");

    public static Complaint GivenTwice(Setting setting, string parameter) =>
        setting.Place.Complain(
            setting.Name == parameter ? $"{parameter} is given twice." : $"{setting.Name} gives {parameter}, which is given already.",
            "Give it once.");

    public static Complaint NotAskedFor(Setting setting, string when) =>
        setting.Place.Complain(
            $"{setting.Name} is given, but it is only asked for when {when}.",
            $"Leave {setting.Name} out, or change what it depends on.");

    public static Complaint OutOfRange(Setting setting, string parameter, ValueSource source, Quantity value, ValueRange range) =>
        setting.ValuePlace.Complain(
            setting.Name == parameter
                ? $"{parameter} is {value}, but takes {range}."
                : $"{setting.Name} {setting.Text.Trim()} makes {parameter} {value}, but it takes {range}.",
            source == ValueSource.Measured ? "Measure it again, and see how it was written. If it is right, this profile is not made for it."
            : value.Value < range.Least.Value ? $"Raise it to {range.Least} or more." : $"Lower it to {range.Most} or less.");

    public static Complaint UnknownOption(Place place, string word, string parameter, IEnumerable<string> options) =>
        place.Complain(
            $"{parameter} is {Quoted(word)}, which is none of its choices.",
            Spelling.Nearest(word, options, out var nearest)
                ? $"Did you mean {nearest}?"
                : $"Choose one of {string.Join(", ", options)}.");

    public static Complaint WrongHand(Place place, string profile) =>
        place.Complain($"{profile} fits either hand: its pieces are their own mirror image.", "Leave the hand out.");

    public static Complaint NeedsItself(Place place, string name) =>
        place.Complain($"{name} needs itself to be worked out.", "Follow its names and break the circle.");

    public static Complaint ParameterNotAskedFor(Place place, string name, string when) =>
        place.Complain($"{name} is used here, but it is only asked for when {when}.", $"Use {name} only where {when}.");

    public static Complaint OutOfReach(Place place, Point point) =>
        place.Complain($"The point ({Mm(point.X)}, {Mm(point.Y)}) lies further than 100 m out.", "Check the values that lead there.");

    public static Complaint SizeNotPositive(Place place, double size) =>
        place.Complain($"This comes to {Mm(size)}, but must be more than 0.", "Check the values that lead there.");

    public static Complaint EllipseTooLong(Place place, double a, double b, double most) =>
        place.Complain(
            $"An ellipse {Mm(2 * Math.Max(a, b))} long and {Mm(2 * Math.Min(a, b))} wide is too slim.",
            $"Keep it within {Plain(most)} times as long as wide.");

    public static Complaint RectangleWithoutArea(Place place, double width, double height) =>
        place.Complain($"A rectangle {Mm(width)} by {Mm(height)} has no area.", "Give two opposite corners.");

    public static Complaint CornerRadiusDoesNotFit(Place place, double radius, double most) =>
        place.Complain($"A corner radius of {Mm(radius)} does not fit this rectangle.", $"Keep it from 0 to {Mm(most)}.");

    public static Complaint StepWithoutLength(Place place, Point to) =>
        place.Complain($"This line ends where it began, at ({Mm(to.X)}, {Mm(to.Y)}).", "Give two different ends.");

    public static Complaint OutlineWithoutArea(Place place) =>
        place.Complain("This outline encloses nothing.", "Give it at least three points, or an arc and a line.");

    public static Complaint ArcThroughItsEnd(Place place) =>
        place.Complain("The point that the arc goes through is one of its ends.", "Give a point between the ends.");

    public static Complaint ArcRadiusTooSmall(Place place, double radius, double least) =>
        place.Complain($"An arc with a radius of {Mm(radius)} does not reach from end to end.", $"Raise the radius to {Mm(least)} or more.");

    public static Complaint NothingLeftOfOffset(Place place, string shape, double by) =>
        place.Complain($"Nothing is left of {shape} after an offset by {Mm(by)}.", "Take a smaller offset, or check the sizes that lead there.");

    public static Complaint RoundingDoesNotFit(Term term, double radius, UnfitCorner corner) =>
        term.Place.Complain(
            $"A corner radius of {Mm(radius)} does not fit at ({Mm(corner.At.X)}, {Mm(corner.At.Y)}).",
            corner.LargestRadius > Tolerance.Length
                ? $"Lower {term.Text} to {Mm(Math.Floor(corner.LargestRadius * 100) / 100)} or less."
                : "No radius fits there: check the values that lead there.");

    public static Complaint TooManyRepeats(Place place, double count) =>
        place.Complain($"This pitch asks for {Plain(Math.Round(count))} places.", $"Keep it to {Evaluation.MostRepeats} or fewer.");

    public static Complaint TooManySegments(Place place, string shape, int most) =>
        place.Complain($"{shape} has more than {most} lines and arcs.", "Make it simpler.");

    public static Complaint BelowZero(Place place, double size) =>
        place.Complain($"This comes to {Mm(size)}, but must be 0 or more.", "Check the values that lead there.");

    public static Complaint NumberOutOfBounds(Place place, double number, double least, double most) =>
        place.Complain($"This comes to {Plain(number)}, but takes {Plain(least)} to {Plain(most)}.", "Check the values that lead there.");

    public static Complaint TurnOutOfBounds(Place place, double degrees, double moreThan, double most) =>
        place.Complain($"This turns through {Plain(degrees)}°, but takes more than {Plain(moreThan)}° and no more than {Plain(most)}°.",
            "Give the angle that the sheet is bent through, 0 for flat.");

    public static Complaint NotOneOutline(ShapeName shape, int count) =>
        shape.Place.Complain(
            count == 0 ? $"{shape.Name} is empty." : $"{shape.Name} falls into {count} parts, but one outline is wanted here.",
            "Check the sizes that lead there.");

    public static Complaint PieceTooLong(Place place, string piece, double length, double most) =>
        place.Complain($"The piece {piece} is {Mm(length)} long.", $"Keep it to {Mm(most)}: no paper or table takes more. Check the values that lead there.");

    public static Complaint NothingToCut(Place place, string piece) =>
        place.Complain($"With these values nothing is cut away from the piece {piece}.", "Check the values that lead there.");

    public static Complaint NoPieceLeft(string profile) =>
        new(profile, 1, 1, "With these values the profile makes no piece at all.", "Let at least one piece be there for every choice.");

    public static Complaint ShapeIsEmpty(ShapeName shape) =>
        shape.Place.Complain($"{shape.Name} is empty with these values.", "Check the sizes that lead there.");

    public static Complaint NotAName(Place place, string word) =>
        place.Complain(
            Expression.IsReserved(word) ? $"{word} is a unit or a word of expressions, so it cannot be a name." : $"{Quoted(word)} cannot be a name.",
            Expression.IsReserved(word) ? $"Take another name, or add to it: {word}_1." : "Use letters, digits and underscores, a letter first.");

    public static Complaint NameTaken(Place place, string name, Place first) =>
        place.Complain($"{name} is the name of something else already, in line {first.Line}.", "Give it a name of its own.");

    public static Complaint UnsafeName(Place place, string name) =>
        place.Complain(
            $"{Quoted(name)} cannot be part of a file name.",
            "Use small letters, digits and hyphens, a letter first, at most 40 characters.");

    public static Complaint NameIsNotTheFiles(Place place, string name, string file) =>
        place.Complain($"The profile calls itself {name}, but its file is {file}.", $"Name the file {name}.yaml, or the profile as the file.");

    public static Complaint WordsWanted(Place place) => place.Complain("Words are wanted here.", "Write a sentence, in quotes if it has a colon or a hash.");

    public static Complaint ListWanted(Place place) => place.Complain("A list is wanted here.", "Write [a, b], or lines that begin with a dash.");

    public static Complaint NamesWanted(Place place) =>
        place.Complain("Names with something to each are wanted here.", "Write {name: value}, or lines of name: value.");

    public static Complaint ValueWanted(Place place) => place.Complain("A value is wanted here.", "Write a number, with its unit if it has one.");

    public static Complaint ExpressionWanted(Place place, ValueKind wanted) =>
        place.Complain("An expression is wanted here.", $"Write what comes to {wanted.Name}.");

    public static Complaint OtherKindWanted(Place place, string text, ValueKind found, ValueKind wanted) =>
        place.Complain($"{text} is {found.Name}, but {wanted.Name} is wanted here.", $"Write what comes to {wanted.Name}.");

    public static Complaint RangeWanted(Place place) =>
        place.Complain("A range is wanted here.", "Write the least and the most, as in 10 to 150.");

    public static Complaint AlikeAlready(Place place) =>
        place.Complain("This is for either hand whatever its values are.", "Leave alike_when out, or name the hand that it is drawn for.");

    public static Complaint NotWhole(Setting setting, string parameter, Quantity value) =>
        setting.ValuePlace.Complain(
            $"{parameter} is {value}, but takes whole numbers only.",
            string.Create(CultureInfo.InvariantCulture, $"Give {Math.Floor(value.Value):0} or {Math.Ceiling(value.Value):0}."));

    public static Complaint DefaultOutOfRange(Place place, string parameter, Quantity value, ValueRange range) =>
        place.Complain($"The default of {parameter} is {value}, but it takes {range}.", "Bring the default into the range, or widen the range.");

    public static Complaint UnknownUnit(Place place, string unit, IEnumerable<string> known) =>
        place.Complain($"{Quoted(unit)} is no unit of a parameter.", $"Choose one of {string.Join(", ", known)}.");

    public static Complaint MeasuredOrShopWanted(Place place, string parameter, bool both) =>
        place.Complain(
            both ? $"{parameter} is both measured and a shop value." : $"{parameter} does not say whether it is measured or a shop value.",
            "Write measured: and how it is measured, or shop: and why the shop chooses so.");

    public static Complaint TooFew(Place place, int least, string what) =>
        place.Complain($"There are too few {what} here.", $"Give at least {least}.");

    public static Complaint TooMany(Place place, string what, int most) =>
        place.Complain($"There are more than {most} {what}.", "Split the profile.");

    public static Complaint TooManySteps(Place place, int most) =>
        place.Complain($"The outline has more than {most} steps.", "Make it simpler.");

    public static Complaint UnknownShape(Place place, string name, IEnumerable<string> known) =>
        Unknown(place, name, "shape", known);

    public static Complaint UnknownPoint(Place place, string name, IEnumerable<string> known) =>
        Unknown(place, name, "point", known);

    public static Complaint UnknownChoice(Place place, string name, IEnumerable<string> known) =>
        Unknown(place, name, "parameter with choices", known);

    public static Complaint UnknownCaution(Place place, string name, IEnumerable<string> known) =>
        Unknown(place, name, "caution of the shop", known);

    public static Complaint UnknownShapeWord(Place place, string word, IEnumerable<string> known) =>
        Unknown(place, word, "word for a shape", known);

    public static Complaint ShapeWanted(Place place, IEnumerable<string> known) =>
        place.Complain("A shape is wanted here.", $"Write one word and what belongs to it; the words are {Listed(known)}.");

    public static Complaint PointWanted(Place place) =>
        place.Complain("A point is wanted here.", "Write [along, up], the name of a point, or {furthest: shape, towards: angle}, {along: shape, at: distance}, {between: [a, b]}, {station: 1, of: row} or {carried_onto: panel, point: point}.");

    public static Complaint TwoLengthsWanted(Place place) => place.Complain("Two lengths are wanted here.", "Write [one, other].");

    public static Complaint TwoShapesWanted(Place place) =>
        place.Complain("Two shapes are wanted here.", "Name the two whose outlines meet in the corners to be rounded.");

    public static Complaint PieceKindWanted(Place place, string piece) =>
        place.Complain($"The piece {piece} does not say once how it is made.", "Write exactly one of cut_away, blank and paper.");

    public static Complaint PaperIsNotFastened(Place place, string word) =>
        place.Complain($"A piece of paper has no {word}.", "Say it of the piece that is cut from metal.");

    public static Complaint MaterialWantedToo(Place place, string piece) =>
        place.Complain($"{piece} is fastened to a metal, but nobody says what it is made of itself.", "Write material: beside against:.");

    public static Complaint RivetHolesAreRound(Place place, string shape, Point at) =>
        place.Complain($"{shape} has a part at ({Mm(at.X)}, {Mm(at.Y)}) that is no round hole.", "Name a shape of circles.");

    public static Complaint NoSuchRivetHole(Place place, string shape, Point at) =>
        place.Complain($"{shape} has a circle at ({Mm(at.X)}, {Mm(at.Y)}) that is no whole hole of this piece.", "Take the shape away from the piece, and keep it clear of the edge and of other holes.");

    public static Complaint RivetThroughItsHole(Place place, double rivet, double hole) =>
        place.Complain($"A rivet of {Mm(rivet)} does not go through a hole of {Mm(hole)}.", "Lower the diameter, or make the holes larger.");

    public static Complaint PiecesWanted(Place place) => place.Complain("The profile makes nothing.", "Add pieces: with at least one piece.");

    public static Complaint HandWanted(Place place, string word) =>
        place.Complain($"{Quoted(word)} is no hand.", "Write left or right, the one it is drawn for, or either.");

    public static Complaint DirectionWanted(Place place, string word) =>
        place.Complain($"{Quoted(word)} is no way to measure.", "Write straight, across or up.");

    public static Complaint OneOfWanted(Place place, string one, string other) =>
        place.Complain($"Both {one} and {other} stand here.", $"Give {one} or {other}.");

    public static Complaint OneOfWordsWanted(Place place, string what, IEnumerable<string> words) =>
        place.Complain($"{what} is told by one of its words, and none of them stands here.", $"Write {EitherOf(words)}.");

    public static Complaint OtherWordWanted(Place place, string word, ImmutableArray<string> words) =>
        place.Complain($"{Quoted(word)} is no word that can stand here.", $"Write {EitherOf(words)}.");

    public static Complaint TwoPointsWanted(Place place) => place.Complain("Two points are wanted here.", "Write [one, other], each a point.");

    public static Complaint NothingToGoOnFrom(Place place) =>
        place.Complain("This step goes straight or smoothly on, but nothing has been drawn before it.", "Begin with a line that has a direction or an end.");

    public static Complaint StraightBehind(Place place, Point at) =>
        place.Complain($"({Mm(at.X)}, {Mm(at.Y)}) lies straight behind, so no arc goes on to it without a corner.", "Give another end, or draw two arcs.");

    public static Complaint TurnNotWithinACircle(Place place, double degrees) =>
        place.Complain($"An arc turns through {Plain(degrees)} deg.", "Keep it above 0 and below 360 deg; turning says which way.");

    public static Complaint NoCornerThere(Place place, Point at) =>
        place.Complain($"There is no corner at ({Mm(at.X)}, {Mm(at.Y)}) to round or to chamfer.", "Take fillet or chamfer away where the outline goes smoothly on.");

    public static Complaint ChamferDoesNotFit(Term term, double setback, UnfitChamfer corner) =>
        term.Place.Complain(
            $"A chamfer of {Mm(setback)} does not fit at ({Mm(corner.At.X)}, {Mm(corner.At.Y)}).",
            corner.LargestBefore > Tolerance.Length
                ? $"Lower {term.Text} to {Mm(Math.Floor(corner.LargestBefore * 100) / 100)} or less."
                : "None fits there: check the values that lead there.");

    public static Complaint PathCornersStaySharp(Place place) =>
        place.Complain("The corners of a path stay sharp.", "Draw the arc or the line as a step of its own.");

    public static Complaint PathHasItsStart(Place place, string path) =>
        place.Complain($"{path} is a path, which begins at its start and goes to its end.", "Take starting_at and going away; they are for outlines.");

    public static Complaint PastTheEnd(Place place, double distance, double length) =>
        place.Complain($"{Mm(distance)} along is not on a line {Mm(length)} long.", $"Keep it from 0 to {Mm(length)}.");

    public static Complaint SpacingWanted(Place place) =>
        place.Complain("The stations do not say once where they stand.", "Give distances (at, from_end, or both), or one of count, pitch and most_apart.");

    public static Complaint MarginTooLarge(Place place, double margin, double length) =>
        place.Complain($"A margin of {Mm(margin)} does not fit both ends of a line {Mm(length)} long.", $"Keep it from 0 to less than {Mm(length / 2)}.");

    public static Complaint CountNotWhole(Place place, double number, int least, int most) =>
        place.Complain($"This comes to {Plain(number)}.", $"Give what comes to a whole number from {least} to {most}.");

    public static Complaint NothingOnThisSide(Place place, string shape, bool left) =>
        place.Complain($"Nothing of {shape} lies to the {(left ? "left" : "right")} of this line.", "Keep the other side, or check the values that lead there.");

    public static Complaint LineOrPathWanted(Place place) =>
        place.Complain("This does not say once how the shape is split.", "Give line: [a, b] with keep: left or right, or along: path with part_at: point.");

    public static Complaint CutsNothing(Place place, string path, string shape) =>
        place.Complain($"{path} does not cut {shape} in two.", "Let the path run in over one edge and out over another.");

    public static Complaint NoPartThere(Place place, string shape, Point at) =>
        place.Complain($"No part of {shape} lies at ({Mm(at.X)}, {Mm(at.Y)}).", "Give a point inside the part.");

    public static Complaint TakesNothing(ShapeName taken, string from) =>
        taken.Place.Complain(
            $"{taken.Name} lies nowhere on {from}, so taking it away removes nothing.",
            "Check where it lies; put it under take_if_met if it may miss.");

    public static Complaint NoSuchMeasure(Place place, string function, IEnumerable<string> of) =>
        place.Complain($"{function}({string.Join(", ", of)}) has no answer.", "A pitch is that of stations that stand evenly apart, two or more of them.");

    public static Complaint NoSizeBetweenWords(Place place) =>
        place.Complain("The rows of this table are chosen by a word, and nothing lies between two words.", "Take between_rows away.");

    public static Complaint RowMissing(Place place, string table, string word) =>
        place.Complain($"{table} has no row for {word}.", $"Add a row {word}.");

    public static Complaint RowTwice(Place place, string size) => place.Complain($"{size} has a row already.", "Keep one of the two.");

    public static Complaint CellsWanted(Place place, int found, int wanted) =>
        place.Complain($"This row has {found} values, but the table has {wanted} columns.", "Give one value for each column.");

    public static Complaint NoSuchRow(Place place, string table, string word) =>
        place.Complain($"{table} has no row for {word}.", "Add a row, or choose another.");

    public static Complaint NoRowForSize(Place place, string table, Quantity size, ImmutableArray<TableRow> rows, bool nextLarger)
    {
        var list = rows.Length <= 12 ? string.Join(", ", rows.Select(r => r.Size)) : $"from {rows[0].Size} to {rows[^1].Size}";
        return place.Complain(
            nextLarger ? $"{size} is more than {table} has." : $"{table} has no row for {size}.",
            $"Its rows are {list}.");
    }

    public static Complaint UnknownTable(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "table", known);

    public static Complaint UnknownColumn(Place place, string name, string table, IEnumerable<string> known) =>
        Unknown(place, name, $"column of {table}", known);

    public static Complaint UnknownStations(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "row of stations", known);

    public static Complaint UnknownPath(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "path", known);

    public static Complaint UnknownShapeOrPath(Place place, string name, IEnumerable<string> known) => Unknown(place, name, "shape or path", known);

    public static Complaint NothingToMeasure(Place place, Point at) =>
        place.Complain($"Both ends of this dimension lie at ({Mm(at.X)}, {Mm(at.Y)}), as it is measured.", "Give two ends that are apart that way.");

    public static Complaint LabelTooLong(Place place, string text, int most) =>
        place.Complain(
            text.Length == 0 ? "A label says nothing." : $"A label says {text[..Math.Min(20, text.Length)]}… in {text.Length} letters.",
            $"Say it in 1 to {most} letters; what is longer belongs into notes.");

    public static Complaint WholeNumberWanted(Place place, int most) =>
        place.Complain("A whole number is wanted here.", $"Write one from 1 to {most}.");

    public static Complaint ShortLabelWanted(Place place, string label) =>
        place.Complain($"{Quoted(label)} is too long or too short for a label on the drawing.", "Use a letter or two.");

    private static Complaint Unknown(Place place, string name, string what, IEnumerable<string> known) =>
        place.Complain(
            $"{Quoted(name)} is no {what}.",
            Spelling.Nearest(name, known, out var nearest) ? $"Did you mean {nearest}?"
            : known.Any() ? $"Choose one of {Listed(known)}."
            : "There is none yet.");

    private static string EitherOf(IEnumerable<string> words)
    {
        var all = words.ToList();
        return all.Count == 1 ? all[0] : string.Join(", ", all[..^1]) + " or " + all[^1];
    }

    private static string Listed(IEnumerable<string> words) => string.Join(", ", words.Order(StringComparer.Ordinal));

    private static string Mm(double value) => Quantity.Length(value).ToString();

    private static string Plain(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Quoted(string word) => word.Length == 0 ? "empty" : word;
}
