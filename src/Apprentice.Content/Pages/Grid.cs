namespace Apprentice.Content.Pages;

/// <summary>A pipe table as written.</summary>
/// <param name="Header">Names of the columns.</param>
/// <param name="Rows">Cells row by row, each with the line of the row; rows may be shorter or longer than the header.</param>
sealed record Grid(IReadOnlyList<Cell> Header, IReadOnlyList<IReadOnlyList<Cell>> Rows)
{
    /// <summary>Line of the header.</summary>
    public int Line => Header[0].Line;

    /// <summary>The cells of a column, whatever the case of its name; rows that end before it left out, none when the table has no such column.</summary>
    public IEnumerable<Cell> Column(string name)
    {
        for (var at = 0; at < Header.Count; at++)
        {
            if (!Header[at].Is(name)) continue;
            foreach (var row in Rows)
            {
                if (at < row.Count) yield return row[at];
            }
        }
    }
}

/// <summary>A row of a table whose columns are known.</summary>
/// <param name="Line">Line in the file.</param>
/// <param name="Cells">Cells by name of column.</param>
sealed record Row(int Line, IReadOnlyDictionary<string, Cell> Cells)
{
    /// <summary>The cell of a column; absent when the table has no such column.</summary>
    public Cell this[string column] => Cells.TryGetValue(column, out var cell) ? cell : Cell.Absent;
}
