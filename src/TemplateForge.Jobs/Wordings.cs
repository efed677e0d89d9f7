using System.Collections.Immutable;
using System.IO;
using System.Text.Json;
using TemplateForge.Notation;

namespace TemplateForge.Jobs;

/// <summary>Every complaint that this project makes, a function each.</summary>
internal static partial class Wordings
{
    // Choices

    public static Complaint UnknownPaper(Choice paper, IEnumerable<string> known) => paper.Place.Complain(
        $"There is no paper called {Quoted(paper.Word)} in the shop's table.", Nearest(paper.Word, known));

    public static Complaint UnknownHand(Choice hand, IEnumerable<string> known) => hand.Place.Complain(
        $"{Quoted(hand.Word)} is not a hand.", Nearest(hand.Word, known));

    public static Complaint NotAlike(Choice hand, string profile) => hand.Place.Complain(
        $"With these values {profile} is not its own mirror image, so there is none for {Quoted(hand.Word)} hand.", "Say left, right or both.");

    public static Complaint ProfileHasNoHand(Choice hand, string profile) => hand.Place.Complain(
        $"{profile} fits either side of the vehicle as it is, so there is no {Quoted(hand.Word)} of it.",
        "Leave the hand out.");

    // Files to read

    public static Complaint NoSuchFile(Place place, string path) => place.Complain(
        $"There is no file {Quoted(path)}.", "Check the name and the folder.");

    public static Complaint IsAFolder(Place place, string path) => place.Complain(
        $"{Quoted(path)} is a folder.", "Name the file in it.");

    public static Complaint FileTooLong(Place place, string path, int longest) => place.Complain(
        $"{Quoted(path)} has more than {longest / 1000} kB, which no such file needs.", "Check that it is the file you meant.");

    public static Complaint NotText(Place place, string path) => place.Complain(
        $"{Quoted(path)} is not text in UTF-8.", "Save it as UTF-8, or check that it is the file you meant.");

    public static Complaint CannotRead(Place place, string path, Exception trouble) => place.Complain(
        $"{Quoted(path)} cannot be read: {Sentence(trouble.Message)}", "Check that you may read it.");

    // Job records

    public static Complaint NotJson(Place place) => place.Complain(
        "This is not JSON from here on.", "A job record is remade from the profile, or copied afresh from where it was kept.");

    public static Complaint NotAJobRecord(Place place) => place.Complain(
        "This is not a job record.", "Name the job.json that was saved with a job.");

    public static Complaint OtherRecordVersion(Place place, string version) => place.Complain(
        $"This job record is of version {Quoted(version)}; this program reads version {JobRecord.Version}.",
        "Use the program that wrote it, or a newer one.");

    public static Complaint RecordTooLong(Place place) => place.Complain(
        $"This has more than {JobRecord.LongestText / 1000} kB, which no job record has.", "Name the job.json that was saved with a job.");

    public static Complaint MissingInRecord(Place place, string key) => place.Complain(
        $"{Quoted(key)} is missing here.", "A job record has it; copy the record afresh from where it was kept.");

    public static Complaint WrongKindInRecord(Place place, string key, JsonTokenType wanted) => place.Complain(
        $"{Quoted(key)} should be {KindOf(wanted)}.", "Copy the record afresh from where it was kept.");

    public static Complaint UnknownInRecord(Place place, string key, IEnumerable<string> known) => place.Complain(
        $"A job record has no {Quoted(key)} here.", Nearest(key, known));

    public static Complaint TwiceInRecord(Place place, string key) => place.Complain(
        $"{Quoted(key)} stands here twice.", "Keep one of them.");

    // Saving

    public static Complaint FolderHasNoName(Place place) => place.Complain(
        "That is not a folder that a job can have for itself.", "Name a folder, such as out/notch.");

    public static Complaint FolderIsCurrent(Place place, string folder) => place.Complain(
        $"You are working inside {Quoted(folder)}, so it cannot be swapped for another.", "Name a folder inside it.");

    public static Complaint PlaceIsAFile(Place place, string path) => place.Complain(
        $"{Quoted(path)} is a file, not a folder.", "Move it away, or save elsewhere with --out.");

    public static Complaint FolderIsNotAJob(Place place, string path, ImmutableArray<string> entries) => place.Complain(
        $"{Quoted(path)} holds {Listed(entries)}, and no job record: it is not a job's folder.",
        "Save elsewhere with --out; --replace does not touch what is not a job.");

    public static Complaint FolderHoldsMore(Place place, string path, ImmutableArray<string> strange) => place.Complain(
        $"{Quoted(path)} also holds {Listed(strange)}, which this program did not make.",
        "Move that away, or save elsewhere with --out.");

    public static Complaint FolderHoldsAnotherJob(Place place, string path, IEnumerable<string> jobs) => place.Complain(
        $"{Quoted(path)} holds another job ({string.Join("; ", jobs)}).",
        "Add --replace if it may go, or save elsewhere with --out.");

    public static Complaint AnotherRunIsWriting(Place place, string folder) => place.Complain(
        $"Another run is saving to {Quoted(folder)} just now.", "Wait until it is done, or save elsewhere with --out.");

    public static Complaint FileIsThere(Place place, string path) => place.Complain(
        $"{path} is there already.", "Name another file, or add --replace to let it go.");

    public static Complaint CannotSave(Place place, string folder, Exception trouble) => place.Complain(
        IsFull(trouble)
            ? $"The disk is full, so nothing was saved to {Quoted(folder)}; what was there is as it was."
            : $"Nothing was saved to {Quoted(folder)}: {Sentence(trouble.Message)} What was there is as it was.",
        IsFull(trouble) ? "Make room, or save elsewhere with --out." : "Check that you may write there, or save elsewhere with --out.");

    // ENOSPC and EDQUOT of Linux and macOS; Windows' two ways to say that a disk is full.
    private static bool IsFull(Exception trouble) =>
        trouble is IOException && trouble.HResult is 28 or 122 or 69 or unchecked((int)0x80070070) or unchecked((int)0x80070027);

    private static string Nearest(string word, IEnumerable<string> known)
    {
        var all = known.ToImmutableArray();
        return Spelling.Nearest(word, all, out var nearest) ? $"Did you mean {nearest}?" : $"It can be {string.Join(", ", all)}.";
    }

    private static string KindOf(JsonTokenType kind) => kind switch
    {
        JsonTokenType.StartObject => "an object in braces",
        JsonTokenType.StartArray => "a list in brackets",
        _ => "a text in quotes",
    };

    private static string Listed(ImmutableArray<string> names)
    {
        const int shown = 3;
        var first = string.Join(", ", names.Take(shown).Select(Quoted));
        return names.Length > shown ? $"{first} and {names.Length - shown} more" : first;
    }

    // The author's own words, cut where they are long and without what would steer a terminal.
    private static string Quoted(string words)
    {
        const int longest = 80;
        var plain = new string([.. words.Take(longest).Select(c => char.IsControl(c) ? '?' : c)]);
        return words.Length > longest ? $"'{plain}…'" : $"'{plain}'";
    }

    private static string Sentence(string message) => message.EndsWith('.') ? message : message + ".";
}
