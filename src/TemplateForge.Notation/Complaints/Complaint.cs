namespace TemplateForge.Notation;

/// <summary>What the author of a file, or of an option on the command line, can put right: where, what, and what would be right.</summary>
/// <param name="File">The file, or the name under which the text was given.</param>
/// <param name="Line">Counted from 1, as an editor shows it.</param>
/// <param name="Column">Counted from 1, as an editor shows it.</param>
/// <param name="Problem">A sentence: the author's own words first, then what is wrong with them.</param>
/// <param name="Remedy">A sentence: what would be right.</param>
public sealed record Complaint(string File, int Line, int Column, string Problem, string Remedy)
{
    public override string ToString() => $"{File}:{Line}:{Column}: {Problem}\n    {Remedy}";
}
