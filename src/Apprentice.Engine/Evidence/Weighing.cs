using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Evidence;

/// <summary>Weights of evidence of single findings, in decibans.</summary>
/// <remarks>Source: I. J. Good, Probability and the Weighing of Evidence, 1950; L. S. Shapley, A value for n-person games, 1953.</remarks>
public static class Weighing
{
    /// <summary>Up to this many findings the mean over all orders is exact; beyond, over 128 fixed orders and their reversals.</summary>
    public const int ExactTo = 12;

    const int Orders = 128;

    /// <summary>Weights for one value of a variable against the rest.</summary>
    /// <param name="model">The model.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="query">The variable.</param>
    /// <param name="value">Its value.</param>
    public static IReadOnlyList<FindingWeight> Of(Model model, FindingSet findings, Query query, int value)
    {
        var known = new Dictionary<ulong, double>();
        var beliefs = new SubsetBelief(model, findings, query);
        double Odds(ulong subset) => known.TryGetValue(subset, out var odds) ? odds : known[subset] = LogOdds(beliefs.Joint(subset), value);
        var all = findings.Everything;
        var shares = findings.Count <= ExactTo ? Exact(findings.Count, Odds) : OverOrders(findings.Count, Odds);
        return [.. shares.Select((share, i) => new FindingWeight(Odds(1UL << i) - Odds(0), share, Odds(all) - Odds(all & ~(1UL << i))))];
    }

    /// <summary>10·log10 of the odds of a value of a variable, held within ±300.</summary>
    public static double LogOdds(Model model, Likelihood findings, Query query, int value) =>
        LogOdds(Belief.Joint(model, findings, [query]), value);

    /// <summary>10·log10 of the odds of a value, held within ±300.</summary>
    /// <param name="weights">A weight per value, not all 0.</param>
    /// <param name="value">The value.</param>
    public static double LogOdds(IReadOnlyList<double> weights, int value)
    {
        double rest = 0;
        for (var v = 0; v < weights.Count; v++) rest += v == value ? 0 : weights[v];
        return Math.Clamp(10 * (Real.Log10(weights[value]) - Real.Log10(rest)), -300, 300);
    }

    static double[] Exact(int n, Func<ulong, double> odds)
    {
        var shares = new double[n];
        var factor = new double[n];
        for (var size = 0; size < n; size++) factor[size] = size == 0 ? 1.0 / n : factor[size - 1] * size / (n - size);
        for (var subset = 0UL; subset < 1UL << n; subset++)
        {
            var size = System.Numerics.BitOperations.PopCount(subset);
            for (var i = 0; i < n; i++)
            {
                var bit = 1UL << i;
                if ((subset & bit) == 0) shares[i] += factor[size] * (odds(subset | bit) - odds(subset));
            }
        }

        return shares;
    }

    static double[] OverOrders(int n, Func<ulong, double> odds)
    {
        var shares = new double[n];
        var rng = new Rng(1);
        var order = Enumerable.Range(0, n).ToArray();
        for (var k = 0; k < Orders; k++)
        {
            for (var i = n - 1; i > 0; i--)
            {
                var j = rng.Below(i + 1);
                (order[i], order[j]) = (order[j], order[i]);
            }

            AddOrder(order, odds, shares);
            AddOrder([.. order.Reverse()], odds, shares);
        }

        return [.. shares.Select(s => s / (2 * Orders))];
    }

    static void AddOrder(int[] order, Func<ulong, double> odds, double[] shares)
    {
        var subset = 0UL;
        foreach (var i in order)
        {
            var with = subset | (1UL << i);
            shares[i] += odds(with) - odds(subset);
            subset = with;
        }
    }
}
