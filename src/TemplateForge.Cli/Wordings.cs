using System.Collections.Immutable;
using TemplateForge.Jobs;
using TemplateForge.Notation;

namespace TemplateForge.Cli;

/// <summary>Every complaint about how a command was typed.</summary>
internal static partial class Wordings
{
    public static Complaint NotASetting(Choice given) => given.Place.Complain(
        $"--set takes a name and a value, but got '{Plain(given.Word)}'.", "Write it as --set name=value, without spaces round the sign.");

    public static Complaint NotUnderstood(Place place, string message) => place.Complain(message, "Add --help to see what it takes.");

    public static Complaint UnknownWord(Place place, string word, IEnumerable<string> known) => place.Complain(
        $"'{Plain(word)}' is not understood here.",
        Spelling.Nearest(word, known, out var nearest) ? $"Did you mean {nearest}?" : "Add --help to see what it takes.");

    public static Complaint ProfileOrJob(Place place) => place.Complain(
        "make takes a PROFILE or --job FILE, one of them.", "Name a profile; list shows those in the library.");

    public static Complaint NotWithJob(Place place, string option) => place.Complain(
        $"{option} does not go with --job: a job is made again from what its record says.",
        "Leave it out, or make the profile afresh with the values that you want.");

    public static Complaint UnknownShell(Choice shell, IEnumerable<string> known) => shell.Place.Complain(
        $"There is no script for a shell called '{Plain(shell.Word)}'.", $"Say {string.Join(", ", known)}.");

    public static Complaint NothingFound(Place place, ImmutableArray<string> words) => place.Complain(
        $"No profile in the library has '{Plain(string.Join(' ', words))}' in its name or its description.", "list alone shows all of them.");

    public static Complaint UnknownDxf(Choice dxf, IEnumerable<string> known) => dxf.Place.Complain(
        $"--dxf takes the name of a DXF that can be written, but got '{Plain(dxf.Word)}'.", $"Say {string.Join(", ", known)}; -in is in inches.");

    public static Complaint NotAPrintersName(Choice name) => name.Place.Complain(
        $"'{Plain(name.Word)}' cannot be the name of a printer.", "Use letters, digits, hyphens and underscores, a letter first, at most 40 characters, and not the word none.");

    public static Complaint LengthMissing(Place place, string option) => place.Complain(
        $"{option} is missing: only all four lengths together say what a printer does.", "Measure A to B, A to D, A to C and D to B, and give --level, --upright, --rising and --falling.");

    public static Complaint NoFolderForCoupon(Place place, string printer, string line) => place.Complain(
        "Nobody has said where your shop's own tables are.", $"Add --shop and the folder; or write under printers, {printer}, coupons in a printers.yaml of your own: {line}");

    public static Complaint DayToCome(Choice day, DateOnly today) => day.Place.Complain(
        $"{Plain(day.Word)} has not come yet: today is {today.ToString(Shop.ShopReader.Day, System.Globalization.CultureInfo.InvariantCulture)}.",
        "Give the day on which the coupon was measured, or leave it out for today.");

    public static Complaint NoFolderMade(Choice folder, string why) => folder.Place.Complain(
        $"The folder '{Plain(folder.Word)}' cannot be made: {Plain(why)}", "Name another folder, or make it yourself.");

    public static Complaint EnterByHand(Place place, string printer, string line) => place.Complain(
        "This file cannot be changed without changing more than was asked, or has a fault of its own.", $"Write under printers, {printer}, coupons: {line}");

    public static Complaint NotPrinted(Place place, NotPrintedException trouble) => place.Complain(
        $"What this command has to say could not be written: {Plain(trouble.Message)}",
        "Send its output somewhere else, or make room; files that it had saved by then are there, each of them whole.");

    /// <summary>Words without what would steer a terminal.</summary>
    public static string Plain(string words) => new([.. words.Select(c => char.IsControl(c) ? '?' : c)]);
}
