using Apprentice.Content.Pages;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads where bikes come from, the lines and the years.</summary>
static class PopulationReader
{
    const int MostYears = 150;

    /// <summary>Provenances in the order of the file.</summary>
    public static IReadOnlyList<Provenance> Provenances(Draft draft)
    {
        var rows = draft.Rows(Headings.Provenances, new Shape(["id", "name", "on the job card"]));
        draft.Provenances = draft.NamesIn(
            Headings.Provenances, "provenance", rows, "id", "name", "made", "pitfall", "year", "lines", "built", "does");
        return [.. rows.Select(row => new Provenance(row["id"].Text, draft.Cells.Needed(row, "name"), draft.Cells.Needed(row, "on the job card")))];
    }

    /// <summary>Lines in the order of the file.</summary>
    public static IReadOnlyList<Line> Lines(Draft draft)
    {
        var rows = draft.Rows(Headings.Lines, new Shape(["id", "name", .. draft.Provenances.All], "made", "pitfall", "counts from"));
        draft.Lines = draft.NamesIn(Headings.Lines, "line", rows, "finding", "text", "none", "stop");
        var shares = draft.Provenances.All.Select(provenance => Column(draft, rows, provenance)).ToArray();
        return [.. rows.Select((row, index) => LineOf(draft, row, [.. shares.Select(column => column[index])]))];
    }

    /// <summary>Shares of years in the order of the file, one entry a year.</summary>
    public static IReadOnlyList<YearShare> Years(Draft draft)
    {
        var rows = draft.Rows(Headings.Years, new Shape(["year", .. draft.Provenances.All]));
        var years = new List<YearShare>();
        foreach (var row in rows)
        {
            var shares = new double[draft.Provenances.All.Count];
            for (var at = 0; at < shares.Length; at++) shares[at] = draft.Cells.Share(row[draft.Provenances.All[at]]);
            var (from, to) = draft.Cells.Months(row["year"]);
            if (from is null || to is null || !WholeYears(from.Value, to.Value))
            {
                draft.Faults.Add(row.Line, $"\"{row["year"].Text}\" is no year or range of years: write 2008 or 2008 to 2012.");
                continue;
            }

            for (var year = from.Value.Year; year <= to.Value.Year; year++)
            {
                if (years.Exists(other => other.Year == year)) draft.Faults.Add(row.Line, $"The year {year} stands twice.");
                years.Add(new YearShare(year, shares));
            }
        }

        if (years.Count > MostYears) draft.Faults.Add(rows[0].Line, $"These are {years.Count} years: at most {MostYears}.");
        years.Sort((one, other) => one.Year.CompareTo(other.Year));
        return years;
    }

    static bool WholeYears(Month from, Month to) => from.OfYear == 1 && to.OfYear == 12;

    static Line LineOf(Draft draft, Row row, IReadOnlyList<double> shares)
    {
        var (from, to) = draft.Cells.Months(row["made"]);
        var pitfall = draft.Cells.Name(row["pitfall"], draft.Pitfalls);
        var counts = draft.Cells.Month(row["counts from"]);
        if (counts is not null && row["pitfall"].IsBlank) draft.Faults.Add(row.Line, "\"counts from\" needs a pitfall beside it.");
        return draft.At(row.Line, new Line(row["id"].Text, draft.Cells.Needed(row, "name"), shares, from, to, pitfall, counts));
    }

    static IReadOnlyList<double> Column(Draft draft, IReadOnlyList<Row> rows, string provenance) =>
        rows.Count == 0
            ? []
            : draft.Cells.Whole([.. rows.Select(row => row[provenance])], rows[0].Line, $"The column \"{provenance}\" of \"{Headings.Lines}\"");
}
