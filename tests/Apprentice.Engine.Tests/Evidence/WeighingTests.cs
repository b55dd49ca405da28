using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Tests.Histories;
using CsCheck;

namespace Apprentice.Engine.Tests.Evidence;

/// <summary>I. J. Good, Probability and the Weighing of Evidence, 1950; L. S. Shapley, A value for n-person games, 1953.</summary>
public sealed class WeighingTests
{
    static readonly Query Kind = new(-1, 2, [0, 1]);
    static readonly Model Even = new([0.5, 0.5], [], []);

    [Fact]
    public void A_likelihood_ratio_of_10_weighs_10_decibans()
    {
        var weight = Assert.Single(Weighing.Of(Even, FindingSet.Independent(0, [Some.Rows(0.5, 0.05)]), Kind, 0));
        Assert.Equal((10.0, 10.0, 10.0), (Math.Round(weight.Alone, 12), Math.Round(weight.Share, 12), Math.Round(weight.Without, 12)));
    }

    [Fact]
    public void The_weight_of_a_call_is_that_of_its_likelihood_ratio()
    {
        // Russell & Norvig: posterior .016283729947 after prior .001, as odds.
        var network = Network.Of("burglary");
        var findings = network.Findings(new Dictionary<string, string> { ["john"] = "yes" });
        var weight = Assert.Single(Weighing.Of(network.Model, findings, network.Variable("burglary"), 0));
        var posterior = Network.ValuesOf("burglary").Posteriors.Single(p => p.Query == "burglary" && p.Evidence.Count == 1 && p.Evidence.ContainsKey("john")).Posterior["yes"];
        Assert.Equal(10 * Math.Log10(posterior / (1 - posterior) * 999), weight.Alone, 1e-9);
    }

    [Fact]
    public void Shares_add_up_to_the_whole_weight() => Check.Sample(
        Gen.Select(Gen.Int[2, 4], Gen.Int[1, 3], Gen.ULong, (rows, parts, seed) => new SmallModel(rows, parts, seed)), small =>
        {
            var query = small.Queries[0];
            var set = FindingSet.Independent(small.Model.Parts.Count, small.Findings);
            var all = LogOdds(small.Model, set.All, query, 0);
            if (!double.IsFinite(all)) return;
            var whole = all - LogOdds(small.Model, set.Of(0), query, 0);
            var shares = Weighing.Of(small.Model, set, query, 0).Sum(w => w.Share);
            if (double.IsFinite(shares)) Assert.Equal(whole, shares, 1e-9);
        });

    [Fact]
    public void Shares_are_the_mean_over_all_orders()
    {
        // The chest clinic, findings that depend on each other: all 24 orders counted out here.
        var (network, set) = Chest();
        var query = network.Variable("lung");
        var shares = new double[4];
        foreach (var order in Orders([0, 1, 2, 3]))
        {
            var subset = 0UL;
            foreach (var i in order)
            {
                var with = subset | (1UL << i);
                shares[i] += (LogOdds(network.Model, set.Of(with), query, 0) - LogOdds(network.Model, set.Of(subset), query, 0)) / 24;
                subset = with;
            }
        }

        var weights = Weighing.Of(network.Model, set, query, 0);
        for (var i = 0; i < 4; i++) Assert.Equal(shares[i], weights[i].Share, 1e-9);
    }

    [Fact]
    public void Findings_that_say_the_same_get_the_same_share()
    {
        var model = new Model([0.3, 0.2, 0.5], [], []);
        var set = FindingSet.Independent(0, [Some.Rows(0.9, 0.4, 0.2), Some.Rows(0.5, 0.1, 0.6), Some.Rows(0.9, 0.4, 0.2)]);
        var weights = Weighing.Of(model, set, new Query(-1, 2, [0, 1, 1]), 0);
        Assert.Equal(weights[0].Share, weights[2].Share, 1e-12);
        Assert.NotEqual(weights[0].Share, weights[1].Share, 0.1);
    }

    [Fact]
    public void Findings_that_only_repeat_each_other_weigh_nothing_without_but_share_alike()
    {
        // Three parts fitted as one set: each tells the set, and the set tells the kind.
        double[] sure = [0.9999, 0.9999, 0.0001, 0.0001];
        var model = new Model([0.45, 0.05, 0.05, 0.45], [], []);
        var set = FindingSet.Independent(0, [Some.Rows(sure), Some.Rows(sure), Some.Rows(sure)]);
        var weights = Weighing.Of(model, set, new Query(-1, 2, [0, 1, 0, 1]), 0);
        var whole = LogOdds(model, set.All, new Query(-1, 2, [0, 1, 0, 1]), 0);
        Assert.Equal(10 * Math.Log10(9), whole, 0.001);
        Assert.All(weights, w => Assert.InRange(w.Without, -0.01, 0.01));
        Assert.All(weights, w => Assert.Equal(whole / 3, w.Share, 1e-9));
        Assert.All(weights, w => Assert.Equal(whole, w.Alone, 0.01));
    }

    [Fact]
    public void Shares_over_fixed_orders_come_within_a_tenth_of_a_decibel_of_the_exact_ones()
    {
        // Twelve linked findings are weighed exactly; a thirteenth that tells nothing sends the same twelve through the orders.
        var (model, query, findings) = Linked(12);
        var exact = Weighing.Of(model, FindingSet.Independent(0, findings), query, 0);
        var orders = Weighing.Of(model, FindingSet.Independent(0, [.. findings, Some.Rows([.. model.Weights.Select(_ => 0.5)])]), query, 0);
        Assert.True(exact.Max(w => Math.Abs(w.Share - w.Alone)) > 0.5, "the findings must lean on each other for the test to tell");
        for (var i = 0; i < 12; i++) Assert.Equal(exact[i].Share, orders[i].Share, 0.1);
        Assert.Equal(0, orders[12].Share, 1e-9);
        Assert.Equal(exact.Sum(w => w.Share), orders.Sum(w => w.Share), 1e-9);
    }

    static double LogOdds(Model model, Likelihood findings, Query query, int value) => Weighing.LogOdds(Belief.Joint(model, findings, [query]), value);

    static (Network Network, FindingSet Findings) Chest()
    {
        var network = Network.Of("asia");
        return (network, network.Findings(new Dictionary<string, string> { ["asia"] = "yes", ["smoke"] = "yes", ["xray"] = "yes", ["dysp"] = "no" }));
    }

    // Findings read one of three hidden sets, which depend on the kind.
    static (Model Model, Query Query, List<Likelihood> Findings) Linked(int count)
    {
        var rng = new Rng(2);
        var rows = Enumerable.Range(0, 16).ToList();
        double Chance(int row, int set) => ((row >> set) & 1) == (row >> 3) ? 0.8 : 0.2;
        var model = new Model([.. rows.Select(r => 0.5 * Chance(r, 0) * Chance(r, 1) * Chance(r, 2))], [], []);
        var findings = Enumerable.Range(0, count).Select(i =>
        {
            var right = 0.6 + (0.15 * rng.Unit());
            return Some.Rows([.. rows.Select(r => ((r >> (i % 3)) & 1) == 1 ? right : 1 - right)]);
        }).ToList();
        return (model, new Query(-1, 2, [.. rows.Select(r => 1 - (r >> 3))]), findings);
    }

    static IEnumerable<List<int>> Orders(List<int> of) => of.Count == 0
        ? [[]]
        : of.SelectMany(first => Orders([.. of.Where(x => x != first)]).Select(rest => (List<int>)[first, .. rest]));
}
