using System.Globalization;
using Apprentice.Content.Topics;

namespace Apprentice.Content.Changes;

/// <summary>Makes changes out of what the lead says. Each keeps the lines it finds, so that several can lie over one file and be taken back alone.</summary>
/// <param name="number">Number of the change.</param>
/// <param name="path">Path of the file: "lessons/rim-size/round.md".</param>
/// <param name="text">Its text with the changes so far.</param>
/// <param name="day">The day.</param>
/// <param name="by">Who says so.</param>
public sealed class Drafts(int number, string path, string text, DateOnly day, string by)
{
    /// <summary>Heading of the events of a topic.</summary>
    public const string Events = "## " + Headings.Events;

    /// <summary>Heading of the sizes of a topic.</summary>
    public const string Sizes = "## " + Headings.Sizes;

    /// <summary>Heading of the lines of a topic.</summary>
    public const string LinesHeading = "## " + Headings.Lines;

    /// <summary>Heading of what left the factory together.</summary>
    public const string AsBuilt = "## " + Headings.AsBuilt;

    /// <summary>Heading of the bikes that were asked about.</summary>
    public const string Asked = "## " + Headings.Asked;

    const string Parts = "## " + Headings.Parts;
    const string NoteHeading = "## Note of the workshop";

    /// <summary>A dated note at the end of a lesson, before its last line; null when the lesson is empty.</summary>
    /// <param name="note">The note.</param>
    public Change? Note(string note)
    {
        if (Lines.LastOrDefault(l => l.Trim().Length > 0) is not { } last) return null;
        var date = day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        return Made($"Note in {path}", [last], [$"{NoteHeading}, {date} ({number})", "", $"{Plain(note)} ({by}, {date}.)", "", last]);
    }

    /// <summary>A new row below the last of a table; null when the file has no such table.</summary>
    /// <param name="title">What it is about.</param>
    /// <param name="heading">Heading of its section.</param>
    /// <param name="row">Cells by name of column; columns that are not named stay blank.</param>
    public Change? Row(string title, string heading, IReadOnlyDictionary<string, string> row)
    {
        if (Tables(heading).FirstOrDefault(t => row.Keys.All(t.Columns.Contains)) is not { } table) return null;
        var cells = table.Columns.Select(c => row.TryGetValue(c, out var value) ? Plain(value).Replace('|', '/') : "");
        var last = table.Rows[^1].Line;
        return Made(title, [last], [last, Joined(cells)]);
    }

    /// <summary>Other values in cells of one table; null when a row or column is not there.</summary>
    /// <param name="title">What it is about.</param>
    /// <param name="heading">Heading of its section.</param>
    /// <param name="edits">The cells.</param>
    public Change? Cells(string title, string heading, IReadOnlyList<CellEdit> edits)
    {
        foreach (var table in Tables(heading).Where(t => edits.All(e => t.Columns.Contains(e.Column) && e.Row.Keys.All(t.Columns.Contains))))
        {
            var columns = table.Columns.ToList();
            var rows = table.Rows.Select(r => (r.Line, Cells: r.Cells.ToArray())).ToList();
            var touched = edits.Select(e => RowOf(rows, columns, e)).ToList();
            if (touched.Contains(-1)) continue;
            foreach (var (edit, at) in edits.Zip(touched)) rows[at].Cells[columns.IndexOf(edit.Column)] = edit.Value;
            var range = Enumerable.Range(touched.Min(), touched.Max() - touched.Min() + 1).ToList();
            return Made(title, [.. range.Select(i => rows[i].Line)], [.. range.Select(i => touched.Contains(i) ? Joined(rows[i].Cells) : rows[i].Line)]);
        }

        return null;
    }

    /// <summary>A new section above the parts, which every topic has; null when their heading is not there.</summary>
    /// <param name="title">What it is about.</param>
    /// <param name="section">Its lines, heading first.</param>
    public Change? Section(string title, IReadOnlyList<string> section) =>
        Lines.FirstOrDefault(l => string.Equals(l.Trim(), Parts, StringComparison.OrdinalIgnoreCase)) is { } heading ? Made(title, [heading], [.. section, "", heading]) : null;

    /// <summary>A row of a table as it is written.</summary>
    public static string Joined(IEnumerable<string> cells) => $"| {string.Join(" | ", cells)} |";

    static int RowOf(List<(string Line, string[] Cells)> rows, List<string> columns, CellEdit edit)
    {
        var fitting = Enumerable.Range(0, rows.Count).Where(i => edit.Row.All(p => Holds(rows[i].Cells[columns.IndexOf(p.Key)], p.Value))).Skip(edit.Nth).Take(1).ToList();
        return fitting is [var at] ? at : -1;
    }

    string[] Lines => text.ReplaceLineEndings("\n").Split('\n');

    // A cell may name several: "older, newer".
    static bool Holds(string cell, string value) => cell == value || cell.Split(',').Select(piece => piece.Trim()).Contains(value);

    static string Plain(string text) => text.ReplaceLineEndings(" ").Trim();

    static string[] CellsOf(string row) => [.. row.Trim()[1..].TrimEnd('|').Split('|').Select(c => c.Trim())];

    Change Made(string title, IReadOnlyList<string> was, IReadOnlyList<string> now) => new(number, title) { File = path, Day = day, By = by, Was = was, Is = now };

    // The tables of a section: runs of lines that begin with a bar. A row that has not as many cells as the header is none of ours.
    IEnumerable<Table> Tables(string heading)
    {
        var run = new List<string>();
        foreach (var line in Lines.SkipWhile(l => l.Trim() != heading).Skip(1).TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal)).Append(""))
        {
            if (line.StartsWith('|')) run.Add(line);
            else if (run.Count > 2 && new Table(CellsOf(run[0]), [.. run.Skip(2).Select(l => (l, CellsOf(l)))]) is var table && table.Rows.All(r => r.Cells.Length == table.Columns.Count)) yield return table;
            if (!line.StartsWith('|')) run = [];
        }
    }

    sealed record Table(IReadOnlyList<string> Columns, IReadOnlyList<(string Line, string[] Cells)> Rows);
}

/// <summary>Another value in a cell of a table.</summary>
/// <param name="Row">Which row: cells by name of column; a cell may name several things with commas.</param>
/// <param name="Column">The column.</param>
/// <param name="Value">The value.</param>
public sealed record CellEdit(IReadOnlyDictionary<string, string> Row, string Column, string Value)
{
    /// <summary>The how-manieth of the rows that fit, from 0.</summary>
    public int Nth { get; init; }
}
