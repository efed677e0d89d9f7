using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using TemplateForge.Drawing;
using TemplateForge.Notation;

namespace TemplateForge.Shop;

/// <summary>Reads how people name paper: <c>a3</c>, <c>arch-d across</c>, <c>500x700mm</c>, <c>roll 610mm</c>.</summary>
/// <param name="Known">The shop's papers.</param>
/// <param name="Margins">What a printer leaves blank on paper that is in no table.</param>
public sealed record PaperWords(ImmutableArray<Paper> Known, Margins Margins)
{
    /// <summary>Bounds of a paper's sides in mm. PDF pages end at 14 400 points, which are 5080 mm (ISO 32000-1, annex C).</summary>
    public const double LeastSide = 140;
    public const double MostWidth = 2000;
    public const double MostHeight = 5000;

    private const string Roll = "roll";

    /// <summary>Reads a paper; capitals, and spaces for hyphens, are understood.</summary>
    /// <param name="word">As it was written.</param>
    /// <param name="place">Where.</param>
    /// <param name="complaints">Where complaints go.</param>
    /// <param name="paper">The paper, under the one name that it has in records.</param>
    public bool TryRead(string word, Place place, ICollection<Complaint> complaints, [MaybeNullWhen(false)] out Paper paper)
    {
        paper = null;
        var words = word.Trim().ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var lay = words is [.., "upright"] ? PaperLay.Upright : words is [.., "across"] ? PaperLay.Across : PaperLay.Either;
        var size = string.Join(' ', lay == PaperLay.Either ? words : words[..^1]);
        if (size.Length == 0 || size == Roll)
        {
            complaints.Add(Wordings.PaperNotUnderstood(place, word, Known.Select(p => p.Name)));
            return false;
        }
        if (size.StartsWith(Roll + " ", StringComparison.Ordinal))
        {
            if (!TrySide(size[Roll.Length..], "the width of a roll", MostWidth, place, complaints, out var width)) return false;
            paper = new(string.Create(CultureInfo.InvariantCulture, $"{Roll} {width:0.###}mm"), width, MostHeight, Margins) { IsRoll = true };
        }
        else if (size.Split('x', '×') is [var one, var other] && char.IsAsciiDigit(one.FirstOrDefault()))
        {
            // The unit behind the second number is meant for the first as well.
            var unit = UnitOf(other);
            if (!TrySide(UnitOf(one).Length > 0 ? one : one + unit, "a side of the paper", MostHeight, place, complaints, out var a)
                || !TrySide(other, "a side of the paper", MostHeight, place, complaints, out var b)) return false;
            var (width, height) = (Math.Min(a, b), Math.Max(a, b));
            if (width > MostWidth)
            {
                complaints.Add(Wordings.OutOfRange(place, "the shorter side of the paper", Quantity.Length(width), Quantity.Length(LeastSide), Quantity.Length(MostWidth)));
                return false;
            }
            paper = new(string.Create(CultureInfo.InvariantCulture, $"{width:0.###}x{height:0.###}mm"), width, height, Margins);
        }
        else
        {
            var name = size.Replace(' ', '-');
            paper = Known.FirstOrDefault(p => p.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
            if (paper is null)
            {
                complaints.Add(Wordings.PaperNotUnderstood(place, word, Known.Select(p => p.Name)));
                return false;
            }
        }
        if (lay != PaperLay.Either) paper = paper with { Lay = lay, Name = $"{paper.Name} {(lay == PaperLay.Upright ? "upright" : "across")}" };
        return true;
    }

    private static string UnitOf(string side) => side.TrimStart(' ', '.', '/', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9');

    private static bool TrySide(string text, string name, double most, Place place, ICollection<Complaint> complaints, out double side)
    {
        side = 0;
        if (!QuantityReader.TryRead(text.Trim(), Unit.Millimetre, place, complaints, out var found, name)) return false;
        side = found.Value;
        if (side >= LeastSide && side <= most) return true;
        complaints.Add(Wordings.OutOfRange(place, name, found, Quantity.Length(LeastSide), Quantity.Length(most)));
        return false;
    }
}
