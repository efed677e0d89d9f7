using System.Collections.Immutable;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Fabrication;
using TemplateForge.Geometry;

namespace TemplateForge.Sheets;

/// <summary>The work in order, each caution where it bites.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="Height">Height in mm of the capitals.</param>
internal sealed record WorkBlocks(ImmutableArray<WorkStep> Steps, double Height)
{
    /// <summary>A block for each step: at a hold point a box to sign; at a step that can hurt the sign and what it warns of, in full where it
    /// comes up first, then by its title.</summary>
    public ImmutableArray<Block> Of(double width)
    {
        var (blocks, said, indent) = (ImmutableArray.CreateBuilder<Block>(), new HashSet<Caution>(), Height * 2.8);
        for (var i = 0; i < Steps.Length; i++)
        {
            blocks.Add(Block.Beside(0, NumberOf(i + 1, Steps[i], indent, Height), Step(Steps[i], width - indent, said)));
        }
        return blocks.ToImmutable();
    }

    /// <summary>The cautions that no step has: they hold all the time.</summary>
    public ImmutableArray<Caution> Others(ImmutableArray<Caution> all) => [.. all.Except(Steps.SelectMany(s => s.Cautions))];

    /// <summary>The number of a step, on the line of its first words: in a frame those stand lower.</summary>
    /// <param name="number">The number.</param>
    /// <param name="step">The step.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm of the capitals.</param>
    public static Block NumberOf(int number, WorkStep step, double width, double height)
    {
        var (board, words) = (new Board(), Block.Text(number.ToString(CultureInfo.InvariantCulture), width, height));
        var lower = step.IsHold ? height * (0.9 + 0.15) : 0;
        words.PutOn(board, new Point(0, -lower));
        return new(width, words.Height + lower, board);
    }

    /// <summary>A line to sign and date.</summary>
    /// <param name="words">What is signed for.</param>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm of the capitals.</param>
    public static Block Signature(string words, double width, double height)
    {
        var (board, y) = (new Board(), -2.6 * height);
        board.Text(words, new(0, y), height);
        var (start, middle) = (Alphabet.Width(words, height) + height, Math.Max(width * 0.66, Alphabet.Width(words, height) + 7 * height));
        board.Line(LineKinds.Dimension, new(start, y), new(middle, y));
        board.Text("Date", new(middle + height, y), height);
        board.Line(LineKinds.Dimension, new(middle + 2 * height + Alphabet.Width("Date", height), y), new(width, y));
        return new(width, -y + 0.4 * height, board);
    }

    private Block Step(WorkStep step, double width, HashSet<Caution> said)
    {
        var padding = Height * 0.9;
        var inside = step.IsHold ? width - 2 * padding : width;
        var cautions = step.Cautions.Select(c => Beware(c, inside, inFull: said.Add(c))).ToList();
        if (!step.IsHold) return Block.Stacked(Height * 0.6, [.. cautions, Block.Text(step.Text, inside, Height)]);
        return Block.Stacked(Height * 0.7,
        [
            Block.Text("HOLD", inside, Height * 1.15, strong: true),
            .. cautions,
            Block.Text(step.Text, inside, Height),
            Signature("Checked by", inside, Height),
        ]).AsWideAs(inside).Framed(padding);
    }

    private Block Beware(Caution caution, double width, bool inFull)
    {
        var sign = WarningSign.Of(Height * 1.5);
        var words = width - sign.Width - Height;
        return Block.Beside(Height, sign, Block.Stacked(Height * 0.5,
            Block.Text(caution.Title, words, Height, strong: true),
            inFull ? Block.Text(caution.Text, words, Height) : Block.Empty(words, 0)));
    }
}
