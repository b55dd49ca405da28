namespace Apprentice.Screens;

/// <summary>Lays a table out to a width: cells wrap, columns that may go are left out first.</summary>
static class TableLayout
{
    const int Gap = 2;
    const int Least = 9;
    const int Narrow = 70;

    /// <summary>The lines of a table.</summary>
    public static IEnumerable<Line> Lines(Block.Table table, int width)
    {
        var keys = table.Rows.Max(r => (int?)r.Key.Length) ?? 0;
        var lead = table.Rows.Any(r => r.Key.Length > 0 || r.Marked) ? keys + 4 : 0;
        var all = Enumerable.Range(0, table.Columns.Count).ToList();
        var shown = width >= Narrow || Fits(table, all, width - lead) ? all : all.Where(c => !table.Columns[c].Drop).ToList();
        var widths = Widths(table, shown, width - lead);
        var headers = table.Columns.Any(c => c.Header.Length > 0) ? Wrapped(shown, widths, table, c => table.Columns[c].Header) : [];
        foreach (var line in headers) yield return new Line(new string(' ', lead) + line);
        foreach (var row in table.Rows)
        {
            var first = true;
            foreach (var line in Wrapped(shown, widths, table, c => row.Cells[c]))
            {
                var key = first ? row.Key.PadLeft(keys) : new string(' ', keys);
                var start = lead == 0 ? "" : $"{(first && row.Marked ? '>' : ' ')} {key}  ";
                yield return new Line(start + line, row.Marked);
                first = false;
            }
        }
    }

    static int Natural(Block.Table table, int column) =>
        table.Rows.Select(r => r.Cells[column]).Append(table.Columns[column].Header).Max(Cells.Width);

    static bool Fits(Block.Table table, List<int> shown, int room) => shown.Sum(c => Natural(table, c) + Gap) - Gap <= room;

    static int[] Widths(Block.Table table, List<int> shown, int room)
    {
        var widths = shown.Select(c => Natural(table, c)).ToArray();
        var over = widths.Sum(w => w + Gap) - Gap - room;
        while (over > 0)
        {
            var widest = Array.IndexOf(widths, widths.Max());
            if (widths[widest] <= Least) break;
            widths[widest]--;
            over--;
        }
        return widths;
    }

    static IEnumerable<string> Wrapped(List<int> shown, int[] widths, Block.Table table, Func<int, string> cell)
    {
        var wrapped = shown.Select((c, i) => Layout.Wrap(cell(c), Math.Max(1, widths[i]))).ToList();
        for (var n = 0; n < wrapped.Max(w => w.Count); n++)
        {
            var line = string.Join(
                new string(' ', Gap),
                shown.Select((c, i) => Set(n < wrapped[i].Count ? wrapped[i][n] : "", widths[i], table.Columns[c].Right)));
            yield return line.TrimEnd();
        }
    }

    static string Set(string text, int width, bool right) => right ? Cells.PadLeft(text, width) : Cells.PadRight(text, width);
}
