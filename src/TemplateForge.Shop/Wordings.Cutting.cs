using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>What is said of a shop's cutters.</summary>
public static partial class Wordings
{
    public static Complaint OneOfTwoWanted(Place place, string name, string word, string one, string other) =>
        place.Complain($"{name} is {word}, but takes {one} or {other}.", $"Write {one} or {other}.");

    public static Complaint UnknownDxf(Place place, string name, IEnumerable<string> known) =>
        place.Complain($"{name} is no DXF that can be written.", $"Choose one of {string.Join(", ", known)}; -in is in inches, the others are in mm.");

    public static Complaint UnknownCutter(Place place, string name, IEnumerable<string> known) =>
        place.Complain(
            $"There is no cutter {name} in the shop's table of machines.",
            Spelling.Nearest(name, known, out var nearest) ? $"Did you mean {nearest}?" : $"Choose one of {string.Join(", ", known)}.");

    public static Complaint LeastLeadOverLead(Place place, Quantity least, Quantity lead) =>
        place.Complain($"least_lead is {least}, more than lead_in with {lead}.", "Raise lead_in, or lower least_lead.");
}
