using System.Globalization;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>What is said of cutters and kerfs.</summary>
internal static partial class Wordings
{
    public static Complaint UnknownCutter(Choice cutter, IEnumerable<string> known) => cutter.Place.Complain(
        $"There is no cutter called {Quoted(cutter.Word)} in the shop's table of machines.", Nearest(cutter.Word, known));

    public static Complaint KerfWithoutCutter(Choice kerf, IEnumerable<string> known) => kerf.Place.Complain(
        "A kerf is given, but not what cuts: leads, order and least hole are the machine's.", $"Add --cutter; the shop has {string.Join(", ", known)}.");

    public static Complaint ControllerKnowsTheKerf(Choice kerf, string cutter) => kerf.Place.Complain(
        $"The controller of the {cutter} allows for the kerf itself; half of it would be taken twice.", "Leave --kerf out and enter it at the machine.");

    public static Complaint KerfOutOfRange(Choice kerf, double most) => kerf.Place.Complain(
        $"{Quoted(kerf.Word)} is no kerf.", string.Create(CultureInfo.InvariantCulture, $"Give what you measured, more than 0 and at most {most:0} mm."));

    public static Complaint KerfNotMeasured(Choice cutter, string title, string name, double thickness) => Place(cutter).Complain(
        string.Create(CultureInfo.InvariantCulture, $"Nobody has measured the kerf of the {title} in sheet of {thickness:0.###} mm, and it is never guessed."),
        "Cut a rectangle out of a scrap of this sheet on its drawn line; the kerf is the width of the opening less the width of the part, halved. "
        + $"Give it with --kerf, or write it as the kerf of {name} in your own machines.yaml and add --shop; or write compensates: yes there if the controller allows for it.");

    public static Complaint CutsNoneOfIt(Choice cutter, string title, string material) => Place(cutter).Complain(
        $"The {title} does not cut {material}.", "Take another cutter; what this one cuts stands under cuts in the shop's table of machines.");

    public static string ForAnotherMachine(string title, string material) =>
        $"The {title} does not cut {material}: the cut file shows the finished edge, for another machine or a saw.";

    public static Complaint UnknownDxf(Choice dxf, IEnumerable<string> known) => dxf.Place.Complain(
        $"{Quoted(dxf.Word)} is no DXF that can be written.", $"Choose one of {string.Join(", ", known)}; -in is in inches, the others are in mm.");

    // What the shop usually cuts with stands in no one's command.
    private static Place Place(Choice choice) => choice.IsMade ? choice.Place : new("habits.yaml", 1, 1);
}
