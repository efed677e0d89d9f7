using System.Collections.Immutable;
using TemplateForge.Fabrication;
using TemplateForge.Notation;
using TemplateForge.Shop;

namespace TemplateForge.Profiles;

/// <summary>Reads a jig: the piece it is for, what it guides, what it is made of, and what locates it.</summary>
internal static class JigReader
{
    private static readonly Word Bush = new("bush", "a router with a guide bush runs along its edge",
        Field.Must("bush", Holds.Expression, "outside diameter of the guide bush, or of the cutter's bearing"),
        Field.Must("cutter", Holds.Expression, "diameter of the cutter"));

    private static readonly Word Shroud = new("shroud", "a torch runs along its edge with its shroud",
        Field.Must("shroud", Holds.Expression, "outside diameter of the shroud"),
        Field.Must("kerf", Holds.Expression, "width of the slot that the torch cuts"));

    private static readonly Word Scriber = new("scriber", "its edge is the finish line itself, for scriber and file",
        Field.Must("scriber", Holds.OneOf("finish_line"), "the edge is the finish line"));

    private static readonly Word Drills = new("drills", "it has bushes to drill holes by",
        Field.Must("drills", Holds.Name, "the shape of the holes, all of them round"));

    private static readonly ImmutableArray<Word> Guides = [Bush, Shroud, Scriber, Drills];

    private static readonly Word PinAndSlot = new("slot", "a round pin, and a pin in a slot that points to it",
        Field.Must("pin", Holds.PlainWords, "the datum hole of the round pin"),
        Field.Must("slot", Holds.PlainWords, "the datum hole of the pin in the slot"));

    private static readonly Word StopsAndPin = new("stops", "two stops on one edge of the panel, and a pin in a slot square to it",
        Field.Must("stops", Holds.TwoPoints, "where the stops touch the edge"),
        Field.Must("pin", Holds.PlainWords, "the datum hole of the pin"));

    private static readonly ImmutableArray<Word> Locations = [PinAndSlot, StopsAndPin];

    public static Word Word { get; } = new("jig", "a plate that guides a tool along a piece's finish line, or drills by bushes",
        Field.When,
        Field.Must("title", Holds.PlainWords, "its title"),
        Field.Must("for", Holds.PlainWords, "the piece whose finish line it guides, or which it drills"),
        Field.Must("guides", Holds.ByChoice(Holds.AnyOf([.. Guides.Select(Holds.Group)])), "the one kind of edge that it has"),
        Field.Must("plate", Holds.ByChoice(Holds.Name), "what it is made of, by its name in the shop's table of jig plates or by a parameter"),
        Field.Must("located_by", Holds.ByChoice(Holds.AnyOf([.. Locations.Select(Holds.Group)])), "what locates it"),
        Field.May("margin", Holds.Expression, "how far it reaches past the finish line or the holes; room for clamps if nothing is said"),
        Field.May("one_sided", Holds.ByChoice(Holds.YesOrNo), "whether pins are pressed in or bushes have heads, so that it does not flip; no if nothing is said"));

    public static JigRecipe Read(ScalarNode name, Node node, IEnumerable<string> pieces, ShopTables shop, Reading reading)
    {
        if (!PieceReader.IsSafeName(name.Text)) reading.Complain(Wordings.UnsafeName(name.Place, name.Text));
        if (pieces.Contains(name.Text, StringComparer.Ordinal)) reading.Complain(Wordings.JigNamedLikeAPiece(name.Place, name.Text));
        reading.TryOpen(node, $"The jig {name.Text}", Word, out var fields);
        var work = fields.RequiredText("for", out var of) ? of.Text : "";
        if (work.Length > 0 && !pieces.Contains(work, StringComparer.Ordinal)) reading.Complain(Wordings.UnknownPiece(of.Place, work, pieces));
        var plate = fields.Required("plate", out var stock) ? reading.ShopEntry(stock, ShopTable.JigPlates, shop) : Chosen<string>.Always("", fields.Place);
        return new JigRecipe
        {
            Place = name.Place,
            Name = name.Text,
            When = reading.When(fields),
            Title = reading.Words(fields, "title"),
            Work = work,
            Guides = fields.Required("guides", out var guides)
                ? reading.Chosen(guides, n => ReadGuide(n, reading))
                : Chosen<GuideRecipe>.Always(Nothing(fields.Place), fields.Place),
            Plate = new(plate.By, plate.Place, plate.Options.ToImmutableDictionary(
                o => o.Key, o => shop.JigPlates.GetValueOrDefault(o.Value, PlateStock.Unstated), StringComparer.Ordinal)),
            Plates = [.. shop.JigPlates.Values.OrderBy(p => p.Name, StringComparer.Ordinal)],
            LocatedBy = fields.Required("located_by", out var located)
                ? reading.Chosen(located, n => ReadLocation(n, reading))
                : Chosen<LocationRecipe>.Always(new(fields.Place, [], "", ""), fields.Place),
            Margin = fields.Optional("margin", out var margin) ? [reading.Length(margin)] : [],
            OneSided = fields.Optional("one_sided", out var sided)
                ? reading.Chosen(sided, n => reading.OneOf(n, "yes", "no"))
                : Chosen<string>.Always("no", fields.Place),
        };
    }

    private static GuideRecipe ReadGuide(Node node, Reading reading)
    {
        if (!reading.TryOpen(node, "What it guides", Guides, out var fields, out var word)) return Nothing(node.Place);
        if (word == Bush) return new(node.Place, GuideKind.Bush, [reading.Length(fields, "bush"), reading.Length(fields, "cutter")], []);
        if (word == Shroud) return new(node.Place, GuideKind.Shroud, [reading.Length(fields, "shroud"), reading.Length(fields, "kerf")], []);
        if (word == Drills) return new(node.Place, GuideKind.Drill, [], [reading.Shape(fields, "drills")]);
        if (fields.Required("scriber", out var edge)) reading.OneOf(edge, "finish_line");
        return Nothing(node.Place);
    }

    private static LocationRecipe ReadLocation(Node node, Reading reading)
    {
        if (!reading.TryOpen(node, "What locates it", Locations, out var fields, out var word)) return new(node.Place, [], "", "");
        var pin = reading.Words(fields, "pin");
        if (word == PinAndSlot) return new(node.Place, [], pin, reading.Words(fields, "slot"));
        return fields.Required("stops", out var stops) && reading.TwoPoints(stops) is var (a, b)
            ? new(node.Place, [a, b], pin, "")
            : new(node.Place, [], pin, "");
    }

    private static GuideRecipe Nothing(Place place) => new(place, GuideKind.Scriber, [], []);
}
