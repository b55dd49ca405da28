using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the findings of a clue that is read, seen, felt or heard.</summary>
static class TableReader
{
    /// <summary>The table of a clue: a row a finding, a column a value of what it reads.</summary>
    public static Shows.Table Table(Draft draft, Passage entry, Node node, double misread, string tool)
    {
        var columns = ColumnsOf(draft, node);
        var rows = draft.Rows(entry, new Shape(["finding", "text", .. columns], Kind.NoneId, "stop", "gauge"), needed: true, lenient: columns.Count == 0);
        var names = draft.NamesOf("finding", rows.Select(row => row["finding"]));
        if (names.Count == 1) draft.Faults.Add(rows[0].Line, "A clue with one finding tells nothing: add another.");
        var hasNone = rows.Any(row => row.Cells.ContainsKey(Kind.NoneId));
        if (hasNone && node is not Node.OfPart) draft.Faults.Add(rows[0].Line, "The column \"none\" is only for clues that read a part.");
        return new Shows.Table
        {
            Findings = [.. rows.Select(row => new TableFinding(row["finding"].Text, draft.Cells.Needed(row, "text"), row["stop"].Text) { Gauge = GaugeReader.Leaf(draft, row["gauge"], tool) })],
            Rows = [.. columns.Select(column => Shares(draft, rows, column))],
            NoneRow = hasNone ? Shares(draft, rows, Kind.NoneId) : null,
            Misread = misread,
        };
    }

    static IReadOnlyList<string> ColumnsOf(Draft draft, Node node) => node switch
    {
        Node.OfPart part => draft.KindsOf(part.Part).All,
        Node.OfLine => draft.Lines.All,
        Node.OfEvent => ["no", "yes"],
        _ => [],
    };

    static IReadOnlyList<double> Shares(Draft draft, IReadOnlyList<Row> rows, string column) =>
        rows.Count == 0 || !rows.Any(row => row.Cells.ContainsKey(column))
            ? []
            : draft.Cells.Whole([.. rows.Select(row => row[column])], rows[0].Line, $"The column \"{column}\"");
}
