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
    public IEnumerable<Row> RowsOf(Grid grid, Faults faults)
    {
        var columns = grid.Header.Select(cell => cell.Text.ToLowerInvariant()).ToArray();
        string[] valid = [.. needed, .. optional];
        for (var i = 0; i < columns.Length; i++)
        {
            if (!valid.Contains(columns[i], StringComparer.Ordinal))
                faults.Add(grid.Line, $"There is no column \"{columns[i]}\" here: use {Nearest.Or(Nearest.Of(columns[i], valid, valid.Length))}.");
            else if (Array.IndexOf(columns, columns[i]) < i)
                faults.Add(grid.Line, $"The column \"{columns[i]}\" stands twice.");
        }

        foreach (var missing in needed.Except(columns, StringComparer.Ordinal)) faults.Add(grid.Line, $"The column \"{missing}\" is missing.");
        return [.. grid.Rows.Select(cells => RowOf(columns, cells, grid.Line, faults))];
    }

    static Row RowOf(string[] columns, IReadOnlyList<Cell> cells, int headerLine, Faults faults)
    {
        var line = cells.Count > 0 ? cells[0].Line : headerLine;
        if (cells.Count > columns.Length) faults.Add(line, $"This row has {cells.Count} cells, its table has {columns.Length} columns.");
        var byColumn = new Dictionary<string, Cell>(StringComparer.Ordinal);
        for (var i = 0; i < Math.Min(cells.Count, columns.Length); i++) byColumn.TryAdd(columns[i], cells[i]);
        return new Row(line, byColumn);
    }
}
