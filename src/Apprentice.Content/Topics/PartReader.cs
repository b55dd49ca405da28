using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the parts and their kinds.</summary>
static class PartReader
{
    const double UsualNone = 0.02;
    const double UsualSettle = 0.95;
    const double HazardSettle = 0.99;

    /// <summary>Parts, hosts before the parts that sit on them, otherwise in the order of the file.</summary>
    /// <param name="draft">The file.</param>
    /// <param name="hazards">Parts that a spare which can hurt depends on.</param>
    public static IReadOnlyList<Part> Parts(Draft draft, IReadOnlySet<string> hazards)
    {
        var rows = PartRows(draft);
        var kinds = KindRows(draft).ToLookup(row => row["part"].Text, StringComparer.Ordinal);
        var parts = rows.Select(row => PartOf(draft, row, [.. kinds[row["id"].Text].Select(kind => KindOf(draft, kind))], hazards));
        return HostsFirst(draft, [.. parts]);
    }

    /// <summary>Names of the parts and kinds, needed by every section.</summary>
    public static void Names(Draft draft)
    {
        draft.Parts = draft.NamesIn(Headings.Parts, "part", PartRows(draft));
        var rows = KindRows(draft);
        foreach (var row in rows) _ = draft.Parts.Known(row["part"], draft.Faults);
        foreach (var part in draft.Parts.All.Distinct(StringComparer.Ordinal))
        {
            var own = rows.Where(row => string.Equals(row["part"].Text, part, StringComparison.Ordinal)).ToArray();
            draft.Kinds[part] = draft.NamesOf($"kind of {part}", own.Select(row => row["id"]), Kind.NoneId, "finding", "text", "stop", "rest");
            if (own.Length > 0) continue;
            draft.Kinds[part] = new Names($"kind of {part}", [], unread: true);
            if (draft.Section(Headings.Kinds) is not null)
                draft.Faults.Add(draft.Parts.LineOf(part), $"The part \"{part}\" has no kinds: add them to \"{Headings.Kinds}\".");
        }
    }

    static IReadOnlyList<Row> PartRows(Draft draft) => draft.Rows(
        Headings.Parts, new Shape(["id", "name"], "question", "asked", "sits on", "settled at", "none of these"));

    static IReadOnlyList<Row> KindRows(Draft draft) => draft.Rows(Headings.Kinds, new Shape(["part", "id", "name"], "pitfall", "from", "to"));

    static Part PartOf(Draft draft, Row row, IReadOnlyList<Kind> kinds, IReadOnlySet<string> hazards)
    {
        var asked = draft.Cells.YesNo(row["asked"]);
        if (asked && row["question"].IsBlank) draft.Faults.Add(row.Line, $"The part \"{row["id"].Text}\" is asked for and needs a question.");
        var isDate = kinds.Count > 0 && kinds.All(kind => kind is { From: not null, To: not null });
        if (!isDate && kinds.Any(kind => kind.From is not null || kind.To is not null))
            draft.Faults.Add(row.Line, $"Some kinds of \"{row["id"].Text}\" have \"from\" and \"to\" and some have not: fill both in all rows or in none.");
        var usual = hazards.Contains(row["id"].Text) ? HazardSettle : UsualSettle;
        return draft.At(row.Line, new Part
        {
            Id = row["id"].Text,
            Name = draft.Cells.Needed(row, "name"),
            Question = row["question"].Text,
            Asked = asked,
            Kinds = kinds,
            Host = draft.Cells.Name(row["sits on"], draft.Parts),
            NonePrior = NonePrior(draft, row["none of these"], isDate),
            SettleAt = SettleAt(draft, row["settled at"], usual),
            IsDate = isDate,
        });
    }

    static double NonePrior(Draft draft, Cell cell, bool isDate)
    {
        var share = cell.Is("never") ? 0 : draft.Cells.Share(cell, isDate ? 0 : UsualNone);
        if (isDate && share > 0) draft.Faults.Add(cell, "A build date is always one of its groups: leave \"none of these\" blank.");
        if (share >= 0.5) draft.Faults.Add(cell, $"\"none of these\" is {share:0.##}: a part that is mostly something else needs more kinds.");
        return share;
    }

    static double SettleAt(Draft draft, Cell cell, double usual)
    {
        var level = draft.Cells.Share(cell, usual);
        if (level < usual || level >= 1) draft.Faults.Add(cell, $"\"settled at\" is {level:0.###}: it can only be raised here; write at least {usual:0.##} and less than 1.");
        return level;
    }

    static Kind KindOf(Draft draft, Row row)
    {
        var (from, _) = draft.Cells.Months(row["from"]);
        var (_, to) = draft.Cells.Months(row["to"]);
        if (from > to) draft.Faults.Add(row.Line, $"\"{row["id"].Text}\" ends in {to} before it begins in {from}.");
        var pitfall = draft.Cells.Name(row["pitfall"], draft.Pitfalls);
        return draft.At(row.Line, new Kind(row["id"].Text, draft.Cells.Needed(row, "name"), pitfall, from, to));
    }

    static IReadOnlyList<Part> HostsFirst(Draft draft, IReadOnlyList<Part> parts)
    {
        var left = parts.ToList();
        var sorted = new List<Part>();
        while (left.Find(part => part.Host is null || sorted.Exists(host => Same(host.Id, part.Host))) is { } next)
        {
            sorted.Add(next);
            _ = left.Remove(next);
        }

        if (left.Count > 0)
        {
            draft.Faults.Add(
                draft.Parts.LineOf(left[0].Id),
                $"\"sits on\" runs in a ring: {string.Join(", ", left.Select(part => $"{part.Id} on {part.Host}"))}.");
        }

        return [.. sorted, .. left];
    }

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
