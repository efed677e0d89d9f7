using System.Collections.Immutable;
using System.CommandLine;
using TemplateForge.Cli.Printing;
using TemplateForge.Drawing;
using TemplateForge.Jobs;
using TemplateForge.Notation;
using TemplateForge.Sheets;

namespace TemplateForge.Cli.Commands;

/// <summary>Tells what a cutting table would choke on in somebody's DXF, and writes one that it would not.</summary>
internal static class CheckDxfCommand
{
    public const string Name = "check-dxf";
    private const int LongestFile = 200_000_000;

    public static Command Create(Terminal terminal)
    {
        var file = new Argument<string>("file") { Description = "A .dxf file, R12 to R2018, in text form." };
        var unit = new Option<string>("--unit") { Description = "The unit of its numbers, whatever it states itself; without it, what it states, or else mm.", HelpName = "mm|in" };
        var layer = new Option<string[]>("--layer") { Description = "A layer that is cut; give it again for more. Without it, CUT of a cut file of this program, all layers of others.", HelpName = "name" };
        var open = new Option<bool>("--open-cuts") { Description = "Open cuts are meant: do not tell of them." };
        var repair = new Option<string>("--repair") { Description = "Write a DXF that a table takes, and list what was changed.", HelpName = "file" };
        var close = new Option<string>("--close") { Description = "The widest gap that is closed on repair; without it, 0.2 mm.", HelpName = "length" };
        var dxf = new Option<string>("--dxf") { Description = "What the repaired file is to be: r2000 unless said otherwise, r12 for old controllers, -in for inches.", HelpName = "r2000|r2000-in|r12|r12-in" };
        var replace = new Option<bool>("--replace") { Description = "Let the file go that stands where the repaired one is to be written." };
        var json = CommonOptions.Json();
        var command = new Command(Name, "Tell what a cutting table would choke on in a DXF, and where.") { file, unit, layer, open, repair, close, dxf, replace, json };
        command.SetAction(parsed =>
        {
            var line = new CommandLine(parsed.Tokens.Select(t => t.Value).ToList(), [unit.Name, layer.Name, repair.Name, close.Name, dxf.Name]);
            var asked = new Asked(
                new(parsed.GetRequiredValue(file), line.PlaceOf(parsed.GetRequiredValue(file))), line.Single(unit.Name), line.Given(layer.Name), parsed.GetValue(open),
                line.Single(repair.Name), line.Single(close.Name), line.Single(dxf.Name),
                parsed.GetValue(replace) ? new(replace.Name, line.PlaceOf(replace.Name)) : Choice.Open, parsed.GetValue(json));
            return Run(asked, terminal);
        });
        return command;
    }

    private sealed record Asked(
        Choice File, Choice Unit, ImmutableArray<Choice> Layers, bool OpenIsMeant, Choice Repair, Choice Close, Choice Dxf, Choice Replace, bool Json);

    private static int Run(Asked asked, Terminal terminal)
    {
        var complaints = new List<Complaint>();
        var unit = AskedUnit.None;
        var gap = DxfRepair.UsualGap;
        var format = DxfFormat.Usual;
        if ((asked.Unit.IsMade && !TryUnit(asked.Unit, complaints, out unit)) | (asked.Close.IsMade && !TryGap(asked.Close, complaints, out gap))
            | (asked.Dxf.IsMade && !TryFormat(asked.Dxf, complaints, out format)) | !GoTogether(asked, complaints)
            || !TextFiles.TryReadBytes(terminal.PathOf(asked.File.Word), LongestFile, asked.File.Place, complaints, out var bytes)
            || !TryRead(asked, bytes, unit, DxfReader.Exact, terminal, complaints, out var contents)
            || !TryPurposes(asked, contents, complaints, out var purposes))
            return ComplaintPrinter.Refuse(complaints, asked.Json, terminal);

        if (!asked.Repair.IsMade)
        {
            var check = Waiting.For(() => DxfCheck.Of(contents, purposes), $"Checking {asked.File.Word}", terminal);
            new DxfPrinter(terminal, asked.Json).Print(asked.File.Word, contents, purposes, check);
            return check.Findings.IsEmpty ? ExitCode.Done : ExitCode.Refused;
        }

        // As few arcs as the tolerance of curves allows, for it is to be cut.
        return TryRead(asked, bytes, unit, Geometry.Tolerance.Curve, terminal, complaints, out var coarse)
            ? Repair(asked, coarse, purposes, gap, format, terminal)
            : ComplaintPrinter.Refuse(complaints, asked.Json, terminal);
    }

    private static int Repair(Asked asked, DxfContents contents, DxfPurposes purposes, double gap, DxfFormat format, Terminal terminal)
    {
        var complaints = new List<Complaint>();
        if (DxfCheck.CutOf(contents, purposes).IsEmpty) complaints.Add(Wordings.NothingToCut(asked.File));
        else
        {
            var repaired = Waiting.For(() => DxfRepair.Of(contents, purposes, gap, format), $"Repairing {asked.File.Word}", terminal);
            var written = DxfWriter.Write(repaired.Drawing, format);
            if (DxfReader.TryRead(written, new(format.Unit, Overrules: false), DxfReader.Exact, out var again, out _)
                && SavedFile.TrySave(terminal.PathOf(asked.Repair.Word), written, asked.Replace.IsMade, asked.Repair.Place, complaints))
            {
                var check = DxfCheck.Of(again, repaired.Purposes);
                var left = check with { Findings = [.. repaired.Lost, .. check.Findings] };
                new DxfPrinter(terminal, asked.Json).Print(asked.Repair.Word, again, left, repaired);
                return left.Findings.IsEmpty ? ExitCode.Done : ExitCode.Refused;
            }
        }
        return ComplaintPrinter.Refuse(complaints, asked.Json, terminal);
    }

    private static bool GoTogether(Asked asked, List<Complaint> complaints)
    {
        if (asked.Repair.IsMade) return true;
        var without = complaints.Count;
        foreach (var (option, choice) in (ReadOnlySpan<(string, Choice)>)[("--close", asked.Close), ("--dxf", asked.Dxf), ("--replace", asked.Replace)])
        {
            if (choice.IsMade) complaints.Add(Wordings.OnlyWithRepair(choice.Place, option));
        }
        return complaints.Count == without;
    }

    private static bool TryPurposes(Asked asked, DxfContents contents, List<Complaint> complaints, out DxfPurposes purposes)
    {
        var layers = contents.Strokes.Select(s => s.Layer).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        purposes = asked.Layers.IsEmpty ? CutFileLayers.Among(layers) : new([.. asked.Layers.Select(l => l.Word)], NamedAreCut: true);
        purposes = purposes with { OpenIsMeant = asked.OpenIsMeant };
        var unknown = asked.Layers.Where(l => !layers.Contains(l.Word, StringComparer.OrdinalIgnoreCase)).ToList();
        complaints.AddRange(unknown.Select(l => Wordings.NoSuchLayer(l, layers)));
        return unknown.Count == 0;
    }

    private static bool TryRead(
        Asked asked,
        byte[] bytes,
        AskedUnit unit,
        double fit,
        Terminal terminal,
        List<Complaint> complaints,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out DxfContents? contents)
    {
        (var isRead, contents, var fault) = Waiting.For(
            () => (DxfReader.TryRead(bytes, unit, fit, out var read, out var unread), read, unread), $"Reading {asked.File.Word}", terminal);
        if (isRead && contents is not null) return true;
        complaints.Add(new Place(asked.File.Word, fault.Line, 1).Complain(fault.Problem, fault.Remedy));
        return false;
    }

    private static bool TryUnit(Choice choice, List<Complaint> complaints, out AskedUnit unit)
    {
        unit = new(choice.Is(DxfUnit.Inch.Name) ? DxfUnit.Inch : DxfUnit.Millimetre, Overrules: true);
        if (choice.Is(unit.Unit.Name)) return true;
        complaints.Add(Wordings.UnknownUnit(choice));
        return false;
    }

    private static bool TryFormat(Choice choice, List<Complaint> complaints, out DxfFormat format)
    {
        if (DxfFormat.TryNamed(choice.Word, out var named))
        {
            format = named;
            return true;
        }
        format = DxfFormat.Usual;
        complaints.Add(Wordings.UnknownDxf(choice, DxfFormat.All.Select(f => f.Name)));
        return false;
    }

    private static bool TryGap(Choice choice, List<Complaint> complaints, out double gap)
    {
        gap = 0;
        if (!QuantityReader.TryRead(new(choice.Word, choice.Place), Unit.Millimetre, complaints, out var length, "--close")) return false;
        gap = length.Value;
        if (gap is >= 0 and <= DxfCheck.WidestGap) return true;
        complaints.Add(Wordings.GapOutOfBounds(choice, DxfCheck.WidestGap));
        return false;
    }
}
