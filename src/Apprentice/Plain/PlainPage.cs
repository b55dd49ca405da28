using System.Globalization;
using Apprentice.Content;
using Apprentice.Screens;

namespace Apprentice.Plain;

/// <summary>A page as lines: no columns, no drawing, no mark that must be seen.</summary>
/// <param name="Title">What this is.</param>
/// <param name="Right">Who this is, and how far.</param>
/// <param name="Lines">The body, then the foot.</param>
/// <param name="Marked">The line that Enter takes, as a sentence, or empty.</param>
/// <param name="Keys">What can be typed, as a sentence.</param>
/// <param name="Numbers">The numbers that take a line.</param>
sealed record PlainPage(string Title, string Right, IReadOnlyList<PlainLine> Lines, string Marked, string Keys, IReadOnlyList<int> Numbers)
{
    static readonly string[] Dropped = ["scale.key-zoom", "scale.key-move", "scale.key-words", "scale.key-picture"];
    static readonly string[] Backs = ["key.empty-back", "key.esc-back"];

    /// <summary>The page of a screen as lines.</summary>
    public static PlainPage Of(Page page)
    {
        var rows = page.Body.OfType<Block.Table>().SelectMany(t => t.Rows).ToList();
        var marked = rows.FirstOrDefault(r => r.Marked && r.Key.Trim().Length > 0)?.Key.Trim();
        return new PlainPage(
            Head(page.Title),
            Head(page.Right),
            [.. page.Body.SelectMany(b => Of(b, PlainSort.Text)), .. page.Foot.SelectMany(b => Of(b, PlainSort.Foot))],
            marked is null ? "" : Words.Of("plain.marked", ("n", marked)),
            Words.Of("plain.keys", ("keys", string.Join(", ", page.Keys.Where(k => k.Length > 0 && !Is(k, Dropped)).Select(k => Is(k, Backs) ? Words.Of("plain.key-esc") : k).Distinct(StringComparer.Ordinal)))),
            [.. rows.Select(r => int.TryParse(r.Key, NumberStyles.None, null, out var n) ? n : 0).Where(n => n > 0)]);
    }

    /// <summary>All of it.</summary>
    public IEnumerable<string> Whole() => ((string[])[Right.Length == 0 ? Title : $"{Title}. {Right}", .. Lines.Select(l => l.Text), Marked, Keys]).Where(l => l.Length > 0);

    /// <summary>What is new since the page before: after a new sentence all that follows it in the body, of tables else the rows that changed.</summary>
    public IEnumerable<string> Since(PlainPage before)
    {
        if (!Same(Right, before.Right)) yield return Right;
        var known = before.Lines.Select(l => l.Text).ToHashSet(StringComparer.Ordinal);
        var fresh = false;
        foreach (var line in Lines)
        {
            var isNew = !known.Contains(line.Text);
            fresh |= isNew && line.Sort == PlainSort.Text;
            if (isNew || (fresh && line.Sort != PlainSort.Foot)) yield return line.Text;
        }
        if (Marked.Length > 0 && (fresh || !Same(Marked, before.Marked))) yield return Marked;
        if (!Same(Keys, before.Keys)) yield return Keys;
    }

    static IEnumerable<PlainLine> Of(Block block, PlainSort sort) => block switch
    {
        Block.Text { Words.Length: > 0 } text => [new PlainLine(Field(Clean(text.Words)), sort)],
        Block.Table table => Table(table),
        Block.Picture picture => picture.InWords.Select(w => new PlainLine(Clean(w), PlainSort.Text)),
        _ => [],
    };

    static IEnumerable<PlainLine> Table(Block.Table table)
    {
        if (table.Rows.Count > 0 && table.Columns[0].Header.Length > 0) yield return new PlainLine($"{Clean(table.Columns[0].Header)}:", PlainSort.Row);
        foreach (var row in table.Rows)
        {
            var said = table.Columns.Select((c, i) => Cell(c, i, Clean(row.Cells[i]))).Where(c => c.Length > 0).ToList();
            var key = row.Key.Trim();
            if (said.Count == 0) continue;
            var (first, then) = table.Columns.Skip(1).Any(c => c.Header.Length > 0) ? (", ", ", ") : (": ", ". ");
            var text = said.Count == 1 ? said[0] : said[0] + first + string.Join(then, said.Skip(1));
            yield return new PlainLine(key.Length > 0 ? $"{key}  {text}" : text, PlainSort.Row);
        }
    }

    // A bar says no more than the word beside it: only on which side it stands.
    static string Cell(Column column, int nth, string cell)
    {
        if (cell is "" or "|") return "";
        if (cell.All(c => c == '#')) return column.Header;
        if (column.Said.Length > 0) return Words.Of(column.Said, ("cell", cell));
        return nth == 0 || column.Header.Length == 0 ? cell : $"{column.Header} {cell}";
    }

    // The sign that stands where the next letter goes is for eyes.
    static string Field(string text) => text.EndsWith('_') ? text[..^1].TrimEnd() : text;

    static string Clean(string text) => string.Join(' ', new string([.. text.Select(c => char.IsControl(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    static string Head(string text) => Clean(string.Join(", ", text.Split("   ", StringSplitOptions.RemoveEmptyEntries)));

    static bool Is(string key, string[] names) => names.Any(n => Same(key, Words.Of(n)));

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}

/// <summary>A line of a page.</summary>
/// <param name="Text">The text.</param>
/// <param name="Sort">What it was on the page.</param>
sealed record PlainLine(string Text, PlainSort Sort);

/// <summary>What a line was on the page.</summary>
enum PlainSort
{
    /// <summary>A sentence of the body.</summary>
    Text,

    /// <summary>A row of a table.</summary>
    Row,

    /// <summary>A sentence of the foot.</summary>
    Foot,
}
