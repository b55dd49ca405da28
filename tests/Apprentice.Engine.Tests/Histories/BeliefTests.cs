using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using CsCheck;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>Laws 1 and 2 on small models of any shape.</summary>
public sealed class BeliefTests
{
    const double Tolerance = 1e-12;
    static readonly int[] Indices = [0, 1, 2, 3];
    static readonly Gen<SmallModel> Models = Gen.Select(Gen.Int[1, 4], Gen.Int[0, 4], Gen.ULong, (rows, parts, seed) => new SmallModel(rows, parts, seed));

    [Fact]
    public void Message_passing_equals_plain_enumeration() => Check.Sample(Models, small =>
    {
        AssertClose(small.Enumerated(small.All, small.Queries, Belief.Story.Any), Belief.Joint(small.Model, small.All, small.Queries));
        foreach (var query in small.Queries)
            AssertClose(small.Enumerated(small.All, [query], Belief.Story.Any), Belief.Joint(small.Model, small.All, [query]));
    });

    [Fact]
    public void Stories_keep_their_share_of_every_history() => Check.Sample(Models, small =>
    {
        for (var i = 0; i < 5; i++)
        {
            var story = small.Story();
            Assert.Equal(small.Enumerated(small.All, [], story)[0], Belief.Total(small.Model, small.All, story), Tolerance);
        }
    });

    [Fact]
    public void Beliefs_after_some_of_the_findings_are_those_of_these_findings_alone() => Check.Sample(Models, small =>
    {
        var set = FindingSet.Independent(small.Model.Parts.Count, small.Findings);
        foreach (var query in small.Queries.Prepend(null))
        {
            var beliefs = new SubsetBelief(small.Model, set, query);
            for (var subset = 0UL; subset <= set.Everything; subset++)
            {
                AssertClose(Belief.Joint(small.Model, set.Of(subset), query is null ? [] : [query]), beliefs.Joint(subset));
                Assert.Equal(Belief.Total(small.Model, set.Of(subset)), beliefs.Total(subset), Tolerance);
            }
        }
    });

    [Fact]
    public void The_order_of_findings_changes_nothing() => Check.Sample(Gen.Select(Models, Gen.Shuffle(Indices)), (small, order) =>
    {
        var shuffled = order.Aggregate(Likelihood.None(small.Model.Parts.Count), (all, i) => all.And(small.Findings[i]));
        AssertClose(Belief.Joint(small.Model, small.All, small.Queries), Belief.Joint(small.Model, shuffled, small.Queries));
    });

    [Fact]
    public void Beliefs_without_findings_add_up_to_1() => Check.Sample(Models, small =>
    {
        var nothing = Likelihood.None(small.Model.Parts.Count);
        Assert.Equal(1, Belief.Total(small.Model, nothing), Tolerance);
        foreach (var query in small.Queries) Assert.Equal(1, Belief.Joint(small.Model, nothing, [query]).Sum(), Tolerance);
    });

    [Fact]
    public void A_finding_that_is_equally_likely_everywhere_changes_no_belief() => Check.Sample(
        Gen.Select(Models, Gen.Double[0.01, 1]), (small, p) =>
        {
            var before = Belief.Joint(small.Model, small.All, small.Queries);
            AssertClose(before, [.. Belief.Joint(small.Model, small.All.And(small.Flat(p)), small.Queries).Select(w => w / p)]);
        });

    static void AssertClose(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], actual[i], Tolerance);
    }
}
