namespace TemplateForge.Notation;

/// <summary>A place in a text: line and column are counted from 1, as an editor shows them.</summary>
public readonly record struct Place(string File, int Line, int Column)
{
    public Complaint Complain(string problem, string remedy) => new(File, Line, Column, problem, remedy);

    /// <summary>The place this many characters to the right on the same line.</summary>
    public Place Right(int columns) => this with { Column = Column + columns };

    public override string ToString() => $"{File}:{Line}:{Column}";
}
