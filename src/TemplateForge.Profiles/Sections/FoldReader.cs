using System.Collections.Immutable;
using TemplateForge.Notation;

namespace TemplateForge.Profiles;

/// <summary>Reads folds: what follows a leg of a section, or stands on an edge of a flanged sheet.</summary>
internal static class FoldReader
{
    private static readonly Field Way = Field.Must("way", Holds.OneOf("up", "down"), "towards whoever looks at the face that is up, or away");
    private static readonly Field Leg = Field.Must("leg", Holds.Expression, "the leg after it");

    private static readonly Word Joggle = new("joggle", "a step, so that a lap lies flush",
        Field.Must("joggle", Holds.Expression, "how deep it steps, from face to face"),
        Field.Must("turned", Holds.Expression, "angle of each of its two bends"),
        Way, Leg, Field.When);

    private static readonly Word ClosedHem = new("closed_hem", "an edge folded flat on itself",
        Field.Must("closed_hem", Holds.Expression, "its width over the outside"), Way, Field.When);

    private static readonly Word OpenHem = new("open_hem", "an edge folded back with air between",
        Field.Must("open_hem", Holds.Expression, "how much air"),
        Field.Must("width", Holds.Expression, "over the outside, from the fold to the cut edge"), Way, Field.When);

    private static readonly Word RolledEdge = new("rolled_edge", "an edge rolled up to a tube",
        Field.Must("rolled_edge", Holds.Expression, "inside radius of the roll"),
        Field.Must("turned", Holds.Expression, "how far round, 180 to 360 deg"),
        Way, Field.When);

    private static readonly Word Bend = new("turned", "a bend",
        Field.Must("turned", Holds.Expression, "how far it is bent, from flat"),
        Way, Leg,
        Field.May("inside_radius", Holds.Expression, "its inside radius, if not that of all"),
        Field.When);

    private static readonly ImmutableArray<Word> Words = [Joggle, ClosedHem, OpenHem, RolledEdge, Bend];

    public static Field Field { get; } = Field.Must("folds", Holds.ListOf(Holds.AnyOf([.. Words.Select(Holds.Group)]), 1), "what follows, in order");

    public static ImmutableArray<Conditional<FoldRecipe>> Read(Reading reading, Fields fields)
    {
        if (!fields.Required(Field.Name, out var list)) return [];
        var folds = reading.List(fields, Field.Name, Words, (fold, word) => ReadFold(reading, fold, word));
        if (folds.Length <= FoldRecipe.MostInARow) return folds;
        reading.Complain(Wordings.TooMany(list.Place, "folds", FoldRecipe.MostInARow));
        return [];
    }

    private static FoldRecipe ReadFold(Reading reading, Fields fields, Word word)
    {
        var isUp = !fields.Required("way", out var way) || reading.OneOf(way, "up", "down") == "up";
        if (word == Joggle)
            return new JoggleRecipe(fields.Place, isUp, reading.Length(fields, "joggle"), reading.Angle(fields, "turned"), reading.Length(fields, "leg"));
        if (word == ClosedHem) return new ClosedHemRecipe(fields.Place, isUp, reading.Length(fields, "closed_hem"));
        if (word == OpenHem) return new OpenHemRecipe(fields.Place, isUp, reading.Length(fields, "open_hem"), reading.Length(fields, "width"));
        if (word == RolledEdge)
            return new RolledEdgeRecipe(fields.Place, isUp, reading.Length(fields, "rolled_edge"), reading.Angle(fields, "turned"));
        return new BendRecipe(
            fields.Place,
            isUp,
            reading.Angle(fields, "turned"),
            fields.Optional("inside_radius", out var radius) ? [reading.Length(radius)] : [],
            reading.Length(fields, "leg"));
    }
}
