namespace Apprentice.Content.Pages;

/// <summary>A piece of text with its line.</summary>
/// <param name="Text">The text without marks of Markdown, trimmed.</param>
/// <param name="Line">Line in the file, from 1.</param>
sealed record Cell(string Text, int Line)
{
    /// <summary>The cell of a column that its table does not have: blank, and without a line. The missing column is a fault already told.</summary>
    public static Cell Absent { get; } = new("", 0);

    /// <summary>True for the cell of a column that its table does not have.</summary>
    public bool IsAbsent => Line == 0;

    /// <summary>True when nothing is written.</summary>
    public bool IsBlank => Text.Length == 0;

    /// <summary>The pieces between separators, each trimmed, empty ones left out.</summary>
    public IEnumerable<Cell> Split(char separator)
    {
        var line = Line;
        return Text.Split(separator, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(text => new Cell(text, line));
    }

    /// <summary>What stands before and after the first separator; the second is blank without one.</summary>
    public Halves Cut(string separator)
    {
        var at = Text.IndexOf(separator, StringComparison.Ordinal);
        return at < 0
            ? new Halves(this, new Cell("", Line))
            : new Halves(new Cell(Text[..at].Trim(), Line), new Cell(Text[(at + separator.Length)..].Trim(), Line));
    }

    /// <summary>True when the text is the word, whatever its case.</summary>
    public bool Is(string word) => string.Equals(Text, word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>What stands before and after a separator.</summary>
/// <param name="Before">Before it.</param>
/// <param name="After">After it; blank without a separator.</param>
sealed record Halves(Cell Before, Cell After);
