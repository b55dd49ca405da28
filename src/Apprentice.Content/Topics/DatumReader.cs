using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads from where to where a measured clue can be taken on a drawing.</summary>
static class DatumReader
{
    /// <summary>The right datum and the named slips, in their order, clue by clue.</summary>
    public static IReadOnlyList<DrawnDatum> Datums(Draft draft, Passage entry, Figure figure, IReadOnlyList<Clue> clues)
    {
        var rows = draft.Rows(entry, new Shape(["datum", "from", "to"], "clue"), needed: false);
        var measured = clues.Where(clue => clue.Shows is Shows.Measured).ToArray();
        if (rows.Count > 0 && measured.Length == 0)
        {
            draft.Faults.Add(rows[0].Line, "A table of datums needs the field \"Clue\" with a measured clue.");
            return [];
        }

        var points = new Names("point of this figure", [.. figure.Points.Select(point => new Cell(point, entry.Heading.Line))]);
        var found = new List<DrawnDatum>();
        foreach (var row in rows)
        {
            if (ClueOf(draft, row, measured) is not { } clue || IndexOf(draft, row["datum"], clue) is not { } index) continue;
            var known = (row["from"].IsAbsent || points.Known(row["from"], draft.Faults)) & (row["to"].IsAbsent || points.Known(row["to"], draft.Faults));
            if (found.Exists(datum => datum.Clue.Equals(clue.Id, StringComparison.Ordinal) && datum.Datum == index)) draft.Faults.Add(row["datum"], $"\"{row["datum"].Text}\" stands twice here.");
            else if (known) found.Add(new DrawnDatum(clue.Id, index, row["from"].Text, row["to"].Text));
        }

        if (rows.Count > 0 && !draft.Faults.AnyWithin(rows[0].Line - 2, rows[^1].Line + 1)) Missing(draft, rows[0].Line, measured, found);
        return [.. measured.SelectMany(clue => found.Where(datum => datum.Clue.Equals(clue.Id, StringComparison.Ordinal)).OrderBy(datum => datum.Datum))];
    }

    static void Missing(Draft draft, int line, Clue[] clues, List<DrawnDatum> found)
    {
        foreach (var clue in clues.Where(clue => found.Exists(datum => datum.Clue.Equals(clue.Id, StringComparison.Ordinal))))
        {
            string[] names = ["right", .. SlipsOf(clue).Select(slip => slip.Name)];
            for (var i = 0; i < names.Length; i++)
            {
                if (!found.Exists(datum => datum.Clue.Equals(clue.Id, StringComparison.Ordinal) && datum.Datum == i))
                    draft.Faults.Add(line, $"The datum \"{names[i]}\" of \"{clue.Id}\" is missing here: add a row.");
            }
        }
    }

    static Clue? ClueOf(Draft draft, Row row, Clue[] measured)
    {
        if (row["clue"].IsBlank && measured.Length == 1) return measured[0];
        var names = new Names("measured clue of this drawing", [.. measured.Select(clue => new Cell(clue.Id, row.Line))]);
        if (row["clue"].IsBlank) draft.Faults.Add(row.Line, $"Which clue is measured so? Add a column clue: {Nearest.Or(names.All)}.");
        return !row["clue"].IsBlank && names.Known(row["clue"], draft.Faults) ? measured.First(clue => row["clue"].Is(clue.Id)) : null;
    }

    /// <summary>0 for "right", n for the n-th slip, by its number or its name.</summary>
    static int? IndexOf(Draft draft, Cell cell, Clue clue)
    {
        var slips = SlipsOf(clue);
        if (cell.Is("right")) return 0;
        if (int.TryParse(cell.Text, out var number) && number >= 1 && number <= slips.Count) return number;
        var at = slips.ToList().FindIndex(slip => cell.Is(slip.Name));
        if (at >= 0) return at + 1;
        draft.Faults.Add(cell, slips.Count == 0
            ? $"\"{clue.Id}\" has no named slip \"{cell.Text}\": write right."
            : $"\"{clue.Id}\" has no named slip \"{cell.Text}\": write right, a number from 1 to {slips.Count}, or \"{Nearest.Of(cell.Text, slips.Select(slip => slip.Name), 1)[0]}\".");
        return null;
    }

    static IReadOnlyList<Slip> SlipsOf(Clue clue) => clue.Shows is Shows.Measured measured ? measured.Slips : [];
}
