using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>What a code shows on a bike of a build month, before misreading.</summary>
static class CodeShares
{
    /// <summary>A share per finding, adding up to 1: codes without months at their own share; of the rest decoys at theirs, and the codes that stand for the month, evenly, averaged over the lag.</summary>
    public static double[] Of(Shows.Code code, Month month)
    {
        var shares = code.Findings.Select(f => f.Months.Count == 0 ? f.Share : 0).ToArray();
        var readable = 1 - shares.Sum();
        var right = 1 - code.Decoys.Sum(d => d.Share);
        for (var lag = 0; lag <= code.LagMonths; lag++) AddMonth(code, month.Plus(-lag), readable * right / (code.LagMonths + 1), shares);
        foreach (var decoy in code.Decoys)
        {
            for (var f = 0; f < shares.Length; f++) shares[f] += readable * decoy.Share * decoy.Shares[f];
        }

        return shares;
    }

    static void AddMonth(Shows.Code code, Month month, double share, double[] shares)
    {
        var fits = Indices(code, f => f.Months.Any(r => month >= r.From && month <= r.To));
        if (fits.Count == 0) fits = Indices(code, f => f.Months.Count > 0);
        foreach (var f in fits) shares[f] += share / fits.Count;
    }

    static List<int> Indices(Shows.Code code, Func<CodeFinding, bool> which) =>
        [.. Enumerable.Range(0, code.Findings.Count).Where(f => which(code.Findings[f]))];
}
