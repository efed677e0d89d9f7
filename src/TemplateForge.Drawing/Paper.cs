namespace TemplateForge.Drawing;

/// <summary>A sheet size that a printer takes, or a roll.</summary>
/// <param name="Name">As people call it: a4, letter, roll 610mm.</param>
/// <param name="Width">Shorter side in mm; of a roll its width.</param>
/// <param name="Height">Longer side in mm; of a roll the longest page that is printed on it.</param>
/// <param name="Margins">Strips along the edges on which the printer may not print.</param>
public sealed record Paper(string Name, double Width, double Height, Margins Margins)
{
    /// <param name="name">As people call it.</param>
    /// <param name="width">Shorter side in mm.</param>
    /// <param name="height">Longer side in mm.</param>
    /// <param name="margin">Strip along every edge, in mm.</param>
    public Paper(string name, double width, double height, double margin) : this(name, width, height, Margins.Alike(margin)) { }

    /// <summary>Whether it is cut to the length that a page needs.</summary>
    public bool IsRoll { get; init; }

    /// <summary>How its pages lie.</summary>
    public PaperLay Lay { get; init; }

    /// <summary>Its name without how it lies.</summary>
    public string Size => Lay == PaperLay.Either ? Name : Name[..Name.LastIndexOf(' ')];

    /// <summary>The widest of its margins, in mm: what is free of ink whichever way round the printer takes the sheet.</summary>
    public double Margin => Margins.Widest;

    /// <summary>What is printed where the length does not follow from a drawing, as a cover: a roll is cut to the proportion of a sheet, in whole mm.</summary>
    public Paper AsSheet() => IsRoll ? this with { IsRoll = false, Height = Math.Min(Height, Math.Floor(Width * Math.Sqrt(2))) } : this;
}

/// <summary>How a sheet lies before whoever reads it.</summary>
public enum PaperLay
{
    /// <summary>Whichever takes fewer pages.</summary>
    Either,

    /// <summary>Its shorter side below.</summary>
    Upright,

    /// <summary>Its longer side below.</summary>
    Across,
}
