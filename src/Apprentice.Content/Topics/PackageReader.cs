using Apprentice.Content.Pages;
using Apprentice.Engine.Quantities;
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
        return draft.At(row.Line, new Build(lines, WindowOf(draft, row), [.. kinds], share));
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

    static Window? WindowOf(Draft draft, Row row)
    {
        var pitfall = draft.Cells.Name(row["pitfall"], draft.Pitfalls);
        if (row["from"].IsBlank)
        {
            if (pitfall is not null) draft.Faults.Add(row.Line, "The pitfall of a running change needs a \"from\" beside it.");
            return null;
        }

        Cell[] pieces = [.. row["from"].Split(',')];
        var (opens, closes) = pieces.Length > 0 ? pieces[0].Cut(" to ") : new Halves(row["from"], row["from"]);
        var first = draft.Cells.Month(opens);
        var last = closes.IsBlank ? first : draft.Cells.Month(closes);
        if (last < first || (last == first && !closes.IsBlank)) draft.Faults.Add(row.Line, $"The running change closes in {last}, not after it opens in {first}.");
        return new Window(first ?? default, last ?? default, ToldOf(draft, pieces) ?? last ?? default, pitfall);
    }

    static Month? ToldOf(Draft draft, Cell[] pieces)
    {
        if (pieces.Length < 2) return null;
        var told = pieces[1].Text.StartsWith("told ", StringComparison.OrdinalIgnoreCase) ? draft.Cells.Month(new Cell(pieces[1].Text[5..].Trim(), pieces[1].Line)) : null;
        if (told is null || pieces.Length > 2) draft.Faults.Add(pieces[1], $"\"{pieces[1].Text}\" is not understood: write 2013-11 to 2015-01, told 2014-06.");
        return told;
    }

    sealed record Fitting(string Part, string Kind);
}
