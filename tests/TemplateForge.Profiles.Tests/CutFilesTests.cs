using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Sheets;

namespace TemplateForge.Profiles.Tests;

/// <summary>The cut file of every piece that ships passes the check that anyone's DXF is put to, by hand and with a machine's plan.</summary>
public class CutFilesTests
{
    private static readonly Cutter Torch = new("torch", "torch", Kerf: 1.2, LeastHole: 5) { LeadIn = 4, LeadOut = 2, LeastLead = 1, Overcut = 1 };

    public static TheoryData<string> Names => [.. TheLibrary.Library.Entries.Select(e => e.Name)];

    [Theory, MemberData(nameof(Names))]
    public void A_table_would_take_every_cut_file_that_ships_as_it_is(string name)
    {
        var made = TheLibrary.Profile(name).Make();
        var pieces = made.Pieces.Where(p => p.Kind != PieceKind.Paper).ToList();
        foreach (var piece in pieces) Passes(made, piece, DxfFormat.All[1]);
        // One of each, for plans take their time.
        foreach (var piece in pieces.Take(1)) Passes(made, piece with { Planned = CutPlan.Of(piece, Torch, Torch.Kerf, CutSheet.RunOut) }, DxfFormat.All[2]);
    }

    private static void Passes(Modification made, Piece piece, DxfFormat format)
    {
        // Thousands of strokes of lettering take their time and are no more than a mark; whole files are checked where commands are tested.
        var drawing = new LineDrawing([.. CutSheet.Of(made, piece).Layers.Where(l => l.Name is not ("NOTE" or "DEMONSTRATION"))]);
        Assert.True(DxfReader.TryRead(DxfWriter.Write(drawing, format), AskedUnit.None, DxfReader.Exact, out var contents, out _));
        var layers = contents.Strokes.Select(s => s.Layer).Distinct().ToList();
        var check = DxfCheck.Of(contents, CutFileLayers.Among(layers));
        Assert.True(check.Findings.IsEmpty, $"{piece.Name} {format.Name} {piece.Planned.IsNone}: {string.Join("; ", check.Findings.Take(5))}; layers {string.Join(", ", layers)}");
        // All of layer CUT was looked at, and nothing else.
        Assert.Equal(CutSheet.Cuts(piece).Sum(c => c.Length), check.Chains.Sum(c => c.Length), 1e-3);
        Assert.All(check.Chains, c => Assert.Equal("CUT", c.Layer));
    }
}
