using System.Globalization;
using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the table of published sizes.</summary>
static class PublishedReader
{
    static readonly string[] Units = ["mm", "in", "tpi", "degrees", "teeth", "holes", "speeds", "kg", "Nm", "bar", "N", "mm/turn", "of 100"];

    /// <summary>Published sizes in the order of the file.</summary>
    public static IReadOnlyList<PublishedSize> Sizes(Draft draft)
    {
        var rows = draft.Rows(Headings.Published, new Shape(["name", "of", "size", "source"]));
        foreach (var again in rows.GroupBy(r => new { Name = r["name"].Text, Of = r["of"].Text }).SelectMany(g => g.Skip(1)))
            draft.Faults.Add(again.Line, $"\"{again["name"].Text}\", {again["of"].Text}, stands twice among the published sizes.");
        return [.. rows.Select(row => SizeOf(draft, row))];
    }

    static PublishedSize SizeOf(Draft draft, Row row)
    {
        var (number, unit) = row["size"].Cut(" ");
        if (!double.TryParse(number.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) || (unit.Text.Length > 0 && !Units.Contains(unit.Text, StringComparer.Ordinal)))
            draft.Faults.Add(row["size"], $"\"{row["size"].Text}\" is no published size: write a number and a unit ({Nearest.Or(Units)}), or a bare count.");
        var mark = NoteReader.SourceOf(draft, row["source"], $"The published size \"{row["name"].Text}\"");
        return new PublishedSize(draft.Cells.Needed(row, "name"), draft.Cells.Needed(row, "of"), value, unit.Text, mark);
    }
}
