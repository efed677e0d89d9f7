namespace TemplateForge.Drawing;

/// <summary>The figures, 10 high and all 5 wide; <see cref="StrokeNotation"/> tells how to read them.</summary>
internal static class Figures
{
    private const double Width = 0.5;

    private const string Table = """
        0 2.5,10@w 0,6.7@s 0,3.3 2.5,0@e 5,3.3@n 5,6.7 2.5,10@w
        1 0,7.8 2.2,10 2.2,0
        2 0.2,7.9@75 2.5,10@e 4.9,7.5@s 4.2,5.1@> 0,0 5,0
        3 0.2,8.3 2.3,10@e 4.7,7.7@s 2.3,5.4@w 1.6,5.4 | 2.3,5.4@e 5,2.7@s 2.3,0@w ~0,1.8
        4 3.7,0 3.7,10 0,2.8 5,2.8
        5 4.6,10 0.6,10 0.2,5.3 0.2,5.3@35 2.4,6.2@e 5,3.1@s 2.3,0@w ~0,1.5
        6 4.4,9.2 2.9,10@w 0,3.1@s 2.5,0@e 5,3.1@n 2.5,6.1@w 0,3.1@s
        7 0,10 5,10 1.6,0
        8 2.5,5.4@w 0.3,7.7@n 2.5,10@e 4.7,7.7@s 2.5,5.4@w 0,2.7@s 2.5,0@e 5,2.7@n 2.5,5.4@w
        9 0.6,0.8 2.1,0@e 5,6.9@n 2.5,10@w 0,6.9@s 2.5,3.9@e 5,6.9@n
        """;

    /// <summary>Small figures and letters, raised to the top of the capitals.</summary>
    private const string Raised = "¹1 ²2 ³3 ⁴4 ªa ºo";

    /// <summary>A fraction, its upper and its lower figure.</summary>
    private const string Fractions = "½12 ⅓13 ⅔23 ¼14 ¾34 ⅛18 ⅜38 ⅝58 ⅞78";

    private const double Small = 0.55;

    public static void Read(Dictionary<char, Glyph> glyphs)
    {
        foreach (var row in Table.Split('\n'))
            glyphs.Add(row[0], Glyph.Centred(StrokeNotation.Strokes(row[1..], glyphs), Width));

        foreach (var raised in Raised.Split(' '))
            glyphs.Add(raised[0], Glyph.Fitting(glyphs[raised[1]].Small(Small, left: 0, foot: 1 - Small)));

        var bar = StrokeNotation.Strokes("1.9,0 5.9,10", glyphs);
        foreach (var fraction in Fractions.Split(' '))
        {
            var upper = glyphs[fraction[1]].Small(Small, left: 0, foot: 1 - Small);
            var lower = glyphs[fraction[2]].Small(Small, left: 0.5, foot: 0);
            glyphs.Add(fraction[0], Glyph.Fitting([.. upper, .. bar, .. lower]));
        }
    }
}
