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
        var rows = draft.Rows(entry, new Shape(["finding", "text", .. columns], Kind.NoneId, "stop", "looks like", "described", "gauge"), needed: true, lenient: columns.Count == 0);
        var names = draft.NamesOf("finding", rows.Select(row => row["finding"]));
        if (names.Count == 1) draft.Faults.Add(rows[0].Line, "A clue with one finding tells nothing: add another.");
        var hasNone = rows.Any(row => row.Cells.ContainsKey(Kind.NoneId));
        if (hasNone && node is not Node.OfPart) draft.Faults.Add(rows[0].Line, "The column \"none\" is only for clues that read a part.");
        return new Shows.Table
        {
            Findings = [.. rows.Select(row => FindingOf(draft, row, rows) with { Gauge = GaugeReader.Leaf(draft, row["gauge"], tool) })],
            Rows = [.. columns.Select(column => Shares(draft, rows, column))],
            NoneRow = hasNone ? Shares(draft, rows, Kind.NoneId) : null,
            Misread = misread,
        };
    }

    static TableFinding FindingOf(Draft draft, Row row, IReadOnlyList<Row> rows)
    {
        var described = row["described"].Split('/').Select(piece => piece.Text).ToList();
        if (described.Count == 0 && rows.Any(other => !other["described"].IsBlank))
            draft.Faults.Add(row.Line, $"The finding \"{row["finding"].Text}\" is not described, and others are: describe all or none.");
        return new TableFinding(row["finding"].Text, draft.Cells.Needed(row, "text"), row["stop"].Text) { LooksLike = row["looks like"].Text, Described = described };
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
