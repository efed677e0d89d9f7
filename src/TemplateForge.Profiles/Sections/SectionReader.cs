using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a bent section: its sheet, its legs and what is folded between them.</summary>
internal static class SectionReader
{
    private static readonly Field Way = Field.Must("way", Holds.OneOf("up", "down"), "towards whoever looks at the face that is up, or away");
    private static readonly Field Leg = Field.Must("leg", Holds.Expression, "the leg after it");
    private static readonly Field Width = Field.Must("width", Holds.Expression, "over the outside, from the fold to the cut edge");

    private static readonly Word Joggle = new("joggle", "a step, so that a lap lies flush",
        Field.Must("joggle", Holds.Expression, "how deep it steps, from face to face"),
        Field.Must("turned", Holds.Expression, "angle of each of its two bends"),
        Way, Leg);

    private static readonly Word ClosedHem = new("closed_hem", "an edge folded flat on itself",
        Field.Must("closed_hem", Holds.Expression, "its width over the outside"), Way);

    private static readonly Word OpenHem = new("open_hem", "an edge folded back with air between",
        Field.Must("open_hem", Holds.Expression, "how much air"), Width, Way);

    private static readonly Word RolledEdge = new("rolled_edge", "an edge rolled up to a tube",
        Field.Must("rolled_edge", Holds.Expression, "inside radius of the roll"),
        Field.Must("turned", Holds.Expression, "how far round, 180 to 360 deg"),
        Way);

    private static readonly Word Bend = new("turned", "a bend",
        Field.Must("turned", Holds.Expression, "how far it is bent, from flat"),
        Way, Leg,
        Field.May("inside_radius", Holds.Expression, "its inside radius, if not the section's"));

    private static readonly ImmutableArray<Word> Folds = [Joggle, ClosedHem, OpenHem, RolledEdge, Bend];

    public static Word Word { get; } = new("section", "a bent sheet seen on its edge",
        Field.Must("thickness", Holds.Expression, "sheet thickness"),
        Field.Must("material", Holds.ByChoice(Holds.Name), "what it is made of, by its name in the shop's table or by a parameter"),
        Field.Must("inside_radius", Holds.Expression, "inside radius of its bends"),
        Field.Must("reckoned_by", Holds.OneOf([.. BendRules.Words]), "the rule by which flat lengths are reckoned"),
        Field.May("k_factor", Holds.Expression, "if not the material's: where the line lies that keeps its length, in thicknesses from the inside"),
        Field.May("springback", Holds.Expression, "the share of the angle that stays when a bend is let go; 1 if nothing is said"),
        Field.May("measured", Holds.OneOf("outside", "inside", "mould_line"), "how legs are measured; outside if nothing is said"),
        Field.Must("first_leg", Holds.Expression, "the leg at which the blank begins"),
        Field.Must("folds", Holds.ListOf(Holds.AnyOf([.. Folds.Select(Holds.Group)]), 1), "what follows, in order"));

    public static SectionRecipe Read(Reading reading, Node node, ShopTables shop)
    {
        reading.TryOpen(node, "The section", Word, out var fields);
        var rule = fields.Required("reckoned_by", out var by) ? reading.OneOf(by, [.. BendRules.Words]) : BendRules.KFactor;
        var hasFactor = fields.Optional("k_factor", out var factor);
        if (hasFactor && rule != BendRules.KFactor) reading.Complain(Wordings.KFactorBelongsToItsRule(factor.Place));
        return new SectionRecipe
        {
            Place = fields.Place,
            Thickness = reading.Length(fields, "thickness"),
            InsideRadius = reading.Length(fields, "inside_radius"),
            Rule = rule,
            KFactor = hasFactor ? [reading.Number(factor)] : [],
            Material = fields.Required("material", out var material)
                ? reading.Material(material, shop)
                : Chosen<Material>.Always(Material.Unstated, fields.Place),
            Brakes = shop.Brakes,
            Springback = fields.Optional("springback", out var springback) ? reading.Number(springback) : reading.Standing("1", fields.Place),
            Measured = fields.Optional("measured", out var measured) ? reading.OneOf(measured, "outside", "inside", "mould_line") : "outside",
            FirstLeg = reading.Length(fields, "first_leg"),
            Folds = ReadFolds(reading, fields),
        };
    }

    private static ImmutableArray<FoldRecipe> ReadFolds(Reading reading, Fields fields)
    {
        if (!fields.Required("folds", out var list)) return [];
        var found = ImmutableArray.CreateBuilder<FoldRecipe>();
        foreach (var item in reading.Items(list))
        {
            if (found.Count == SectionRecipe.MostFolds)
            {
                reading.Complain(Wordings.TooMany(item.Place, "folds", SectionRecipe.MostFolds));
                break;
            }
            if (reading.TryOpen(item, "The fold", Folds, out var fold, out var word)) found.Add(ReadFold(reading, fold, word));
        }
        return found.ToImmutable();
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
