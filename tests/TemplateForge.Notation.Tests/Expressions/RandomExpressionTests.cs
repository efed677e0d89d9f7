using System.Globalization;

namespace TemplateForge.Notation.Tests;

/// <summary>Random trees are written down, read and computed, and computed here beside it.</summary>
public class RandomExpressionTests
{
    private double largest;

    [Fact]
    public void A_random_expression_comes_to_what_the_tree_comes_to_that_it_was_written_from()
    {
        var random = new Random(20);
        var computed = 0; // rounding is measured against the largest number on the way, which a difference can make small
        while (computed < 5000)
        {
            largest = 1;
            var (text, value) = Length(random, 4);
            if (text.Length > Expression.LongestText)
                continue;
            var complaints = new List<Complaint>();
            Assert.True(Expression.TryRead(text, Heard.Start, complaints, out var expression), text + string.Concat(complaints));
            Assert.True(expression.TryCheck(new Bench(), complaints, out var kind), text + string.Concat(complaints));
            Assert.Equal(ValueKind.Length, kind);
            if (!double.IsFinite(value))
                continue;
            Assert.True(expression.TryEvaluate(new Bench(), complaints, out var found), text + string.Concat(complaints));
            Assert.True(Math.Abs(value - found.AsQuantity().Value) <= 1e-12 * largest, $"{text} is {value}, not {found}");
            computed++;
        }
    }

    private (string Text, double Value) Length(Random random, int depth)
    {
        var found = AnyLength(random, depth);
        largest = Math.Max(largest, Math.Abs(found.Value));
        return found;
    }

    private (string Text, double Value) AnyLength(Random random, int depth)
    {
        if (depth == 0)
            return LengthLeaf(random);
        var (a, x) = Length(random, depth - 1);
        var (b, y) = Length(random, depth - 1);
        var (n, k) = Number(random, depth - 1);
        return random.Next(12) switch
        {
            0 => ($"{a} + {b}", x + y),
            1 => ($"{a} - ({b})", x - y),
            2 => ($"({n}) * ({a})", Product(k, x)),
            3 => ($"({a})*({n})", Product(k, x)),
            4 => ($"-({a})", -x),
            5 => ($"hypot({a}, {b})", Math.Sqrt((x * x) + (y * y))),
            6 => ($"min({a}, {b})", Math.Min(x, y)),
            7 => ($"max({a},{b}, 0)", Math.Max(0, Math.Max(x, y))),
            8 => ($"sqrt(({a})^2)", Math.Abs(x)),
            9 => ($"(if {a} < {b} - 1 mm or not lapped then {a} else {b})", x < y - 1 ? x : y),
            10 => ($"abs({a})", Math.Abs(x)),
            _ => LengthLeaf(random),
        };
    }

    /// <summary>A factor enlarges the rounding of what it multiplies.</summary>
    private double Product(double number, double length)
    {
        largest *= Math.Max(1, Math.Abs(number));
        return number * length;
    }

    private (string Text, double Value) Number(Random random, int depth)
    {
        var whole = random.Next(1, 40);
        var degrees = random.Next(-800, 800);
        if (depth == 0)
            return (Written(whole), whole);
        var (a, x) = Number(random, depth - 1);
        largest = Math.Max(largest, Math.Abs(x));
        return random.Next(6) switch
        {
            0 => ($"{whole} / 8", whole / 8.0),
            1 => ($"{whole} 1/2", whole + 0.5),
            2 => ($"cos({degrees} deg)", Math.Cos(degrees * Math.PI / 180)),
            3 => ($"({a})^2 + 1", (x * x) + 1),
            4 => ($"-{whole}^2", -(double)whole * whole),
            _ => ($"2^1^3 - ({a})", 2 - x),
        };
    }

    private static (string Text, double Value) LengthLeaf(Random random)
    {
        var whole = random.Next(1, 200);
        var half = random.Next(0, 8);
        return random.Next(6) switch
        {
            0 => ("diameter", 190),
            1 => ($"{whole} mm", whole),
            2 => ($"{whole} {(2 * half) + 1}/16 in", (whole + (((2 * half) + 1) / 16.0)) * 25.4),
            3 => ($"{whole}/8 in", whole / 8.0 * 25.4),
            4 => (Written(whole / 10.0) + "cm", whole),
            _ => ("top(opening)", 35.25),
        };
    }

    private static string Written(double value) => value.ToString(CultureInfo.InvariantCulture);
}
