using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads what all bends of a section or of a flanged sheet have in common.</summary>
internal static class BentSheetReader
{
    private static readonly string[] Measured = ["outside", "inside", "mould_line"];

    public static ImmutableArray<Field> Fields { get; } =
    [
        Field.Must("thickness", Holds.Expression, "sheet thickness"),
        Field.Must("material", Holds.ByChoice(Holds.Name), "what it is made of, by its name in the shop's table or by a parameter"),
        Field.Must("inside_radius", Holds.Expression, "inside radius of its bends"),
        Field.Must("reckoned_by", Holds.OneOf([.. BendRules.Words]), "the rule by which flat lengths are reckoned"),
        Field.May("k_factor", Holds.Expression, "if not the material's: where the line lies that keeps its length, in thicknesses from the inside"),
        Field.May("springback", Holds.Expression, "the share of the angle that stays when a bend is let go; 1 if nothing is said"),
        Field.May("measured", Holds.OneOf([.. Measured]), "how legs are measured; outside if nothing is said"),
    ];

    public static BentSheetRecipe Read(Reading reading, Fields fields, ShopTables shop)
    {
        var rule = fields.Required("reckoned_by", out var by) ? reading.OneOf(by, [.. BendRules.Words]) : BendRules.KFactor;
        var hasFactor = fields.Optional("k_factor", out var factor);
        if (hasFactor && rule != BendRules.KFactor) reading.Complain(Wordings.KFactorBelongsToItsRule(factor.Place));
        return new BentSheetRecipe
        {
            Thickness = reading.Length(fields, "thickness"),
            InsideRadius = reading.Length(fields, "inside_radius"),
            Rule = rule,
            KFactor = hasFactor ? [reading.Number(factor)] : [],
            Material = fields.Required("material", out var material)
                ? reading.Material(material, shop)
                : Chosen<Material>.Always(Material.Unstated, fields.Place),
            Brakes = shop.Brakes,
            Springback = fields.Optional("springback", out var springback) ? reading.Number(springback) : reading.Standing("1", fields.Place),
            Measured = fields.Optional("measured", out var measured) ? reading.OneOf(measured, Measured) : "outside",
        };
    }
}
