using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads bikes that were asked about: a provenance beside the others, whose figures are those of one of them unless it has its own.</summary>
static class AskedReader
{
    /// <summary>The topic with this provenance last; the topic as it is where the file has none.</summary>
    public static Topic With(Draft draft, Topic topic)
    {
        if (draft.Section(Headings.Asked) is not { } section) return topic;
        var rows = draft.Rows(section, new Shape(["like", "id", "name", "on the job card", "figures from"]), needed: true);
        _ = draft.NamesOf("provenance", rows.Select(row => row["id"]));
        foreach (var row in rows.Where(row => draft.Provenances.Has(row["id"].Text))) draft.Faults.Add(row["id"], $"The provenance \"{row["id"].Text}\" stands twice: also on line {draft.Provenances.LineOf(row["id"].Text)}.");
        if (rows.Count != 1) draft.Faults.Add(section.Heading, $"\"{Headings.Asked}\" has {rows.Count} rows: one is wanted.");
        if (rows.Count != 1 || !draft.Provenances.Known(rows[0]["like"], draft.Faults)) return topic;
        var like = draft.Provenances.IndexOf(rows[0]["like"].Text);
        var provenance = ProvenanceOf(draft, rows[0]);
        var (shares, rates) = (Shares(draft, section), Rates(draft, section));
        return topic with
        {
            Provenances = [.. topic.Provenances, draft.At(rows[0].Line, provenance)],
            Lines = [.. topic.Lines.Select(line => draft.At(draft.LineOf(line), line with { Shares = Longer(line.Shares, shares is null ? line.Shares[like] : shares.GetValueOrDefault(line.Id)) }))],
            Years = [.. topic.Years.Select(year => year with { Shares = Longer(year.Shares, year.Shares[like]) })],
            Events = [.. topic.Events.Select(happened => draft.At(draft.LineOf(happened), happened with { Rates = Longer(happened.Rates, rates.GetValueOrDefault(happened.Id, happened.Rates[like])) }))],
        };
    }

    static Provenance ProvenanceOf(Draft draft, Row row) => new(row["id"].Text, draft.Cells.Needed(row, "name"), draft.Cells.Needed(row, "on the job card"))
    {
        Like = row["like"].Text,
        FiguresFrom = NoteReader.SourceOf(draft, row["figures from"], "The group of bikes"),
    };

    // Shares of lines go in together or not at all.
    static Dictionary<string, double>? Shares(Draft draft, Passage section)
    {
        var rows = draft.Rows(section, new Shape(["line", "share"]), needed: false);
        if (rows.Count == 0) return null;
        var shares = draft.Cells.Whole([.. rows.Select(row => row["share"])], rows[0].Line, $"The column \"share\" of \"{Headings.Asked}\"");
        foreach (var missing in draft.Lines.All.Where(line => !rows.Any(row => row["line"].Is(line)))) draft.Faults.Add(rows[0].Line, $"The line \"{missing}\" has no share here: name every line, or leave the table out.");
        return ByName(draft, rows, "line", draft.Lines, shares);
    }

    static Dictionary<string, double> Rates(Draft draft, Passage section)
    {
        var rows = draft.Rows(section, new Shape(["event", "rate"]), needed: false);
        double[] rates = [.. rows.Select(row => draft.Cells.Share(row["rate"]))];
        foreach (var (row, _) in rows.Zip(rates).Where(pair => pair.Second >= 1)) draft.Faults.Add(row.Line, $"\"{row["event"].Text}\" always happens: a rate is less than 1.");
        return ByName(draft, rows, "event", draft.Events, rates);
    }

    static Dictionary<string, double> ByName(Draft draft, IReadOnlyList<Row> rows, string column, Names names, IReadOnlyList<double> values)
    {
        var known = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < rows.Count; i++)
        {
            var cell = rows[i][column];
            if (names.Known(cell, draft.Faults) && !known.TryAdd(cell.Text, values[i])) draft.Faults.Add(cell, $"The {column} \"{cell.Text}\" stands twice.");
        }

        return known;
    }

    static IReadOnlyList<double> Longer(IReadOnlyList<double> values, double last) => [.. values, last];
}
