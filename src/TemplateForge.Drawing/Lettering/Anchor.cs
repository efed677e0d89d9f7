namespace TemplateForge.Drawing;

/// <summary>A point of a line of text: its base line's start, middle or end, or the middle of the capitals' height.</summary>
public enum Anchor
{
    BaseStart,
    BaseMiddle,
    BaseEnd,
    MiddleStart,
    Middle,
    MiddleEnd,
}
