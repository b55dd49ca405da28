using Apprentice.Content.Pages;

namespace Apprentice.Content.Topics;

/// <summary>The columns of a table.</summary>
/// <param name="needed">Columns that must be there; the first one tells this table from others of the same passage.</param>
/// <param name="optional">Columns that may be there.</param>
sealed class Shape(IReadOnlyList<string> needed, params IReadOnlyList<string> optional)
{
    /// <summary>Columns that must be there.</summary>
    public IReadOnlyList<string> Needed => needed;

    /// <summary>True when the table has the first column.</summary>
    public bool Fits(Grid grid) => grid.Header.Any(cell => cell.Is(needed[0]));

    /// <summary>Rows by column; notes unknown, missing and repeated columns and rows with too many cells.</summary>
    /// <param name="grid">The table.</param>
    /// <param name="faults">Where faults go.</param>
    /// <param name="lenient">True to let unknown columns pass, because not all valid ones are known.</param>
    public IEnumerable<Row> RowsOf(Grid grid, Faults faults, bool lenient)
    {
        var columns = grid.Header.Select(cell => cell.Text.ToLowerInvariant()).ToArray();
        string[] valid = [.. needed, .. optional];
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Length == 0) TooLong(grid, i, faults);
            else if (!valid.Contains(columns[i], StringComparer.Ordinal) && !lenient)
                faults.Add(grid.Line, $"There is no column \"{columns[i]}\" here: use {Nearest.Or(Nearest.Of(columns[i], valid, valid.Length))}.");
            else if (Array.IndexOf(columns, columns[i]) < i)
                faults.Add(grid.Line, $"The column \"{columns[i]}\" stands twice.");
        }

        foreach (var missing in needed.Except(columns, StringComparer.Ordinal)) faults.Add(grid.Line, $"The column \"{missing}\" is missing.");
        return [.. grid.Rows.Select(cells => RowOf(columns, cells))];
    }

    static void TooLong(Grid grid, int column, Faults faults)
    {
        foreach (var cells in grid.Rows.Where(cells => cells.Count > column && !cells[column].IsBlank))
            faults.Add(cells[0], $"This row has more cells than its table has columns, {grid.Header.Count(cell => !cell.IsBlank)}.");
    }

    static Row RowOf(string[] columns, IReadOnlyList<Cell> cells)
    {
        var line = cells[0].Line;
        var byColumn = new Dictionary<string, Cell>(StringComparer.Ordinal);
        for (var i = 0; i < columns.Length; i++) byColumn.TryAdd(columns[i], i < cells.Count ? cells[i] : new Cell("", line));
        return new Row(line, byColumn);
    }
}
