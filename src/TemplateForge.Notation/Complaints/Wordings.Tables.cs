namespace TemplateForge.Notation;

/// <summary>What is said of tables of comma-separated values.</summary>
public static partial class Wordings
{
    public static Complaint TableIsEmpty(Place place) => place.Complain(
        "This table has no line of headings.", "Write the headings in the first line, with commas between them.");

    public static Complaint OtherNumberOfCells(Place place, int cells, int headings, char separator) => place.Complain(
        $"This row has {Cells(cells)}, but the line of headings has {headings}.",
        $"Give every row a cell for each heading, empty where there is no value; {Parting(separator)} parts cells here, and a cell with one in it stands in double quotes.");

    public static Complaint QuoteInsideCell(Place place) => place.Complain(
        "A double quote stands inside a cell that does not begin with one.", "Put the whole cell in double quotes and write the quote twice, or write in for inches.");

    public static Complaint CellNotClosed(Place place) => place.Complain(
        "The double quote that opens this cell is never closed.", "Close it; a quote inside the cell is written twice.");

    public static Complaint TextAfterQuote(Place place) => place.Complain(
        "Something follows the double quote that closes this cell.", "Let the next cell or the end of the line follow; a quote inside the cell is written twice.");

    private static string Parting(char separator) => separator switch { CsvReader.Semicolon => "a semicolon", CsvReader.Tab => "a tab", _ => "a comma" };

    private static string Cells(int count) => count == 1 ? "1 cell" : $"{count} cells";
}
