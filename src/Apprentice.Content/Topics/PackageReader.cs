using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads what left the maker together.</summary>
static class PackageReader
{
    /// <summary>Packages in the order of the file.</summary>
    public static IReadOnlyList<Package> Packages(Draft draft)
    {
        var rows = draft.Rows(Headings.AsBuilt, new Shape(["package", "fitted"], "lines", "from", "share", "pitfall"));
        foreach (var row in rows) _ = draft.Cells.Needed(row, "package");
        return [.. rows.GroupBy(row => row["package"].Text, StringComparer.Ordinal).Select(group => PackageOf(draft, [.. group]))];
    }

    static Package PackageOf(Draft draft, IReadOnlyList<Row> rows)
    {
        var fitted = rows.Select(row => Fitted(draft, row["fitted"])).ToArray();
        string[] parts = [.. fitted.FirstOrDefault(pairs => pairs is not null)?.Select(pair => pair.Part) ?? []];
        var shares = Shares(draft, rows);
        var builds = rows.Zip(fitted, (row, pairs) => BuildOf(draft, row, parts, pairs, shares[row])).ToArray();
        return draft.At(rows[0].Line, new Package(rows[0]["package"].Text, parts, builds));
    }

    /// <summary>Shares by row; "rest" is what the rows with the same lines and "from" leave.</summary>
    static Dictionary<Row, double> Shares(Draft draft, IReadOnlyList<Row> rows)
    {
        var shares = new Dictionary<Row, double>(ReferenceEqualityComparer.Instance);
        foreach (var together in rows.GroupBy(row => new { Lines = row["lines"].Text, From = row["from"].Text }).Select(group => group.ToArray()))
        {
            Cell[] cells = [.. together.Select(row => row["share"])];
            var found = cells.Any(cell => cell.Is("rest"))
                ? draft.Cells.Whole(cells, together[0].Line, "The shares of rows with the same lines and \"from\"")
                : [.. cells.Select(cell => draft.Cells.Share(cell, 1))];
            for (var i = 0; i < together.Length; i++) shares[together[i]] = found[i];
        }

        return shares;
    }

    static Build BuildOf(Draft draft, Row row, string[] parts, List<Fitting>? fitted, double share)
    {
        if (fitted is not null && !fitted.Select(pair => pair.Part).Order(StringComparer.Ordinal).SequenceEqual(parts.Order(StringComparer.Ordinal), StringComparer.Ordinal))
            draft.Faults.Add(row.Line, $"Every row of the package \"{row["package"].Text}\" says what is fitted for: {string.Join(", ", parts)}.");
        var kinds = parts.Select(part => fitted?.Find(pair => string.Equals(pair.Part, part, StringComparison.Ordinal))?.Kind ?? "");
        var lines = draft.Cells.List(row["lines"], draft.Lines);
        var (window, monthsFrom) = WindowReader.Window(draft, row);
        return draft.At(row.Line, new Build(lines, window, [.. kinds], share) { MonthsFrom = monthsFrom });
    }

    /// <summary>A kind per part, or null when they cannot be read.</summary>
    static List<Fitting>? Fitted(Draft draft, Cell cell)
    {
        var before = draft.Faults.Count;
        var fitted = new List<Fitting>();
        if (cell.IsBlank) draft.Faults.Add(cell, "What is fitted is missing: write bar: low; stem: long.");
        foreach (var piece in cell.Split(';'))
        {
            var (part, kind) = piece.Cut(":");
            if (!draft.Parts.Known(part, draft.Faults) || !draft.KindsOf(part.Text).Known(kind, draft.Faults)) continue;
            if (fitted.Exists(pair => string.Equals(pair.Part, part.Text, StringComparison.Ordinal)))
                draft.Faults.Add(cell, $"The part \"{part.Text}\" is fitted twice.");
            fitted.Add(new Fitting(part.Text, kind.Text));
        }

        return draft.Faults.Count == before && !cell.IsBlank ? fitted : null;
    }

    sealed record Fitting(string Part, string Kind);
}
