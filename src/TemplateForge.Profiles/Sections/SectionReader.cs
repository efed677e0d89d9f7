using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a bent section: its sheet, its legs and what is folded between them.</summary>
internal static class SectionReader
{
    public static Word Word { get; } = new("section", "a bent sheet seen on its edge",
        [
            .. BentSheetReader.Fields,
            Field.Must("first_leg", Holds.Expression, "the leg at which the blank begins"),
            FoldReader.Field,
        ]);

    public static SectionRecipe Read(Reading reading, Node node, ShopTables shop)
    {
        reading.TryOpen(node, "The section", Word, out var fields);
        return new SectionRecipe(
            fields.Place, BentSheetReader.Read(reading, fields, shop), reading.Length(fields, "first_leg"), FoldReader.Read(reading, fields));
    }
}
