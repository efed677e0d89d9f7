using TemplateForge.Geometry;

namespace TemplateForge.Testing;

/// <summary>What the families draw with.</summary>
internal static class Dice
{
    public static double Between(this Random dice, double low, double high) => low + (high - low) * dice.NextDouble();

    /// <summary>Every power of ten as likely as the next.</summary>
    public static double OfAnySize(this Random dice, double low, double high) => Math.Exp(dice.Between(Math.Log(low), Math.Log(high)));

    public static T OneOf<T>(this Random dice, params ReadOnlySpan<T> choices) => choices[dice.Next(choices.Length)];

    public static bool OneIn(this Random dice, int times) => dice.Next(times) == 0;

    public static double Sign(this Random dice) => dice.Next(2) == 0 ? 1 : -1;

    /// <summary>A whole multiple of half the grid, either way.</summary>
    public static double GridOffset(this Random dice) => dice.Next(1, 7) * Shapes.Grid / 2 * dice.Sign();

    public static double GridLength(this Random dice) => dice.Next(1, 5) * Shapes.Grid / 2;

    public static Vector GridWay(this Random dice, int steps) =>
        new(dice.Next(-steps, steps + 1) * Shapes.Grid, dice.Next(-steps, steps + 1) * Shapes.Grid);

    public static Contour Moved(this Contour contour, Vector by) => contour.Placed(Placement.Moved(by));

    public static Contour Turned(this Contour contour, Angle by) => contour.Placed(Placement.Turned(by, Point.Origin));
}
