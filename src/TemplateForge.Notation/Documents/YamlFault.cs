using YamlDotNet.Core;

namespace TemplateForge.Notation;

/// <summary>Puts the parser's faults into the words of somebody who writes the file.</summary>
internal static class YamlFault
{
    /// <remarks>The parser tells its faults apart by their message alone, so that is what is looked at.</remarks>
    public static Complaint Explain(SourceText source, YamlException fault)
    {
        var (start, end) = ((int)fault.Start.Index, (int)fault.End.Index);
        if (TryFindTab(source, start, end, out var tab))
            return Wordings.TabIndent(source.At(tab));
        var place = source.At(start);
        var message = fault.Message;
        return message switch
        {
            _ when Says("flow") => Wordings.BracketNotClosed(place),
            _ when Says("found unknown escape") || Says("hexadecimal") || Says("escape code") || Says("surrogates") =>
                Wordings.EscapeNotUnderstood(place),
            _ when Says("quoted") => Wordings.QuoteNotClosed(place),
            _ when Says("cannot start any token") => Wordings.SignBeforeText(place),
            _ when Says("invalid mapping") || Says("Mapping values") || Says("simple key") => Wordings.ColonNotUnderstood(place),
            _ when Says("block") || Says("indent") => Wordings.IndentNotUnderstood(place),
            _ when Says("nchor") || Says("alias") => Wordings.Anchor(place),
            _ when Says("tag") => Wordings.Tag(place),
            _ => Wordings.NotYaml(place),
        };

        bool Says(string part) => message.Contains(part, StringComparison.Ordinal);
    }

    /// <summary>A tab before the first character of one of the lines of the fault, or of the line that follows it.</summary>
    private static bool TryFindTab(SourceText source, int start, int end, out int tab)
    {
        var text = source.Text;
        tab = Math.Min(source.LineStart(Math.Min(start, text.Length)), text.Length);
        while (tab < text.Length)
        {
            while (tab < text.Length && text[tab] == ' ')
                tab++;
            if (tab < text.Length && text[tab] == '\t')
                return true;
            var next = tab < text.Length ? text.IndexOf('\n', tab) : -1;
            if (next < 0 || tab > end)
                return false;
            tab = next + 1;
        }
        return false;
    }
}
