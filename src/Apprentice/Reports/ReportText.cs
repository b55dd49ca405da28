using System.Globalization;
using System.Net;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Apprentice.Reports;

/// <summary>A report as text.</summary>
static class ReportText
{
    const int Schema = 1;

    static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n", WriteIndented = true };

    /// <summary>The report in a form.</summary>
    /// <param name="report">The report.</param>
    /// <param name="form">csv, json or html.</param>
    public static string Of(Report report, string form) => form switch
    {
        "csv" => Csv(report),
        "json" => Json(report),
        _ => Html(report),
    };

    /// <summary>The report in lines for a person: a table a block, a row a line.</summary>
    public static string Plain(Report report)
    {
        var text = new StringBuilder(report.Title).Append('\n');
        foreach (var note in report.Notes) _ = text.Append(note).Append('\n');
        foreach (var table in report.Tables)
        {
            _ = text.Append('\n').Append(table.Title).Append('\n');
            var rows = table.Rows.Select(r => r.Select(Cell).ToArray()).Prepend([.. table.Columns]).ToList();
            var widths = table.Columns.Select((_, c) => rows.Max(r => Cells.Width(r[c]))).ToArray();
            foreach (var row in rows) _ = text.Append("  ").Append(string.Join("  ", row.Select((cell, c) => Cells.PadRight(cell, widths[c]))).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    // One cell a line, so that all tables fit into one file. Source of the quoting: RFC 4180.
    static string Csv(Report report)
    {
        var text = new StringBuilder("table,row,column,value\n");
        foreach (var table in report.Tables)
        {
            foreach (var (row, column) in table.Rows.SelectMany((_, r) => table.Columns.Select((_, c) => (r, c))))
                text.Append(Quoted(table.Id)).Append(',').Append(row + 1).Append(',').Append(table.Columns[column]).Append(',').Append(Quoted(Cell(table.Rows[row][column]))).Append('\n');
        }

        return text.ToString();
    }

    // A spreadsheet would work out a cell that begins with one of these signs.
    static string Quoted(string cell)
    {
        var safe = cell.Length > 0 && cell[0] is '=' or '+' or '-' or '@' ? "'" + cell : cell;
        return safe.AsSpan().IndexOfAny(",\"\n\r") >= 0 ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }

    static string Json(Report report) => JsonSerializer.Serialize(
        new Dictionary<string, object?>(StringComparer.Ordinal)
        {
            ["schema"] = Schema,
            ["title"] = report.Title,
            ["at"] = report.At.ToString("O", CultureInfo.InvariantCulture),
            ["tables"] = report.Tables.ToDictionary(
                t => t.Id, t => t.Rows.Select(r => t.Columns.Select((c, i) => (c, r[i])).ToDictionary(x => x.c, x => x.Item2, StringComparer.Ordinal)), StringComparer.Ordinal),
        },
        Options) + "\n";

    static string Html(Report report)
    {
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>").Append(Said(report.Title)).Append("</title>\n");
        text.Append("<style>body{font:11pt/1.4 sans-serif;margin:2em;max-width:50em}table{border-collapse:collapse;width:100%}th,td{border-bottom:1px solid #000;padding:.2em .6em;text-align:left}h2{margin-top:1.5em;break-after:avoid}tr{break-inside:avoid}</style></head>\n");
        text.Append("<body><h1>").Append(Said(report.Title)).Append("</h1>\n<p>").Append(report.At.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)).Append("</p>\n");
        foreach (var note in report.Notes) text.Append("<p>").Append(Said(note)).Append("</p>\n");
        foreach (var table in report.Tables.Where(t => t.Rows.Count > 0))
        {
            text.Append("<h2>").Append(Said(table.Title)).Append("</h2>\n<table><tr>");
            foreach (var column in table.Columns) text.Append("<th>").Append(Said(column.Replace('_', ' '))).Append("</th>");
            text.Append("</tr>\n");
            foreach (var row in table.Rows) text.Append("<tr>").AppendJoin("", row.Select(c => $"<td>{Said(Cell(c))}</td>")).Append("</tr>\n");
            text.Append("</table>\n");
        }

        return text.Append("</body></html>\n").ToString();
    }

    static string Said(string text) => WebUtility.HtmlEncode(text);

    static string Cell(object? value) => Convert.ToString(value, CultureInfo.InvariantCulture) ?? "";
}
