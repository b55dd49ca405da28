using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Evidence;

/// <summary>Conflict among findings, and the stories that explain it.</summary>
/// <remarks>Source: Jensen, Chamberlain, Nordahl, Jensen, Analysis in HUGIN of data conflict, UAI 1990.</remarks>
public static class Conflicts
{
    const double ClashShown = 0.5;
    const int MostShown = 3;

    /// <summary>log10( Π P(x) / P(all) ); NaN when nothing allows the findings.</summary>
    public static double Score(Model model, FindingSet findings) => Score(new SubsetBelief(model, findings, null), findings);

    static double Score(SubsetBelief beliefs, FindingSet findings)
    {
        var score = -Real.Log10(beliefs.Total(findings.Everything));
        for (var i = 0; i < findings.Count; i++) score += Real.Log10(beliefs.Total(1UL << i));
        return score;
    }

    /// <summary>Per finding, log10( P(x) / P(x | the rest) ).</summary>
    public static IReadOnlyList<double> Clashes(Model model, FindingSet findings) => Clashes(new SubsetBelief(model, findings, null), findings);

    static double[] Clashes(SubsetBelief beliefs, FindingSet findings)
    {
        var all = Real.Log10(beliefs.Total(findings.Everything));
        var clashes = new double[findings.Count];
        for (var i = 0; i < clashes.Length; i++)
        {
            var bit = 1UL << i;
            clashes[i] = Real.Log10(beliefs.Total(bit)) + Real.Log10(beliefs.Total(findings.Everything & ~bit)) - all;
        }

        return clashes;
    }

    /// <summary>The conflict with its explanations.</summary>
    /// <param name="table">The histories.</param>
    /// <param name="findings">The findings.</param>
    public static Conflict Of(HistoryTable table, FindingSet findings)
    {
        var model = table.Model;
        var beliefs = new SubsetBelief(model, findings, null);
        var total = beliefs.Total(findings.Everything);
        var clashes = Clashes(beliefs, findings);
        var worst = -1;
        for (var i = 0; i < clashes.Length; i++)
        {
            if (worst < 0 || clashes[i] > clashes[worst]) worst = i;
        }

        if (!(total > 0)) return new Conflict(double.PositiveInfinity, clashes, true, [], true, Worst(beliefs, findings));
        var score = findings.Count < 2 ? 0 : Score(beliefs, findings);
        // What has to be explained is the conflict, or the clash where agreeing findings mask it.
        var excess = score > 1e-9 || worst < 0 ? score : clashes[worst];
        var shown = score > 1e-9 || (worst >= 0 && clashes[worst] > ClashShown);
        return new Conflict(score, clashes, shown, shown ? Explain(table, findings.All, total, excess) : [], false, worst);
    }

    // The finding without which the others are least unlikely.
    static int Worst(SubsetBelief beliefs, FindingSet findings)
    {
        var best = (Total: -1.0, Index: -1);
        for (var i = 0; i < findings.Count; i++)
        {
            var rest = beliefs.Total(findings.Everything & ~(1UL << i));
            if (rest > best.Total) best = (rest, i);
        }

        return best.Index;
    }

    static IReadOnlyList<Explanation> Explain(HistoryTable table, Likelihood all, double total, double excess)
    {
        var tags = Enumerable.Range(0, table.Tags.Count);
        var single = tags.Select(t => ExplainedBy(table, all, total, excess, [t])).OfType<Explanation>().ToList();
        if (single.Count == 0)
        {
            single = [.. tags.SelectMany(a => tags.Where(b => b > a).Select(b => ExplainedBy(table, all, total, excess, [a, b])))
                .OfType<Explanation>()];
        }

        return [.. single.OrderByDescending(e => e.After).Take(MostShown)];
    }

    static Explanation? ExplainedBy(HistoryTable table, Likelihood all, double total, double excess, int[] tags)
    {
        var story = new Belief.Story(tags.Aggregate(0UL, (bits, t) => bits | (1UL << t)), 0);
        var nothing = Likelihood.None(table.Topic.Parts.Count);
        var before = Belief.Total(table.Model, nothing, story);
        var after = Belief.Total(table.Model, all, story) / total;
        if (before <= 0 || after <= before) return null;
        return excess + Real.Log10(before / after) < 0 ? new Explanation([.. tags.Select(t => table.Tags[t].Id)], before, after) : null;
    }
}
