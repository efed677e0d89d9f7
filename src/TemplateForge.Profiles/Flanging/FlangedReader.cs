using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a flanged sheet: a base, and what is folded up along its edges.</summary>
internal static class FlangedReader
{
    private static readonly string[] Corners = ["mitred", "closed", "open"];
    private static readonly string[] Reliefs = ["round", "square", "tear"];

    private static readonly Field Cuts = Field.May("relief_cuts", Holds.Expression, "how many cuts reach in from the edge of each arc");

    private static readonly Word EdgeAt = new("edge_at", "a flange on one edge",
        Field.Must("edge_at", Holds.Point, "the line or arc that lies nearest to this point"), FoldReader.Field, Cuts, Field.When);

    private static readonly Word RunAt = new("run_at", "a flange on an edge and all that go on from it without a corner",
        Field.Must("run_at", Holds.Point, "the edge that lies nearest to this point"), FoldReader.Field, Cuts, Field.When);

    private static readonly Word AllEdges = new("edges", "a flange on every edge round the outside that has no other",
        Field.Must("edges", Holds.OneOf("all"), "all that are left"), FoldReader.Field, Cuts, Field.When);

    private static readonly ImmutableArray<Word> Flanges = [EdgeAt, RunAt, AllEdges];

    public static Word Word { get; } = new("flanged", "a flat base whose edges are turned",
        [
            Field.Must("base", Holds.Name, "the shape of what stays flat, measured to where its flanges stand"),
            .. BentSheetReader.Fields,
            Field.May("corners", Holds.OneOf([.. Corners]), "how flanges that meet are cut; mitred if nothing is said"),
            Field.May("relief", Holds.OneOf([.. Reliefs]), "what is taken out where two flanges meet; round if nothing is said"),
            Field.May("relief_size", Holds.Expression, "its diameter or width; twice the thickness and 3 mm at least if nothing is said"),
            Field.May("gap", Holds.Expression, "between flanges that meet; 0 if nothing is said"),
            Field.Must("flanges", Holds.ListOf(Holds.AnyOf([.. Flanges.Select(Holds.Group)]), 1), "what is folded up, and where"),
        ]);

    public static FlangedRecipe Read(Reading reading, Node node, ShopTables shop)
    {
        reading.TryOpen(node, "The flanged sheet", Word, out var fields);
        fields.Required("flanges", out _);
        return new FlangedRecipe
        {
            Place = fields.Place,
            Base = reading.Shape(fields, "base"),
            Sheet = BentSheetReader.Read(reading, fields, shop),
            Corners = (fields.Optional("corners", out var corners) ? reading.OneOf(corners, Corners) : "") switch
            {
                "closed" => CornerJoint.Closed,
                "open" => CornerJoint.Open,
                _ => CornerJoint.Mitred,
            },
            Relief = (fields.Optional("relief", out var relief) ? reading.OneOf(relief, Reliefs) : "") switch
            {
                "square" => CornerRelief.Square,
                "tear" => CornerRelief.Tear,
                _ => CornerRelief.Round,
            },
            ReliefSize = fields.Optional("relief_size", out var size) ? [reading.Length(size)] : [],
            Gap = fields.Optional("gap", out var gap) ? reading.Length(gap) : reading.Standing("0 mm", fields.Place),
            Flanges = reading.List(fields, "flanges", Flanges, (f, word) => ReadFlange(reading, f, word)),
        };
    }

    private static FlangeRecipe ReadFlange(Reading reading, Fields fields, Word word)
    {
        if (word == AllEdges && fields.Required("edges", out var all)) reading.OneOf(all, "all");
        return new(
            fields.Place,
            word == AllEdges ? [] : [reading.Point(fields, word.Name)],
            word == RunAt,
            FoldReader.Read(reading, fields),
            fields.Optional("relief_cuts", out var cuts) ? [reading.Number(cuts)] : []);
    }
}
