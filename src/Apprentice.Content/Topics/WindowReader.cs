using Apprentice.Content.Pages;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads running changes: "2013-11 to 2015-01, told 2014-06, source list-2015".</summary>
static class WindowReader
{
    const string Told = "told ";
    const string From = "source ";

    /// <summary>The running change of a row, null for one from the start, and the source mark of its months.</summary>
    public static (Window? Window, string MonthsFrom) Window(Draft draft, Row row)
    {
        var pitfall = draft.Cells.Name(row["pitfall"], draft.Pitfalls);
        var cell = row["from"];
        if (cell.IsBlank)
        {
            if (pitfall is not null) draft.Faults.Add(row.Line, "The pitfall of a running change needs a \"from\" beside it.");
            return (null, "");
        }

        // The mark comes last and may hold commas itself.
        var (months, mark) = cell.Cut(", " + From);
        Cell[] pieces = [.. months.Split(',')];
        var (opens, closes) = pieces.Length > 0 ? pieces[0].Cut(" to ") : new Halves(cell, cell);
        var first = draft.Cells.Month(opens);
        var last = closes.IsBlank ? first : draft.Cells.Month(closes);
        if (last < first || (last == first && !closes.IsBlank)) draft.Faults.Add(row.Line, $"The running change closes in {last}, not after it opens in {first}.");
        return (new Window(first ?? default, last ?? default, ToldOf(draft, pieces) ?? last ?? default, pitfall), mark.IsBlank ? "" : NoteReader.SourceOf(draft, mark, "A month"));
    }

    static Month? ToldOf(Draft draft, Cell[] pieces)
    {
        if (pieces.Length < 2) return null;
        var told = pieces[1].Text.StartsWith(Told, StringComparison.OrdinalIgnoreCase) ? draft.Cells.Month(new Cell(pieces[1].Text[Told.Length..].Trim(), pieces[1].Line)) : null;
        if (told is null || pieces.Length > 2) draft.Faults.Add(pieces[1], $"\"{pieces[1].Text}\" is not understood: write 2013-11 to 2015-01, told 2014-06, source judgement.");
        return told;
    }
}
