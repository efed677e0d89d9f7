namespace TemplateForge.Notation.Tests;

/// <summary>Calls a reader and keeps what it complains of.</summary>
internal static class Heard
{
    public static Place Start { get; } = new("notes.yaml", 3, 7);

    /// <summary>The one complaint of a reader that gives no answer.</summary>
    public static Complaint One(Func<ICollection<Complaint>, bool> read)
    {
        var complaints = new List<Complaint>();
        Assert.False(read(complaints));
        return Assert.Single(complaints);
    }

    /// <summary>The answer of a reader that must have nothing to complain of.</summary>
    public static void Nothing(Func<ICollection<Complaint>, bool> read)
    {
        var complaints = new List<Complaint>();
        var isRead = read(complaints);
        Assert.Equal("", string.Join("\n", complaints));
        Assert.True(isRead);
    }

    /// <summary>Every complaint says something and stands inside the text that begins at <paramref name="start"/>.</summary>
    public static void IsInside(string text, Place start, IEnumerable<Complaint> complaints)
    {
        var lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n', '\r');
        foreach (var complaint in complaints)
        {
            Assert.NotEqual("", complaint.Problem);
            Assert.NotEqual("", complaint.Remedy);
            Assert.InRange(complaint.Line, start.Line, start.Line + lines.Length - 1);
            var first = complaint.Line == start.Line ? start.Column : 1;
            var last = first + lines[complaint.Line - start.Line].Length;
            Assert.True(complaint.Column >= first && complaint.Column <= last, $"{complaint} is outside {first} to {last} of: {text}");
        }
    }
}
