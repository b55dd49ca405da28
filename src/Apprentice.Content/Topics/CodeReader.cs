using Apprentice.Content.Pages;
using Apprentice.Content.Values;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the codes and numbers that tell the build date, and their decoys.</summary>
static class CodeReader
{
    const int LongestLag = 240;

    /// <summary>The codes of a clue.</summary>
    public static Shows.Code Codes(Draft draft, Passage entry, Fields fields, double misread)
    {
        var rows = draft.Rows(entry, new Shape(["code", "text", "stands for"], "share", "looks like"), needed: true);
        var names = draft.NamesOf("code", rows.Select(row => row["code"]), "any", "rest");
        var findings = rows.Select(row => FindingOf(draft, row)).ToArray();
        var always = 0.0;
        foreach (var finding in findings) always += finding.Share;
        if (always >= 1) draft.Faults.Add(rows[0].Line, "The codes without months take every bike: lower their shares.");
        return new Shows.Code
        {
            Findings = findings,
            LagMonths = LagOf(draft, fields["Lag"]),
            Decoys = [.. draft.Rows(entry, new Shape(["decoy", "share", "leads to"]), needed: false).Select(row => DecoyOf(draft, row, names, findings))],
            Misread = misread,
        };
    }

    static CodeFinding FindingOf(Draft draft, Row row)
    {
        var months = new List<(Month From, Month To)>();
        foreach (var piece in row["stands for"].Split(';'))
        {
            if (RangeOf(draft, piece) is { } range) months.Add(range);
        }

        if (row["stands for"].IsBlank == row["share"].IsBlank)
            draft.Faults.Add(row.Line, $"The code \"{row["code"].Text}\" either stands for months or has a share of bikes that show it.");
        return new CodeFinding(row["code"].Text, draft.Cells.Needed(row, "text"), months, draft.Cells.Share(row["share"], 0)) { LooksLike = row["looks like"].Text };
    }

    static (Month From, Month To)? RangeOf(Draft draft, Cell cell)
    {
        var (from, to) = draft.Cells.Months(cell);
        if (from is { } first && to is { } last) return (first, last);
        if (MonthText.TryParseRange(cell.Text, out _, out _)) draft.Faults.Add(cell, $"\"{cell.Text}\" is open at one end: write 2012 or 2012-01 to 2012-06.");
        return null;
    }

    static int LagOf(Draft draft, Cell cell)
    {
        if (cell.IsBlank) return 0;
        var months = ShareText.Plain(cell.Cut(" ").Before.Text);
        var unit = cell.Cut(" ").After;
        if (months is >= 1 and <= LongestLag && Math.Floor(months).Equals(months) && (unit.Is("months") || unit.Is("month"))) return (int)months;
        draft.Faults.Add(cell, $"\"{cell.Text}\" is no lag: write 18 months, at most {LongestLag}.");
        return 0;
    }

    static Decoy DecoyOf(Draft draft, Row row, Names names, CodeFinding[] findings)
    {
        var dated = findings.Count(finding => finding.Months.Count > 0);
        IReadOnlyList<double> shares = row["leads to"].Is("any")
            ? [.. findings.Select(finding => finding.Months.Count > 0 ? 1.0 / dated : 0)]
            : EffectReader.Spread(names.All, EffectReader.Choices(draft, row["leads to"], names));
        return new Decoy(draft.Cells.Needed(row, "decoy"), draft.Cells.Share(row["share"]), shares);
    }
}
